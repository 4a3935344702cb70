package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.ground.OpenGround;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.materials.mulch.LengthSetting;
import yardloom.materials.mulch.MulchSettings;

/**
 * Where mulched ground meets lawn that stays: there an edge is cut and an edging stands.
 *
 * <p>Not along other mulched ground, buildings with the strip along their walls, structures,
 * paving, standing paths, fences, or the lot line, each with a millimetre about it; holes about
 * trunks are bare ground, no lawn. Without a lot the yard goes on everywhere.
 *
 * <p>References: plane geometry; no publication is needed.
 */
public final class LawnEdge {
  private static final Length HAIR = Length.millimetres(1);

  /** A spade and a half: what is left in a corner is trimmed in passing (common practice). */
  private static final Length LEAST = Length.millimetres(300);

  private LawnEdge() {}

  /**
   * The edge of all mulched ground together; zero below 30 cm, which is no work, and beside bare
   * ground, where no roots of grass are cut.
   */
  public static Length ofAll(Plan plan, List<MulchSurface> surfaces) {
    if (OpenGround.of(plan) == OpenGround.BARE) {
      return Length.ZERO;
    }
    Shape mulched = Shape.union(surfaces.stream().map(MulchSurface::shape).toList());
    Length edge = edge(plan, mulched, noLawn(plan));
    return edge.compareTo(LEAST) < 0 ? Length.ZERO : edge;
  }

  /** The part of a bed's outline that lies on that edge. */
  public static Length of(Plan plan, Element.Bed bed, List<MulchSurface> surfaces) {
    List<Shape> taken = new ArrayList<>(noLawn(plan));
    surfaces.stream().filter(s -> !s.of().equals(bed.id())).forEach(s -> taken.add(s.shape()));
    return edge(plan, bed.shape(), taken);
  }

  private static Length edge(Plan plan, Shape outline, List<Shape> taken) {
    Shape yard =
        plan.lot()
            .map(lot -> lot.shape().shrunk(HAIR))
            .orElseGet(() -> Shape.union(List.of(outline)).grown(Length.metres(1)));
    Shape none = taken.isEmpty() ? Shape.EMPTY : Shape.union(taken).grown(HAIR);
    return outline.perimeterIn(yard, none);
  }

  private static List<Shape> noLawn(Plan plan) {
    MulchSettings settings = MulchSettings.of(plan);
    Length wall = settings.length(LengthSetting.WALL_GAP).value();
    Length gap = settings.length(LengthSetting.TRUNK_GAP).value();
    List<Shape> shapes = new ArrayList<>();
    for (Element e : plan.elements()) {
      switch (e.id().kind()) {
        case BUILDING -> shapes.add(e.shape().grown(wall));
        case STRUCTURE, PAVING, FENCE -> shapes.add(e.shape());
        case PATH -> shapes.add(e.stands() && e.turn() != PartTurn.LATER ? e.shape() : Shape.EMPTY);
        case BED, MULCHED_GROUND -> shapes.add(e.turn() == PartTurn.DONE ? e.shape() : Shape.EMPTY);
        default -> {
          // The rest is lawn, or mulched.
        }
      }
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      Length radius = tree.trunk().times(0.5).plus(gap);
      if (radius.metres() > 0) {
        shapes.add(Shape.circle(tree.at(), radius));
      }
    }
    return shapes;
  }
}
