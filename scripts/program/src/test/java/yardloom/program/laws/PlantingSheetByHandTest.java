package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.draw.Style;
import yardloom.kernel.problem.PlanException;

/** From plan text to the planting sheet and the household's page. */
class PlantingSheetByHandTest {
  private static final String YARD =
      """
      plan 'Sheet by hand', units: 'us', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      bed('guild', rect(4.ft, 4.ft, 13.ft, 4.ft), use: 'perennial') {
        plant 'red currant', spacing: 4.ft, share: 0.65
        plant 'sage', spacing: 2.ft
      }
      bed('more', rect(4.ft, 12.ft, 8.ft, 4.ft), use: 'perennial') { plant 'sage', spacing: 2.ft }
      bed('salad', rect(4.ft, 20.ft, 5.ft, 3.ft), use: 'annual') { plant 'lettuce', spacing: 12.inch }
      bed('old', rect(24.ft, 4.ft, 9.ft, 3.ft), use: 'perennial') { plant 'rhubarb', spacing: 3.ft, standing: true }
      tree('one', point(14.725.ft, 6.ft), crown: 8.ft, height: 9.ft) { species 'apple (dwarf)' }
      tree('two', point(40.ft, 30.ft), crown: 13.ft, height: 12.ft) { species 'apple (semi-dwarf)' }
      compostBay 'bay', rect(50.ft, 40.ft, %s, 4.ft)
      """;

  private static final Drawn DRAWN = Drawn.of(YARD.formatted("6.ft"));

  /**
   * Currants at 4 ft in 0.65 of 13 ft, 8.45 ft, by 4 ft: two. Sage at 2 ft in the other 4.55 ft: 2
   * × 2, each 1.41 ft from the apple amid them, more than half of its spread of 2 ft; in the second
   * bed 4 × 2: twelve. Two apples share their letters, so they are numbered. What stands already is
   * not bought.
   */
  @ParameterizedTest(name = "{0}: {2} {1}")
  @CsvSource({
    "RR, red currant, 2, bare root, 18 in, 48 in, ''",
    "SO, sage, 12, pot, 4 in, 24 in, ''",
    "LS, lettuce, 15, plug, '', 12 in, ''",
    "RH, rhubarb, 0, '', '', 36 in, 3 stand already",
    "MD1, apple (dwarf), 1, bare root, 4 ft, '', ''",
    "MD2, apple (semi-dwarf), 1, bare root, 4 ft, '', ''",
  })
  void schedule_saysWhatANurseryQuotesFrom(
      String key,
      String common,
      String count,
      String stock,
      String size,
      String spacing,
      String notes) {
    assertEquals(common, DRAWN.printed("plant-schedule", key, "common"));
    assertEquals(count, DRAWN.printed("plant-schedule", key, "count"));
    assertEquals(stock, DRAWN.printed("plant-schedule", key, "stock"));
    assertEquals(size, DRAWN.printed("plant-schedule", key, "size"));
    assertEquals(spacing, DRAWN.printed("plant-schedule", key, "spacing"));
    assertEquals(notes, DRAWN.printed("plant-schedule", key, "notes"));
  }

  /** Every key of the schedule stands on the planting sheet with the count of its bed. */
  @Test
  void keys_standOnThePlanWithTheirCounts() {
    String said =
        DRAWN.outcome().layers().entrySet().stream()
            .filter(e -> e.getKey().id().equals("planting.keys"))
            .flatMap(e -> e.getValue().marks().stream())
            .map(m -> ((Mark.Label) m).text())
            .sorted()
            .toList()
            .toString();
    assertEquals("[1 MD1, 1 MD2, 15 LS, 2 RR, 4 SO, 3 RH, 8 SO]", said);
  }

  /** Without colour: no two symbols agree in outline, hatch, and the form of their middle. */
  @Test
  void symbols_areToldApartWithoutColour() {
    Map<String, String> looks = new TreeMap<>();
    DRAWN.outcome().layers().entrySet().stream()
        .filter(e -> e.getKey().id().equals("planting.plants"))
        .flatMap(e -> e.getValue().legend().stream())
        .forEach(
            e -> {
              String look =
                  e.symbol() + look(e.style()) + e.ring().map(PlantingSheetByHandTest::look);
              String before = looks.put(look, e.text());
              assertEquals(null, before, e.text());
            });
    assertTrue(looks.size() >= 4, looks.toString());
  }

  /** What ink shows of a style without colour. */
  private static String look(Style style) {
    String filled = style.fill().equals(style.stroke()) ? " full" : " open";
    return " "
        + style.hatch()
        + " "
        + style.strokeMm()
        + " "
        + style.dash()
        + (style.fill().isEmpty() ? "" : filled);
  }

  @Test
  void sheet_hasTheFirstYearsASectionThroughTheGuildAndTheMonths() {
    SheetPlan sheet =
        DRAWN.outcome().sheets().stream().filter(s -> s.id().equals("planting")).findFirst().get();
    List<String> figures =
        sheet.panels().stream()
            .filter(Panel.Figure.class::isInstance)
            .map(p -> ((Panel.Figure) p).title())
            .toList();
    assertEquals(
        List.of(
            "In the first and the fifth year",
            "Section along guild",
            "In bloom and picked, once grown"),
        figures);
  }

  /** Rhubarb stands; what is planted on 30 March is counted 45 days later, 14 May. */
  @Test
  void losses_areCountedOnDay45_andReplantedInTheNextDaysOfThatKind() {
    assertFalse(DRAWN.rows("losses").contains("rhubarb"));
    assertEquals("12", DRAWN.printed("losses", "sage", "planted"));
    assertEquals("2027-05-14", DRAWN.printed("losses", "sage", "count-on"));
    assertEquals("2027-05-14", DRAWN.printed("losses", "sage", "again"));
  }

  @Test
  void bay_isDrawnAndNamed_andTooSmallAOneIsRefused() {
    assertTrue(
        DRAWN.tables().get("compost-bay").notes().contains("On the plan: bay."),
        DRAWN.tables().get("compost-bay").notes().toString());
    PlanException small = assertThrows(PlanException.class, () -> Drawn.of(YARD.formatted("2.ft")));
    assertTrue(small.getMessage().contains("covers 8.0 sq ft"), small.getMessage());
  }
}
