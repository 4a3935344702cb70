package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Mass;

/**
 * From plan text to the printed harvest of each month, by hand.
 *
 * <p>Rhubarb is picked lightly in year 2 and fully from year 3 (University of Illinois Extension,
 * read); its 2 to 6 lb a plant, the 100 to 150 lb of a peach, its years 3 to 5 and both seasons are
 * the catalogue's, from memory.
 */
class HarvestMonthsByHandTest {
  private static final Plugins PLUGINS =
      PluginLoader.of(
          Drawn.plugins().all().stream()
              .filter(p -> Set.of("site", "climate", "planting").contains(p.info().id()))
              .toList());

  private static String yard(String last, boolean standing) {
    return """
        plan 'Harvest by hand', units: 'us'
        site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
        frost last: '%s', first: '10-14', source: 'demo figures'
        lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 70.ft), point(0.ft, 70.ft)])
        bed('R', rect(10.ft, 10.ft, 12.ft, 6.ft), use: 'perennial') {
          plant 'rhubarb', spacing: 4.ft, rowSpacing: 6.ft
        }
        tree('P', point(50.ft, 40.ft), crown: 13.5.ft, height: 9.ft, leaf: 'deciduous', standing: %s) { species 'peach' }
        """
        .formatted(last, standing);
  }

  private static Table table(String script, String id) {
    Outcome outcome = Drawn.study(script, PLUGINS);
    return outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  private static double pounds(Table table, String month, String column) {
    int at = table.columns().stream().map(Column::id).toList().indexOf(column);
    for (List<Cell> row : table.rows()) {
      if (row.get(0).value().orElseThrow().equals(month)) {
        return row.get(at).value().map(v -> ((Mass) v).pounds()).orElse(0.0);
      }
    }
    throw new IllegalArgumentException(month);
  }

  /**
   * Last frost 25 April. Rhubarb, three crowns 4 ft apart in 12 ft: 6 to 18 lb, likely 12, over
   * days 0 to 60: 6 in April, 31 in May, 24 in June. The peach, 100 to 150 lb, likely 125, over
   * days 80 to 125: 14 July to 28 August, 18 and 28 days.
   */
  @Test
  void months_areTheDaysOfTheSeasonsInThem() {
    Table table = table(yard("04-25", false), "harvest-months");
    assertEquals(6 * 31 / 61.0, pounds(table, "May", "low"), 1e-6);
    assertEquals(12 * 31 / 61.0, pounds(table, "May", "likely"), 1e-6);
    assertEquals(18 * 31 / 61.0, pounds(table, "May", "high"), 1e-6);
    assertEquals(12 * 6 / 61.0, pounds(table, "Apr", "likely"), 1e-6);
    assertEquals(12 * 24 / 61.0, pounds(table, "Jun", "likely"), 1e-6);
    assertEquals(100 * 18 / 46.0, pounds(table, "Jul", "low"), 1e-6);
    assertEquals(150 * 28 / 46.0, pounds(table, "Aug", "high"), 1e-6);
    assertEquals(0, pounds(table, "Sep", "high"), 1e-6);
  }

  /** Rhubarb: nothing, half, all. Peach of years 3 to 5: nothing, nothing, a third. */
  @Test
  void perennials_startSmall() {
    Table table = table(yard("04-25", false), "harvest-months");
    assertEquals(0, pounds(table, "May", "year-1"), 1e-6);
    assertEquals(0.5 * 12 * 31 / 61, pounds(table, "May", "year-2"), 1e-6);
    assertEquals(12 * 31 / 61.0, pounds(table, "May", "year-3"), 1e-6);
    assertEquals(0, pounds(table, "Jul", "year-2"), 1e-6);
    assertEquals(125 * 18 / 46.0 / 3, pounds(table, "Jul", "year-3"), 1e-6);
    Table old = table(yard("04-25", true), "harvest-months");
    assertEquals(125 * 18 / 46.0, pounds(old, "Jul", "year-1"), 1e-6, "what stands bears");
  }

  /**
   * Houston's days reach 90 °F from June to September (91, 94, 95, 90): kale is picked from day 35
   * after 10 February, 17 March, to day 48 after 5 December, 22 January, of which 17 March to 31
   * May and October to January are cool enough: 15 + 30 + 31 and 31 + 30 + 31 + 22 = 190 days.
   */
  @Test
  void coolSeasonAnnuals_restInTheHeat() {
    String houston =
        """
        plan 'Heat', units: 'us'
        site 'Houston', latitude: 29.76.deg, longitude: -95.37.deg, zone: 'America/Chicago'
        climate 'houston-tx'
        frost last: '02-10', first: '12-05', source: 'demo figures'
        lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
        bed('K', rect(10.ft, 10.ft, 20.ft, 5.ft), use: 'annual') { plant 'kale' }
        """;
    Table table = table(houston, "harvest-months");
    // 100 sq ft at 0.23 to 0.413 lb a square foot: 41.3 lb at most.
    assertEquals(100 * 0.413 * 31 / 190, pounds(table, "May", "high"), 1e-6);
    assertEquals(100 * 0.23 * 15 / 190, pounds(table, "Mar", "low"), 1e-6);
    assertEquals(100 * 0.413 * 22 / 190, pounds(table, "Jan", "high"), 1e-6);
    assertEquals(0, pounds(table, "Jul", "high"), 1e-6);
  }

  /** Wherever the frost lies, the months add up to the year. */
  @Property(tries = 15)
  void months_addUpToTheYear(@ForAll @IntRange(min = 1, max = 6) int month) {
    Table table = table(yard(String.format("%02d-17", month), false), "harvest-months");
    for (String column : List.of("low", "likely", "high")) {
      double sum =
          table.rows().stream()
              .map(r -> r.get(0).value().orElseThrow().toString())
              .collect(Collectors.summingDouble(m -> pounds(table, m, column)));
      double year = column.equals("low") ? 6 + 100 : column.equals("high") ? 18 + 150 : 12 + 125;
      assertEquals(year, sum, 1e-6, column);
    }
  }
}
