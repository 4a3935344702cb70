package yardloom.water.drip;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;

/**
 * Dripline laid in one bed.
 *
 * @param rows the tubes, each from end to end
 * @param length of all tubes together
 * @param header solid tube that joins the rows at one end
 * @param outlets emitters of all tubes together
 * @param rate depth that one hour of watering puts on the bed
 * @param hydraulics flow and pressure in its tubes
 */
public record DripRun(
    ElementId bed,
    SourceRef place,
    DripChoice choice,
    List<Line> rows,
    Area area,
    Derived<Length> length,
    Length header,
    Derived<Integer> outlets,
    Derived<Length> rate,
    BedHydraulics hydraulics) {
  /** Dripline by bed. */
  public static final FactKey<DripRun> KEY =
      FactKey.many("water.drip", DripRun.class).called("dripline");

  public DripRun {
    rows = List.copyOf(rows);
  }

  /** Whether its outlets differ more than is usual. */
  public boolean isUneven() {
    return hydraulics.variation().value() > BedHydraulics.ALLOWED;
  }

  /** What all outlets give together. */
  public Derived<Flow> flow() {
    return hydraulics.flow();
  }
}
