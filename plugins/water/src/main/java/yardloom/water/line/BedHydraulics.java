package yardloom.water.line;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/**
 * What flows out of a bed's dripline while its zone runs.
 *
 * @param zone the number of its zone
 */
public record BedHydraulics(
    ElementId bed, int zone, Outflow outflow, Pressures pressures, Evenness evenness, Rows rows) {
  /**
   * What comes out.
   *
   * @param flow of all outlets together
   * @param rate depth that one hour puts on the bed
   */
  public record Outflow(Derived<Flow> flow, Derived<Length> rate) {}

  /**
   * What presses.
   *
   * @param inlet where it is fed
   * @param least at the outlet that gets least
   */
  public record Pressures(Derived<Pressure> inlet, Derived<Pressure> least) {}

  /**
   * How alike the outlets give.
   *
   * @param variation largest less least outlet flow over the largest
   * @param lowQuarter mean of the quarter of outlets that gives least over the mean of all; empty
   *     below four outlets or where some are dry
   * @param design what is left of evenness when outlets differ as they are made
   */
  public record Evenness(
      Derived<Double> variation, Optional<Derived<Double>> lowQuarter, Derived<Double> design) {}

  /**
   * How long rows are and may be.
   *
   * @param allowedDrop how far pressure may fall along a row before flow has fallen by a tenth
   * @param longest that the bed has
   * @param limit a row that, alone, keeps within {@link #ALLOWED}
   */
  public record Rows(Derived<Double> allowedDrop, Length longest, Derived<Length> limit) {}

  /** Flow and pressure by bed. */
  public static final FactKey<BedHydraulics> KEY =
      FactKey.many("water.hydraulics", BedHydraulics.class).called("flow and pressure in the beds");

  /**
   * How much outlets of one bed may differ: 10 percent are as even as 98 percent (I. P. Wu, 1997,
   * abstract, read).
   */
  public static final double ALLOWED = 0.10;

  /** That of one bed, which has dripline. */
  public static BedHydraulics of(ElementId bed, Facts facts) {
    return facts.all(KEY).stream().filter(h -> h.bed().equals(bed)).findFirst().orElseThrow();
  }

  /** Whether its outlets differ more than is usual. */
  public boolean isUneven() {
    return evenness.variation().value() > ALLOWED;
  }
}
