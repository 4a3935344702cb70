package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;

/**
 * What the crew's pages say of one small yard, as its days fall: which texts hold in which phase.
 * One person of 6 h works in a bed of 8 × 5 ft with an apple beside it.
 */
class CrewBookletByHandTest {
  private static final String YARD =
      """
      plan 'Booklet', units: 'us'
      site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      work crew: 1, hoursPerDay: 6, start: '2026-09-07'
      sheetMulch { chips perennial: 3.inch }
      utility 'gas line', line([point(0.ft, 2.ft), point(20.ft, 2.ft)]), carries: 'gas', clearance: 2.ft
      bed('herbs', rect(5.ft, 10.ft, 8.ft, 5.ft), use: 'perennial') { plant 'chives' }
      tree('apple', point(30.ft, 20.ft), crown: 9.ft, height: 8.ft, standing: false) { species 'apple (dwarf)' ; mulchRing 3.ft }
      """;

  private static SheetPlan booklet(String yard) {
    return Drawn.of(yard).outcome().sheets().stream()
        .filter(s -> s.id().equals("crew"))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> cautions(String yard) {
    return booklet(yard).panels().stream()
        .filter(Panel.Notes.class::isInstance)
        .map(Panel.Notes.class::cast)
        .filter(n -> n.title().startsWith("Every day"))
        .flatMap(n -> n.paragraphs().stream())
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  /** The texts under the heading of a phase, the heading first. */
  private static List<String> steps(String yard, String phase) {
    List<String> texts = new ArrayList<>();
    boolean isIn = false;
    var table =
        booklet(yard).panels().stream()
            .filter(Panel.TableBlock.class::isInstance)
            .map(p -> ((Panel.TableBlock) p).table())
            .filter(t -> t.id().equals("crew-steps"))
            .findFirst()
            .orElseThrow();
    for (var row : table.rows()) {
      String first = row.get(0).value().map(Object::toString).orElse("");
      if (first.matches("\\d+\\. .*")) {
        isIn = first.contains(". " + phase + ":");
        first = isIn ? first : "";
        if (isIn) {
          texts.add(first);
        }
      } else if (isIn) {
        texts.add(row.get(1).value().map(Object::toString).orElse("").replace('\u00a0', ' '));
      }
    }
    assertFalse(texts.isEmpty(), phase);
    return texts;
  }

  private static boolean says(List<String> texts, String what) {
    return texts.stream().anyMatch(t -> t.contains(what));
  }

  /** In September the apple comes before the cardboard, three days after the marks. */
  @Test
  void treeBeforeTheCardboard_hasNoCardboardToCut_andFreshMarks() {
    List<String> trees = steps(YARD, "Plant trees and shrubs");
    assertFalse(says(trees, "cardboard"), trees::toString);
    assertFalse(says(trees, "anew"), trees::toString);
    List<String> plants = steps(YARD, "Plant");
    assertTrue(says(plants, "Cut a cross in the cardboard"), plants::toString);
  }

  /**
   * At the end of June pots wait for September: ground is covered first, and the tree's hole goes
   * through what covers it, two months after the marks.
   */
  @Test
  void treeThroughTheCover_saysSo_andAsksForNewMarks() {
    String early = YARD.replace("2026-09-07", "2026-06-29");
    List<String> trees = steps(early, "Plant trees and shrubs");
    assertTrue(trees.get(0).contains(" Sep 2026"), trees::toString);
    // No cardboard lies in the ring, only in the bed.
    assertFalse(says(trees, "Cut a cross in the cardboard"), trees::toString);
    assertTrue(says(trees, "have the lines marked anew (call 811"), trees::toString);
    // Canes in the bed go through its cardboard.
    String sheeted = early.replace("plant 'chives'", "plant 'red raspberry'");
    List<String> through = steps(sheeted, "Plant trees and shrubs");
    assertTrue(says(through, "Cut a cross in the cardboard"), through::toString);
    String chips =
        sheeted.replace("chips perennial: 3.inch", "chipsOnly() ; chips perennial: 3.inch");
    List<String> raked = steps(chips, "Plant trees and shrubs");
    assertTrue(says(raked, "Rake what covers the ground"), raked::toString);
    assertFalse(says(raked, "cardboard"), raked::toString);
  }

  /** Beds of chips alone get them after the plants: nothing is there to rake or to part. */
  @Test
  void bareBedsAndRings_haveNothingToRakeOrPart() {
    String bare =
        YARD.replace("2026-09-07", "2026-06-29")
                .replace(
                    "chips perennial: 3.inch",
                    "chipsOnly() ; chips perennial: 3.inch ; compost perennial: 0.inch")
            + "path('way', line([point(5.ft, 20.ft), point(20.ft, 20.ft)]), width: 3.ft, use:"
            + " 'barrow')\n";
    List<String> cover = steps(bare, "Ground cover");
    assertTrue(says(cover, "Spread paths with all their chips"), cover::toString);
    assertTrue(says(cover, "Leave beds and rings bare"), cover::toString);
    assertFalse(says(cover, "Cover beds"), cover::toString);
    List<String> trees = steps(bare, "Plant trees and shrubs");
    assertFalse(says(trees, "covers the ground"), trees::toString);
    List<String> plants = steps(bare, "Plant");
    assertTrue(says(plants, "Plant in the bare earth"), plants::toString);
    assertFalse(says(plants, "covers the ground"), plants::toString);
  }

  /**
   * In September carrots wait for April: the crew that mulches the herbs then has no row of seed to
   * spare, the one that mulches the carrots' bed in spring has.
   */
  @Test
  void sownRows_areSparedWhereTheyAre() {
    String roots =
        YARD + "bed('roots', rect(15.ft, 10.ft, 8.ft, 5.ft), use: 'annual') { plant 'KIND' }\n";
    String later = "Mulch what is planted later";
    String sown = roots.replace("KIND", "carrot");
    assertFalse(says(steps(sown, "Finish mulch"), "sown rows"));
    assertTrue(says(steps(sown, later), "sown rows"));
    assertFalse(says(steps(roots.replace("KIND", "tomato"), later), "sown rows"));
  }

  /** A caution stands once, behind all phases in which it holds. */
  @Test
  void cautionOfBuriedLines_namesEveryPhaseThatDigs() {
    List<String> lines = cautions(YARD);
    List<String> dig = lines.stream().filter(l -> l.contains("Dig by hand within 24 in")).toList();
    assertEquals(1, dig.size(), lines::toString);
    assertTrue(
        dig.get(0).startsWith("Edges and trench, Plant trees and shrubs: "), lines::toString);
  }

  /**
   * Without a first day, days are numbered: five beds' hours of cardboard take more than one of
   * them, and the heading names the last too.
   */
  @Test
  void phaseOfSeveralDaysWithoutDates_namesBothEnds() {
    String large =
        YARD.replace(", start: '2026-09-07'", "").replace("8.ft, 5.ft)", "40.ft, 25.ft)");
    String heading = steps(large, "Cardboard and its cover").get(0);
    assertTrue(heading.matches("\\d+\\. Cardboard .*: working days \\d+ to \\d+, .* h"), heading);
    String mark = steps(large, "Mark utilities").get(0);
    assertTrue(mark.contains("working days 1 to 3"), mark);
  }

  /** What the plan counts by itself is a step too, in its phase and only there. */
  @Test
  void ownTask_isAStepOfItsPhase() {
    String own = YARD + "task 'carry the old shed out', hours: 3, phase: 'stake'\n";
    assertTrue(says(steps(own, "Stake out"), "Carry the old shed out."));
    assertFalse(says(steps(own, "Edges and trench"), "Carry the old shed out."));
  }

  /** A pipe that is ordered and worked with the earth is laid in a step of its own. */
  @Test
  void overflowPipe_isLaidInAStep() {
    String tank =
        YARD
            + """
            building 'house', rect(20.ft, 28.ft, 20.ft, 10.ft), eaves: 9.ft, roof: 'flat'
            roof 'back', rect(20.ft, 28.ft, 20.ft, 10.ft), surface: 'metal'
            tank('butt', point(18.ft, 30.ft), roof: 'back') { round diameter: 2.ft, height: 3.ft }
            overflow(line([point(17.ft, 30.ft), point(9.ft, 30.ft)]), from: 'butt', inside: 3.inch)
            """;
    List<String> earth = steps(tank, "Earthwork");
    assertTrue(says(earth, "Lay the overflow pipe"), earth::toString);
    assertTrue(says(earth, "Dig the trench of each overflow pipe"), earth::toString);
    assertFalse(says(earth, "Dig swales"), earth::toString);
  }

  /** Without frost dates the work alone decides when kale is planted, and the plan says so. */
  @Test
  void plantingWithoutFrostDates_isTold() {
    String bare =
        YARD.replace("climate 'urbana-il'\n", "")
            .replace("frost last: '04-25', first: '10-14', source: 'by hand'\n", "");
    assertTrue(finds(bare, "work.planting-unknown"));
    assertFalse(finds(YARD, "work.planting-unknown"));
    assertFalse(finds(bare.replace(", start: '2026-09-07'", ""), "work.planting-unknown"));
  }

  private static boolean finds(String yard, String rule) {
    return Drawn.of(yard).outcome().findings().stream().anyMatch(f -> f.rule().equals(rule));
  }

  /**
   * A client whose tree waits from July to September is told both parts of the work, not that it
   * lasts for ten weeks.
   */
  @Test
  void workThatRestsForWeeks_isToldInParts() {
    List<String> told = inShort(YARD.replace("2026-09-07", "2026-06-29"));
    assertTrue(
        told.stream()
            .anyMatch(
                t -> t.matches("Work from 29 Jun 2026 to \\d+ Jul 2026, then .* Sep 2026\\.")),
        told::toString);
    List<String> once = inShort(YARD);
    assertTrue(
        once.stream().anyMatch(t -> t.matches("Work from 7 Sep 2026 to \\d+ Sep 2026\\.")),
        once::toString);
  }

  private static List<String> inShort(String yard) {
    return Drawn.of(yard).outcome().sheets().stream()
        .filter(s -> s.id().equals("client"))
        .flatMap(s -> s.panels().stream())
        .filter(Panel.Notes.class::isInstance)
        .flatMap(n -> ((Panel.Notes) n).paragraphs().stream())
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }
}
