package yardloom.planting.stand;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;

/** The figures by which each kind is watered, so that they can be checked against their tables. */
public final class PlantWaterTable implements TableMaker {
  @Override
  public String id() {
    return "plant-water";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.INSTALLER);
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
    Table.Builder table =
        Table.titled(id(), "Crop water use")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("crop", "As the crop"))
            .column(Column.of("kc-initial", "Kc at first", Measure.RATIO))
            .column(Column.of("kc-middle", "Kc full grown", Measure.RATIO))
            .column(Column.of("kc-end", "Kc at the end", Measure.RATIO))
            .column(Column.of("crop-height", "Crop height", Measure.LENGTH))
            .column(Column.of("roots-from", "Roots from", Measure.LENGTH))
            .column(Column.of("roots-to", "Roots to", Measure.LENGTH))
            .column(Column.of("easy-share", "Easily drawn", Measure.PERCENT));
    PlantPlaces layout = facts.get(PlantPlaces.KEY);
    Set<String> inGrass = new TreeSet<>();
    Set<String> elsewhere = new TreeSet<>();
    layout.plantings().forEach(p -> elsewhere.add(p.plant().name()));
    layout.specimens().forEach(s -> (s.inGrass() ? inGrass : elsewhere).add(s.plant().name()));
    for (Plant plant : layout.kinds().values()) {
      if (elsewhere.contains(plant.name())) {
        table.row(row(plant, plant.name(), plant.draw().crop().kc()));
      }
      if (inGrass.contains(plant.name())) {
        Crop.Coefficients kc = plant.draw().crop().inGrass().orElseThrow();
        table.row(row(plant, plant.name() + " in grass", kc));
      }
    }
    if (!layout.kinds().isEmpty()) {
      table.note(
          "FAO-56, Tables 12 and 22: water use is Kc × that of short grass, for crops up to the"
              + " given height on bare or mulched ground unless said; plants in a garden may grow taller."
              + " * stands in for a plant without a row of its own.");
    }
    return table.build();
  }

  private static Cell[] row(Plant plant, String name, Crop.Coefficients kc) {
    Crop crop = plant.draw().crop();
    Optional<Crop.Roots> roots = crop.roots();
    return new Cell[] {
      Cell.text(name),
      Cell.text(crop.name() + (plant.draw().standsIn() ? " *" : "")),
      Cell.number(kc.initial()),
      Cell.number(kc.middle()),
      Cell.number(kc.end()),
      crop.height().map(Cell::of).orElse(Cell.BLANK),
      roots.map(r -> Cell.of(r.low())).orElse(Cell.BLANK),
      roots.map(r -> Cell.of(r.high())).orElse(Cell.BLANK),
      roots.<Cell>map(r -> Cell.number(r.easyShare())).orElse(Cell.BLANK)
    };
  }
}
