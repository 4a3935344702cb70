package yardloom.water.line;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/**
 * The lines of one zone with what flows and presses in them.
 *
 * @param number of the zone
 * @param runs of pipe, each after the one before it; none without a tap on the plan
 * @param behind the pressure behind the zone valve
 * @param flow of all its outlets
 * @param least pressure at any outlet
 * @param end where the outlet stands at which it is least
 * @param most pressure at any outlet
 * @param variation largest less least outlet flow over the largest, in the whole zone
 * @param binding what holds its widths: in words
 */
public record ZoneLine(
    int number,
    List<PipeRun> runs,
    Derived<Pressure> behind,
    Derived<Flow> flow,
    Derived<Pressure> least,
    Point end,
    Pressure most,
    Derived<Double> variation,
    String binding) {
  /** The lines of every zone. */
  public static final FactKey<ZoneLine> KEY =
      FactKey.many("water.lines", ZoneLine.class).called("lines of the zones");

  /**
   * Pipe of one size without a branch.
   *
   * @param from the run before it, -1 at the valve
   * @param to the beds and rings whose water it carries, by feed
   * @param speed way of the water in a second
   * @param paved how much of it lies under paving
   */
  public record PipeRun(
      int from,
      Line way,
      PipeSize size,
      List<String> to,
      Derived<Flow> flow,
      Derived<Length> speed,
      Derived<Pressure> end,
      Length paved) {
    public PipeRun {
      to = List.copyOf(to);
    }
  }

  public ZoneLine {
    runs = List.copyOf(runs);
  }
}
