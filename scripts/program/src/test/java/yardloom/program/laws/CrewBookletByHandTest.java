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
    assertTrue(says(trees, "Cut a cross in the cardboard"), trees::toString);
    assertTrue(says(trees, "have the lines marked anew (call 811"), trees::toString);
    String chips =
        early.replace("chips perennial: 3.inch", "chipsOnly() ; chips perennial: 3.inch");
    List<String> raked = steps(chips, "Plant trees and shrubs");
    assertTrue(says(raked, "Rake what covers the ground"), raked::toString);
    assertFalse(says(raked, "cardboard"), raked::toString);
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
}
