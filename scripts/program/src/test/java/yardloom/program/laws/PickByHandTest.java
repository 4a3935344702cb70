package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.table.Cell;

/** Picking and water in the calendar: the days that the tables of harvest and water have. */
class PickByHandTest {
  /** Four climates; the two without frost dates are without, or have them said. */
  private static String yard(String climate, String frost) {
    return """
        plan 'Pick', units: 'us', date: '2027-03-30'
        site 'There', latitude: 38.deg, longitude: -95.deg, zone: 'America/Chicago'
        climate '%s'
        %s
        lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
        bed('b', rect(4.ft, 4.ft, 24.ft, 4.ft), use: 'perennial') { plant 'garden strawberry'; plant 'red currant', spacing: 4.ft }
        bed('a', rect(4.ft, 12.ft, 24.ft, 4.ft), use: 'annual') { plant 'kale'; plant 'tomato' }
        tree('one', point(44.ft, 20.ft), crown: 9.ft, height: 9.ft, standing: false) { species 'apple (dwarf)' }
        work crew: 2, hoursPerDay: 6, start: '2027-04-01'
        """
        .formatted(climate, frost);
  }

  private static Drawn drawn(String climate, String frost) {
    return Drawn.of(yard(climate, frost.isEmpty() ? "" : frost(frost)));
  }

  private static String frost(String days) {
    String[] both = days.split(" ");
    return "frost last: '" + both[0] + "', first: '" + both[1] + "', source: 'by hand'";
  }

  /**
   * A table gives months, the calendar days: every month of a day is one of the table's, and every
   * month of the table has a day, but for months too hot to pick in.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "urbana-il, 05-06 10-14",
    "seattle-wa, 03-24 11-17",
    "phoenix-az, 02-10 12-05",
    "san-francisco-ca, ''",
  })
  void daysOfPicking_areInTheMonthsOfTheHarvest(String climate, String frost) {
    Drawn yard = drawn(climate, frost);
    for (String kind :
        List.of("garden strawberry", "red currant", "kale", "tomato", "apple (dwarf)")) {
      Set<String> table = new TreeSet<>();
      for (List<Cell> row : yard.tables().get("harvest-months").rows()) {
        boolean picked =
            List.of(row.get(1).value().map(Object::toString).orElse("").split(", ")).contains(kind);
        if (picked) {
          table.add(row.get(0).value().orElseThrow().toString());
        }
      }
      Set<String> calendar = new TreeSet<>();
      for (DiaryEntry entry : picks(yard, kind)) {
        for (LocalDate d = entry.from(); !d.isAfter(entry.until()); d = d.plusDays(1)) {
          String month = d.getMonth().name();
          calendar.add(month.charAt(0) + month.substring(1, 3).toLowerCase(java.util.Locale.ROOT));
        }
      }
      assertTrue(calendar.containsAll(table), kind + ": " + calendar + " for " + table);
      calendar.removeAll(table);
      boolean rests = !calendar.isEmpty();
      assertFalse(
          rests && !yard.tables().get("care").toString().contains("too hot"),
          kind + " " + calendar);
    }
  }

  private static List<DiaryEntry> picks(Drawn yard, String kind) {
    return yard.outcome().results().all(DiaryEntry.FACT).stream()
        .filter(e -> e.toString().contains("Pick: " + kind))
        .toList();
  }

  /** Water for new plants changes its pace on the days of the table of the first weeks. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "urbana-il, 05-06 10-14",
    "seattle-wa, 03-24 11-17",
    "phoenix-az, 02-10 12-05",
    "san-francisco-ca, ''",
  })
  void taper_changesOnTheDaysOfTheTable(String climate, String frost) {
    Drawn yard = drawn(climate, frost);
    List<String> ends = new ArrayList<>();
    for (List<Cell> row : yard.tables().get("first-weeks").rows()) {
      if (row.get(4).value().orElse("").toString().contains("every second")) {
        ends.add(
            yardloom.kernel.table.TableFormat.day(
                java.time.MonthDay.from((LocalDate) row.get(3).value().orElseThrow())));
      }
    }
    String care = yard.tables().get("care").rows().toString();
    boolean all = ends.stream().allMatch(d -> care.contains("every second day until " + d));
    boolean rests = yard.tables().get("first-weeks").rows().toString().contains("it rests");
    assertTrue(!ends.isEmpty() && (all || rests), ends + " in " + care);
  }

  /** Planted in April 2027, an apple bears in its second year at the earliest, tomatoes at once. */
  @Test
  void youngTrees_areNotPicked() {
    Drawn yard = drawn("urbana-il", "05-06 10-14");
    List<DiaryEntry> apples = picks(yard, "apple (dwarf)");
    assertTrue(apples.stream().noneMatch(e -> e.from().getYear() == 2027), apples.toString());
    assertFalse(picks(yard, "tomato").isEmpty());
    assertEquals(2027, picks(yard, "tomato").get(0).from().getYear());
  }
}
