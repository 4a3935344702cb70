package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.TableMaker;

/**
 * What the water plugin is to do, line by line: the word that asks for it, the table that prints
 * it, and the test that goes from the one to the other. A line whose test or table is gone fails.
 */
class WaterCapabilitiesTest {
  private static final DataTable LINES =
      DataTable.shipped(WaterCapabilitiesTest.class, "water-capabilities.csv");

  /** What makes a method a test, by the ends of the annotations' names. */
  private static final Set<String> MARKS = Set.of("Test", "Property", "ParameterizedTest");

  static Iterable<DataRow> lines() {
    return LINES.rows();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void capability_hasAWordATableAndATest(DataRow line) throws ClassNotFoundException {
    String what = line.text("capability");
    assertTrue(words().contains(line.text("word")), what + ": no word " + line.text("word"));
    String table = line.text("table");
    assertTrue(table.isEmpty() || tables().contains(table), what + ": no table " + table);
    Class<?> test = Class.forName("yardloom.program." + line.text("test"));
    assertTrue(
        Arrays.stream(test.getDeclaredMethods())
            .filter(m -> m.getName().equals(line.text("method")))
            .anyMatch(WaterCapabilitiesTest::isTest),
        what + ": no test " + line.text("method") + " in " + test.getSimpleName());
  }

  @Test
  void capabilities_areNamedOnce() {
    assertEquals(
        LINES.rows().size(),
        LINES.rows().stream().map(r -> r.text("capability")).distinct().count());
  }

  private static boolean isTest(Method method) {
    return Arrays.stream(method.getAnnotations())
        .anyMatch(a -> MARKS.contains(a.annotationType().getSimpleName()));
  }

  private static Set<String> words() {
    return Drawn.plugins().all().stream()
        .flatMap(p -> p.vocabularies().stream())
        .flatMap(v -> v.wordClasses().stream())
        .flatMap(c -> Arrays.stream(c.getDeclaredMethods()))
        .map(Method::getName)
        .collect(Collectors.toSet());
  }

  private static Set<String> tables() {
    return Drawn.plugins().all().stream()
        .flatMap(p -> p.tables().stream())
        .map(TableMaker::id)
        .collect(Collectors.toSet());
  }
}
