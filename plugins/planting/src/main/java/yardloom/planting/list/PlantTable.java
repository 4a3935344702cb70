package yardloom.planting.list;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** What to plant, how many and where. */
public final class PlantTable implements TableMaker {
  private static final String ID = "planting";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = columns();
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      table.row(
          Cell.text(p.bed().id().name()),
          Cell.text(name(p.title(), p.choice().stands())),
          Cell.text(p.plant().botanical()),
          Cell.of(p.count()),
          Cell.of(p.spacing()),
          Cell.of(p.rowSpacing()),
          Cell.of(p.plant().size().spread().middle()),
          Cell.text(Choices.text(p.plant().light().amount())),
          Cell.text(caution(p.plant())),
          Cell.text(
              p.choice().spacing().isPresent()
                  ? "given in the plan"
                  : p.plant().size().inRow().source().cite()));
    }
    for (Planting.Specimen s : facts.get(PlantPlaces.KEY).specimens()) {
      table.row(
          Cell.text(s.tree().id().name()),
          Cell.text(name(s.title(), s.tree().stands())),
          Cell.text(s.plant().botanical()),
          Cell.number(1),
          Cell.BLANK,
          Cell.BLANK,
          Cell.of(s.crown()),
          Cell.text(Choices.text(s.plant().light().amount())),
          Cell.text(caution(s.plant())),
          Cell.text("given in the plan"));
    }
    return table
        .note("Counts follow the spacing grid, half a spacing from every edge; add spares.")
        .note("Figures marked * are not verified; check them locally.")
        .build();
  }

  private static String name(String title, boolean stands) {
    return title + (stands ? " (existing)" : "");
  }

  private static Table.Builder columns() {
    return Table.titled(ID, "Planting")
        .column(Column.text("bed", "Where"))
        .column(Column.text("plant", "Plant"))
        .column(Column.text("botanical", "Botanical name"))
        .column(Column.of("count", "Count", Measure.COUNT))
        .column(Column.of("spacing", "Spacing", Measure.DEPTH))
        .column(Column.of("rows", "Row spacing", Measure.DEPTH))
        .column(Column.of("spread", "Mature spread", Measure.LENGTH))
        .column(Column.text("light", "Light"))
        .column(Column.text("caution", "Caution"))
        .column(Column.text("source", "Spacing source"));
  }

  private static String caution(Plant plant) {
    boolean recalled = plant.caution().source().standing() == Standing.MEMORY;
    return plant.caution().text() + (recalled ? " *" : "");
  }
}
