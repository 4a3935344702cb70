package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * What holds of water in every yard, from plan text to printed tables: mass, tanks, pressure, the
 * first weeks and the timetable. Plans are small and drawn without sun and materials, which water
 * does not need.
 */
class WaterLawsTest {
  private static final List<String> LEFT_OUT = List.of("sun", "materials");
  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };
  private static final double EFFICIENCY = 0.81;

  private static String text(String text, Object... values) {
    return String.format(Locale.ROOT, text, values);
  }

  private static Drawn drawn(String script) {
    return Drawn.without(LEFT_OUT, script);
  }

  /** Level ground, a tap, one long bed and a short one behind it. */
  private static String beds(double longFt, double gph, String supply, String more) {
    return text(
            """
            plan 'Law', units: 'us'
            site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
            climate 'urbana-il'
            lot([point(0.ft, 0.ft), point(199.ft, 0.ft), point(199.ft, 99.ft), point(0.ft, 99.ft)])
            tap 'bib', point(2.ft, 2.ft)
            roof 'barn', rect(2.ft, 60.ft, 20.ft, 15.ft), surface: 'metal'
            bed('long', rect(10.ft, 20.ft, %.3f.ft, 3.ft), use: 'annual') {
              drip emitter: %.3f.gph, spacing: 12.inch, rowSpacing: 18.inch
              plant 'kale'
            }
            bed('short', rect(10.ft, 30.ft, 7.ft, 4.ft), use: 'annual') {
              drip emitter: %.3f.gph, spacing: 12.inch, rowSpacing: 16.inch
              plant 'tomato'
            }
            """,
            longFt, gph, 1.3 * gph)
        + supply
        + more;
  }

  /**
   * What a zone gives its beds give, and what enters its first pipes; pressure falls on the way.
   */
  @Property(tries = 12, seed = "20261127")
  void zones_keepMass_andPressureFallsOnTheWay(
      @ForAll @DoubleRange(min = 10, max = 150) double longFt,
      @ForAll @DoubleRange(min = 0.3, max = 1.1) double gph,
      @ForAll @DoubleRange(min = 30, max = 70) double psi) {
    Drawn drawn =
        drawn(beds(longFt, gph, text("supply flow: 9.gpm, pressure: %.3f.psi\n", psi), ""));
    double zones = drawn.sum("zones", "flow");
    assertEquals(zones, drawn.sum("irrigation", "flow"), zones * 1e-9);
    List<Double> flows = drawn.column("lines", "flow", 0);
    List<Double> ends = drawn.column("lines", "end", 0);
    List<String> after = drawn.texts("lines", "after");
    double first = 0;
    for (int r = 0; r < flows.size(); r++) {
      boolean isFirst = after.get(r).equals("valve");
      first += isFirst ? flows.get(r) : 0;
      if (!isFirst && drawn.rows("zones").size() == 1) {
        assertTrue(ends.get(r) < ends.get(Integer.parseInt(after.get(r)) - 1), "run " + r);
      }
    }
    assertEquals(zones, first, zones * 1e-9);
  }

  /** More pressure at the tap never takes water or pressure from a bed. */
  @Property(tries = 8, seed = "20261127")
  void morePressure_neverGivesLess(
      @ForAll @DoubleRange(min = 10, max = 150) double longFt,
      @ForAll @DoubleRange(min = 8, max = 40) double psi,
      @ForAll @DoubleRange(min = 1, max = 20) double more) {
    String supply = "supply flow: 9.gpm, pressure: %.3f.psi\nheadAssembly regulator: 30.psi\n";
    Drawn low = drawn(beds(longFt, 0.8, text(supply, psi), ""));
    Drawn high = drawn(beds(longFt, 0.8, text(supply, psi + more), ""));
    for (String bed : List.of("long", "short")) {
      for (String column : List.of("flow", "least", "inlet")) {
        double before = low.exact("drip-hydraulics", bed, column);
        assertTrue(
            high.exact("drip-hydraulics", bed, column) >= before * (1 - 1e-6), bed + " " + column);
      }
    }
  }

  private static String tank(double heightFt, double standFt) {
    return text(
        "tank('butt', point(30.ft, 10.ft), roof: 'barn') { round diameter: 3.ft, height: %.3f.ft ;"
            + " stand %.3f.ft }\nsupply tank: 'butt'\n",
        heightFt, standFt);
  }

  /**
   * The tank that is bigger gives as much or more, in the table of sizes and as the plan's own;
   * what its months give is what its year gives; and it drives as much or more when full.
   */
  @Property(tries = 8, seed = "20261127")
  void biggerTank_neverGivesLess(
      @ForAll @DoubleRange(min = 1.5, max = 4) double heightFt,
      @ForAll @DoubleRange(min = 1, max = 3) double standFt,
      @ForAll @DoubleRange(min = 0.2, max = 5) double moreFt,
      @ForAll @DoubleRange(min = 10, max = 60) double longFt) {
    Drawn small = drawn(beds(longFt, 0.8, tank(heightFt, standFt), ""));
    Drawn big = drawn(beds(longFt, 0.8, tank(heightFt + moreFt, standFt), ""));
    List<Double> used = small.column("tank-sizes", "used", 0);
    for (int i = 1; i < used.size(); i++) {
      assertTrue(used.get(i) >= used.get(i - 1) * (1 - 1e-9), "size " + i);
    }
    double own = ownUse(small);
    assertEquals(own, small.sum("tank-year", "given"), own * 1e-9);
    assertTrue(ownUse(big) >= own * (1 - 1e-9), own + " of the smaller, " + ownUse(big));
    assertTrue(
        big.exact("tank-levels", "full", "flow")
            >= small.exact("tank-levels", "full", "flow") * (1 - 1e-6));
    List<Double> flows = small.column("tank-levels", "flow", 0).subList(0, 3);
    assertTrue(flows.get(0) > flows.get(1) && flows.get(1) > flows.get(2), flows.toString());
  }

  private static double ownUse(Drawn drawn) {
    int row = drawn.texts("tank-sizes", "of").indexOf("butt");
    return drawn.column("tank-sizes", "used", 0).get(row);
  }

  /**
   * What the timer brings in days 1 to 45 is what the table of new plants asks, and at most a
   * minute a turn more.
   */
  @Property(tries = 8, seed = "20261127")
  void firstWeeks_bringTheTaper(
      @ForAll @DoubleRange(min = 4, max = 60) double longFt,
      @ForAll @DoubleRange(min = 0.3, max = 1.1) double gph,
      @ForAll @IntRange(min = 100, max = 130) int day) {
    String start = LocalDate.ofYearDay(2026, day).toString();
    Drawn drawn =
        drawn(
            text(
                """
                plan 'Law', units: 'us'
                site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
                climate 'urbana-il'
                soilTexture 'loam', organic: 3
                frost last: '04-25', first: '10-14', source: 'by hand'
                work crew: 2, hoursPerDay: 6, start: '%s'
                lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
                bed('long', rect(10.ft, 20.ft, %.3f.ft, 3.ft), use: 'annual') {
                  drip emitter: %.3f.gph, spacing: 12.inch, rowSpacing: 18.inch
                  plant 'kale'
                }
                """,
                start, longFt, gph));
    List<Double> each = drawn.column("first-weeks", "each", 0);
    List<Double> minutes = drawn.column("first-weeks-timer", "minutes", 0);
    List<Double> turns = drawn.column("first-weeks-timer", "turns", 0);
    // The dripline lies a day or two after the kale, within the first step.
    assertEquals(3, each.size());
    assertEquals(3, minutes.size());
    keysFollowTheDripline(drawn);
    double litresAMinute = drawn.exact("irrigation", "long", "flow") / 60;
    for (int i = 0; i < 3; i++) {
      double asked = each.get(i) * 1000;
      double brought = minutes.get(i) * turns.get(i) * litresAMinute;
      assertTrue(brought >= asked * (1 - 1e-9), brought + " L of " + asked);
      assertTrue(brought <= asked + turns.get(i) * litresAMinute, brought + " L of " + asked);
    }
  }

  /** No key is dated before the dripline lies, and no day of the 45 is left without an answer. */
  private static void keysFollowTheDripline(Drawn drawn) {
    LocalDate laid = LocalDate.parse(drawn.printed("materials-phases", "Drip", "to"));
    LocalDate next = LocalDate.parse(drawn.printed("first-weeks", "long", "from"));
    LocalDate end = next.plusDays(45);
    for (String row : drawn.rows("first-weeks-timer")) {
      if (!row.startsWith("Zone")) {
        LocalDate from = LocalDate.parse(drawn.printed("first-weeks-timer", row, "from"));
        boolean isKeyed = !drawn.printed("first-weeks-timer", row, "minutes").isEmpty();
        assertEquals(next, from, row);
        assertEquals(isKeyed, from.isAfter(laid), row + " against " + laid);
        next = LocalDate.parse(drawn.printed("first-weeks-timer", row, "until")).plusDays(1);
      }
    }
    assertEquals(end, next);
  }

  /**
   * In every month the timer brings the gross need of the bed within 5 percent; but for months that
   * ask for less than ten minutes in all, which would hardly fill the tubes.
   */
  @Property(tries = 10, seed = "20261127")
  void timetable_bringsTheGrossNeed(
      @ForAll @DoubleRange(min = 4, max = 90) double longFt,
      @ForAll @DoubleRange(min = 0.3, max = 1.1) double gph,
      @ForAll @DoubleRange(min = 0.05, max = 6) double inches,
      @ForAll @IntRange(min = 0, max = 2) int soil) {
    StringBuilder need = new StringBuilder();
    for (int m = 0; m < 12; m++) {
      need.append(m == 0 ? "" : ", ")
          .append(text("%.3f.inch", m % 4 == 3 ? 0 : inches * (m + 1) / 12));
    }
    Drawn drawn =
        drawn(
            text(
                """
                plan 'Law', units: 'us'
                site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
                climate 'urbana-il'
                soilTexture '%s', organic: 3
                lot([point(0.ft, 0.ft), point(199.ft, 0.ft), point(199.ft, 99.ft), point(0.ft, 99.ft)])
                bed('long', rect(10.ft, 20.ft, %.3f.ft, 3.ft), use: 'annual') {
                  drip emitter: %.3f.gph, spacing: 12.inch, rowSpacing: 18.inch
                  waterNeed([%s], source: 'by hand')
                }
                """,
                new String[] {"sandy loam", "loam", "clay"}[soil], longFt, gph, need));
    List<String> months =
        drawn.tables().containsKey("timetable") ? drawn.rows("timetable") : List.of();
    double litresAMinute = drawn.exact("irrigation", "long", "flow") / 60;
    for (int m = 0; m < 12; m++) {
      double gross = drawn.exact("water-by-month", MONTHS[m], "need") * 1000 / EFFICIENCY;
      if (gross / litresAMinute < 10) {
        continue;
      }
      assertTrue(months.contains(MONTHS[m]), MONTHS[m]);
      double hours = drawn.exact("timetable", MONTHS[m], "set");
      assertEquals(gross, hours * 60 * litresAMinute, 0.05 * gross, MONTHS[m]);
    }
  }
}
