package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yardloom.facts.YardFacts;

/**
 * The daily soil water of a tree, from plan text and a file of rain to the printed table, stepped
 * through here by the published equations: FAO-56 equations 82 to 88 and the note of Table 22; root
 * depth 1 m and easy share 0.5 of apples, Table 22. No two inputs are equal.
 */
class SoilWaterOfTreeByHandTest {
  private static final String YARD =
      """
      plan 'Orchard', units: 'metric', currency: 'EUR'
      site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      soilTexture 'sandy loam', organic: 3, depth: %s.cm
      dailyRain(fileText('rain.csv'), station: 'by hand', source: 'made up')
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 15.m), point(0.m, 15.m)])
      tree('old apple', point(10.m, 8.m), crown: 5.m, height: 4.m, trunk: 4.cm, standing: false) {
        species 'apple (semi-dwarf)'
      }
      """;

  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  /** A year of the table has 365.25 days, that of the file 365. */
  private static final double YEAR = 365.25 / 365;

  private static Drawn shallow;
  private static Drawn deep;

  /** 40 mm on 1 March, 30 mm on 20 June, and 1 mm, lost to the air, on 5 July. */
  private static double rain(LocalDate day) {
    return switch (day.getMonthValue() * 100 + day.getDayOfMonth()) {
      case 301 -> 40;
      case 620 -> 30;
      case 705 -> 1;
      default -> 0;
    };
  }

  @BeforeAll
  static void draw() {
    StringBuilder text = new StringBuilder("date,rain_mm");
    for (int d = 1; d <= 365; d++) {
      LocalDate day = LocalDate.ofYearDay(2022, d);
      text.append('\n').append(day).append(',').append(rain(day));
    }
    shallow = Drawn.beside(YARD.formatted("70"), "rain.csv", text.toString());
    deep = Drawn.beside(YARD.formatted("150"), "rain.csv", text.toString());
  }

  private static double number(Drawn drawn, String column) {
    return Double.parseDouble(drawn.printed("soil-water", "old apple", column));
  }

  /** Roots stop at the soil's 70 cm; where it is deeper, at a metre. */
  @Test
  void roots_reachAMetre_orTheSoilsDepth() {
    double holds = shallow.exact("materials-soil", "sandy loam", "available");
    assertEquals("70.0", shallow.printed("soil-water", "old apple", "roots"));
    assertEquals("100.0", deep.printed("soil-water", "old apple", "roots"));
    assertEquals(700 * holds, number(shallow, "held"), 0.5);
    assertEquals(1000 * holds, number(deep, "held"), 0.5);
    assertEquals(350 * holds, number(shallow, "easy"), 0.5);
  }

  @Test
  void days_areSteppedThrough_wateredAndNot() {
    for (Drawn drawn : new Drawn[] {shallow, deep}) {
      double total = drawn == shallow ? 700 : 1000;
      total *= drawn.exact("materials-soil", "sandy loam", "available");
      Year watered = new Year(drawn, total, true);
      Year alone = new Year(drawn, total, false);
      assertEquals(watered.use * YEAR, number(drawn, "use"), 0.51);
      assertEquals(watered.given * YEAR, number(drawn, "given"), 0.51);
      assertEquals(watered.waterings, number(drawn, "waterings"));
      assertEquals(watered.below * YEAR, number(drawn, "below"), 0.51);
      assertEquals(alone.shortDays, number(drawn, "short"));
      assertTrue(alone.shortDays > 60, alone.shortDays + " days");
      assertTrue(watered.waterings >= 3, "waterings to count: " + watered.waterings);
    }
    assertTrue(
        number(deep, "waterings") < number(shallow, "waterings"), "deeper roots wait longer");
    assertTrue(number(deep, "short") < number(shallow, "short"), "and fall short later");
  }

  /** One year in steps of a day. */
  private static final class Year {
    private double use;
    private double given;
    private double below;
    private int waterings;
    private int shortDays;

    Year(Drawn drawn, double total, boolean isWatered) {
      double missing = 0;
      for (int d = 1; d <= 365; d++) {
        LocalDate day = LocalDate.ofYearDay(2022, d);
        String month = MONTHS[day.getMonthValue() - 1];
        double et0 =
            1000 * drawn.exact("water-by-month", month, "reference-et") / day.lengthOfMonth();
        double wants = kc(drawn, day) * et0;
        double easy = total * Math.min(0.8, 0.5 + 0.04 * (5 - wants));
        double stress = missing <= easy ? 1 : (total - missing) / (total - easy);
        double fell = rain(day) < 0.2 * et0 ? 0 : rain(day);
        double used = stress * wants;
        below += Math.max(0, fell - used - missing);
        missing = Math.max(0, missing + used - fell);
        use += used;
        shortDays += stress < 1 && wants > 0 ? 1 : 0;
        if (isWatered && missing >= easy && wants > 0) {
          given += missing;
          missing = 0;
          waterings++;
        }
      }
    }

    private static double kc(Drawn drawn, LocalDate day) {
      return drawn
          .outcome()
          .results()
          .all(YardFacts.STANDS)
          .get(0)
          .thirst()
          .kc()
          .get(day.getMonthValue() - 1);
    }
  }
}
