package yardloom.work.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;

/** Bars in proportion to the printed amounts, worked by hand. */
class MonthBarsTest {
  private static final TableFormat METRIC = new TableFormat(UnitSystem.METRIC, "");

  /** Only May and August bear: 12 (7 to 19) kg and 30 (22 to 47) kg. */
  private static Table harvest() {
    Table.Builder table =
        Table.titled("picked", "Picked by month")
            .column(Column.text("month", "Month"))
            .column(Column.of("low", "Low", Measure.MASS))
            .column(Column.of("likely", "Likely", Measure.MASS))
            .column(Column.of("high", "High", Measure.MASS));
    for (Month month : Month.values()) {
      switch (month) {
        case MAY -> row(table, month, 7, 12, 19);
        case AUGUST -> row(table, month, 22, 30, 47);
        default -> table.row(Cell.text(month.name()), Cell.BLANK, Cell.BLANK, Cell.BLANK);
      }
    }
    return table.build();
  }

  private static void row(Table.Builder table, Month month, double low, double mid, double high) {
    table.row(
        Cell.text(month.name()),
        Cell.of(Mass.kilograms(low)),
        Cell.of(Mass.kilograms(mid)),
        Cell.of(Mass.kilograms(high)));
  }

  private static List<Mark.Region> bars(Panel.Figure figure) {
    return figure.marks().stream()
        .filter(Mark.Region.class::isInstance)
        .map(Mark.Region.class::cast)
        .toList();
  }

  /**
   * The highest is 47 kg: steps of 10 to 50. On an axis of 13 units May's bar is 13 × 12 / 50 =
   * 3.12 high and August's 13 × 30 / 50 = 7.8; their middles lie at 12 + 4.5 × 6 = 39 and 12 + 7.5
   * × 6 = 57. August's line runs from 13 × 22 / 50 = 5.72 to 13 × 47 / 50 = 12.22.
   */
  @Test
  void ranges_barIsLikely_lineFromLowToHigh() {
    Panel.Figure figure = MonthBars.of(harvest(), METRIC).orElseThrow();
    assertEquals("Picked by month, kg", figure.title());
    List<Mark.Region> bars = bars(figure);
    assertEquals(2, bars.size());
    assertBar(bars.get(0), 39, 3.12);
    assertBar(bars.get(1), 57, 7.8);
    assertTrue(
        figure.marks().stream()
            .filter(Mark.Stroke.class::isInstance)
            .map(m -> ((Mark.Stroke) m).line().jts().getEnvelopeInternal())
            .anyMatch(
                e ->
                    Math.abs(e.getMinX() - 57) < 1e-9
                        && Math.abs(e.getMinY() - 5.72) < 1e-9
                        && Math.abs(e.getMaxY() - 12.22) < 1e-9));
    List<String> figures =
        figure.marks().stream()
            .filter(Mark.Label.class::isInstance)
            .map(m -> ((Mark.Label) m).text())
            .limit(6)
            .toList();
    assertEquals(List.of("0", "10", "20", "30", "40", "50"), figures);
  }

  private static void assertBar(Mark.Region bar, double middle, double high) {
    assertEquals(middle, bar.shape().bounds().centre().x, 1e-9);
    assertEquals(high, bar.shape().bounds().getHeight(), 1e-9);
  }

  /** Of three seasons the first is hatched beside the last, which is full: 3 and 8 of 8 hours. */
  @Test
  void seasons_firstAndLastStandSideBySide() {
    Table.Builder table =
        Table.titled("care", "Care")
            .column(Column.text("month", "Month"))
            .column(Column.of("a", "First", Measure.COUNT))
            .column(Column.of("b", "Second", Measure.COUNT))
            .column(Column.of("c", "Third", Measure.COUNT));
    for (Month month : Month.values()) {
      boolean june = month == Month.JUNE;
      table.row(
          Cell.text(month.name()),
          june ? Cell.number(3) : Cell.BLANK,
          june ? Cell.number(5) : Cell.BLANK,
          june ? Cell.number(8) : Cell.BLANK);
    }
    table.total(Cell.text("Year"), Cell.number(3), Cell.number(5), Cell.number(8));
    Panel.Figure figure = MonthBars.of(table.build(), METRIC).orElseThrow();
    List<Mark.Region> bars = bars(figure);
    // 0.7 of a month of 6 for both, from 12 + 5.15 × 6 = 42.9 on: middles at 43.95 and 46.05.
    assertBar(bars.get(0), 43.95, 13 * 3 / 8.0);
    assertBar(bars.get(1), 46.05, 13);
    assertEquals(List.of("First", "Third"), figure.legend().stream().map(l -> l.text()).toList());
  }

  @Test
  void tableWithoutMonths_orWithoutAmounts_hasNoChart() {
    Table weeds =
        Table.titled("weeds", "Weeds")
            .column(Column.text("month", "Month"))
            .row(Cell.text("May"))
            .build();
    assertEquals(Optional.empty(), MonthBars.of(weeds, METRIC));
    Table.Builder idle =
        Table.titled("idle", "Idle")
            .column(Column.text("month", "Month"))
            .column(Column.of("a", "A", Measure.COUNT));
    for (Month month : Month.values()) {
      idle.row(Cell.text(month.name()), Cell.BLANK);
    }
    assertEquals(Optional.empty(), MonthBars.of(idle.build(), METRIC));
  }

  /** At most five steps, of 1, 2 or 5 times a power of ten. */
  @ParameterizedTest
  @CsvSource({"8,2", "5,1", "11,5", "47,10", "230,50", "0.7,0.2", "1000,200"})
  void step_isRound(double most, double step) {
    assertEquals(step, MonthBars.step(most), 1e-9);
  }
}
