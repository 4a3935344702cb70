package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;

/**
 * From plan text to the printed table of fit: light, heat and chill break in a yard made for it and
 * are silent in one that is not; what the author lets stand says why.
 */
class FitOfEachRuleByHandTest {
  private static final String SITE =
      """
      plan 'Fit of each rule', units: 'us'
      site 'by hand', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])
      frost last: '04-25', first: '10-14', source: 'by hand'
      """;

  private static List<List<Cell>> rows(String script) {
    return Drawn.of(SITE + script).tables().get("plant-fit").rows();
  }

  private static String text(List<Cell> row, int column) {
    return row.get(column).value().map(Object::toString).orElse("");
  }

  /** Fit and why by the question; empty where the question is not answered by a reason. */
  private static String said(String script, String where, String question, int column) {
    return rows(script).stream()
        .filter(r -> text(r, 0).equals(where) && text(r, 3).equals(question))
        .map(r -> text(r, column))
        .findFirst()
        .orElse("");
  }

  private static String fit(String script, String where, String question) {
    return said(script, where, question, 2);
  }

  private static String climate(int july) {
    return "climateNormals 'there', units: 'inch fahrenheit',"
        + " rain: [2,2,3,4,4,4,4,4,3,3,3,2], max: [33,38,50,63,74,83,"
        + july
        + ",84,78,65,51,37], min: [18,22,32,42,52,62,65,63,55,43,34,23], source: 'by hand'\n";
  }

  private static String bed(String name, double y, String plant) {
    return String.format(
        java.util.Locale.ROOT,
        "bed('%s', rect(10.ft, %s.ft, 12.ft, 6.ft), use: 'perennial') { plant '%s' }\n",
        name,
        y,
        plant);
  }

  /** Raspberries suffer where days reach 95 °F (Utah State University Extension, read). */
  @ParameterizedTest(name = "July {0} °F: {1}")
  @CsvSource({"94, ''", "96, fits if"})
  void heat_isAskedOfTheHottestMonth(int july, String expected) {
    assertEquals(expected, fit(climate(july) + bed("B", 40, "red raspberry"), "B", "heat"));
  }

  /** Rhubarb asks for 500 h of chill or more (a nursery's page, read). */
  @ParameterizedTest(name = "{0} h: {1}")
  @CsvSource({"499, does not fit", "500, ''"})
  void chill_isAskedOfTheWinter(int hours, String expected) {
    String chill = "winterChill " + hours + ", source: 'by hand'\n";
    assertEquals(expected, fit(chill + bed("B", 40, "rhubarb"), "B", "chill"));
  }

  /**
   * A wall 30 ft high stands a foot south of one bed: the sun, at most 73° high at 40° north,
   * clears it nowhere within 30 / tan 73° = 9 ft; east and west of north it comes round for a few
   * hours in the middle of summer at most. Tomatoes want six hours. The bed 40 ft further north has
   * them.
   */
  @Test
  void light_isAskedOfTheSunBehindTheHouse() {
    String house = "building('house', rect(0.ft, 2.ft, 40.ft, 8.ft), eaves: 30.ft)\n";
    String script = house + bed("shady", 11, "tomato") + bed("sunny", 52, "tomato");
    assertEquals("does not fit", fit(script, "shady", "light"));
    assertEquals("", fit(script, "sunny", "light"));
    String ferns = house + bed("shady", 11, "ostrich fern");
    assertEquals("", fit(ferns, "shady", "light"));
  }

  /** What does not fit and stays says so, with the author's reason; for one bed or for all. */
  @Test
  void whatIsAccepted_isSaidToBeOverruled_withTheReason() {
    String chill = "winterChill 300, source: 'by hand'\n" + bed("B", 40, "rhubarb");
    String own =
        "accept 'planting.chill', why: 'the client grows it from forced crowns', of: '%s'\n";
    String script = chill + own.formatted("B");
    assertEquals("does not fit, overruled", fit(script, "B", "chill"));
    assertEquals(
        "overruled: the client grows it from forced crowns", said(script, "B", "chill", 5));
    assertEquals("does not fit", fit(chill + own.formatted("C"), "B", "chill"));
  }

  /**
   * A yard in which all goes wrong: a lemon in zone 5, a lone cherry, rhubarb without chill, thyme
   * in clay at pH 9, harm to pets. Nothing of it is an error, and what only memory says is a note.
   */
  @Test
  void findingsOfFit_areNeverErrors_andFromMemoryOnlyNotes() {
    String script =
        climate(99)
            + "hardinessZone '5b', source: 'by hand'\n"
            + "winterChill 100, source: 'by hand'\n"
            + "soilTexture 'clay'\n"
            + "soilTest { acidity ph: 9.0 }\n"
            + "household children: true, pets: true\n"
            + bed("A", 14, "rhubarb")
            + bed("C", 24, "thyme")
            + bed("D", 34, "evergreen huckleberry")
            + "tree('lemon', point(30.ft, 46.ft), crown: 9.ft, height: 9.ft, standing: false) {"
            + " species 'lemon' }\n"
            + "tree('cherry', point(12.ft, 50.ft), crown: 9.ft, height: 9.ft, standing: false) {"
            + " species 'sweet cherry' }\n";
    List<Finding> found =
        Drawn.of(SITE + script).outcome().findings().stream()
            .filter(f -> f.rule().startsWith("planting."))
            .toList();
    assertTrue(found.size() >= 8, found.size() + " findings");
    for (Finding f : found) {
      assertFalse(f.severity() == Severity.ERROR, f.text());
      if (f.rule().startsWith("planting.fit-") && f.source().standing() == Source.Standing.MEMORY) {
        assertEquals(Severity.NOTE, f.severity(), f.text());
      }
    }
    // Whatever does not fit has something else to plant, or the table says that nothing does
    // better.
    String before = "";
    for (List<Cell> row : rows(script)) {
      boolean first = !text(row, 0).equals(before);
      before = text(row, 0);
      assertFalse(text(row, 2).equals("does not fit") && text(row, 7).isEmpty(), row.toString());
      if (first && text(row, 2).equals("does not fit")) {
        assertFalse(text(row, 6).isEmpty(), row.toString());
      }
    }
  }

  private static final String LISTS =
      """
      localPlants 'prohibited', names: 'Hippophae, Rosa rugosa', say: 'no sale',
        source: publication('Weed act', by: 'a state', seen: 'read')
      localPlants 'watched', names: 'Jerusalem artichoke',
        source: publication('Watch list', by: 'a county', seen: 'read')
      localPlants 'native', names: 'Allium schoenoprasum',
        source: publication('Flora', by: 'a county', seen: 'read')
      """;

  /** Listed by genus and by common name; raspberries are of the same family as roses, no more. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "sea buckthorn, does not fit",
    "Jerusalem artichoke, fits if",
    "red raspberry, ''",
    "chives, ''"
  })
  void listsOfThePlace_areAskedOfEachPlant(String plant, String expected) {
    assertEquals(expected, fit(LISTS + bed("B", 40, plant), "B", "list"));
    assertEquals("", fit(bed("B", 40, plant), "B", "list"));
  }

  @Test
  void whatIsListed_saysWhyAndByWhom_andIsNotSuggested() {
    String script = LISTS + bed("B", 40, "sea buckthorn");
    assertTrue(said(script, "B", "list", 4).endsWith("may not be planted here: no sale"));
    assertTrue(said(script, "B", "list", 7).startsWith("Weed act, a state"));
    Finding found =
        Drawn.of(SITE + script).outcome().findings().stream()
            .filter(f -> f.rule().equals("planting.fit-list"))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.WARNING, found.severity());
    String wish =
        "bed('W', rect(10.ft, 20.ft, 20.ft, 8.ft), use: 'perennial') { suggest kinds: 2,"
            + " perennials: 1, natives: true }\n";
    List<String> offered =
        Drawn.of(
                SITE
                    + wish
                    + "localPlants 'prohibited', names: 'Monarda, Echinacea, Asclepias, Rubus',"
                    + " source: publication('a', by: 'b', seen: 'read')\n")
            .tables()
            .get("suggestions")
            .rows()
            .stream()
            .map(r -> text(r, 2))
            .toList();
    assertFalse(offered.isEmpty());
    for (String kind : List.of("bee balm", "purple coneflower", "butterfly milkweed")) {
      assertFalse(offered.contains(kind), offered.toString());
    }
  }

  /** Sorrel is of no region of the catalogue; with a list that has it, it is wished as a native. */
  @ParameterizedTest
  @CsvSource({"native, true", "watched, false"})
  void nativesOfAList_areOfferedAsNatives(String list, boolean offered) {
    String wish =
        "bed('W', rect(10.ft, 20.ft, 20.ft, 8.ft), use: 'perennial') { suggest kinds: 2,"
            + " perennials: 0.5, natives: true, harvest: 'April to June' }\n"
            + "localPlants '"
            + list
            + "', names: 'sorrel, sea kale', source: publication('a', by: 'b', seen: 'read')\n";
    List<String> found =
        Drawn.of(SITE + wish).tables().get("suggestions").rows().stream()
            .map(r -> text(r, 2))
            .toList();
    assertEquals(offered, found.contains("sorrel") || found.contains("sea kale"), found.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'roses'  | `names:` has 'roses', which is neither a plant of the catalogue nor",
        "' , '    | `names:` has no name of a plant",
      })
  void wrongNames_areRefused(String names, String says) {
    String script =
        SITE
            + "localPlants 'watched', names: '"
            + names
            + "', source: publication('a', by: 'b', seen: 'read')\n";
    Exception e =
        org.junit.jupiter.api.Assertions.assertThrows(Exception.class, () -> Drawn.of(script));
    assertTrue(e.getMessage().contains(says), e.getMessage());
  }
}
