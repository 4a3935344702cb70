package yardloom.materials.pile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.Haul;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.UnitSystem;

/** Drop zones and the piles on them. */
public final class PilePainter implements Painter {
  private static final Style SPOT = Style.line("drop-zone", "#5b5546", 0.35).dashed("2 1");
  private static final Style PILE =
      Style.filled("delivered-pile", "").hatched(Hatch.DOTS).outlined("#5b5546", 0.25);

  private static final Style TRUCK = Style.line("truck-way", "#5b5546", 0.18).dashed("4 1.5");
  private static final Style BARROW = Style.line("barrow-way", "#4a3f2a", 0.25).dashed("1 1");

  @Override
  public Layer layer() {
    return new Layer("materials.piles", "Delivered piles", Layer.Band.WORKS);
  }

  /** The materials sheet shows it; the site plan would be crowded. */
  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.PILES, YardFacts.HAULS);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.WAYS);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    UnitSystem units = plan.info().units();
    Set<Line> drawn = new HashSet<>();
    for (Haul haul : facts.all(YardFacts.HAULS)) {
      // Two lifts go the same way.
      if (drawn.add(haul.way())) {
        marks.add(new Mark.Stroke(haul.way(), BARROW, "barrow way to " + haul.to()));
      }
    }
    for (DropPile pile : facts.all(YardFacts.PILES)) {
      String about = "heap on " + pile.spot().name();
      pile.spot()
          .approach()
          .ifPresent(
              way ->
                  marks.add(new Mark.Region(way, TRUCK, "truck's way to " + pile.spot().name())));
      marks.add(new Mark.Region(pile.spot().shape(), SPOT, "drop zone " + pile.spot().name()));
      marks.add(new Mark.Region(pile.ground(), PILE, about));
      String text =
          "drop "
              + Say.volume(pile.load().value(), units)
              + " here\n"
              + Say.distance(pile.height().value(), units)
              + " high";
      marks.add(
          new Mark.Label(pile.middle(), text, 2.2, false, 1, Mark.Anchor.CENTRE)
              .on(pile.spot().shape()));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    if (facts.all(YardFacts.PILES).isEmpty()) {
      return List.of();
    }
    List<LegendEntry> legend = new ArrayList<>();
    legend.add(LegendEntry.area("pile of one load", PILE));
    legend.add(LegendEntry.line("drop zone", SPOT));
    legend.add(LegendEntry.line("barrow way", BARROW));
    if (facts.all(YardFacts.PILES).stream().anyMatch(p -> p.spot().way().isPresent())) {
      legend.add(LegendEntry.line("truck's way", TRUCK));
    }
    return legend;
  }
}
