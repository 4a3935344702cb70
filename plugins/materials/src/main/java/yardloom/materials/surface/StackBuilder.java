package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.facts.mulch.Course;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.Surface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.GroundKeys;
import yardloom.materials.mulch.LengthSetting;
import yardloom.materials.mulch.MulchSettings;
import yardloom.materials.mulch.Weed;
import yardloom.materials.surface.formula.Cardboard;
import yardloom.materials.surface.formula.RectangleSides;
import yardloom.materials.surface.formula.TaperedLayer;

/**
 * The layers over one piece of ground: cardboard, compost, chips, from the ground up.
 *
 * <p>Cardboard lies under beds and paths, not over the roots of trees. Layers of no depth are left
 * out. Only the topmost layer, the chips, tapers at the edge. Where tough weeds grow, cardboard
 * lies in more layers and chips deeper, by the weed that asks for most; not over the roots of
 * trees.
 *
 * <p>References: {@link TaperedLayer}, {@link Cardboard}.
 */
final class StackBuilder {
  private static final Source PRISM = Source.commonPractice("a layer of even depth");

  private final MulchSettings settings;
  private final List<Weed> onSite;

  /**
   * @param onSite tough weeds of the whole site
   */
  StackBuilder(MulchSettings settings, List<Weed> onSite) {
    this.settings = settings;
    this.onSite = List.copyOf(onSite);
  }

  Surface surface(
      Element of,
      SurfaceKind kind,
      Shape shape,
      Derived<Area> area,
      Derived<Length> mulch,
      Derived<Length> compost) {
    List<Course> courses = new ArrayList<>();
    if (compost != null && compost.value().metres() > 0) {
      courses.add(new Course(Material.COMPOST, compost, even(area, compost)));
    }
    Optional<Weed> weed = toughest(of, kind);
    if (mulch.value().metres() > 0) {
      Derived<Length> depth = weed.map(w -> deeper(mulch, w)).orElse(mulch);
      courses.add(new Course(Material.WOOD_CHIPS, depth, chips(shape, area, depth)));
    }
    return new Surface(
        of.id(),
        of.place(),
        kind,
        shape,
        area,
        cardboard(of, kind, shape, area, weed.map(Weed::layers).orElse(1)),
        courses);
  }

  /** The weed that asks for most; over roots of trees nothing is added. */
  private Optional<Weed> toughest(Element of, SurfaceKind kind) {
    if (kind == SurfaceKind.TREE_RING) {
      return Optional.empty();
    }
    List<Weed> weeds = new ArrayList<>(onSite);
    of.attributes().all(Weed.KEY).forEach(e -> weeds.add(e.value()));
    return weeds.stream().max(Comparator.comparing(Weed::extraChips).thenComparing(Weed::layers));
  }

  private static Derived<Length> deeper(Derived<Length> mulch, Weed weed) {
    return Derived.by("depth + more over tough weeds", weed.extraSource())
        .from("depth", mulch)
        .from("more over " + weed.name(), weed.extraChips())
        .gives(mulch.value().plus(weed.extraChips()));
  }

  private static Derived<Volume> even(Derived<Area> area, Derived<Length> depth) {
    return Derived.by("volume = area × depth", PRISM)
        .from("area", area)
        .from("depth", depth)
        .gives(area.value().deep(depth.value()));
  }

  private Derived<Volume> chips(Shape shape, Derived<Area> area, Derived<Length> depth) {
    Derived<Length> taper = settings.length(LengthSetting.EDGE_TAPER);
    if (taper.value().metres() <= 0) {
      return even(area, depth);
    }
    return Derived.by("volume = depth × (A0 + 4 A1 + A2) / 6", TaperedLayer.SOURCE)
        .from("A0, area", area)
        .from("A1, area inside half the taper", shape.shrunk(taper.value().times(0.5)).area())
        .from("A2, area inside the taper", shape.shrunk(taper.value()).area())
        .from("depth", depth)
        .from("taper", taper)
        .gives(TaperedLayer.volume(shape, depth.value(), taper.value()));
  }

  private Optional<Derived<Integer>> cardboard(
      Element of, SurfaceKind kind, Shape shape, Derived<Area> area, int layers) {
    boolean none =
        settings.chipsOnly()
            || kind == SurfaceKind.TREE_RING
            || of.attributes().get(GroundKeys.NO_CARDBOARD).orElse(false);
    if (none) {
      return Optional.empty();
    }
    Derived<Length> overlap = settings.length(LengthSetting.CARDBOARD_OVERLAP);
    Derived<Length> length = settings.length(LengthSetting.SHEET_LENGTH);
    Derived<Length> width = settings.length(LengthSetting.SHEET_WIDTH);
    int sheets = 0;
    boolean grid = true;
    for (Shape part : shape.parts()) {
      Optional<RectangleSides> sides = RectangleSides.of(part);
      grid &= sides.isPresent();
      sheets +=
          sides
              .map(
                  s ->
                      Cardboard.byGrid(
                          s.length(), s.width(), length.value(), width.value(), overlap.value()))
              .orElseGet(
                  () ->
                      Cardboard.byArea(
                          part.area(), length.value(), width.value(), overlap.value()));
    }
    String formula =
        grid
            ? "sheets = ceil((L − o)/(l − o)) × ceil((W − o)/(w − o)), the better way round"
            : "sheets = area / ((l − o)(w − o)), rounded up for each part";
    Derived.Builder why =
        Derived.by(layers > 1 ? formula + ", × layers" : formula, Cardboard.SOURCE)
            .from("area", area)
            .from("l, sheet length", length)
            .from("w, sheet width", width)
            .from("o, overlap", overlap);
    if (grid) {
      for (Shape part : shape.parts()) {
        RectangleSides s = RectangleSides.of(part).orElseThrow();
        why.from("L", s.length()).from("W", s.width());
      }
    }
    if (layers > 1) {
      why.from("layers over tough weeds", layers);
    }
    return Optional.of(why.gives(sheets * layers));
  }
}
