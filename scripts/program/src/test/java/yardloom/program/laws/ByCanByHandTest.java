package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Volume;

/** What no line of the timer waters stands beside its page, from plan text to the sheet. */
class ByCanByHandTest {
  private static final String YARD =
      """
      plan 'By can', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14', source: 'by hand'
      work crew: 2, hoursPerDay: 6, start: '2026-05-04'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
      tap 'bib', point(2.ft, 2.ft)
      bed('greens', rect(4.ft, 4.ft, 12.ft, 3.ft), use: 'annual') {
        drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 16.inch
        plant 'kale'
      }
      %s
      """;

  private static Optional<Table> byCan(String more) {
    return Drawn.of(YARD.formatted(more)).outcome().sheets().stream()
        .filter(s -> s.id().equals("irrigation"))
        .flatMap(s -> s.panels().stream())
        .filter(Panel.TableBlock.class::isInstance)
        .map(p -> ((Panel.TableBlock) p).table())
        .filter(t -> t.id().equals("first-weeks-by-can"))
        .findFirst();
  }

  private static String tree(String name, int x) {
    return "tree('%s', point(%d.ft, 40.ft), crown: 11.ft, height: 11.ft) { species 'apple (semi-dwarf)' }\n"
        .formatted(name, x);
  }

  /**
   * Three apples of a nursery's trunk of one inch: 1.5 gal a watering (University of Minnesota
   * Extension), days 1 to 14, 15 to 30 and 31 to 45 from the day of planting; told once.
   */
  @Test
  void treesAlike_areToldTogether_fromTheirDay() {
    Table table = byCan(tree("Pip 1", 20) + tree("Pip 2", 45) + tree("Pip 3", 70)).orElseThrow();
    // A heading and three steps.
    assertEquals(4, table.rows().size());
    assertTrue(
        table.rows().get(0).get(0).value().orElseThrow().toString().startsWith("Pip 1 to 3"));
    LocalDate first = (LocalDate) table.rows().get(1).get(1).value().orElseThrow();
    List<Integer> after = List.of(0, 14, 30);
    List<Integer> lasts = List.of(14, 16, 15);
    for (int r = 0; r < 3; r++) {
      List<Cell> row = table.rows().get(r + 1);
      assertEquals(first.plusDays(after.get(r)), row.get(1).value().orElseThrow());
      assertEquals(
          first.plusDays(after.get(r) + lasts.get(r) - 1), row.get(2).value().orElseThrow());
      Volume each = (Volume) row.get(4).value().orElseThrow();
      assertEquals(1.5, each.gallons(), 1e-9);
      assertTrue(row.get(4).why().isPresent());
    }
    assertTrue(table.notes().get(0).contains("week 12"), table.notes().toString());
  }

  /** Kale in its bed is watered by the line: nothing is left for the can. */
  @Test
  void bedsWithDripline_areNotCarriedTo() {
    assertTrue(byCan("").isEmpty());
  }
}
