package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
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
}
