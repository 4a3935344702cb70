package yardloom.planting.canopy;

import java.util.Set;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.SizeRange;
import yardloom.planting.placing.PlantPlaces;

/** How high and wide each kind is in the first and the fifth year and when it is grown. */
public final class GrowthTable implements TableMaker {
  private static final Source RULE =
      Source.commonPractice("share of full size by year: see the note of the table of growth");

  @Override
  public String id() {
    return "plant-growth";
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
        Table.titled(id(), "Growth of the plants")
            .column(Column.text("plant", "Plant"))
            .column(Column.of("height-1", "Height, year 1", Measure.LENGTH))
            .column(Column.of("height-5", "Height, year 5", Measure.LENGTH))
            .column(Column.of("height", "Height, grown", Measure.LENGTH))
            .column(Column.of("spread-1", "Spread, year 1", Measure.LENGTH))
            .column(Column.of("spread-5", "Spread, year 5", Measure.LENGTH))
            .column(Column.of("spread", "Spread, grown", Measure.LENGTH))
            .column(Column.text("source", "Height and spread by"));
    var kinds = facts.get(PlantPlaces.KEY).kinds();
    for (Plant p : kinds.values()) {
      table.row(
          Cell.text(p.name()),
          size(p, p.size().height(), Stage.YEAR_1),
          size(p, p.size().height(), Stage.YEAR_5),
          Cell.of(p.size().height().middle()),
          size(p, p.size().spread(), Stage.YEAR_1),
          size(p, p.size().spread(), Stage.YEAR_5),
          Cell.of(p.size().spread().middle()),
          Cell.text(p.size().height().source().cite() + "; " + p.size().spread().source().cite()));
    }
    if (!kinds.isEmpty()) {
      table.note(
          "Woody plants have 0.3 of their size in the first year and 0.8 in the fifth, herbs that"
              + " return 0.5 and all, annuals all of it (common practice, no source). A kept or"
              + " trained tree is as wide as the plan says.");
    }
    return table.build();
  }

  private static Cell size(Plant plant, SizeRange grown, Stage stage) {
    double share = GrownShare.share(plant, stage);
    Derived<Length> size =
        Derived.by("share × grown", RULE)
            .from("share", share)
            .from("grown", grown.middle(), SourceRef.NONE)
            .gives(grown.middle().times(share));
    return Cell.of(size);
  }
}
