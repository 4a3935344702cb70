package yardloom.facts.built;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * A flight of garden steps, on the paving that shows its ground.
 *
 * @param line from its foot to its head, in the middle
 * @param rise from its foot to its head, upright
 * @param width of its treads, across the way
 * @param riser the most from tread to tread
 */
public record Flight(Line line, Length rise, Length width, Length riser) {
  /** On paving. */
  public static final AttributeKey<Flight> KEY = new AttributeKey<>("site.flight", Flight.class);

  private static final Length HAIR = Length.millimetres(1);

  /** Steps up, the last one onto the upper ground: rise / greatest riser, rounded up. */
  public int risers() {
    return (int) Math.max(1, Math.ceil(rise.ratioTo(riser) - 1e-9));
  }

  /** From its foot to its head, level. */
  public Length run() {
    return line.length();
  }

  /** The front edges of the steps, from the foot up, across the way. */
  public List<Line> nosings() {
    List<Line> nosings = new ArrayList<>();
    for (int i = 0; i < risers(); i++) {
      Length at = risers() == 1 ? Length.ZERO : run().times((double) i / (risers() - 1));
      Point on = line.at(at.compareTo(run()) > 0 ? run() : at);
      Point before = line.at(at.minus(HAIR).max(Length.ZERO));
      Point after = line.at(at.plus(HAIR).compareTo(run()) > 0 ? run() : at.plus(HAIR));
      double length = before.distance(after).metres();
      Length right = width.times(0.5 * (after.y().metres() - before.y().metres()) / length);
      Length up = width.times(-0.5 * (after.x().metres() - before.x().metres()) / length);
      nosings.add(Line.between(on.moved(right, up), on.moved(right.negative(), up.negative())));
    }
    return nosings;
  }

  /** Height of each step. */
  public Length step() {
    return rise.div(risers());
  }

  /** Depth of each tread, of which there is one less than risers; the run where there is none. */
  public Length tread() {
    return run().div(Math.max(1, risers() - 1));
  }
}
