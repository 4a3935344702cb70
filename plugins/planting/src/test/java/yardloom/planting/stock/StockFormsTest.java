package yardloom.planting.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Spread;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantingPlugin;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.PlantingWords;

class StockFormsTest {
  static java.util.List<DataRow> paces() {
    return DataTable.shipped(StockFormsTest.class, "planting-pace.csv").rows();
  }

  /** Minutes of one person for one are people × minutes / pieces, of what people say they did. */
  @ParameterizedTest
  @MethodSource("paces")
  void minutes_areThoseThatPractitionersTell(DataRow row) {
    double minutes = row.number("people") * row.number("minutes") / row.number("pieces");
    Spread shipped = StockForms.shipped(row.text("form")).minutes().orElseThrow();
    double end =
        switch (row.text("end")) {
          case "low" -> shipped.low();
          case "high" -> shipped.high();
          default -> shipped.likely();
        };
    assertEquals(minutes, end, 0.03, row.text("form"));
  }

  /** Bigger stock of one kind takes longer. */
  @Test
  void minutes_growWithSize() {
    for (String sizes :
        new String[] {
          "pot 4 in;pot 2 gal;pot 3 gal;pot 5 gal;pot 7 gal;pot 10 gal;pot 15 gal",
          "bare root 18 in;bare root 2 ft",
          "bare root 4 ft;bare root 6 ft",
          "balled 1 in caliper;balled 2 in caliper"
        }) {
      double last = 0;
      for (String size : sizes.split(";")) {
        double likely = StockForms.shipped(size).minutes().orElseThrow().likely();
        assertTrue(likely > last, size);
        last = likely;
      }
    }
  }

  /** Every kind of the catalogue has a form that it is sold in, bare or not. */
  @Test
  void everyKind_hasAUsualForm() {
    StockForms forms = StockForms.of(new Draft(info()).freeze(), java.util.Optional.empty());
    PlantCatalogue.shipped()
        .all()
        .forEach(
            p -> {
              assertEquals(
                  p.growth().start().isInDrills(),
                  forms.usual(p, true, true).isInDrills(),
                  p.name());
              assertFalse(
                  forms.usual(p, false, false).name(UnitSystem.US).startsWith("bare"), p.name());
            });
  }

  private static PlanInfo info() {
    return new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD");
  }

  /** Whole trays hold all plants and no tray is idle; hours follow the plants, not the trays. */
  @Property(tries = 25)
  void trays_holdAllPlants(
      @ForAll @IntRange(min = 1, max = 12) int wide,
      @ForAll @IntRange(min = 1, max = 60) int holds) {
    Draft draft = new Draft(info());
    StockWords.stockForms(
        new PlanScope(draft, SourceRef.NONE),
        "form,like,holds,minutes\ntray,plug," + holds + ",1.5",
        null);
    Shape shape = Shape.rectangle(Point.metres(0, 0), Length.feet(wide), Length.feet(7));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, "bed"),
            SourceRef.NONE,
            c -> new Element.Bed(c, shape, Element.BedUse.ANNUAL));
    PlantingWords.plant(
        new BedScope(draft, element, SourceRef.NONE),
        "kale",
        Length.feet(1),
        null,
        null,
        null,
        null,
        "tray");
    Outcome outcome =
        new Study(PluginLoader.of(java.util.List.of(new PlantingPlugin()))).of(draft.freeze());
    int plants = wide * 7;
    BillLine line = outcome.results().all(YardFacts.BILL).get(0);
    int trays = (Integer) line.order().value();
    assertEquals(plants, line.exact().value());
    assertTrue(trays * holds >= plants && (trays - 1) * holds < plants, trays + " trays");
    Job set =
        outcome.results().all(YardFacts.JOBS).stream()
            .filter(j -> j.task() == WorkTask.PLANT_PLUG)
            .findFirst()
            .orElseThrow();
    assertEquals(plants, set.amount().value());
    assertEquals(1.5 / 60, set.pace().orElseThrow().hours().likely(), 1e-12);
  }
}
