package yardloom.program.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.sheet.compose.DemoYard;
import yardloom.sheet.compose.PaperWords;

/** Where charts put their figures, on a drawing 360 wide; places worked by hand. */
class ChartShapesTest {
  private static ChartView drawn(Table table, Chart chart) {
    Plan plan = DemoYard.plan(UnitSystem.US);
    Outcome outcome =
        new Outcome(
            plan,
            FactGraph.of(List.of()).run(plan),
            List.of(),
            List.of(table),
            new TreeMap<>(),
            List.of(),
            List.of(),
            Map.of(),
            Map.of(table.id(), new Reading(Audience.CLIENT, List.of(chart))));
    TableFormat format = new TableFormat(UnitSystem.US, "USD");
    return Charts.of(outcome, format, new PaperWords(UnitSystem.US)).get(0);
  }

  private static Cell gallons(double gallons) {
    return Cell.of(Volume.of(gallons, Unit.GALLON));
  }

  private static List<String> placed(ChartView view) {
    return view.rects().stream().map(r -> r.x() + " + " + r.width()).toList();
  }

  /**
   * A day is 360/365 = 0.9863 wide. April 15 is day 105 and June 30 day 181: 104 days stand before
   * and 77 are drawn. October 20 is day 293 and July 5 day 186: 73 days to the year's end, then
   * 186 from its beginning. Before February 1 are 31 days, before December 1 334.
   */
  @Test
  void spans_lieOnTheirDays_andGoOverTheYearsEnd() {
    Table table =
        Table.titled("bloom", "Bloom")
            .column(Column.text("plant", "Plant"))
            .column(Column.of("from", "From", Measure.DATE))
            .column(Column.of("until", "Until", Measure.DATE))
            .row(Cell.text("kale"), Cell.of(MonthDay.of(4, 15)), Cell.of(MonthDay.of(6, 30)))
            .row(Cell.text("garlic"), Cell.of(MonthDay.of(10, 20)), Cell.of(MonthDay.of(7, 5)))
            .build();
    ChartView view = drawn(table, Chart.of("bloom", "Bloom", Chart.Kind.SPANS, "from", "until"));
    assertEquals(List.of("102.6 + 75.9", "288 + 72", "0 + 183.5"), placed(view));
    assertEquals("30.6", view.segments().get(1).x1());
    assertEquals("329.4", view.segments().get(11).x1());
    assertEquals(
        "JFMAMJJASOND",
        String.join("", view.words().stream().limit(12).map(ChartView.Words::text).toList()));
  }

  /**
   * The most, 40 gal, is 348 wide from 6: 10 gal begin at 93, their bar to 40 gal is 261 wide, and
   * the mark at 15 gal, 4 wide, stands at 136.5. 4 gal begin at 40.8, the bar to 8 gal is 34.8
   * wide, the mark at 5 gal stands at 49.5.
   */
  @Test
  void ranges_goFromLowToHigh_withAMarkAtWhatIsLikely() {
    Table table =
        Table.titled("cost", "Cost")
            .column(Column.text("what", "What"))
            .column(Column.of("low", "Low", Measure.WATER))
            .column(Column.of("likely", "Likely", Measure.WATER))
            .column(Column.of("high", "High", Measure.WATER))
            .row(Cell.text("much"), gallons(10), gallons(15), gallons(40))
            .row(Cell.text("little"), gallons(4), gallons(5), gallons(8))
            .build();
    ChartView view =
        drawn(table, Chart.of("cost", "Cost", Chart.Kind.RANGES, "low", "likely", "high"));
    assertEquals(List.of("93 + 261", "134.5 + 4", "40.8 + 34.8", "47.5 + 4"), placed(view));
  }

  /**
   * The most, 20 gal, is all dark, 10 34 54 in hexadecimal. 5 gal are a quarter of it, which is
   * 0.175 of the way from white: 255 − 0.175 × 239 = 213, 255 − 0.175 × 203 = 219, 255 − 0.175 ×
   * 171 = 225. So 8 gal go 0.28 of the way and 2 gal 0.07.
   */
  @Test
  void grid_isDarkerForMore() {
    Table table =
        Table.titled("sun", "Sun")
            .column(Column.text("bed", "Bed"))
            .column(Column.of("may", "May", Measure.WATER))
            .column(Column.of("june", "June", Measure.WATER))
            .row(Cell.text("north"), gallons(5), gallons(20))
            .row(Cell.text("south"), gallons(8), gallons(2))
            .build();
    ChartView view = drawn(table, Chart.of("sun", "Sun", Chart.Kind.GRID, "may", "june"));
    assertEquals(List.of("112 + 124", "236 + 124", "112 + 124", "236 + 124"), placed(view));
    assertEquals(
        List.of("#d5dbe1", "#103454", "#bcc6cf", "#eef1f3"),
        view.rects().stream().map(ChartView.Rect::fill).toList());
  }
}
