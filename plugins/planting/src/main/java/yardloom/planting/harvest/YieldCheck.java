package yardloom.planting.harvest;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.harvest.formula.AreaYield;

/**
 * Holds the yield by area of the plan's beds against what mixed small gardens bring.
 *
 * <p>Usual is from half of the guideline of 0.5 lb/sq ft a year to one and a half times the 1.24
 * lb/sq ft that a raised bed brought over three years: sources differ by half. The middle of the
 * plan's range is compared.
 *
 * <p>References: [1] Rabin, Zinati, Nitzsche, Yield Expectations for Mixed Stand, Small-Scale
 * Agriculture, Rutgers New Jersey Agricultural Experiment Station, September 2012. [2] P. Lane,
 * Ohio State University, raised beds, as told by a newspaper column, 2010.
 */
public final class YieldCheck implements Check {
  /** Half of the guideline. */
  public static final AreaYield LEAST = AreaYield.poundsPerSquareFoot(0.5 * 0.5);

  /** Half as much again as the raised bed. */
  public static final AreaYield MOST = AreaYield.poundsPerSquareFoot(1.24 * 1.5);

  private static final Source GUIDE =
      Source.read(
          "Yield Expectations for Mixed Stand, Small-Scale Agriculture (0.5 lb/sq ft a year)",
          "Rutgers NJAES",
          2012,
          "and a raised bed's 1.24 lb/sq ft, P. Lane, Ohio State University, in a column of 2010;"
              + " each with 50 % to spare");

  @Override
  public String id() {
    return "planting.yield";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(HarvestPlan.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    HarvestPlan harvest = facts.get(HarvestPlan.KEY);
    if (harvest.ofBeds().isEmpty()) {
      return List.of();
    }
    AreaYield low = AreaYield.of(harvest.ofBeds().get().low().value(), harvest.bedArea());
    AreaYield high = AreaYield.of(harvest.ofBeds().get().high().value(), harvest.bedArea());
    AreaYield middle =
        new AreaYield((low.kilogramsPerSquareMetre() + high.kilogramsPerSquareMetre()) / 2);
    boolean little = middle.compareTo(LEAST) < 0;
    if (!little && middle.compareTo(MOST) <= 0) {
      return List.of();
    }
    return List.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "at full bearing the beds bring "
                + range(plan, low, high)
                + " a year by the figures of their plants; mixed small gardens bring "
                + range(plan, LEAST, MOST),
            little
                ? "count on no more; crops that bear more stand closer or fruit longer"
                : "count on less: such figures are for open rows, and no garden keeps them in"
                    + " every bed",
            GUIDE));
  }

  private static String range(Plan plan, AreaYield low, AreaYield high) {
    return plan.info()
        .units()
        .both(range(UnitSystem.US, low, high), range(UnitSystem.METRIC, low, high));
  }

  private static String range(UnitSystem units, AreaYield low, AreaYield high) {
    return String.format(
        Locale.ROOT, "%s to %s %s", low.number(units), high.number(units), AreaYield.unit(units));
  }
}
