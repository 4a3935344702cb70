package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Table;

/**
 * Two yards with tanks, from plan text to the printed tables: one barrel that feeds a bed by its
 * height, and three linked tanks with first flush and an overflow to a basin. No two inputs are
 * equal.
 *
 * <p>Sources: q = k × √p of plain outlets (EPANET 2.2 manual, chapter 3), 0.4331 psi to the foot of
 * water and 231 cubic inches to the gallon by definition; efficiency of drip 0.81, California Model
 * Water Efficient Landscape Ordinance; yield after spillage (Jenkins et al. 1978); TR-55 for the
 * curve number; daily watering of weeks 1 and 2, University of Minnesota Extension; least Kc 0.7,
 * FAO-56 Table 12.
 */
class TankYardsByHandTest {
  /** A year in which it rains so many millimetres on the days of the year that are asked for. */
  private static String rain(int mm, IntPredicate on) {
    StringBuilder text = new StringBuilder("date,rain_mm");
    for (int d = 1; d <= 365; d++) {
      text.append("\n").append(LocalDate.ofYearDay(2022, d)).append(on.test(d) ? "," + mm : ",0");
    }
    return text.toString();
  }

  private static final String RAIN =
      "dailyRain(fileText('rain.csv'), station: 'by hand', source: 'made up')\n";

  /**
   * Rain on every fourth day but for July and August: to 30 June (181), from 1 September (244) on.
   */
  private static final String BARREL =
      """
      plan 'One barrel', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      roof 'shed roof', rect(4.ft, 4.ft, 12.ft, 9.ft), surface: 'metal'
      tank('barrel', point(20.ft, 8.ft), roof: 'shed roof') {
        round diameter: 2.ft, height: 3.ft
        stand 30.inch
      }
      bucketTest volume: 5.gal, seconds: 50
      supply tank: 'barrel'
      frost last: '04-25', first: '10-14', source: 'by hand'
      work crew: 2, hoursPerDay: 6, start: '2026-04-20'
      bed('greens', rect(18.ft, 18.ft, 14.ft, 6.ft), use: 'annual') {
        drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 18.inch
        plant 'tomato'
        waterNeed([0.inch, 0.inch, 0.inch, 0.inch, 0.inch, 2.5.inch, 4.inch, 3.inch, 1.5.inch, 0.inch, 0.inch, 0.inch], source: 'by hand')
      }
      """
          + RAIN;

  /** 30 mm on every tenth day to 30 June (181) and from 8 September (251) on. */
  private static final String LINKED =
      """
      plan 'Linked tanks', units: 'metric'
      site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      soilTexture 'sandy loam', organic: 3
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 15.m), point(0.m, 15.m)])
      roof 'back', rect(1.m, 2.m, 9.m, 5.m), surface: 'metal'
      tank('row', point(12.m, 4.m), roof: 'back') {
        box width: 1.2.m, depth: 90.cm, height: 1.1.m, count: 3
        stand 20.cm
        serves(['berries'])
        inlet firstFlush: 0.7.mm, screened: 0.85
      }
      overflow(line([point(12.m, 4.m), point(15.m, 10.m)]), from: 'row', inside: 100.mm)
      basin('hollow', rect(14.m, 9.5.m, 3.m, 2.5.m), drains: 'back', depth: 20.cm, storm: 30.mm)
      tap 'bib', point(1.m, 9.m)
      bed('berries', rect(2.m, 10.m, 10.m, 3.m), use: 'perennial') {
        drip emitter: 2.lph, spacing: 33.cm, rowSpacing: 45.cm
        waterNeed([0.mm, 0.mm, 0.mm, 0.mm, 0.mm, 50.mm, 90.mm, 70.mm, 20.mm, 0.mm, 0.mm, 0.mm], source: 'by hand')
      }
      """
          + RAIN;

  private static Drawn barrel;
  private static Drawn linked;

  @BeforeAll
  static void draw() {
    barrel =
        Drawn.beside(
            BARREL, "rain.csv", rain(25, d -> d <= 181 && d % 4 == 1 || d >= 244 && d % 4 == 0));
    linked = Drawn.beside(LINKED, "rain.csv", rain(30, d -> d % 10 == 1 && (d <= 181 || d >= 251)));
  }

  private static double number(Drawn drawn, String table, String row, String column) {
    return Double.parseDouble(drawn.printed(table, row, column));
  }

  /** Four rows of 14 outlets at a head of feet of water; the line takes under one percent. */
  private static double gallonsAnHour(double feet) {
    return 56 * 0.6 * Math.sqrt(0.4331 * feet / 20);
  }

  /** Water stands 36, 18 and 4 in over a foot 30 in above the ground: 5.5, 4 and 2.833 ft. */
  @Test
  void barrel_drivesLessTheEmptierItIs() {
    String[] levels = {"full", "half full", "nearly empty: stop"};
    double[] feet = {5.5, 4, 34 / 12.0};
    double[] inches = {36, 18, 4};
    for (int i = 0; i < 3; i++) {
      double gph = gallonsAnHour(feet[i]);
      assertEquals(inches[i], number(barrel, "tank-levels", levels[i], "water"));
      assertEquals(gph, barrel.exact("tank-levels", levels[i], "flow") / 3.785411784, 0.01 * gph);
      assertEquals(
          gph / 60, number(barrel, "tank-levels", levels[i], "flow"), 0.005 + 0.01 * gph / 60);
      assertEquals(
          0.4331 * feet[i], number(barrel, "tank-levels", levels[i], "behind"), 0.05 + 0.01);
      assertEquals(Math.sqrt(4 / feet[i]), number(barrel, "tank-levels", levels[i], "times"), 0.01);
    }
  }

  /**
   * July: 84 sq ft × 4 in = 28 cu ft, 209.5 gal net, 258.6 gross; at 9.89 gph 1,569 minutes, every
   * third day of 31 (no soil is said) 152. That is 25.05 gal: 25.05 / 70.5 × 36 = 12.8 in of a
   * barrel of π × 3 cu ft; the tap, 5 gal in 50 s, brings it in 4.2 minutes, set as 5.
   */
  @Test
  void watering_lastsSinksAndIsFilledUpByTheTap() {
    double gross = 84 * 4 / 12.0 * 1728 / 231 / 0.81;
    double minutes = gross / gallonsAnHour(4) * 60 * 3 / 31;
    assertEquals(152, minutes, 1);
    assertEquals("3", barrel.printed("timetable", "Jul", "every"));
    assertEquals(minutes, number(barrel, "timetable", "Jul", "minutes"), 2);
    double gallons = gallonsAnHour(4) * minutes / 60;
    double held = Math.PI * 3 * 1728 / 231;
    assertEquals(
        gallons / held * 36, number(barrel, "tank-levels", "half full", "sinks"), 0.15 + 0.05);
    assertEquals("5", barrel.printed("timetable", "Jul", "fill"));
    double full = minutes * Math.sqrt(4 / 5.5);
    assertEquals(full, number(barrel, "tank-levels", "full", "minutes"), 2);
  }

  /**
   * What stands above the outlet is 70.5 × 32 / 36 = 62.7 gal; on the evening of 30 June it lacks
   * that day's use, 161.6 / 30 = 5.4. July takes 258.6 / 31 = 8.34 a day: six days, and 7.2 gal of
   * the seventh. It fills again on the evening of 1 September.
   */
  @Test
  void barrel_givesOverToTheTap_onTheSeventhOfJuly() {
    double june = 84 * 2.5 / 12 * 1728 / 231 / 0.81;
    double left = Math.PI * 3 * 1728 / 231 * 32 / 36 - june / 30;
    assertEquals(57.3, left, 0.1);
    assertEquals(left, number(barrel, "tank-year", "Jul", "given"), 0.6);
    double july = 84 * 4 / 12.0 * 1728 / 231 / 0.81;
    assertEquals(100 * left / july, number(barrel, "tank-year", "Jul", "usual"), 0.6);
    assertEquals("100", barrel.printed("tank-year", "Jun", "usual"));
    assertEquals("97", barrel.printed("tank-year", "Sep", "usual"), "29 of 30 days");
    assertEquals(
        "tank until about 7 Jul, then tap whenever it is empty",
        barrel.printed("timetable", "Jul", "feed"));
    assertEquals("tap", barrel.printed("timetable", "Aug", "feed"));
    assertEquals("tank", barrel.printed("timetable", "Sep", "feed"));
    assertTrue(
        barrel.tables().get("tank-year").notes().get(0).contains("until about 2 Sep"),
        barrel.tables().get("tank-year").notes().get(0));
  }

  /**
   * Days 1 to 14: 84 sq ft × 0.7 × ET of May / 31 / 0.81, every day. Kc of tomatoes is 0.6 in their
   * first stage (FAO-56 Table 12), so the least of 0.7 holds. Planted on Monday, 11 May, and the
   * dripline laid that same day.
   */
  @Test
  void firstWeeks_areKeysForTheTimer() {
    double et = barrel.exact("water-by-month", "May", "reference-et") / 0.3048;
    double gallons = 84 * 0.7 * et / 31 / 0.81 * 1728 / 231;
    double minutes = gallons / gallonsAnHour(4) * 60;
    assertTrue(minutes > 20, "minutes to tell by: " + minutes);
    assertEquals("2026-05-11", barrel.printed("first-weeks-timer", "1 to 1", "from"));
    assertEquals("2026-05-12", barrel.printed("first-weeks-timer", "2 to 14", "from"));
    assertEquals("2026-05-24", barrel.printed("first-weeks-timer", "2 to 14", "until"));
    assertEquals("1", barrel.printed("first-weeks-timer", "2 to 14", "every"));
    assertEquals(Math.ceil(minutes), number(barrel, "first-weeks-timer", "2 to 14", "minutes"), 1);
    assertEquals("2", barrel.printed("first-weeks-timer", "15 to 30", "every"));
    assertEquals("2026-06-10", barrel.printed("first-weeks-timer", "31 to 45", "from"));
  }

  /**
   * The page beside the timer has the same with months across: every third day of July, the tank
   * until the 7th, 4.7 minutes at the tap, up to 5; linked tanks help through September.
   */
  @Test
  void timerPage_hasTheSame_monthsAcross() {
    assertEquals("3", barrel.printed("timer-page", "Every … days", "m7"));
    assertEquals("tank", barrel.printed("timer-page", "Water from", "m6"));
    assertEquals("tank to 7 Jul", barrel.printed("timer-page", "Water from", "m7"));
    assertEquals("tap", barrel.printed("timer-page", "Water from", "m8"));
    assertEquals("5", barrel.printed("timer-page", "Tap into tank, min", "m7"));
    assertEquals("both", linked.printed("timer-page", "Water from", "m9"));
    assertEquals(
        barrel.printed("timetable", "Jul", "minutes"),
        barrel.printed("timer-page", "Minutes", "m7"));
    assertEquals(
        barrel.printed("timetable", "Jul", "start"), barrel.printed("timer-page", "Start", "m7"));
    // 258.6 gal of July through the half full tank's flow, a week's share of 31 days.
    double july = 84 * 4 / 12.0 * 1728 / 231 / 0.81;
    // 354 minutes a week on every third day: 7 / 3 is 3 days of the week, 118 minutes each.
    String[] byHand = barrel.printed("timer-page", "By hand, a week", "m7").split(" × ");
    assertEquals("3", byHand[0]);
    assertEquals(july / gallonsAnHour(4) * 60 * 7 / 31 / 3, Double.parseDouble(byHand[1]), 1.5);
  }

  /** The household stands at the tank with the sheet in hand: the page is on it, and says so. */
  @Test
  void timerPage_standsOnTheSheet_whereATankWaters() {
    String below = String.join(" ", onTheSheet(barrel, "timer-page").notes());
    assertTrue(below.contains("Water comes from the tank by its height"), below);
    String beside = String.join(" ", onTheSheet(linked, "timer-page").notes());
    assertTrue(beside.contains("by can, or through a hose of its own"), beside);
  }

  private static Table onTheSheet(Drawn drawn, String id) {
    return drawn.outcome().sheets().stream()
        .filter(s -> s.id().equals("irrigation"))
        .flatMap(s -> s.panels().stream())
        .filter(Panel.TableBlock.class::isInstance)
        .map(p -> ((Panel.TableBlock) p).table())
        .filter(t -> t.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /**
   * 10 m of berries without a height to run from: by can, what a watering of the lines would be.
   * July: 30 m² × 90 mm / 0.81 = 3,333 L; the page's litres times the waterings of 31 days are
   * that.
   */
  @Test
  void canPage_saysWhatAWateringIs() {
    String each = linked.printed("timer-page", "Or from the tank, each", "m7");
    double litres = Double.parseDouble(each.replaceAll("(\\d+) L \\(\\d+ gal\\)", "$1"));
    double every = Double.parseDouble(linked.printed("timer-page", "Every … days", "m7"));
    assertEquals(30 * 90 / 0.81, litres * 31 / every, 0.05 * 3333);
    assertEquals("", linked.printed("timer-page", "Or from the tank, each", "m8"));
  }

  /** 1.2 × 0.9 × 1.1 m three times hold 3,564 L, each weighs 1,188 kg and presses 10.8 kPa. */
  @Test
  void linkedTanks_holdAndWeigh() {
    assertEquals("3564", linked.printed("tanks", "row", "holds"));
    assertEquals("1188", linked.printed("tanks", "row", "weight"));
    assertEquals("11", linked.printed("tanks", "row", "pressure"));
  }

  /**
   * A storm brings (30 − 0.7) mm × 45 m² × 0.95 × 0.85 = 1,064.7 L. On the evening of 30 June all
   * are full but for 1,851.9 / 30 = 61.7 L; July takes 3,333.3 and leaves 168.9, August 83.6 a day:
   * two days. Rain of the evening of 8 September brings 22 days of September. 31 storms, less what
   * is used, run over.
   */
  @Test
  void linkedTanks_stepThroughTheYear() {
    double storm = (30 - 0.7) * 45 * 0.95 * 0.85;
    double june = 30 * 50 / 0.81;
    double july = 30 * 90 / 0.81;
    double august = 3564 - june / 30 - july;
    double september = 30 * 20 / 0.81 * 22 / 30;
    assertEquals(168.9, august, 0.1);
    assertEquals(june, number(linked, "tank-year", "Jun", "given"), 0.51);
    assertEquals(july, number(linked, "tank-year", "Jul", "given"), 0.51);
    assertEquals(august, number(linked, "tank-year", "Aug", "given"), 0.51);
    assertEquals(september, number(linked, "tank-year", "Sep", "given"), 0.51);
    assertEquals("73", linked.printed("tank-year", "Sep", "usual"));
    double used = june + july + august + september;
    assertEquals(used, number(linked, "tank-sizes", "3564", "used"), 0.51);
    assertEquals(31 * storm - used, number(linked, "tank-sizes", "3564", "overflow"), 0.6);
    // 3 to 31 August and 1 to 8 September: 37 days.
    assertEquals("37", linked.printed("tank-sizes", "3564", "short-days"));
    String note = linked.tables().get("tank-year").notes().get(0);
    assertTrue(note.contains("falls short about 3 Aug;"), note);
    assertTrue(note.contains("until about 9 Sep."), note);
    assertEquals("tap", linked.printed("timetable", "Aug", "feed"));
    assertEquals("tank, tap whenever it is empty", linked.printed("timetable", "Sep", "feed"));
    assertFalse(linked.tables().containsKey("tank-levels"), "the tap feeds these lines");
  }

  /**
   * 3,564 − 61.7 L on the evening of 30 June, 107.5 L less on each of 31 dry evenings: 16 of these
   * in the mean, 1,782 L, half of 1.1 m. With the stand of 20 cm 0.75 m of water, 7.34 kPa at the
   * bed.
   */
  @Test
  void tank_standsAtAHeight_monthByMonth() {
    double litres = 3564 - 30 * 50 / 0.81 / 30 - 16 * 30 * 90 / 0.81 / 31;
    double water = litres / 3564 * 1.1;
    assertEquals(0.55, water, 0.001);
    assertEquals(water, linked.exact("tank-year", "Jul", "water"), 1e-4);
    double kPa = (water + 0.2) * 9.79;
    assertEquals(kPa, linked.exact("tank-head", "berries", "m7"), 0.02);
  }

  /**
   * The tap feeds the lines, so what the tank gives in June is carried or pumped: 30 m² × 50 mm /
   * 0.81 in 30 days, at each watering its share of that; in August the tap does it.
   */
  @Test
  void linkedTanks_sayWhatIsCarried() {
    double days = number(linked, "timetable", "Jun", "every");
    double june = 30 * 50 / 0.81 * days / 30;
    assertEquals(june, number(linked, "timetable", "Jun", "can"), 0.05 * june);
    assertEquals("", linked.printed("timetable", "Aug", "can"));
    assertFalse(
        barrel.tables().get("timetable").columns().stream().anyMatch(c -> c.id().equals("can")),
        "this tank runs into the lines by itself");
  }

  /**
   * CN 98: S = 5.184 mm; (30 − 1.037)² / (30 + 4.147) = 24.57 mm on 45 m² are 1,105 L; 7.5 m² × 0.2
   * m hold 1,500 L, 136 %.
   */
  @Test
  void overflow_findsRoomInTheBasin() {
    assertEquals(1105, number(linked, "basins", "hollow", "runoff"), 1);
    assertEquals("1500", linked.printed("basins", "hollow", "holds"));
    assertEquals("136", linked.printed("basins", "hollow", "share"));
    assertTrue(
        linked.outcome().findings().stream().noneMatch(f -> f.rule().equals("water.overflow")));
  }
}
