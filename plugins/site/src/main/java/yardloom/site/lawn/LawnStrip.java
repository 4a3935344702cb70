package yardloom.site.lawn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Covering;

/**
 * Open ground beside or between beds and ground mulched whole that is too narrow to mow: lawn that
 * nobody wants to keep.
 *
 * <p>Open ground is the lot without all that covers it. Narrow is what no circle of {@link #MOWN}
 * that lies in the open ground reaches. What lies within {@link #SLIVER} of both a fence and the
 * lot line is behind the fence and not counted; pieces of less than a square foot, such as the
 * corners that no circle fits, do not count.
 *
 * @param beside the beds and mulched ground that it touches, beds first
 * @param width where it is widest
 */
public record LawnStrip(List<Element> beside, Shape ground, Length width) {
  /** The strips of the plan, for the finding and the table. */
  static final FactKey<LawnStrip> FACT =
      FactKey.many("site.lawn-strips", LawnStrip.class).called("strips of lawn");

  /** Nothing narrower is mown (common practice, no source). */
  public static final Length MOWN = Length.inches(30);

  /** From here on it is wide enough to walk on. */
  static final Length WALKED = Length.inches(18);

  /** Up to here it is a gap in the drawing rather than ground. */
  static final Length SLIVER = Length.inches(6);

  private static final Area LEAST = Area.squareFeet(1);
  private static final Length TOUCH = Length.millimetres(10);

  public LawnStrip {
    beside = List.copyOf(beside);
  }

  /** About as long as an even strip of its area and width. */
  public Length length() {
    return Length.metres(ground.area().squareMetres() / width.metres());
  }

  /** What lies beside it, as findings and tables name them. */
  String names() {
    return beside.stream().map(b -> b.id().toString()).collect(Collectors.joining(", "));
  }

  /** What to make of it. */
  public String advice() {
    if (width.isShortOf(SLIVER)) {
      return join();
    }
    return width.isShortOf(WALKED)
        ? join() + ", or sheet-mulch it"
        : "make it a path, or sheet-mulch it";
  }

  private String join() {
    return beside.get(0) instanceof Element.Bed
        ? "join it to the bed"
        : "join it to the mulched ground";
  }

  /** The strips of a plan with a lot, from left to right. */
  public static List<LawnStrip> of(Plan plan) {
    List<Element> made = new ArrayList<>(plan.all(Element.Bed.class));
    made.addAll(plan.all(Element.MulchedGround.class));
    if (plan.lot().isEmpty() || made.isEmpty()) {
      return List.of();
    }
    Shape covered = Shape.union(Covering.elements(plan).stream().map(Element::shape).toList());
    Shape lot = plan.lot().get().shape();
    Shape open = lot.minus(covered).minus(behindFences(plan, lot));
    Length half = MOWN.div(2);
    Shape narrow = open.minus(open.shrunk(half).grown(half));
    List<LawnStrip> strips = new ArrayList<>();
    for (Shape part : narrow.parts()) {
      List<Element> beside =
          made.stream().filter(b -> b.shape().distance(part).compareTo(TOUCH) <= 0).toList();
      if (!beside.isEmpty() && part.area().compareTo(LEAST) >= 0) {
        strips.add(new LawnStrip(beside, part, widest(part)));
      }
    }
    strips.sort(Comparator.comparing((LawnStrip s) -> s.ground().centroid()));
    return List.copyOf(strips);
  }

  /** Fences stand a little inside the lot line; what is left behind them is no lawn. */
  private static Shape behindFences(Plan plan, Shape lot) {
    Shape fences =
        Shape.union(
            plan.all(Element.Fence.class).stream().map(f -> f.shape().grown(SLIVER)).toList());
    return fences.minus(lot.shrunk(SLIVER));
  }

  private static Length widest(Shape part) {
    return part.inside().times(2);
  }
}
