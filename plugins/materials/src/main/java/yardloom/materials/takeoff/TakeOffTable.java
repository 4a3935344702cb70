package yardloom.materials.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.MulchTotals;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Volume;

/** Exact quantities by surface; every cell can be recomputed from its derivation. */
public final class TakeOffTable implements TableMaker {
  @Override
  public String id() {
    return "materials-take-off";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SURFACES, YardFacts.MULCH_TOTALS, Pockets.FACT);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    Table.Builder table =
        Table.titled(id(), "Materials take-off")
            .column(Column.text("surface", "Surface"))
            .column(Column.text("kind", "Kind"))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("cardboard", "Cardboard sheets", Measure.COUNT))
            .column(Column.of("compost-depth", "Compost depth", Measure.DEPTH))
            .column(Column.of("compost", "Compost", Measure.VOLUME))
            .column(Column.of("chips-depth", "Chips depth", Measure.DEPTH))
            .column(Column.of("chips", "Chips", Measure.VOLUME));
    for (MulchSurface s : surfaces) {
      table.row(
          Cell.text(s.of().title()),
          Cell.text(s.kind().title()),
          Cell.of(s.area()),
          s.sheets().map(Cell::of).orElse(Cell.BLANK),
          depth(s, Material.COMPOST),
          volume(s, Material.COMPOST),
          depth(s, Material.WOOD_CHIPS),
          volume(s, Material.WOOD_CHIPS));
    }
    if (surfaces.isEmpty()) {
      return table.build();
    }
    MulchTotals totals = facts.get(YardFacts.MULCH_TOTALS);
    Derived<Volume> compost = totals.compost();
    Optional<Pockets> pockets = facts.find(Pockets.FACT);
    if (pockets.isPresent()) {
      addPockets(table, pockets.get());
      compost =
          Derived.by("layers + planting pockets", compost.source())
              .from("layers", compost)
              .from("planting pockets", pockets.get().compost())
              .gives(compost.value().plus(pockets.get().compost().value()));
    }
    table.total(
        Cell.text("all surfaces, exact"),
        Cell.BLANK,
        Cell.of(totals.ground()),
        Cell.of(totals.sheets()),
        Cell.BLANK,
        Cell.of(compost),
        Cell.BLANK,
        Cell.of(totals.chips()));
    table.note(
        "Depths as laid. Ground claimed twice is counted once: hard surfaces, wall strips and"
            + " trunk gaps first, then paths, tree rings, beds, ground mulched whole.");
    totals.lifts().stream()
        .filter(l -> l.material().isOwn())
        .forEach(
            l ->
                table.note(
                    "Besides "
                        + l.material().title()
                        + ", exact: "
                        + Say.volume(l.volume().value(), plan.info().units())
                        + "; its depth stands in the table of layers."));
    return table.build();
  }

  private static void addPockets(Table.Builder table, Pockets pockets) {
    table.row(
        Cell.text("planting pockets, " + pockets.plants().value() + " plants"),
        Cell.text("perennial beds"),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.of(pockets.compost()),
        Cell.BLANK,
        Cell.BLANK);
  }

  private static Cell depth(MulchSurface s, Material material) {
    return s.depth(material).map(Cell::of).orElse(Cell.BLANK);
  }

  private static Cell volume(MulchSurface s, Material material) {
    return s.volume(material).map(Cell::of).orElse(Cell.BLANK);
  }
}
