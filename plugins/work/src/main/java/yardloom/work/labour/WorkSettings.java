package yardloom.work.labour;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * Who works when.
 *
 * @param crew people at work
 * @param hoursPerDay of each
 * @param slope rise over run of the barrow's way
 * @param visits visits after the work, through the first season
 * @param start the first day, if the plan says
 * @param lastFrost mean last frost of spring, if the plan says
 * @param firstFrost mean first frost of autumn, if the plan says
 * @param workdays the days on which the crew works
 */
public record WorkSettings(
    int crew,
    double hoursPerDay,
    double slope,
    Derived<Integer> visits,
    Optional<LocalDate> start,
    Optional<MonthDay> lastFrost,
    Optional<MonthDay> firstFrost,
    Workdays workdays,
    SourceRef place) {
  /** On the plan: who works when. */
  public static final AttributeKey<WorkSettings> KEY =
      new AttributeKey<>("work.work", WorkSettings.class);

  private static final Source WEEKLY =
      Source.memory(
          "New plants are watered weekly for about twelve weeks", "recalled from practice", 0, "");

  /** What a plan has that says nothing. */
  public static final Derived<Integer> VISITS =
      Derived.by("default of work visits", WEEKLY).gives(12);

  /** Working days of the crew for hours of one person, begun ones whole; at least 1. */
  public int daysFor(double hours) {
    return Math.max(1, (int) Math.ceil(hours / (crew * hoursPerDay) - 1e-9));
  }

  /** These with the frost days that hold for the whole plan. */
  public WorkSettings withFrost(MonthDay last, MonthDay first) {
    return new WorkSettings(
        crew,
        hoursPerDay,
        slope,
        visits,
        start,
        Optional.of(last),
        Optional.of(first),
        workdays,
        place);
  }

  /** These with another first day. */
  public WorkSettings startingOn(LocalDate day) {
    return new WorkSettings(
        crew, hoursPerDay, slope, visits, Optional.of(day), lastFrost, firstFrost, workdays, place);
  }

  /** These with the days off of plan and regional files. */
  public WorkSettings on(Workdays days) {
    return new WorkSettings(
        crew, hoursPerDay, slope, visits, start, lastFrost, firstFrost, days, place);
  }

  /** What the plan says, or every default. */
  public static WorkSettings of(Plan plan) {
    return plan.attributes().get(KEY).orElseGet(WorkSettings::defaults).on(Workdays.of(plan));
  }

  /** Two people, six hours a day, level ground, no dates. */
  public static WorkSettings defaults() {
    return new WorkSettings(
        2,
        6,
        0,
        VISITS,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Workdays.ALL,
        SourceRef.NONE);
  }
}
