package yardloom.work.haul;

import java.util.Optional;
import yardloom.facts.Ways;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.Haul;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Route;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.WaysFrom;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * The way of the barrows from one heap to one place.
 *
 * <p>Loads go to all of a surface, so the way counts to its middle, as hauls of earth are counted
 * from centre to centre. Where paths, hard surfaces and mulched ground lead there, the way goes
 * along them: on a path of that network to halfway along it, otherwise to its edge as in the table
 * of ways to the beds, and on to its middle. Where they do not, it goes to the middle round
 * buildings and beds and through gates, times the spot's detour: the network's way is the one
 * walked, bends and all, and gets no detour on top. Where no gap between beds is wide enough it
 * goes over them, and where nothing is open at all it is the straight line.
 */
public record HaulWay(Line line, Haul.By by, Derived<Length> oneWay) {

  /** Finds the ways from one heap. */
  static final class Finder {
    private final Plan plan;
    private final DropPile pile;
    private final BarrowWay walls;
    private final BarrowWay open;
    private final WaysFrom paths;

    /**
     * @param walls the ways round buildings and fences
     * @param open the ways round beds also
     * @param ways the paths, hard surfaces and mulched ground
     */
    Finder(Plan plan, DropPile pile, BarrowWay walls, BarrowWay open, Ways ways) {
      this.plan = plan;
      this.pile = pile;
      this.walls = walls;
      this.open = open;
      this.paths = ways.from(pile.spot().shape());
    }

    HaulWay to(MulchSurface surface) {
      Optional<Element> element = plan.element(surface.of());
      if (element.orElse(null) instanceof Element.Path path) {
        Optional<Route> along = paths.withBarrowAlong(path.line());
        if (along.isPresent()) {
          return along(along.get());
        }
      }
      boolean isBed = element.orElse(null) instanceof Element.Bed;
      return to(isBed ? element.get().shape() : surface.shape(), surface.shape());
    }

    HaulWay to(Shape ground) {
      return to(ground, ground);
    }

    private HaulWay to(Shape edge, Shape ground) {
      return paths.withBarrow(edge).map(way -> across(way, ground)).orElseGet(() -> round(ground));
    }

    private HaulWay along(Route way) {
      return new HaulWay(
          line(way),
          Haul.By.PATHS,
          Derived.by("way along paths and hard surfaces to halfway along it", WaysFrom.SOURCE)
              .from("way along paths and hard surfaces to halfway along it", way.length())
              .gives(way.length()));
    }

    private HaulWay across(Route edge, Shape ground) {
      Route carry = new Route(walls.between(edge.end(), middle(ground)).points());
      return new HaulWay(
          line(edge.then(carry)),
          Haul.By.PATHS,
          Derived.by(
                  "way along paths and hard surfaces to beside it + carry to its middle",
                  WaysFrom.SOURCE)
              .from("way along paths and hard surfaces to beside it", edge.length())
              .from("carry to its middle", carry.length())
              .gives(edge.length().plus(carry.length())));
    }

    private HaulWay round(Shape ground) {
      Point from = pile.middle();
      Point to = middle(ground);
      Optional<Line> free = open.find(from, to);
      if (free.isPresent()) {
        return off(free.get(), Haul.By.OPEN_GROUND, "way round buildings and beds");
      }
      return walls
          .find(from, to)
          .map(over -> off(over, Haul.By.OVER_BEDS, "way round buildings, over beds"))
          .orElseGet(() -> off(walls.between(from, to), Haul.By.NO_WAY, "straight line"));
    }

    private HaulWay off(Line way, Haul.By by, String what) {
      return new HaulWay(
          way,
          by,
          Derived.by(what + " × detour", BarrowWay.SOURCE)
              .from(what, way.length())
              .from("detour", pile.spot().detour(), pile.spot().place())
              .gives(way.length().times(pile.spot().detour())));
    }

    /** The centre of the ground, or a place well inside where that lies off it. */
    private static Point middle(Shape ground) {
      Point centre = ground.centroid();
      return ground.contains(centre) ? centre : ground.heart();
    }

    /** A way of no length at all is drawn as a hair, since a line has two ends. */
    private static Line line(Route way) {
      Point end = way.end();
      return way.length().metres() > 0
          ? Line.through(way.bends())
          : Line.between(end, end.moved(Length.millimetres(1), Length.ZERO));
    }
  }
}
