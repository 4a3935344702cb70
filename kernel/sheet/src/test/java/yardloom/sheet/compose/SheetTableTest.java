package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;

class SheetTableTest {
  private static final TableFormat FORMAT = new TableFormat(UnitSystem.US, "$");

  private static Table.Builder plants() {
    return Table.titled("t", "T")
        .column(Column.text("bed", "Bed"))
        .column(Column.text("plant", "Plant"))
        .column(Column.of("count", "Count", Measure.COUNT));
  }

  private static void row(Table.Builder table, String bed, String plant, int count) {
    table.row(Cell.text(bed), Cell.text(plant), Cell.number(count));
  }

  private static List<String> names(Table table) {
    return SheetTable.of(table, FORMAT).rows().stream()
        .map(r -> r.get(0).value().orElseThrow().toString())
        .toList();
  }

  @Test
  void numberedRows_alike_becomeOnePerPlant() {
    Table.Builder table = plants();
    for (int i = 1; i <= 3; i++) {
      row(table, "kitchen " + i, "tomato", 12);
      row(table, "kitchen " + i, "kale", 16);
    }
    row(table, "berry bed", "raspberry", 16);
    assertEquals(
        List.of("kitchen 1 to 3, each", "kitchen 1 to 3, each", "berry bed"), names(table.build()));
  }

  @Test
  void numberedRows_oneDifferentInAnyRow_staysApart() {
    Table.Builder table = plants();
    for (int i = 1; i <= 3; i++) {
      row(table, "bed " + i, "tomato", 12);
      row(table, "bed " + i, "kale", i == 3 ? 15 : 16);
    }
    assertEquals(
        List.of("bed 1 to 2, each", "bed 1 to 2, each", "bed 3", "bed 3"), names(table.build()));
  }

  @Test
  void numberedRows_withAGapInTheNumbers_stayApart() {
    Table.Builder table = plants();
    row(table, "bed 1", "kale", 4);
    row(table, "bed 3", "kale", 4);
    assertEquals(List.of("bed 1", "bed 3"), names(table.build()));
  }

  @Test
  void totals_stayLastAndAreNeverGrouped() {
    Table.Builder table = plants();
    row(table, "bed 1", "kale", 4);
    row(table, "bed 2", "kale", 4);
    Table shown =
        SheetTable.of(table.total(Cell.text("all 2"), Cell.BLANK, Cell.number(8)).build(), FORMAT);
    assertEquals(1, shown.totals());
    assertEquals(2, shown.rows().size());
    assertEquals(8, shown.rows().get(1).get(2).value().orElseThrow());
  }

  @Test
  void column_withoutAnyEntry_isLeftOut() {
    Table table = plants().row(Cell.text("a"), Cell.BLANK, Cell.number(1)).build();
    assertEquals(
        List.of("bed", "count"),
        SheetTable.of(table, FORMAT).columns().stream().map(Column::id).toList());
  }

  @Test
  void source_ofSeveralRows_becomesANumberedNote() {
    Table table =
        Table.titled("t", "T")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("source", "Source"))
            .row(Cell.text("kale"), Cell.text("A handbook"))
            .row(Cell.text("leek"), Cell.text("A handbook"))
            .row(Cell.text("sage"), Cell.text("A leaflet"))
            .build();
    Table shown = SheetTable.of(table, FORMAT);
    assertEquals(
        List.of("[1]", "[1]", "[2]"),
        shown.rows().stream().map(r -> r.get(1).value().orElseThrow()).toList());
    assertEquals(List.of("[1] A handbook.", "[2] A leaflet."), shown.notes());
  }

  @Test
  void rowsUnderHeadings_alike_stayUnderTheirOwn() {
    Table.Builder table = plants();
    for (int i = 1; i <= 2; i++) {
      table.heading("kitchen " + i);
      row(table, "half 1", "kale", 4);
      row(table, "half 2", "kale", 4);
    }
    assertEquals(
        List.of("kitchen 1", "half 1", "half 2", "kitchen 2", "half 1", "half 2"),
        names(table.build()));
  }
}
