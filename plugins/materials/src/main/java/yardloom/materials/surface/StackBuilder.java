package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.RectangleSides;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.GroundKeys;
import yardloom.materials.mulch.LengthSetting;
import yardloom.materials.mulch.MulchSettings;
import yardloom.materials.mulch.OwnLayer;
import yardloom.materials.mulch.Weed;
import yardloom.materials.surface.formula.Cardboard;
import yardloom.materials.surface.formula.TaperedLayer;

/**
 * The layers over one piece of ground, from the ground up: cardboard, compost, the plan's own
 * materials, a first lift of chips, dripline, chips; each with the phase in which it is laid.
 *
 * <p>Cardboard lies under beds and paths, not over the roots of trees. Layers of no depth are left
 * out. {@link ChipLifts} says in which lifts the chips come. Only the topmost layer, the chips,
 * tapers at the edge. Where tough weeds grow, cardboard lies in more layers and chips deeper, by
 * the weed that asks for most; not over the roots of trees.
 *
 * <p>References: {@link TaperedLayer}, {@link Cardboard}.
 */
final class StackBuilder {
  /** Rows of sheets the long way or the short way round, whichever needs fewer. */
  private static final String BY_GRID =
      "sheets = min(max(1, up((L − o) / (l − o))) × max(1, up((W − o) / (w − o))),"
          + " max(1, up((L − o) / (w − o))) × max(1, up((W − o) / (l − o))))";

  private static final String BY_AREA = "sheets = area / ((l − o) × (w − o)), rounded up";

  private static final Source PRISM = Source.commonPractice("a layer of even depth");

  private final MulchSettings settings;
  private final List<Weed> onSite;
  private final Map<ElementId, Derived<Length>> driplines;
  private final Set<ElementId> later;

  /**
   * @param onSite tough weeds of the whole site
   * @param driplines dripline by bed
   * @param later beds and trees of which kinds are planted in another season
   */
  StackBuilder(
      MulchSettings settings,
      List<Weed> onSite,
      Map<ElementId, Derived<Length>> driplines,
      Set<ElementId> later) {
    this.settings = settings;
    this.onSite = List.copyOf(onSite);
    this.driplines = Map.copyOf(driplines);
    this.later = Set.copyOf(later);
  }

  MulchSurface surface(
      Element of,
      SurfaceKind kind,
      Shape shape,
      Derived<Area> area,
      Derived<Length> mulch,
      Derived<Length> compost) {
    Optional<Weed> weed = toughest(of, kind);
    Optional<Derived<Integer>> sheets =
        cardboard(of, kind, shape, weed.map(Weed::layers).orElse(1));
    List<LaidLayer> stack = new ArrayList<>();
    sheets.ifPresent(
        n -> stack.add(new LaidLayer(Material.CARDBOARD, WorkPhase.SHEET, Optional.empty(), n)));
    boolean composted = compost != null && compost.value().metres() > 0;
    if (composted) {
      stack.add(LaidLayer.bulk(Material.COMPOST, WorkPhase.SHEET, compost, even(area, compost)));
    }
    List<LaidLayer> own = kind == SurfaceKind.TREE_RING ? List.of() : own(of, area);
    stack.addAll(own);
    boolean covered = composted || !own.isEmpty();
    WorkPhase last = later.contains(of.id()) ? WorkPhase.LATER : WorkPhase.FINISH;
    List<LaidLayer> chips = new ArrayList<>();
    if (mulch.value().metres() > 0) {
      Derived<Length> depth = weed.map(w -> deeper(mulch, w)).orElse(mulch);
      chips.addAll(
          ChipLifts.of(kind, sheets.isPresent(), covered, last, depth, chips(shape, area, depth)));
    }
    chips.stream().filter(c -> c.phase() != last).forEach(stack::add);
    if (driplines.containsKey(of.id())) {
      Derived<Length> length = driplines.get(of.id());
      stack.add(new LaidLayer(Material.DRIPLINE, WorkPhase.DRIP, Optional.empty(), length));
    }
    chips.stream().filter(c -> c.phase() == last).forEach(stack::add);
    return new MulchSurface(of.id(), of.place(), kind, shape, area, stack);
  }

  /** Layers of the plan's own materials, in the order in which it names them. */
  private static List<LaidLayer> own(Element of, Derived<Area> area) {
    List<LaidLayer> own = new ArrayList<>();
    for (Attributes.Entry<OwnLayer> said : of.attributes().all(OwnLayer.KEY)) {
      Derived<Length> depth = Derived.given(said.value().depth(), "depth", said.place());
      own.add(
          LaidLayer.bulk(
              Material.own(said.value().material()), WorkPhase.SHEET, depth, even(area, depth)));
    }
    return own;
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
    return Derived.by("volume = depth × (A0 + 4 × A1 + A2) / 6", TaperedLayer.SOURCE)
        .from("A0, area", area)
        .from("A1, area inside half the taper", shape.shrunk(taper.value().times(0.5)).area())
        .from("A2, area inside the taper", shape.shrunk(taper.value()).area())
        .from("depth", depth)
        .from("taper", taper)
        .gives(TaperedLayer.volume(shape, depth.value(), taper.value()));
  }

  private Optional<Derived<Integer>> cardboard(
      Element of, SurfaceKind kind, Shape shape, int layers) {
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
    List<Derived<Integer>> parts = new ArrayList<>();
    shape.parts().forEach(part -> parts.add(sheets(part, length, width, overlap)));
    if (parts.size() == 1 && layers == 1) {
      return Optional.of(parts.get(0));
    }
    Derived.Builder why =
        Derived.by("sum over parts of sheets × layers", Cardboard.SOURCE).from("layers", layers);
    int sum = 0;
    for (int i = 0; i < parts.size(); i++) {
      why.from("sheets of part " + (i + 1), parts.get(i));
      sum += parts.get(i).value();
    }
    return Optional.of(why.gives(sum * layers));
  }

  private static Derived<Integer> sheets(
      Shape part, Derived<Length> length, Derived<Length> width, Derived<Length> overlap) {
    Optional<RectangleSides> grid = RectangleSides.of(part);
    Derived.Builder why =
        Derived.by(grid.isPresent() ? BY_GRID : BY_AREA, Cardboard.SOURCE)
            .from("l, sheet length", length)
            .from("w, sheet width", width)
            .from("o, overlap", overlap);
    if (grid.isEmpty()) {
      return why.from("area", part.area())
          .gives(Cardboard.byArea(part.area(), length.value(), width.value(), overlap.value()));
    }
    RectangleSides sides = grid.get();
    return why.from("L", sides.length())
        .from("W", sides.width())
        .gives(
            Cardboard.byGrid(
                sides.length(), sides.width(), length.value(), width.value(), overlap.value()));
  }
}
