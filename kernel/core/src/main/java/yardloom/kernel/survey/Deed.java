package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * A lot as its description reads: calls in order, back to the point of beginning.
 *
 * <p>Curves enter the traverse by their chords; their segments are added to or taken from the area
 * according to the side they bulge to. Both the raw and the adjusted figure are kept, so that
 * everybody sees what the adjustment did.
 *
 * <p>References: see {@link Traverse} for the adjustment, {@link Curve} for segments.
 *
 * @param start where the description begins, on the plan
 * @param calls in order; a last call that returns to the start may be left for the closing line
 * @param adjusted whether the corners are those after the compass rule
 */
public record Deed(Point start, List<Call> calls, boolean adjusted) {

  /**
   * One call.
   *
   * @param name how the side is called
   * @param chord the straight course from its start to its end
   * @param bend the curve, if it is one
   * @param closes whether it was worked out to return to the start, so that it checks nothing
   */
  public record Call(
      String name, SourceRef place, Course chord, Optional<Bend> bend, boolean closes) {}

  /**
   * What makes a call a curve.
   *
   * @param left whether it turns left on its way
   * @param discrepancies elements of the description that contradict the others
   */
  public record Bend(Curve curve, boolean left, List<CurveGiven.Discrepancy> discrepancies) {
    public Bend {
      discrepancies = List.copyOf(discrepancies);
    }
  }

  /** One side of the outline. */
  public record Side(String name, Point from, Point to, Optional<Arc> arc) {}

  public Deed {
    calls = List.copyOf(calls);
    if (calls.size() < 2) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "a description needs at least two calls, got " + calls.size());
    }
  }

  /** The calls as straight courses. */
  public Traverse traverse() {
    return new Traverse(calls.stream().map(Call::chord).toList());
  }

  /**
   * Whether the description closes on itself independently, so that its misclosure says something.
   */
  public boolean isChecked() {
    return calls.stream().noneMatch(Call::closes);
  }

  /** The area as described; what the calls leave open is closed by a straight line. */
  public Area rawArea() {
    return area(traverse().raw());
  }

  /** The area after the compass rule. */
  public Area adjustedArea() {
    return area(traverse().balanced());
  }

  private Area area(List<Traverse.Step> steps) {
    List<Point> corners = Traverse.corners(Point.metres(0, 0), steps);
    double signedM2 = PlaneAreas.signedM2(corners);
    for (Call call : calls) {
      if (call.bend().isPresent()) {
        double segmentM2 = call.bend().get().curve().segment().squareMetres();
        // A left turn leaves its segment on the right of the chord, outside a lot on the left.
        signedM2 += call.bend().get().left() ? segmentM2 : -segmentM2;
      }
    }
    return Area.squareMetres(Math.abs(signedM2));
  }

  /** The sides in the order of the calls, closed. */
  public List<Side> sides() {
    List<Traverse.Step> steps = adjusted ? traverse().balanced() : traverse().raw();
    List<Point> corners = Traverse.corners(start, steps);
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < calls.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      sides.add(
          new Side(calls.get(i).name(), from, to, calls.get(i).bend().map(b -> arc(from, to, b))));
    }
    return List.copyOf(sides);
  }

  /** The arc over the chord: its radius is kept, its centre moves with the chord. */
  private static Arc arc(Point from, Point to, Bend bend) {
    double halfM = from.distance(to).metres() / 2;
    double radiusM = bend.curve().radius().metres();
    double upM = Math.sqrt(Math.max(0, radiusM * radiusM - halfM * halfM));
    boolean minor = bend.curve().delta().degrees() <= 180;
    boolean centreLeft = bend.left() == minor;
    Point middle = from.moved(to.x().minus(from.x()).div(2), to.y().minus(from.y()).div(2));
    double ux = to.x().minus(from.x()).metres() / (2 * halfM);
    double uy = to.y().minus(from.y()).metres() / (2 * halfM);
    double side = centreLeft ? upM : -upM;
    Point centre = middle.moved(Length.metres(-uy * side), Length.metres(ux * side));
    return new Arc(from, to, centre, bend.left());
  }

  /** The same deed on a plan whose up direction lies {@code by} to the left of its north. */
  Deed turned(Angle by) {
    List<Call> turned = new ArrayList<>();
    for (Call call : calls) {
      Course chord = new Course(call.chord().azimuth().plus(by), call.chord().distance());
      turned.add(new Call(call.name(), call.place(), chord, call.bend(), call.closes()));
    }
    return new Deed(start, turned, adjusted);
  }
}
