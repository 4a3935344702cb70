package yardloom.materials.data;

import java.util.List;
import java.util.Optional;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.kernel.plan.Plan;
import yardloom.materials.model.MaterialKeys;

/** Hours by task: what the plan says, else its region, else the shipped row. */
public final class LabourRates {
  private final List<LocalRate> own;

  private LabourRates(List<LocalRate> own) {
    this.own = own;
  }

  public static LabourRates of(Plan plan, Optional<Region> region) {
    return new LabourRates(
        Region.ownFirst(region, plan.attributes().all(MaterialKeys.LOCAL_LABOUR)));
  }

  /** Hours of one person for one unit of the task, and the unit. */
  public LocalRate of(String task) {
    return own.stream()
        .filter(r -> r.item().equals(task))
        .findFirst()
        .orElseGet(() -> WorkData.labour(task));
  }
}
