package yardloom.program.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Old and new in one drawing: what stays is thin and grey, what was is dashed and lies above, what
 * is new has a full line and a hatch, so that they stay apart without colour. Numbers are those of
 * the change order.
 */
final class ChangeDrawing {
  static final Layer STAYS = new Layer("compare.stays", "Stays", Layer.Band.GROUND);
  static final Layer OLD = new Layer("compare.old", "Old", Layer.Band.WATER);
  static final Layer NEW = new Layer("compare.new", "New", Layer.Band.PLANTS);
  static final Layer NOTES = new Layer("compare.notes", "Numbers", Layer.Band.NOTES);

  private static final Style STAYS_STYLE = Style.filled("stays", "").outlined("#8a928d", 0.18);
  private static final Style OLD_STYLE =
      Style.filled("old", "").outlined(Palette.MUTED, 0.35).dashed("2 1.5");
  private static final Style NEW_STYLE =
      Style.filled("new", "#dfe9d2").hatched(Style.Hatch.DIAGONAL).outlined(Palette.INK, 0.7);
  private static final Style WAY_STYLE = Style.line("way", Palette.INK, 0.35);
  private static final Style POINT_STYLE =
      Style.filled("point", Palette.PAPER).outlined(Palette.INK, 0.35);
  private static final Style LOT_OLD = Style.line("lot-old", Palette.MUTED, 0.35).dashed("4 2");

  private final Comparison comparison;
  private final SortedMap<Layer, List<Mark>> layers = new TreeMap<>();

  ChangeDrawing(Comparison comparison) {
    this.comparison = comparison;
    lots();
    stays();
    int number = 1;
    for (ThingChange change : comparison.things()) {
      draw(change, number++);
    }
  }

  SortedMap<Layer, List<Mark>> layers() {
    return layers;
  }

  static List<LegendEntry> legend() {
    return List.of(
        LegendEntry.area("new, or where it is now", NEW_STYLE),
        LegendEntry.area("old, or where it was", OLD_STYLE),
        LegendEntry.area("stays as it is", STAYS_STYLE),
        LegendEntry.line("(n) number in the change order", WAY_STYLE));
  }

  /** The ground that both plans take. */
  Optional<Shape> extent() {
    List<Shape> lots = new ArrayList<>();
    comparison.old().lot().ifPresent(lots::add);
    comparison.now().lot().ifPresent(lots::add);
    return lots.isEmpty() ? Optional.empty() : Optional.of(Shape.union(lots));
  }

  private void add(Layer layer, Mark mark) {
    layers.computeIfAbsent(layer, l -> new ArrayList<>()).add(mark);
  }

  private void lots() {
    Optional<Shape> was = comparison.old().lot();
    Optional<Shape> is = comparison.now().lot();
    is.ifPresent(lot -> add(STAYS, new Mark.Region(lot, Palette.LOT, "lot")));
    is.ifPresent(lot -> add(NOTES, new Mark.Stroke(lot.outline(), Palette.LOT_LINE, "lot line")));
    was.filter(lot -> !is.equals(was))
        .ifPresent(lot -> add(OLD, new Mark.Stroke(lot.outline(), LOT_OLD, "old lot line")));
  }

  private void stays() {
    Set<String> changed = new HashSet<>();
    comparison.things().forEach(c -> changed.add(c.thing().id()));
    for (Thing thing : comparison.now().things()) {
      if (!changed.contains(thing.id())) {
        draw(STAYS, thing, STAYS_STYLE);
        if (!thing.shape().isEmpty()) {
          Point heart = thing.shape().heart();
          add(
              NOTES,
              new Mark.Label(heart, thing.name(), 2, false, 5, Mark.Anchor.CENTRE)
                  .on(thing.shape()));
        }
      }
    }
  }

  private void draw(Layer layer, Thing thing, Style style) {
    if (!thing.shape().isEmpty()) {
      add(layer, new Mark.Region(thing.shape(), style, thing.id()));
    }
    thing
        .at()
        .ifPresent(
            at ->
                add(
                    layer,
                    new Mark.Symbol(
                        at,
                        Mark.SymbolForm.TAP,
                        Length.metres(1),
                        Angle.ZERO,
                        POINT_STYLE,
                        thing.id())));
  }

  private void draw(ThingChange change, int number) {
    if (change.how() == ThingChange.How.RENAMED) {
      draw(STAYS, change.thing(), STAYS_STYLE);
    } else {
      change.old().ifPresent(t -> draw(OLD, t, OLD_STYLE));
      change.now().ifPresent(t -> draw(NEW, t, NEW_STYLE));
    }
    Thing thing = change.thing();
    if (change.isMoved() && change.how() == ThingChange.How.MOVED) {
      Point from = change.old().orElseThrow().middle().orElseThrow();
      Point to = thing.middle().orElseThrow();
      add(NOTES, new Mark.Stroke(from.to(to), WAY_STYLE, thing.id() + " moved"));
      add(
          NOTES,
          new Mark.Symbol(from, Mark.SymbolForm.DOT, Length.metres(1), Angle.ZERO, WAY_STYLE, ""));
    }
    String text = "(" + number + ") " + thing.name() + ", " + ThingWords.how(change);
    thing
        .middle()
        .ifPresent(
            at -> {
              Mark.Label label = new Mark.Label(at, text, 2.5, true, 1, Mark.Anchor.NEAR);
              add(NOTES, thing.shape().isEmpty() ? label : label.on(thing.shape()));
            });
  }
}
