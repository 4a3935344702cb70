package yardloom.work.labour;

import java.util.List;
import java.util.Optional;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.facts.work.Job;
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

  /**
   * Hours of one person for one unit of a job, and the unit: what is said of its task goes before
   * the rate that it brings, since whoever says it knows their own crew.
   */
  LocalRate of(Job job) {
    return said(job.task().title())
        .or(() -> job.pace().map(p -> LabourData.piece(job.title(), p.hours())))
        .orElseGet(() -> LabourData.labour(job.task().title()));
  }

  private Optional<LocalRate> said(String task) {
    return own.stream().filter(r -> r.item().equals(task)).findFirst();
  }
}
