package yardloom.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.YardFacts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.study.Toolbox;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.vocab.Vocabulary;

class SunPluginTest extends PluginContract {
  private static final ElementId NORTH_BED = new ElementId(ElementKind.BED, "behind the wall");
  private static final ElementId SOUTH_BED = new ElementId(ElementKind.BED, "before the wall");

  @Override
  protected YardPlugin plugin() {
    return new SunPlugin();
  }

  static Outcome outcome(Draft draft) {
    return new Study(
            PluginLoader.of(List.of(new SunPlugin()), new Vocabulary("kernel", List.of())),
            Toolbox.EMPTY)
        .of(draft.freeze());
  }

  /** A tall wall from east to west with a bed on either side. */
  private static Draft wallBetweenBeds() {
    Draft draft = TestYards.at(40, -105);
    Line line = Line.between(Point.metres(-500, 0), Point.metres(500, 0));
    Shape strip = TestYards.rectangle(-500, -0.05, 500, 0.05);
    draft.add(
        new ElementId(ElementKind.FENCE, "wall"),
        SourceRef.NONE,
        c -> new Element.Fence(c, line, strip, Length.metres(100), 0));
    TestYards.bed(draft, NORTH_BED, TestYards.rectangle(-2, 0.5, 2, 1.5));
    TestYards.bed(draft, SOUTH_BED, TestYards.rectangle(-2, -1.5, 2, -0.5));
    return draft;
  }

  @Test
  void bedNorthOfWall_hasNoWinterSunAndBedSouthOfItAllOfIt() {
    Outcome outcome = outcome(wallBetweenBeds());
    var sun = outcome.results().get(YardFacts.SUN_HOURS);
    List<TimeSpan> behind = sun.of(NORTH_BED).orElseThrow();
    List<TimeSpan> before = sun.of(SOUTH_BED).orElseThrow();
    // Behind an endless wall there is sun only while it stands north of the east-west line, which
    // it crosses at cos H = tan δ / tan φ; on 11 June δ = 23.09°: day 14.79 h less 7.93 h.
    // 100 m are not endless: the sun peeps over for some 4 minutes at either crossing.
    assertEquals(6.86 + 0.13, behind.get(5).hours(), 0.05, "June behind the wall");
    assertEquals(0, behind.get(11).hours(), 1e-9, "December behind the wall");
    assertEquals(sun.open().get(11).hours(), before.get(11).hours(), 1e-9, "December before it");
    assertTrue(before.get(5).hours() < sun.open().get(5).hours(), "the June sun rises behind it");
  }

  @Test
  void table_listsBedsAndOpenGroundWithClass() {
    Table table =
        outcome(wallBetweenBeds()).tables().stream()
            .filter(t -> t.id().equals("sun-hours"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, table.rows().size());
    assertEquals("full sun", table.rows().get(0).get(15).value().orElseThrow());
    assertEquals("part sun", table.rows().get(1).get(15).value().orElseThrow());
    assertTrue(table.notes().stream().anyMatch(n -> n.contains("temperate")), "names the scheme");
  }

  @Test
  void planWithoutSite_givesNoHoursAndSaysWhy() {
    Draft draft = TestYards.nowhere();
    TestYards.bed(draft, NORTH_BED, TestYards.rectangle(0, 0, 2, 1));
    Outcome outcome = outcome(draft);
    assertTrue(outcome.results().find(YardFacts.SUN_HOURS).isEmpty());
    assertEquals(List.of("sun.site"), outcome.findings().stream().map(f -> f.rule()).toList());
  }
}
