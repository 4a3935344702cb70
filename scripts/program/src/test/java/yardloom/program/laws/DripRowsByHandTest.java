package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Dripline;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.geom.Line;

/**
 * Where dripline lies and which plants it reaches, from plan text to the printed table; no two
 * inputs are equal.
 *
 * <p>Sources: widths that one emitter wets, a design manual's table (coarse soils 1 ft at 0.5 gph,
 * 2 ft at 1 gph); plane geometry; a root ball of 4 in across (common practice).
 */
class DripRowsByHandTest {
  private static final String YARD =
      """
      plan 'Rows', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      soilTexture 'sandy loam', organic: 3
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 50.ft), point(0.ft, 50.ft)])
      tap 'bib', point(3.ft, 3.ft)
      ownPlant('bush', like: 'red currant', source: publication('x', by: 'y', seen: 'read')) { grown spacing: 2.ft, rows: 2.ft, spread: 30.inch, height: 6.ft }
      bed('b', rect(20.ft, 10.ft, 14.ft, 5.ft), use: 'perennial') {
        drip emitter: 0.6.gph, spacing: 14.inch, rowSpacing: %s.inch
        plantAt 'bush', at: [point(22.ft, 11.4.ft), point(26.ft, %s.ft)]
      }
      tree('apple', point(50.ft, 30.ft), crown: 11.ft, height: 14.ft, trunk: 4.inch, standing: false) {
        drip emitter: 0.9.gph, spacing: 16.inch, rowSpacing: 22.inch
      }
      """;

  private static Drawn drawn(String apart, String up) {
    return Drawn.of(YARD.formatted(apart, up));
  }

  private static void row(Drawn drawn, String bed, String... cells) {
    List<String> columns =
        List.of("first", "apart", "rows", "outlets", "reach", "plant", "farthest");
    for (int i = 0; i < columns.size(); i++) {
      assertEquals(
          cells[i],
          drawn.printed("drip-rows", bed, columns.get(i)).replace('\u00a0', ' '),
          bed + " " + columns.get(i));
    }
  }

  private static long outOfReach(Drawn drawn) {
    return drawn.outcome().findings().stream()
        .filter(f -> f.rule().equals("water.drip-rows"))
        .count();
  }

  /**
   * 60 / 18 = 3.33: 3 rows, the first (60 − 2 × 18) / 2 = 12 in from the edge, so at 11, 12.5 and
   * 14 ft. Bushes at 11.4 and 13.15 ft: 4.8 in from the first and 7.8 in from the second. An outlet
   * of 0.6 gph wets 1 + 0.1 / 0.5 × 1 = 1.2 ft, 7.2 in to each side; with 2 in of root ball that
   * does.
   */
  @Test
  void rows_lieByTheBed_andReachThePlants() {
    Drawn drawn = drawn("18", "13.15");
    row(drawn, "b", "12.0", "18.0", "", "14.0", "7.2", "bush", "7.8");
    assertEquals(0, outOfReach(drawn));
  }

  /**
   * 60 / 29 = 2.07: 2 rows, 15.5 in from the edges, at 11.292 and 13.708 ft. The first would lie
   * 1.3 in from the bush at 11.4 ft, 16.8 in from the edge: it goes to 13.8 in. A bush at 12.6 ft
   * stands 13.3 in from the second, more than 7.2 + 2.
   */
  @Test
  void plantBetweenTheRows_isFound() {
    Drawn drawn = drawn("29", "12.6");
    row(drawn, "b", "13.8", "", "13.8, 44.5 in from the south side", "14.0", "7.2", "bush", "13.3");
    assertEquals(1, outOfReach(drawn));
    assertTrue(
        drawn.outcome().findings().stream()
            .anyMatch(f -> f.text().contains("bush stands up to 13.3")));
  }

  /**
   * From 12 + 2 in off the trunk's middle to the crown's 66 in: 52 / 22 = 2.36, so 2 rings of 26
   * in, the inner one in the middle of its half, 14 + 13 = 27 in. 0.9 gph wets 1 + 0.4 / 0.5 × 1 =
   * 1.8 ft.
   */
  @Test
  void rings_shareTheGroundEvenly() {
    row(drawn("18", "13.15"), "apple", "27.0", "26.0", "", "16.0", "10.8", "", "");
  }

  /**
   * What other trades are told is what is drawn: three rows of 14 ft, half as far from the edge.
   */
  @Test
  void rows_areToldToOtherTrades() {
    List<Dripline> lines = drawn("18", "13.15").outcome().results().all(YardFacts.DRIPLINES);
    Dripline bed = of(lines, "b");
    assertEquals(14, bed.outlets().inches(), 1e-9);
    assertEquals(
        List.of(11.0, 12.5, 14.0),
        bed.rows().stream().map(Line::middle).map(p -> round(p.y().feet())).sorted().toList());
    assertEquals(42, bed.rows().stream().mapToDouble(r -> r.length().feet()).sum(), 1e-6);
    assertEquals(2, of(lines, "apple").rows().size());
  }

  /** The sheet says it in words, a line for each way in which rows lie. */
  @Test
  void sheet_saysHowRowsLie() {
    String notes = notes(drawn("18", "13.15"));
    assertTrue(
        notes.contains(
            "b: first row 12.0 in from the edge, the next every 18.0 in, outlets every 14.0 in."),
        notes);
    assertTrue(
        notes.contains(
            "apple: first row 27.0 in from the trunk, the next every 26.0 in, outlets every 16.0"
                + " in."),
        notes);
  }

  /**
   * One row in the middle of 80 in lies 40 in from the edge; one ring in the middle of 52 in of
   * ground, from 14 in off the trunk's middle, lies 14 + 26 = 40 in from the trunk. All else is the
   * same, but no line says both. The bush at 16.8 in stands 23.2 in from the row, the other 8.8 in.
   */
  @Test
  void edgeAndTrunk_areNotOneLine() {
    String yard =
        YARD.formatted("18", "12.6")
            .replace("rect(20.ft, 10.ft, 14.ft, 5.ft)", "rect(20.ft, 10.ft, 14.ft, 80.inch)")
            .replace(
                "0.6.gph, spacing: 14.inch, rowSpacing: 18",
                "0.9.gph, spacing: 16.inch, rowSpacing: 60")
            .replace("rowSpacing: 22", "rowSpacing: 40");
    Drawn drawn = Drawn.of(yard);
    row(drawn, "b", "40.0", "", "", "16.0", "10.8", "bush", "23.2");
    row(drawn, "apple", "40.0", "", "", "16.0", "10.8", "", "");
    String notes = notes(drawn);
    assertTrue(notes.contains("b: first row 40.0 in from the edge, outlets every 16.0 in."), notes);
    assertTrue(
        notes.contains("apple: first row 40.0 in from the trunk, outlets every 16.0 in."), notes);
  }

  private static String notes(Drawn drawn) {
    return drawn.outcome().sheets().stream()
        .filter(sheet -> sheet.id().equals("irrigation"))
        .flatMap(sheet -> sheet.panels().stream())
        .filter(panel -> panel instanceof Panel.Notes n && n.title().equals("Laying dripline"))
        .map(panel -> ((Panel.Notes) panel).paragraphs().toString().replace('\u00a0', ' '))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Rows of 18 in lie 12, 30 and 48 in from the south edge. A bush at 12.55 ft, 30.6 in up, has the
   * second under its stem: 27.6 in is 2.4 in away, 33.6 in is 3.6 in. The other bush stands 16.8 −
   * 12 in off, which is farthest.
   */
  @Test
  void rowUnderAPlant_isLaidBesideIt() {
    Drawn drawn = drawn("18", "12.55");
    row(
        drawn,
        "b",
        "12.0",
        "",
        "12.0, 27.6, 48.0 in from the south side",
        "14.0",
        "7.2",
        "bush",
        "4.8");
    Dripline bed = of(drawn.outcome().results().all(YardFacts.DRIPLINES), "b");
    assertEquals(42, bed.rows().stream().mapToDouble(r -> r.length().feet()).sum(), 1e-6);
    String notes = notes(drawn);
    assertTrue(
        notes.contains("b: rows 12.0, 27.6, 48.0 in from the south side, outlets every 14.0 in."),
        notes);
    assertFalse(notes.contains("meets a stem"), notes);
  }

  /**
   * 60 / 11 = 5.45: 5 rows from 8 in on. The one at 19 in goes 0.8 in, to 3 in above the bush at
   * 16.8; the one at 30 in would have to go 2.8 in, past a quarter of 11, and is led by hand.
   */
  @Test
  void rowWithoutRoom_isLedRoundTheStems() {
    Drawn drawn = drawn("11", "12.517");
    assertEquals(
        "8.0, 19.8, 30.0, 41.0, 52.0 in from the south side",
        drawn.printed("drip-rows", "b", "rows").replace('\u00a0', ' '));
    String notes = notes(drawn);
    assertTrue(
        notes.contains("b: where a row meets a stem, lead it a hand (3 in) beside it."), notes);
  }

  /**
   * What comes over the trenches is what the plan lays before the dripline: cardboard, the chips of
   * paths with it; those of the bed come last.
   */
  @Test
  void trenches_areCoveredByWhatThePlanLays() {
    String path = "path 'way', line([point(18.ft, 5.ft), point(18.ft, 20.ft)]), width: 3.ft";
    String bare = "sheetMulch { chipsOnly() ; chips perennial: 4.inch }";
    String end = "before the rows are joined on.";
    for (List<String> says :
        List.of(
            List.of(path, ": cardboard and chips come over them "),
            List.of("", ": cardboard comes over them "),
            List.of(path + "\n" + bare, ": chips come over them "),
            List.of(bare, ", "))) {
      String notes = notes(Drawn.of(YARD.formatted("18", "13.15") + says.get(0) + "\n"));
      assertTrue(notes.contains("once all hold" + says.get(1) + end), says + " " + notes);
    }
  }

  private static Dripline of(List<Dripline> lines, String name) {
    return lines.stream().filter(d -> d.in().name().equals(name)).findFirst().orElseThrow();
  }

  private static double round(double feet) {
    return Math.round(feet * 1e6) / 1e6;
  }
}
