package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.program.cli.Samples;

/** What two tables of a sample say of one act, they say of one day. */
class OneDateForOneActTest {
  static Stream<String> plans() {
    return Samples.plans().stream();
  }

  private static List<DataRow> rows(String plan, String table) {
    String file = "tables/" + table + ".csv";
    String text = Samples.drawn(plan).get(file);
    return text == null ? List.of() : DataTable.parse(file, text).rows();
  }

  /** Kinds by day: of the crew's visits and of the household's calendar. */
  @ParameterizedTest
  @MethodSource("plans")
  void daysOfPlanting_areThoseOfTheVisits(String plan) {
    Map<String, Set<String>> visits = new TreeMap<>();
    for (DataRow row : rows(plan, "planting-visits")) {
      // "kale (sow or set out), apple (semi-dwarf) (bare root)": the last brackets say how.
      Set<String> kinds =
          Stream.of(row.text("kinds").split("(?<=\\)), "))
              .map(k -> k.replaceAll(" \\([^()]*\\)$", ""))
              .collect(Collectors.toCollection(TreeSet::new));
      visits.put(row.text("date"), kinds);
    }
    Map<String, Set<String>> care = new TreeMap<>();
    for (DataRow row : rows(plan, "care")) {
      if (row.text("what").equals("Plant")) {
        care.computeIfAbsent(row.text("from"), d -> new TreeSet<>())
            .addAll(List.of(row.text("plants").split(", ")));
        assertEquals(row.text("from"), row.text("until"));
      }
    }
    if (!visits.isEmpty()) {
      Map<String, Set<String>> flat = new TreeMap<>();
      visits.forEach(
          (day, kinds) ->
              flat.put(
                  day,
                  kinds.stream()
                      .flatMap(k -> Stream.of(k.split(", ")))
                      .collect(Collectors.toCollection(TreeSet::new))));
      assertEquals(flat, care);
    }
  }

  /** Days on which annuals are sown again: those of the table of planting times. */
  @ParameterizedTest
  @MethodSource("plans")
  void daysOfSowingAgain_areThoseOfThePlantingTimes(String plan) {
    Set<String> times = new TreeSet<>();
    for (DataRow row : rows(plan, "planting-times")) {
      times.add(
          row.text("plant")
              + " "
              + row.text("how").toLowerCase(java.util.Locale.ROOT)
              + row.text("from")
              + row.text("until"));
    }
    List<String> said = new ArrayList<>();
    for (DataRow row : rows(plan, "care")) {
      if (row.text("how").contains("see When to plant")) {
        for (String plant : row.text("plants").split(", ")) {
          said.add(
              plant
                  + " "
                  + row.text("what").toLowerCase(java.util.Locale.ROOT)
                  + row.text("from")
                  + row.text("until"));
        }
      }
    }
    assertTrue(times.containsAll(said), said + " against " + times);
  }

  /** Forty-five days of water from a day of planting end in both tables on one day. */
  @ParameterizedTest
  @MethodSource("plans")
  void daysOfWaterForNewPlants_areThoseOfTheTaper(String plan) {
    Map<String, String> ends = new TreeMap<>();
    for (DataRow row : rows(plan, "care")) {
      if (row.text("what").equals("Water new plants")) {
        ends.put(row.text("from"), row.text("until"));
      }
    }
    // Without dates of frost there is no calendar to agree with.
    assumeFalse(ends.isEmpty());
    Map<String, String> first = new TreeMap<>();
    Map<String, String> last = new TreeMap<>();
    for (DataRow row : rows(plan, "first-weeks")) {
      String who = row.text("in") + " " + row.text("plants");
      first.putIfAbsent(who, row.text("from"));
      last.merge(who, row.text("until"), (a, b) -> a.compareTo(b) > 0 ? a : b);
    }
    boolean rests =
        rows(plan, "first-weeks").stream().anyMatch(r -> r.text("when").contains("it rests"));
    for (String who : first.keySet()) {
      assertTrue(ends.containsKey(first.get(who)), who + " from " + first.get(who));
      if (!rests) {
        assertEquals(ends.get(first.get(who)), last.get(who), who);
      }
    }
  }
}
