package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A table of beds under a heading, with a total. */
class TableTest {
  private final Table beds =
      Table.titled("beds", "Beds")
          .column(Column.text("bed", "Bed"))
          .column(Column.of("plants", "Plants", Measure.COUNT))
          .heading("North")
          .row(Cell.text("a"), Cell.number(4))
          .row(List.of(Cell.BLANK, Cell.number(7)))
          .row(Cell.text("b"), Cell.text(" "))
          .row(Cell.text(" "), Cell.BLANK)
          .total(Cell.text("all"), Cell.number(11))
          .note("counted")
          .build();

  @Test
  void heading_isTheRowThatSaysSomethingInItsFirstCellOnly() {
    assertTrue(beds.isHeading(0));
    assertFalse(beds.isHeading(1));
    assertFalse(beds.isHeading(2), "nothing in the first cell");
    assertTrue(beds.isHeading(3), "blanks say nothing");
    assertFalse(beds.isHeading(4));
    Table single = Table.titled("x", "X").column(Column.text("a", "A")).heading("one").build();
    assertFalse(single.isHeading(0), "one column has no room for a heading");
  }

  @Test
  void totals_areCounted_andNotesKept() {
    assertEquals(1, beds.totals());
    assertEquals(List.of("counted"), beds.notes());
    assertEquals(6, beds.rows().size());
    assertThrows(
        IllegalArgumentException.class,
        () -> Table.titled("x", "X").column(Column.text("a", "A")).row(List.of()).build());
  }

  @Test
  void readers_haveHeadings() {
    assertEquals(
        List.of(
            "For the client",
            "For the household",
            "For the contractor",
            "For the nursery and planters",
            "For the irrigation installer"),
        Stream.of(Audience.values()).map(Audience::title).toList());
  }

  @Test
  void charts_nameAsManyColumnsAsTheirKindNeeds() {
    Chart bars = Chart.of("need", "Need", Chart.Kind.BARS, "a", "b");
    assertFalse(bars.totals());
    assertEquals(
        new Chart("need", "Need", Chart.Kind.BARS, List.of("a", "b"), true), bars.withTotals());
    assertEquals(3, Chart.of("r", "R", Chart.Kind.RANGES, "a", "b", "c").columns().size());
    assertEquals(2, Chart.of("s", "S", Chart.Kind.SPANS, "a", "b").columns().size());
    assertEquals(1, Chart.of("g", "G", Chart.Kind.GRID, "a").columns().size());
    refused(Chart.Kind.RANGES, "a", "b");
    refused(Chart.Kind.RANGES, "a", "b", "c", "d");
    refused(Chart.Kind.SPANS, "a");
    refused(Chart.Kind.SPANS, "a", "b", "c");
    refused(Chart.Kind.BARS);
  }

  private static void refused(Chart.Kind kind, String... columns) {
    assertEquals(
        "chart c of kind " + kind + " names " + columns.length + " columns",
        assertThrows(IllegalArgumentException.class, () -> Chart.of("c", "C", kind, columns))
            .getMessage());
  }
}
