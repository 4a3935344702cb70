package yardloom.program.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class RowNamesTest {
  @Test
  void equalFirstCells_takeTheNextThatSaysSomething() {
    assertEquals(
        List.of("cut edge", "spread, path", "spread, bed, dry", "spread, bed, wet"),
        RowNames.of(
            List.of(
                List.of("cut edge", "path", ""),
                List.of("spread", "", "path"),
                List.of("spread", "bed", "dry"),
                List.of("spread", "bed", "wet"))));
  }

  @Test
  void rowsAlikeToTheEnd_areCounted() {
    assertEquals(
        List.of("a, b #1", "A, b #2", "row"),
        RowNames.of(List.of(List.of("a", "b"), List.of("\"A\"", "b"), List.of("", ""))));
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    return Arbitraries.of("", "a", "A", "\"a\"", "a, b", "b", "b #1")
        .list()
        .ofSize(3)
        .list()
        .ofMaxSize(12);
  }

  /** No two rows of any table may be asked for by one name. */
  @Property
  void names_tellAllRowsApart(@ForAll("tables") List<List<String>> rows) {
    List<String> keys = RowNames.of(rows).stream().map(RowNames::key).toList();
    assertEquals(rows.size(), new HashSet<>(keys).size(), keys::toString);
  }
}
