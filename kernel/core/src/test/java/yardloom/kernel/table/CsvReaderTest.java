package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.CsvReader.Field;

class CsvReaderTest {
  private static List<List<String>> read(String csv) {
    return CsvReader.read(csv, "the table").stream()
        .map(r -> r.fields().stream().map(Field::text).toList())
        .toList();
  }

  /** csv-spectrum fixtures. */
  @Test
  void quotedFields_areReadAsTheSpectrumSays() {
    assertEquals(
        List.of(List.of("1", "ha \"ha\" ha"), List.of("3", "4")),
        read("1,\"ha \"\"ha\"\" ha\"\n3,4\n"));
    assertEquals(List.of(List.of("1", "\n", "2")), read("1,\"\n\",2\r\n"));
    assertEquals(List.of(List.of("Anytown, WW", "")), read("\"Anytown, WW\",\"\""));
  }

  @Test
  void blankLinesAndAByteOrderMark_areLeftOut() {
    assertEquals(List.of(List.of("a", "b"), List.of("c", "")), read("\ufeffa,b\n\r\n  \nc,\n\n"));
    assertEquals(List.of(), read(""));
  }

  @Test
  void places_countLinesAndColumnsFromOne() {
    List<CsvReader.Row> rows = CsvReader.read("a,\"b\nb\",c\n\nd, \"e\"\"e\",f", "the table");
    assertEquals(
        List.of(new Field("a", 1, 1), new Field("b\nb", 1, 3), new Field("c", 2, 4)),
        rows.get(0).fields());
    assertEquals(
        List.of(new Field("d", 4, 1), new Field("e\"e", 4, 3), new Field("f", 4, 11)),
        rows.get(1).fields());
    assertEquals(List.of(1, 4), rows.stream().map(CsvReader.Row::line).toList());
  }

  @Test
  void openQuote_isRefusedWithTheLineOfItsRow() {
    String said =
        assertThrows(PlanException.class, () -> CsvReader.read("a,b\n1,\"2\n3,4\n", "the table"))
            .getMessage();
    assertTrue(said.contains("line 2 of the table opens a quote"), said);
  }

  /** What {@link CsvWriter} quotes is read back, whatever it holds. */
  @Property(seed = "20261125")
  void written_isReadBack(@ForAll @Size(min = 2, max = 4) List<String> texts) {
    String line = texts.stream().map(CsvWriter::field).reduce((a, b) -> a + "," + b).orElseThrow();
    if (!line.startsWith("\ufeff")) {
      assertEquals(List.of(texts), read(line + "\r\n"));
    }
  }
}
