package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.program.output.Calculations;

/** Every figure of water says why, in units in which water is sold. */
class WaterWhyLawTest {
  private static final List<String> TABLES =
      List.of(
          "catch-test",
          "drip-hydraulics",
          "emitters",
          "first-weeks",
          "first-weeks-timer",
          "head-assembly",
          "irrigation",
          "irrigation-parts",
          "lines",
          "outlets",
          "rain-off",
          "tank-head",
          "tank-levels",
          "tank-sizes",
          "tank-year",
          "tanks",
          "timetable",
          "water-by-month",
          "zones");

  /** What counts rows, is read off the plan, or is what a table asks about. */
  private static final Set<String> GIVEN =
      Set.of(
          "drip-hydraulics longest-row",
          "drip-hydraulics zone",
          "head-assembly order",
          "irrigation area",
          "irrigation outlet-flow",
          "irrigation rows",
          "lines bore",
          "lines length",
          "lines paved",
          "lines run",
          "lines zone",
          "outlets at",
          "outlets row",
          "outlets zone",
          "rain-off zone",
          "tank-head drop",
          "tank-levels water",
          "tank-sizes size",
          "tanks count",
          "tanks each",
          "tanks foot",
          "tanks stand",
          "zones zone");

  static Stream<String> plans() {
    return Samples.plans().stream();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void figures_sayWhy(String plan) {
    Set<String> silent = new TreeSet<>();
    for (Table table : Samples.outcome(plan).tables()) {
      for (int c = 0; TABLES.contains(table.id()) && c < table.columns().size(); c++) {
        Column column = table.columns().get(c);
        for (List<Cell> row : table.rows().subList(0, table.rows().size() - table.totals())) {
          Cell cell = row.get(c);
          boolean isFigure = cell.value().filter(v -> !(v instanceof String)).isPresent();
          if (column.measure().isNumber() && isFigure && cell.why().isEmpty()) {
            silent.add(table.id() + " " + column.id());
          }
        }
      }
    }
    silent.removeAll(GIVEN);
    assertEquals(Set.of(), silent);
  }

  /** A cubic yard of roof water is nothing that anybody pours. */
  @ParameterizedTest
  @MethodSource("plans")
  void water_isToldInGallonsOrLitres(String plan) {
    Outcome outcome = Samples.outcome(plan);
    Calculations calculations =
        Calculations.of(
            outcome,
            new TableFormat(outcome.plan().info().units(), outcome.plan().info().currency()));
    int asked = 0;
    for (Calculations.Printed printed : calculations.printed()) {
      if (TABLES.contains(printed.table().id())) {
        Derived<?> why = calculations.derived(printed.number()).orElseThrow();
        for (Derived.Input input : why.inputs()) {
          Object value = input.value() instanceof Derived<?> inner ? inner.value() : input.value();
          String text = calculations.values().of(value);
          assertTrue(!text.contains("cu yd") && !text.contains("m³"), printed.name() + ": " + text);
          asked++;
        }
      }
    }
    assertTrue(asked > 0);
  }
}
