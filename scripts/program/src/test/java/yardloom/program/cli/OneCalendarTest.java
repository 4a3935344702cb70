package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Laws over all demos: two tables never give two dates for one act, and dates have one style. */
class OneCalendarTest {
  private static final Pattern ISO = Pattern.compile("\\b20\\d\\d-\\d\\d-\\d\\d\\b");
  private static final Pattern WRITTEN =
      Pattern.compile("\\b\\d{1,2} (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b");

  static List<String> plans() {
    return Samples.plans();
  }

  private static List<DataRow> rows(Map<String, String> files, String table) {
    String text = files.get("tables/" + table + ".csv");
    return text == null ? List.of() : DataTable.parse(table, text).rows();
  }

  /** Each phase of planting begins with a visit, the first of them with the first. */
  @ParameterizedTest
  @MethodSource("plans")
  void planting_hasOneDateInPhasesAndVisits(String plan) {
    Map<String, String> files = Samples.drawn(plan);
    List<String> visits =
        rows(files, "planting-visits").stream().map(row -> row.text("date")).toList();
    List<String> phases =
        rows(files, "materials-phases").stream()
            .filter(row -> row.text("phase").startsWith("Plant"))
            .map(row -> row.text("from"))
            .toList();
    if (!visits.isEmpty()) {
      assertEquals(visits.get(0), phases.get(0), plan);
      assertTrue(visits.containsAll(phases), plan + ": " + phases + " of " + visits);
    }
  }

  /** What a visit plants is in season by the table of times, as what it says. */
  @ParameterizedTest
  @MethodSource("plans")
  void visits_fallIntoTheTimesOfTheirKinds(String plan) {
    Map<String, String> files = Samples.drawn(plan);
    Map<String, DataRow> times = new TreeMap<>();
    for (DataRow row : rows(files, "planting-times")) {
      times.put(row.text("plant") + " (" + row.text("how") + ")", row);
    }
    for (DataRow visit : rows(files, "planting-visits")) {
      MonthDay day = MonthDay.from(LocalDate.parse(visit.text("date")));
      for (String kind : visit.text("kinds").split("(?<=\\)), ")) {
        DataRow row = times.get(kind);
        assertTrue(row != null, plan + ": " + kind + " is not in " + times.keySet());
        MonthDay from = MonthDay.parse(row.text("from"));
        MonthDay until = MonthDay.parse(row.text("until"));
        boolean after = day.compareTo(from) >= 0;
        boolean before = day.compareTo(until) <= 0;
        boolean inside = from.compareTo(until) <= 0 ? after && before : after || before;
        assertTrue(inside, plan + ": " + kind + " on " + day);
      }
    }
  }

  /** A table of frost and the notes of planting have the same days. */
  @ParameterizedTest
  @MethodSource("plans")
  void frost_isOneAndTheSameInEveryTable(String plan) {
    Map<String, String> files = Samples.drawn(plan);
    List<String> used = new ArrayList<>();
    for (DataRow row : rows(files, "frost")) {
      if (row.text("what").contains("used in this plan")) {
        used.add(row.text("half"));
      }
    }
    boolean times = !rows(files, "planting-times").isEmpty();
    assertTrue(!times || used.size() == 2, plan + " plants by frost that no table has");
  }

  /** CSV has ISO 8601 only; on paper a date is written, but for what the plan's own texts say. */
  @ParameterizedTest
  @MethodSource("plans")
  void dates_haveOneStyleOnPaperAndOneInFiles(String plan) {
    Samples.drawn(plan)
        .forEach(
            (name, text) -> {
              if (name.endsWith(".csv")) {
                DataTable table = DataTable.parse(name, text);
                for (DataRow row : table.rows()) {
                  for (String column : List.of("from", "until", "to", "date", "half", "order-by")) {
                    String cell = row.cells().getOrDefault(column, "");
                    Matcher written = WRITTEN.matcher(cell);
                    assertTrue(!written.find(), plan + " " + name + ": " + cell);
                  }
                }
              } else if (name.endsWith(".svg") || name.endsWith("findings.txt")) {
                Matcher iso = ISO.matcher(text.replaceAll("2026-03-01", ""));
                assertTrue(!iso.find(), () -> plan + " " + name + " has " + iso.group());
              }
            });
  }
}
