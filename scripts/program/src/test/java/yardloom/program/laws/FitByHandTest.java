package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;

/**
 * From plan text to the printed table of fit: each rule speaks up in a yard made to break it and is
 * silent in one that does not.
 *
 * <p>Sources: crossing is essential for most sweet cherries, and more than 100 ft apart may
 * pollinate poorly (Washington State University, Tree Fruit, read); blueberries want pH 4.2 to 5.2
 * (University of Idaho Extension, 2012, read); tomatoes keep 50 to 60 ft from black walnuts (Iowa
 * State University, PM 814, read); apples a partner within 50 ft (nursery page, read).
 */
class FitByHandTest {
  private static final String SITE =
      """
      plan 'Fit by hand', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14', source: 'demo figures'
      lot([point(0.ft, 0.ft), point(300.ft, 0.ft), point(300.ft, 200.ft), point(0.ft, 200.ft)])
      """;

  /** Neither the sun's field nor costs: they take long and say nothing of these rules. */
  private static final Plugins PLUGINS =
      PluginLoader.of(
          Drawn.plugins().all().stream()
              .filter(p -> !Set.of("sun", "materials", "work").contains(p.info().id()))
              .toList());

  private static final Map<String, Outcome> MADE = new HashMap<>();

  private static Outcome outcome(String script) {
    return MADE.computeIfAbsent(script, text -> Drawn.study(text, PLUGINS));
  }

  private static String tree(String name, String species, double x, double y, String more) {
    return "tree('"
        + name
        + "', point("
        + x
        + ".ft, "
        + y
        + ".ft), crown: 9.ft, height: 9.ft, leaf: 'deciduous', standing: false) { species '"
        + species
        + "'\n"
        + more
        + " }\n";
  }

  private static String bed(String name, double x, double y, double w, double d, String in) {
    return String.format(
        java.util.Locale.ROOT,
        "bed('%s', rect(%s.ft, %s.ft, %s.ft, %s.ft), use: 'perennial') {\n%s\n}\n",
        name,
        x,
        y,
        w,
        d,
        in);
  }

  /** What the table says of a plant and a question: fit and why, or nothing. */
  private static String said(String script, String where, String question) {
    Table table =
        outcome(SITE + script).tables().stream()
            .filter(t -> t.id().equals("plant-fit"))
            .findFirst()
            .orElseThrow();
    for (List<Cell> row : table.rows()) {
      if (text(row, 0).equals(where) && text(row, 3).equals(question)) {
        return text(row, 2) + ": " + text(row, 4);
      }
    }
    return "";
  }

  private static String text(List<Cell> row, int column) {
    return row.get(column).value().map(Object::toString).orElse("");
  }

  private static List<Finding> findings(String script, String rule) {
    return outcome(SITE + script).findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** A lone sweet cherry: the plan has no other one. */
  @Test
  void cherryAlone_doesNotFit_andIsAWarningFromAReadSource() {
    String lone = tree("C", "sweet cherry", 40, 40, "");
    assertTrue(
        said(lone, "C", "pollination")
            .startsWith(
                "does not fit: bears little or nothing without another variety or unrelated plant"
                    + " within 100.0 ft (30.48 m); the plan has none"));
    assertEquals(Severity.WARNING, findings(lone, "planting.fit-pollination").get(0).severity());
    assertEquals(
        "",
        said(
            tree("C", "sweet cherry", 40, 40, "variety 'Stella', selfFruitful: true"),
            "C",
            "pollination"));
    assertEquals("", said(tree("S", "sour cherry", 40, 40, ""), "S", "pollination"));
  }

  /** 60 ft east and 80 ft north are 100 ft away: a 3-4-5 triangle; 61 ft east are 100.6 ft. */
  @Test
  void cherries_helpEachOtherFromAHundredFeet_ifTheyAreTwoVarieties() {
    String one = tree("C", "sweet cherry", 40, 40, "variety 'Bing'");
    assertEquals(
        "", said(one + tree("D", "sweet cherry", 100, 120, "variety 'Van'"), "C", "pollination"));
    assertTrue(
        said(one + tree("D", "sweet cherry", 101, 120, "variety 'Van'"), "C", "pollination")
            .endsWith("the nearest stands 100.6 ft (30.66 m) away"));
    assertTrue(
        said(one + tree("D", "sweet cherry", 90, 50, "variety 'Bing'"), "C", "pollination")
            .startsWith("does not fit: bears little or nothing with its own kind"));
    assertTrue(
        said(one + tree("D", "sweet cherry", 90, 50, ""), "C", "pollination")
            .startsWith("fits if: "));
  }

  /** Early ones bloom a week before, late ones a week after: early days −17 to −5, late −3 to 9. */
  @Test
  void varietiesThatBloomApart_doNotHelpEachOther() {
    String early = tree("C", "sweet cherry", 40, 40, "variety 'A', blooms: 'early'");
    String late = tree("D", "sweet cherry", 60, 40, "variety 'B', blooms: 'late'");
    String mid = tree("E", "sweet cherry", 60, 40, "variety 'B'");
    assertTrue(said(early + late, "C", "pollination").contains("blooms at another time"));
    assertEquals("", said(early + mid, "C", "pollination"));
  }

  /** Early apples bloom on days −7 to 7, late ones on 7 to 21: one day together is too few. */
  @Test
  void oneDayOfBloomTogether_isTooFew() {
    String early = tree("A", "apple (dwarf)", 40, 40, "variety 'A', blooms: 'early'");
    String late = tree("B", "apple (dwarf)", 60, 40, "variety 'B', blooms: 'late'");
    assertTrue(said(early + late, "A", "pollination").contains("blooms at another time"));
  }

  /** What is named instead is planted there: it bears alone, and nothing speaks against it. */
  @Test
  void substitutes_doBetterInTheSamePlace() {
    Table table =
        outcome(SITE + tree("C", "sweet cherry", 40, 40, "")).tables().stream()
            .filter(t -> t.id().equals("plant-fit"))
            .findFirst()
            .orElseThrow();
    String[] names = text(table.rows().get(0), 6).split(", ");
    assertEquals(3, names.length);
    for (String name : names) {
      String instead = tree("C", name, 40, 40, "");
      assertEquals("", said(instead, "C", "pollination"), name);
      assertEquals("fits: ", said(instead, "C", ""), name);
    }
  }

  /** 15 ft by 25 ft at 5 ft: three rows of five. Nine feet apart they would not count as one. */
  @Test
  void fifteenBlueberriesAtPh72_doNotFit_andSoSaysAWarning() {
    String bushes =
        bed("B", 20, 20, 25, 15, "plant 'highbush blueberry', spacing: 5.ft, rowSpacing: 5.ft");
    String sweet = bushes + "soilTest { acidity ph: 7.2 }\n";
    assertEquals(
        15, outcome(SITE + sweet).results().all(YardFacts.STANDS).get(0).placed().at().size());
    assertEquals(
        "does not fit: it wants pH 4.2 to 5.2; the soil test found 7.2",
        said(sweet, "B", "acidity"));
    assertEquals(Severity.WARNING, findings(sweet, "planting.fit-acidity").get(0).severity());
    assertTrue(
        said(bushes + "soilTest { acidity ph: 7.2, wanted: 5.0 }\n", "B", "acidity")
            .startsWith("fits if"));
  }

  /**
   * Blueberries 4.2 to 5.2 are of acid soil: half a unit beyond passes, a whole one can be amended.
   * Thyme 5.5 to 6.5 is not: it bears 7.5, and 8.5 can be amended. Acid ground: 5.0 and 4.5.
   */
  @ParameterizedTest(name = "{0} at pH {1}")
  @CsvSource({
    "highbush blueberry, 5.7, ''",
    "highbush blueberry, 5.8, fits if",
    "highbush blueberry, 6.2, fits if",
    "highbush blueberry, 6.3, does not fit",
    "thyme, 7.5, ''",
    "thyme, 7.6, fits if",
    "thyme, 8.6, does not fit",
    "thyme, 5.0, ''",
    "thyme, 4.9, fits if",
    "thyme, 4.4, does not fit"
  })
  void acidity_beyondTheBestRange_isLetPassAmendedOrRefused(
      String plant, String ph, String expected) {
    String script =
        bed("B", 20, 20, 12, 12, "plant '" + plant + "'") + "soilTest { acidity ph: " + ph + " }\n";
    assertEquals(expected, said(script, "B", "acidity").split(":")[0]);
  }

  /** Lemons winter from zone 9 on. */
  @Test
  void cold_isAskedOfTheZone() {
    String lemon = tree("L", "lemon", 40, 40, "");
    assertTrue(
        said(lemon + "hardinessZone '8b', source: 'map'\n", "L", "cold")
            .startsWith("does not fit: winters in zone 9 and warmer; this yard lies in zone 8b"));
    assertEquals("", said(lemon + "hardinessZone '9a', source: 'map'\n", "L", "cold"));
  }

  /** The trunk is at 40 ft, the wall at 45: 5 ft; grown 13.5 ft wide, it wants 6.75. */
  @Test
  void room_isHalfTheGrownWidthToWallAndLine() {
    String house =
        "building('house', rect(%d.ft, 30.ft, 20.ft, 20.ft), eaves: 9.ft, ridge: 9.ft)\n";
    String apple = tree("A", "apple (semi-dwarf)", 40, 40, "");
    assertEquals(
        "fits if: grown, it is 13.5 ft (4.11 m) wide and stands 5.0 ft (1.52 m) from building"
            + " \"house\"",
        said(house.formatted(45) + apple, "A", "room"));
    assertEquals("", said(house.formatted(47) + apple, "A", "room"));
    assertEquals(
        "",
        said(
            house.formatted(45)
                + tree("A", "apple (semi-dwarf)", 40, 40, "trained 'espalier', width: 9.ft"),
            "A",
            "room"));
    // 6.75 − 4 = 2.75 over the line.
    assertEquals(
        "fits if: grown, it is 13.5 ft (4.11 m) wide and hangs 2.8 ft (0.84 m) over the lot line",
        said(tree("A", "apple (semi-dwarf)", 4, 40, ""), "A", "room"));
  }

  /** A tomato 58.5 ft from a walnut, 1.5 ft in from the bed's edge at 57 ft; and one 60.5 ft. */
  @Test
  void tomatoes_keepSixtyFeetFromWalnuts() {
    String walnut = tree("W", "black walnut", 100, 100, "");
    assertTrue(
        said(walnut + bed("T", 157, 98.5, 3, 3, "plant 'tomato', spacing: 3.ft"), "T", "neighbours")
            .startsWith("does not fit: stands 58.5 ft (17.83 m) from a black walnut"));
    assertEquals(
        "",
        said(
            walnut + bed("T", 159, 98.5, 3, 3, "plant 'tomato', spacing: 3.ft"),
            "T",
            "neighbours"));
    assertEquals(
        "",
        said(walnut + bed("T", 120, 98.5, 3, 3, "plant 'kale', spacing: 3.ft"), "T", "neighbours"));
  }

  @Test
  void harmfulPlants_areNamedToTheHouseholdThatTheyMayHarm() {
    String rhubarb = bed("R", 20, 20, 12, 12, "plant 'rhubarb'");
    assertEquals("", said(rhubarb, "R", "household"));
    assertEquals(
        "fits if: may harm children: leaves",
        said(rhubarb + "household children: true\n", "R", "household"));
    assertEquals(
        "fits if: may harm pets: leaves",
        said(rhubarb + "household pets: true\n", "R", "household"));
    String both = rhubarb + bed("C", 50, 20, 12, 12, "plant 'chives'") + "household pets: true\n";
    assertEquals(1, findings(both, "planting.fit-household").size(), "one finding for all");
    assertEquals(
        "",
        said(
            bed("K", 20, 20, 12, 12, "plant 'kale'") + "household pets: true\n", "K", "household"));
  }

  /**
   * Clay loam drains slowly; sage wants it well drained, rhubarb bears it, tomatoes are annuals.
   */
  @Test
  void heavySoil_isACondition_forPerennialsThatRotInIt() {
    String beds =
        bed("S", 20, 20, 12, 12, "plant 'sage'")
            + bed("R", 40, 20, 12, 12, "plant 'rhubarb'")
            + bed("T", 60, 20, 12, 12, "plant 'tomato'");
    String heavy = beds + "soilTexture 'clay loam'\n";
    assertEquals(
        "fits if: it wants well-drained soil; clay loam drains slowly",
        said(heavy, "S", "drainage"));
    assertEquals("", said(heavy, "R", "drainage") + said(heavy, "T", "drainage"));
    assertEquals("", said(beds + "soilTexture 'sandy loam'\n", "S", "drainage"));
  }

  /** Thyme likes little water and mint much: on one valve they do not agree, on two they do. */
  @Test
  void dryAndThirstyKinds_wantValvesOfTheirOwn() {
    String drip = "drip emitter: 0.5.gph, spacing: 12.inch, rowSpacing: 18.inch\n";
    String thyme = bed("T", 20, 20, 12, 4, drip + "plant 'thyme'");
    String sorrel = bed("M", 20, 30, 12, 4, drip + "plant 'sorrel'");
    String mixed = bed("T", 20, 20, 12, 4, drip + "plant 'thyme'\nplant 'spearmint'");
    assertEquals("", said(thyme + sorrel, "T", "water"));
    assertEquals(
        "fits if: it likes low water; valve 1 also waters spearmint, which likes much",
        said(mixed, "T", "water"));
  }

  /** A partner in reach never makes things worse, wherever it stands. */
  @Property(tries = 20)
  void partner_neverHarms(
      @ForAll @IntRange(min = 10, max = 290) int x, @ForAll @IntRange(min = 10, max = 190) int y) {
    String one = tree("C", "sweet cherry", 40, 40, "variety 'Bing'");
    String other = tree("D", "sweet cherry", x == 40 && y == 40 ? 41 : x, y, "variety 'Van'");
    String with = said(one + other, "C", "pollination");
    boolean near = Math.hypot(x - 40, y - 40) <= 100;
    assertEquals(near ? "" : "does not fit", with.split(":")[0], x + ", " + y);
  }
}
