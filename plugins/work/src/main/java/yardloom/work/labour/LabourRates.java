package yardloom.work.labour;

import java.util.List;
import java.util.Optional;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/** Hours by task: what the plan says, else its region, else the shipped row. */
public final class LabourRates {
  /** On the plan, any number: rates of labour. */
  public static final AttributeKey<LocalRate> KEY =
      new AttributeKey<>("work.local-labour", LocalRate.class);

  private final List<LocalRate> own;

  private LabourRates(List<LocalRate> own) {
    this.own = own;
  }

  public static LabourRates of(Plan plan, Optional<Region> region) {
    return new LabourRates(Region.ownFirst(region, plan.attributes().all(KEY)));
  }

  /** Hours of one person for one unit of the task, and the unit. */
  public LocalRate of(String task) {
    return own.stream()
        .filter(r -> r.item().equals(task))
        .findFirst()
        .orElseGet(() -> LabourData.labour(task));
  }
}
