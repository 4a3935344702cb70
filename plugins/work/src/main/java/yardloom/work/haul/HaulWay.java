package yardloom.work.haul;

import java.util.Optional;
import yardloom.facts.Ways;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.Haul;
import yardloom.facts.mulch.Surface;
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
 * The way of the barrows from one heap to one surface.
 *
 * <p>Loads go to all of a surface, so the way counts to its middle, as hauls of earth are counted
 * from centre to centre. Where paths and hard surfaces lead there, the way goes along them: on a
 * path of that network to halfway along it, otherwise to its edge as in the table of ways to the
 * beds, and on to its middle. Where they do not, it goes to the middle round buildings, times the
 * spot's detour: the network's way is the one walked, bends and all, and gets no detour on top.
 */
public record HaulWay(Line line, Haul.By by, Derived<Length> oneWay) {

  /** Finds the ways from one heap. */
  static final class Finder {
    private final Plan plan;
    private final DropPile pile;
    private final BarrowWay open;
    private final WaysFrom paths;

    /**
     * @param open the ways round buildings
     * @param ways the paths and hard surfaces
     */
    Finder(Plan plan, DropPile pile, BarrowWay open, Ways ways) {
      this.plan = plan;
      this.pile = pile;
      this.open = open;
      this.paths = ways.from(pile.spot().shape());
    }

    HaulWay to(Surface surface) {
      Optional<Element> element = plan.element(surface.of());
      if (element.orElse(null) instanceof Element.Path path) {
        Optional<Route> along = paths.withBarrowAlong(path.line());
        if (along.isPresent()) {
          return along(along.get());
        }
      }
      return paths
          .withBarrow(
              element.orElse(null) instanceof Element.Bed bed ? bed.shape() : surface.shape())
          .map(edge -> across(edge, surface))
          .orElseGet(() -> round(surface));
    }

    private HaulWay along(Route way) {
      return new HaulWay(
          line(way),
          Haul.By.PATHS,
          Derived.by("way along paths and hard surfaces to halfway along it", WaysFrom.SOURCE)
              .from("way along paths and hard surfaces to halfway along it", way.length())
              .gives(way.length()));
    }

    private HaulWay across(Route edge, Surface surface) {
      Route carry = new Route(open.between(edge.end(), middle(surface.shape())).points());
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

    private HaulWay round(Surface surface) {
      Line way = open.between(pile.middle(), middle(surface.shape()));
      return new HaulWay(
          way,
          Haul.By.OPEN_GROUND,
          Derived.by("way round buildings, where no path leads × detour", BarrowWay.SOURCE)
              .from("way round buildings, where no path leads", way.length())
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
