package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;

/** Laws of yards that are made in stages, from plan text to printed tables. */
class StagesLawTest {
  private static final String YARD =
      """
      plan 'Stages', units: 'us'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 70.ft), point(0.ft, 70.ft)])
      work crew: 2, hoursPerDay: 6, visits: 3, start: '2027-03-01'
      tap 'tap', point(3.ft, 3.ft), source: 'mains'
      dropZone 'heap', rect(75.ft, 1.ft, 10.ft, 16.ft)
      demonstrationPrices()
      """;

  /** Things that do not touch, so that no edge between two of them is cut in one stage only. */
  private static final List<String> THINGS =
      List.of(
          "bed('A', rect(10.ft, 10.ft, 22.ft, 4.ft), use: 'perennial') { DRIP ; plant 'sage' }",
          "bed('B', rect(10.ft, 24.ft, 27.ft, 4.ft), use: 'perennial') { DRIP ; plant 'thyme' }",
          "bed('C', rect(45.ft, 24.ft, 19.ft, 5.ft), use: 'annual') { DRIP ; plant 'sage' }",
          "bed('D', rect(45.ft, 44.ft, 31.ft, 4.ft), use: 'perennial') { DRIP ; plant 'chives' }",
          "path 'P', line([point(5.ft, 36.ft), point(60.ft, 36.ft)]), width: 4.ft, use: 'barrow'",
          "item 'bench', count: 2, price: 90.money, hours: 1.5, phase: 'finish'");

  private static final String DRIP = "drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch";

  /** Calling for the marks half an hour, and three visits of an hour. */
  private static final double AGAIN_HOURS = 0.5 + 3;

  private static final Outcome AT_ONCE = outcome(things(THINGS));

  private static String things(List<String> which) {
    return String.join("\n", which).replace("DRIP", DRIP) + "\n";
  }

  private static Outcome outcome(String things) {
    return Drawn.study(YARD + things, Drawn.plugins());
  }

  private static Outcome staged(int split) {
    List<String> first = new ArrayList<>();
    List<String> second = new ArrayList<>();
    for (int i = 0; i < THINGS.size(); i++) {
      ((split >> i & 1) == 0 ? first : second).add(THINGS.get(i));
    }
    return outcome(
        "stage('one') {\n" + things(first) + "}\nstage('two') {\n" + things(second) + "}\n");
  }

  private static Table table(Outcome of, String id) {
    return of.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  /** The exact value in SI units in the last row of a column. */
  private static double last(Outcome of, String id, String column) {
    Table table = table(of, id);
    List<Cell> row = table.rows().get(table.rows().size() - 1);
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.columns().get(c).id().equals(column)) {
        return exact(row.get(c));
      }
    }
    throw new IllegalArgumentException(column);
  }

  private static List<BigDecimal> printedHours(Outcome of) {
    TableFormat format = TableFormat.of(of.plan().info());
    Table stages = table(of, "stages");
    int at = stages.columns().stream().map(Column::id).toList().indexOf("hours");
    return stages.rows().stream()
        .map(r -> new BigDecimal(format.data(stages.columns().get(at), r.get(at))))
        .toList();
  }

  /** Every row of numbers of a table as it is printed; what is blank is nothing. */
  private static List<List<BigDecimal>> printed(Outcome of, String id) {
    TableFormat format = new TableFormat(of.plan().info().units(), of.plan().info().currency());
    Table table = table(of, id);
    return table.rows().stream()
        .map(
            r ->
                IntStream.range(1, r.size())
                    .mapToObj(c -> format.data(table.columns().get(c), r.get(c)))
                    .map(text -> text.isEmpty() ? BigDecimal.ZERO : new BigDecimal(text))
                    .toList())
        .toList();
  }

  private static BigDecimal sum(Stream<BigDecimal> of) {
    return of.reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Down every column and along every row, in the whole currency units that are printed. */
  private static void assertAddsUp(Outcome of) {
    List<List<BigDecimal>> rows = printed(of, "stage-costs");
    List<BigDecimal> total = rows.get(rows.size() - 1);
    int last = total.size() - 1;
    for (List<BigDecimal> row : rows) {
      assertEquals(row.get(last), sum(row.subList(0, last).stream()), rows::toString);
    }
    for (int c = 0; c <= last; c++) {
      int column = c;
      assertEquals(
          total.get(c),
          sum(rows.subList(0, rows.size() - 1).stream().map(r -> r.get(column))),
          rows::toString);
    }
    List<List<BigDecimal>> whole = printed(of, "materials-cost");
    assertEquals(
        whole.get(whole.size() - 1).get(0),
        sum(whole.subList(0, whole.size() - 1).stream().map(r -> r.get(0))),
        whole::toString);
  }

  private static double exact(Cell cell) {
    Object value = cell.value().orElseThrow();
    return value instanceof Quantity<?> q ? q.si() : ((Number) value).doubleValue();
  }

  /** All that any split takes is what the whole takes; only marks and visits come twice. */
  @Property(tries = 6)
  void twoStages_addUpToTheWhole(@ForAll @IntRange(min = 1, max = 62) int split) {
    Outcome two = staged(split);
    for (String column : List.of("area", "compost", "chips")) {
      assertEquals(
          last(AT_ONCE, "materials-take-off", column), last(two, "stages", column), 1e-9, column);
    }
    assertEquals(
        last(AT_ONCE, "materials-labour", "likely") + AGAIN_HOURS * 3600,
        last(two, "stages", "hours"),
        1e-6);
    List<BigDecimal> hours = printedHours(two);
    assertEquals(hours.get(2), hours.get(0).add(hours.get(1)), "hours as printed");
    assertAddsUp(two);
    // Rounding up in each stage costs more, never less.
    assertTrue(
        last(two, "stages", "cost") >= last(AT_ONCE, "materials-cost", "likely") - 1e-9,
        "cost " + last(two, "stages", "cost"));
    assertEquals(last(two, "materials-cost", "likely"), last(two, "stages", "cost"), 1e-6);
    assertEquals(last(two, "stage-costs", "all"), last(two, "stages", "cost"), 1e-6);
  }

  /** A stage without a day of its own begins a year after the one before. */
  @Example
  void withoutADay_itIsAYearLater() {
    Table stages = table(staged(1), "stages");
    assertEquals(
        List.of(LocalDate.of(2027, 3, 1), LocalDate.of(2028, 3, 1)),
        stages.rows().subList(0, 2).stream().map(r -> r.get(1).value().orElseThrow()).toList());
  }

  /** What is built already is bought and worked in no stage, wherever it stands. */
  @Example
  void built_buysNothing() {
    Outcome left = outcome(things(THINGS.subList(1, THINGS.size())));
    Outcome built =
        outcome(
            "stage('old', built: true) {\n"
                + things(THINGS.subList(0, 1))
                + "}\nstage('new') {\n"
                + things(THINGS.subList(1, THINGS.size()))
                + "}\n");
    for (String column : List.of("area", "compost", "chips")) {
      assertEquals(last(left, "materials-take-off", column), last(built, "stages", column), 1e-9);
    }
    assertTrue(last(built, "stages", "cost") < last(left, "materials-cost", "likely"));
  }
}
