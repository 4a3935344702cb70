package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.program.cli.Samples;

/**
 * Whatever the soil and the number of zones: nothing waters before the evening or after sunrise,
 * one valve is open at a time, and what cannot be so is a finding.
 */
class NightsLawTest {
  private static final String[] SOILS = {"sand", "loam", "clay loam", "silty clay", "clay"};
  private static final int EVENING = 18 * 60;
  private static final int DAY = 24 * 60;

  private record Turn(int from, int until) {}

  private static int minutes(String clock) {
    return LocalTime.parse(clock).toSecondOfDay() / 60;
  }

  private static int number(String text) {
    return text.isEmpty() ? 0 : Integer.parseInt(text);
  }

  /** Of one row, in minutes after six in the evening. */
  private static List<Turn> turns(DataRow row) {
    List<Turn> turns = new ArrayList<>();
    int at = Math.floorMod(minutes(row.text("start")) - EVENING, DAY);
    for (int turn = 0; turn < number(row.text("turns")); turn++) {
      turns.add(new Turn(at, at + number(row.text("minutes"))));
      at += number(row.text("minutes")) + number(row.text("soak"));
    }
    return turns;
  }

  private static void holds(List<Turn> night, int sunrise, String where) {
    int end = Math.floorMod(sunrise - EVENING, DAY) - 10;
    List<Turn> inOrder =
        night.stream().sorted((a, b) -> Integer.compare(a.from(), b.from())).toList();
    for (int t = 0; t < inOrder.size(); t++) {
      assertTrue(inOrder.get(t).until() <= end, where + ": by day " + inOrder);
      assertTrue(
          t == 0 || inOrder.get(t - 1).until() <= inOrder.get(t).from(),
          where + ": two at once " + inOrder);
    }
  }

  /**
   * The earliest sunrise of a month in minutes of the clock, by NOAA's General Solar Position
   * Calculations (formulas from memory), some minutes late to allow for their roundness.
   */
  private static int sunrise(Month month) {
    int earliest = DAY;
    for (LocalDate day = LocalDate.of(2026, month, 1);
        day.getMonth() == month;
        day = day.plusDays(1)) {
      double year = 2 * Math.PI / 365 * (day.getDayOfYear() - 1);
      double equation =
          229.18
              * (0.000075
                  + 0.001868 * Math.cos(year)
                  - 0.032077 * Math.sin(year)
                  - 0.014615 * Math.cos(2 * year)
                  - 0.040849 * Math.sin(2 * year));
      double declination =
          0.006918
              - 0.399912 * Math.cos(year)
              + 0.070257 * Math.sin(year)
              - 0.006758 * Math.cos(2 * year)
              + 0.000907 * Math.sin(2 * year);
      double latitude = Math.toRadians(40.11);
      double hour =
          Math.acos(
              Math.cos(Math.toRadians(90.833)) / (Math.cos(latitude) * Math.cos(declination))
                  - Math.tan(latitude) * Math.tan(declination));
      double utc = 720 - 4 * (-88.21 + Math.toDegrees(hour)) - equation;
      int offset =
          ZoneId.of("America/Chicago").getRules().getOffset(day.atTime(12, 0)).getTotalSeconds();
      earliest = Math.min(earliest, (int) Math.round(utc) + offset / 60);
    }
    return earliest + 5;
  }

  private static Drawn yard(String soil, List<Double> inches, double gph) {
    StringBuilder script =
        new StringBuilder(
            """
            plan 'Law', units: 'us'
            site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
            climate 'urbana-il'
            soilTexture '%s', organic: 3
            supply flow: 2.gpm
            lot([point(0.ft, 0.ft), point(199.ft, 0.ft), point(199.ft, 99.ft), point(0.ft, 99.ft)])
            """
                .formatted(soil));
    for (int b = 0; b < inches.size(); b++) {
      StringBuilder need = new StringBuilder();
      for (int m = 0; m < 12; m++) {
        need.append(m == 0 ? "" : ", ")
            .append(String.format(Locale.ROOT, "%.3f.inch", inches.get(b) * (m % 6 + 1) / 6));
      }
      script.append(
          String.format(
              Locale.ROOT,
              """
              bed('bed %d', rect(10.ft, %d.ft, %d.ft, 3.ft), use: 'annual') {
                drip emitter: %.3f.gph, spacing: 12.inch, rowSpacing: 18.inch
                waterNeed([%s], source: 'by hand')
              }
              """,
              b + 1,
              6 + 6 * b,
              70 + 10 * b,
              gph,
              need));
    }
    return Drawn.without(List.of("materials"), script.toString());
  }

  private static boolean isCrowded(Drawn drawn, String month) {
    return drawn.outcome().findings().stream()
        .anyMatch(f -> f.rule().equals("water.night") && f.text().startsWith("in " + month));
  }

  private static void lawOf(Drawn drawn) {
    Map<String, List<Turn>> nights = new TreeMap<>();
    for (DataRow row : DataTable.parse("timetable.csv", drawn.csv().get("timetable")).rows()) {
      nights.computeIfAbsent(row.text("month"), k -> new ArrayList<>()).addAll(turns(row));
    }
    for (Map.Entry<String, List<Turn>> night : nights.entrySet()) {
      Month month =
          Stream.of(Month.values())
              .filter(m -> m.toString().startsWith(night.getKey().toUpperCase(Locale.ROOT)))
              .findFirst()
              .orElseThrow();
      if (!isCrowded(drawn, night.getKey())) {
        holds(night.getValue(), sunrise(month), night.getKey());
      }
    }
  }

  @Property(tries = 12, seed = "20261128")
  void zonesShareTheNight_onAnySoil(
      @ForAll @IntRange(min = 0, max = 4) int soil,
      @ForAll @IntRange(min = 1, max = 6) int beds,
      @ForAll @DoubleRange(min = 0.5, max = 7) double inches,
      @ForAll @DoubleRange(min = 0.3, max = 1.1) double gph) {
    List<Double> needs = new ArrayList<>();
    for (int b = 0; b < beds; b++) {
      needs.add(inches * (b % 3 + 1) / 3);
    }
    lawOf(yard(SOILS[soil], needs, gph));
  }

  /** On clay, 3 zones of 4.5 in a month: turns of a quarter hour, hours apart, all at night. */
  @Test
  void clay_isWateredOftenerAndByNight() {
    Drawn drawn = yard("clay", List.of(4.5, 4.4, 4.3), 0.6);
    assertEquals(3, drawn.rows("zones").size());
    assertTrue(drawn.column("timetable", "turns", 0).stream().anyMatch(t -> t > 1));
    assertTrue(!isCrowded(drawn, "Jun"));
    lawOf(drawn);
    double hours = drawn.exact("timetable", "Jun", "set");
    assertEquals(drawn.exact("timetable", "Jun", "need"), hours, 0.05 * hours);
  }

  /** More than the night has: the zones run by day, and a finding says so. */
  @Test
  void whatTheNightCannotHold_isAFinding() {
    Drawn drawn = yard("clay", List.of(20.0, 19.0, 18.0, 17.0, 16.0, 15.0), 1.0);
    assertTrue(isCrowded(drawn, "Jun"), drawn.outcome().findings().toString());
  }

  static Stream<String> plans() {
    return Samples.plans().stream();
  }

  /** No sample needs the day, in its timetable or in its first weeks. */
  @ParameterizedTest
  @MethodSource("plans")
  void samples_waterByNight(String plan) {
    assertTrue(!Samples.drawn(plan).get("findings.txt").contains("water.night"));
    for (String table : List.of("timetable", "first-weeks-timer")) {
      String text = Samples.drawn(plan).get("tables/" + table + ".csv");
      List<DataRow> rows = text == null ? List.of() : DataTable.parse(table, text).rows();
      for (DataRow row : rows) {
        if (!row.text("start").isEmpty()) {
          holds(turns(row), 7 * 60 + 30, plan + " " + row.text("group"));
        }
      }
    }
  }
}
