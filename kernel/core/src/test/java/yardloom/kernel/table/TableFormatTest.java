package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

class TableFormatTest {
  private static final Column AREA = Column.of("area", "Area", Measure.AREA);
  private static final Column COST = Column.of("cost", "Cost", Measure.MONEY);
  private final TableFormat us = new TableFormat(UnitSystem.US, "$");
  private final TableFormat metric = new TableFormat(UnitSystem.METRIC, "€");

  /** 43,560 sq ft to the acre: NIST, U.S. Survey Foot: Revised Unit Conversion Factors. */
  @Test
  void text_anAcre_readsInBothSystems() {
    Cell acre = Cell.of(Area.squareMetres(4046.8564224));
    assertEquals("43,560", us.text(AREA, acre));
    assertEquals("4\u00a0046.9", metric.text(AREA, acre));
    assertEquals("43560", us.plain(AREA, acre));
    assertEquals("4046.9", metric.plain(AREA, acre));
  }

  @Test
  void header_withAndWithoutUnit_reads() {
    assertEquals("Area, sq ft", us.header(AREA));
    assertEquals("Area, m²", metric.header(AREA));
    assertEquals("Cost, $", us.header(COST));
    assertEquals("Bed", us.header(Column.text("bed", "Bed")));
    assertEquals("Share, %", us.header(Column.of("share", "Share", Measure.PERCENT)));
    assertEquals("area_sqft", us.csvHeader(AREA));
    assertEquals("area_sqm", metric.csvHeader(AREA));
  }

  @ParameterizedTest
  @CsvSource({"0.5,1", "-0.5,-1", "2.5,3", "-0.4,0", "999.5,'1,000'", "-1234567,'-1,234,567'"})
  void text_counts_roundHalfAwayFromZeroAndGroup(double value, String text) {
    assertEquals(text, us.text(Column.of("n", "N", Measure.COUNT), Cell.number(value)));
  }

  @Test
  void text_anyLocale_isTheSame() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals("14.78", us.text(Column.of("v", "V", Measure.VOLUME), volume()));
    } finally {
      Locale.setDefault(before);
    }
  }

  private static Cell volume() {
    return Cell.of(Volume.cubicMetres(11.3));
  }

  @Test
  void withUnit_quantities_keepNumberAndUnitTogether() {
    assertEquals("80\u00a0sq ft", us.withUnit(Measure.AREA, Area.squareMetres(7.43224)));
    assertEquals("$120", us.withUnit(Measure.MONEY, Money.amount(120)));
  }

  @Test
  void text_quantityInATextColumn_bringsItsUnit() {
    assertEquals("4.00\u00a0ft", us.text(Column.text("t", "T"), Cell.of(Length.feet(4))));
  }

  @Test
  void text_percent_showsHundredths() {
    assertEquals("35", us.text(Column.of("s", "S", Measure.PERCENT), Cell.number(0.35)));
  }

  @Test
  void text_notANumber_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> us.text(Column.of("r", "R", Measure.RATIO), Cell.number(Double.NaN)));
  }

  /** X-11, X-12: fixtures of csv-spectrum and RFC 4180 line ends. */
  @Test
  void csv_quotesCommasAndBreaks_areQuotedAsInRfc4180() throws IOException {
    Table table =
        Table.titled("t", "T")
            .column(Column.text("a", "A"))
            .column(Column.text("b", "B"))
            .row(Cell.text("1"), Cell.text("ha \"ha\" ha"))
            .row(Cell.text("Anytown, WW"), Cell.text(""))
            .row(Cell.text("Once upon \na time"), Cell.BLANK)
            .build();
    StringBuilder out = new StringBuilder();
    CsvWriter.write(table, us, out);
    assertEquals(
        "a,b\r\n1,\"ha \"\"ha\"\" ha\"\r\n\"Anytown, WW\",\r\n\"Once upon \na time\",\r\n",
        out.toString());
  }

  /**
   * A lot of 1,000 m² in 48 unequal parts: the n-th has n/1176 of it, since 1 + … + 48 = 1176. In
   * whole per cent the first five parts and many others say nothing or too much.
   */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void csv_fortyEightShares_addUpToTheWhole(UnitSystem units) throws IOException {
    Table.Builder table =
        Table.titled("t", "T")
            .column(Column.text("part", "Part"))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("share", "Share", Measure.PERCENT));
    for (int n = 1; n <= 48; n++) {
      double share = n / 1176.0;
      table.row(
          Cell.text("part " + n), Cell.of(Area.squareMetres(1000 * share)), Cell.number(share));
    }
    StringBuilder out = new StringBuilder();
    TableFormat format = new TableFormat(units, "$");
    CsvWriter.write(table.build(), format, out);
    double area = 0;
    double share = 0;
    for (DataRow row : DataTable.parse("t", out.toString()).rows()) {
      area += row.number(units == UnitSystem.US ? "area_sqft" : "area_sqm");
      share += row.number("share_percent");
    }
    // A square foot is 0.09290304 m² (exactly, from the inch of 25.4 mm).
    assertEquals(units == UnitSystem.US ? 1000 / 0.09290304 : 1000, area, 0.003);
    assertEquals(100, share, 0.003);
    Column shares = table.build().columns().get(2);
    for (List<Cell> row : table.build().rows()) {
      BigDecimal exact = new BigDecimal(format.data(shares, row.get(2)));
      assertEquals(
          format.plain(shares, row.get(2)), exact.setScale(0, RoundingMode.HALF_UP).toString());
    }
  }

  /**
   * A third of the ground, 100 / 3 = 33.33333… m²: four digits more than a reader gets, no zeros at
   * the end beyond these. A third of a volume keeps its two.
   */
  @Test
  void data_areasAndShares_haveFourDigitsMore() {
    Column share = Column.of("share", "Share", Measure.PERCENT);
    assertEquals("33.3333", us.data(share, Cell.number(1 / 3.0)));
    assertEquals("33", us.plain(share, Cell.number(1 / 3.0)));
    assertEquals("12.5", us.data(share, Cell.number(1 / 8.0)));
    assertEquals("33.33333", metric.data(AREA, Cell.of(Area.squareMetres(100 / 3.0))));
    assertEquals("20.0", metric.data(AREA, Cell.of(Area.squareMetres(20))));
    Column volume = Column.of("v", "V", Measure.VOLUME);
    assertEquals("3.77", metric.data(volume, Cell.of(Volume.cubicMetres(11.3 / 3))));
  }

  /** 1,412 ft and 8.5 cu yd in one column: the numbers there, the units beside. */
  @Test
  void csv_amountsOfSeveralUnits_areParted() throws IOException {
    Source plan = Source.plan("demo");
    Table table =
        Table.titled("t", "T")
            .column(Column.text("item", "Item"))
            .column(Column.text("order", "Order"))
            .row(Cell.text("tube"), amount("1,412.0\u00a0ft", Length.feet(1412), plan))
            .row(Cell.text("chips"), amount("8.50\u00a0cu yd", Volume.cubicMetres(6.5), plan))
            .row(Cell.text("apple"), new Cell(Optional.of("3"), Optional.empty()))
            .row(Cell.text("=1+2"), Cell.text("as needed"))
            .build();
    StringBuilder out = new StringBuilder();
    CsvWriter.write(table, us, out);
    assertEquals(
        "item,order,order_unit\r\ntube,1412.0,ft\r\nchips,8.50,yd3\r\napple,3,\r\n"
            + "'=1+2,as needed,\r\n",
        out.toString());
  }

  private static Cell amount(String text, Quantity<?> quantity, Source source) {
    return new Cell(Optional.of(text), Optional.of(Derived.by("given", source).gives(quantity)));
  }

  @Test
  void dates_areWrittenOutOnPaper_andAsNumbersInFiles() {
    Column when = Column.text("when", "When");
    Cell date = Cell.of(LocalDate.of(2026, 10, 6));
    assertEquals("6 Oct 2026", us.text(when, date));
    assertEquals("2026-10-06", us.plain(when, date));
    Cell day = Cell.of(MonthDay.of(4, 25));
    assertEquals("25 Apr", metric.text(when, day));
    assertEquals("--04-25", metric.plain(when, day));
  }

  @Test
  void title_beginsWithACapital_whateverItIs() {
    assertEquals("Bed", TableFormat.title(Column.text("bed", "bed")));
    assertEquals("", TableFormat.title(Column.text("bed", "")));
    assertEquals("É", TableFormat.title(Column.text("bed", "é")));
  }
}
