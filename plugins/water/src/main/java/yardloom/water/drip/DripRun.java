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
 * Dripline laid in one bed or round one tree.
 *
 * @param waters the bed or tree, and the trees that stand in the bed or in its ring without
 *     dripline of their own
 * @param rows the tubes, each from where it is fed
 * @param headers solid tube that joins the rows, inside the bed
 * @param length of all tubes together
 * @param header length of all headers together
 * @param outlets emitters of all tubes together
 * @param rate depth that one hour of watering puts on the bed
 * @param hydraulics flow and pressure in its tubes
 */
public record DripRun(
    ElementId bed,
    SourceRef place,
    List<ElementId> waters,
    DripChoice choice,
    List<Line> rows,
    List<Line> headers,
    Area area,
    Derived<Length> length,
    Derived<Length> header,
    Derived<Integer> outlets,
    Derived<Length> rate,
    BedHydraulics hydraulics) {
  /** Dripline by bed. */
  public static final FactKey<DripRun> KEY =
      FactKey.many("water.drip", DripRun.class).called("dripline");

  public DripRun {
    waters = List.copyOf(waters);
    rows = List.copyOf(rows);
    headers = List.copyOf(headers);
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
