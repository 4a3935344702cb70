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
 * @param variation largest less least outlet flow over the largest, along the longest row
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
    Derived<Flow> flow,
    Derived<Length> rate,
    Derived<Double> variation) {
  /** Dripline by bed. */
  public static final FactKey<DripRun> KEY =
      FactKey.many("water.drip", DripRun.class).called("dripline");

  public DripRun {
    rows = List.copyOf(rows);
  }
}
