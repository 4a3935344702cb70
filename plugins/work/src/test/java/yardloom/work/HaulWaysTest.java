package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Haul;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.materials.pile.PilePainter;
import yardloom.materials.pile.PileWords;
import yardloom.site.SitePlugin;
import yardloom.work.haul.HaulTable;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkWords;

/** Hauls follow the paths of the plan where these lead; ways are counted by hand, in feet. */
class HaulWaysTest {
  private static final double DETOUR = 1.3;

  /** A heap about (10, 10), and a path from its side 40 ft to the right and 40 ft up. */
  private static PlanKit yard() {
    PlanKit kit = PlanKit.us();
    PileWords.dropZone(
        kit.words(), "drive", PlanKit.box(0, 0, 20, 20), null, null, null, null, DETOUR, null);
    kit.path("way", 4, 20, 10, 60, 10, 60, 50);
    return kit;
  }

  private static Haul haul(Results r, String name) {
    return r.all(YardFacts.HAULS).stream()
        .filter(
            h ->
                h.to()
                    .equals(
                        name.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                            + name.substring(1)))
        .findFirst()
        .orElseThrow();
  }

  private static double input(Derived<?> why, String name) {
    return why.inputs().stream()
        .filter(i -> i.name().equals(name))
        .map(i -> ((Length) i.value()).feet())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void bed_besideThePath_isTheWayAlongItAndTheCarryToItsMiddle() {
    PlanKit kit = yard();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(62, 40, 10, 10));
    Haul haul = haul(PlanKit.run(kit.plan()), "beans");
    assertEquals(Haul.By.PATHS, haul.by());
    // 10 ft off the heap, 40 ft across, 30 ft up to (60, 40); then to the middle (67, 45).
    double carry = Math.hypot(7, 5);
    assertEquals(80, input(haul.oneWay(), "way along paths and hard surfaces to beside it"), 1e-6);
    assertEquals(carry, input(haul.oneWay(), "carry to its middle"), 1e-6);
    assertEquals(80 + carry, haul.oneWay().value().feet(), 1e-6);
    assertEquals(
        2 * haul.trips().value() * haul.oneWay().value().feet(), haul.walk().value().feet(), 1e-6);
  }

  @Test
  void path_ofTheNetwork_isTheWayToHalfwayAlongIt() {
    Haul haul = haul(PlanKit.run(yard().plan()), "way");
    assertEquals(Haul.By.PATHS, haul.by());
    assertEquals(10 + 40, haul.oneWay().value().feet(), 1e-6);
  }

  @Test
  void path_tooNarrowForABarrow_isReachedAtItsEdge() {
    PlanKit kit = yard();
    kit.path("trail", 2, 62, 30, 82, 30);
    Haul haul = haul(PlanKit.run(kit.plan()), "trail");
    // 10 + 40 + 19 ft to (60, 29), beside its lower corner (62, 29), then to its middle (72, 30).
    assertEquals(69, input(haul.oneWay(), "way along paths and hard surfaces to beside it"), 1e-6);
    assertEquals(69 + Math.hypot(12, 1), haul.oneWay().value().feet(), 1e-6);
    assertEquals(Haul.By.PATHS, haul.by());
  }

  /** An L of two arms of 4 by 20 ft: its centre (8, 8) from the corner lies off it. */
  @Test
  void bed_whoseCentreLiesOffIt_isReachedWellInside() {
    PlanKit kit = yard();
    Shape bed = PlanKit.box(62, 20, 4, 20).plus(PlanKit.box(62, 20, 20, 4));
    kit.bed("corner", BedUse.PERENNIAL, bed);
    Haul haul = haul(PlanKit.run(kit.plan()), "corner");
    assertTrue(bed.shrunk(Length.feet(1.5)).contains(haul.way().end()), haul.way()::toString);
  }

  @Test
  void bed_offThePaths_isTheWayOverOpenGroundWithDetour() {
    PlanKit kit = yard();
    kit.bed("berries", BedUse.PERENNIAL, PlanKit.box(0, 60, 10, 10));
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    Haul haul = haul(r, "berries");
    assertEquals(Haul.By.OPEN_GROUND, haul.by());
    assertEquals(Math.hypot(5, 55) * DETOUR, haul.oneWay().value().feet(), 0.01);
    Table table = new HaulTable().make(plan, r);
    assertTrue(
        table.rows().stream()
            .anyMatch(
                row ->
                    row.get(0).equals(Cell.text("Berries"))
                        && row.contains(Cell.text("open ground"))));
    assertTrue(table.notes().stream().anyMatch(n -> n.startsWith("By open ground: no path")));
  }

  @Test
  void bed_behindAGapInThePath_isNotReachedByIt() {
    PlanKit kit = PlanKit.us();
    PileWords.dropZone(
        kit.words(), "drive", PlanKit.box(0, 0, 20, 20), null, null, null, null, DETOUR, null);
    kit.path("near", 4, 20, 10, 30, 10);
    kit.path("far", 4, 33, 10, 60, 10);
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(40, 12, 10, 10));
    Results r = PlanKit.run(kit.plan());
    assertEquals(Haul.By.OPEN_GROUND, haul(r, "beans").by());
    assertEquals(Haul.By.OPEN_GROUND, haul(r, "far").by());
    assertEquals(Haul.By.PATHS, haul(r, "near").by());
  }

  @Test
  void slope_onAWayAlongPaths_costsFivePercentForEachPercent() {
    PlanKit flat = yard();
    PlanKit steep = yard();
    WorkWords.work(steep.words(), 2, 6, 0.1, null, null, null, null);
    assertEquals(1.5, walkHours(steep) / walkHours(flat), 1e-9);
    // 50 ft one way to the path of 80 by 4 ft, 4 in deep: 106.7 cu ft, 18 barrows of 6 cu ft.
    assertEquals(2 * 18 * 50 * 0.3048 / 3000, walkHours(flat), 1e-6);
  }

  private static double walkHours(PlanKit kit) {
    List<TaskLoad> tasks = PlanKit.run(kit.plan()).all(TaskLoad.FACT);
    return tasks.stream()
        .filter(t -> t.task() == WorkTask.WALK)
        .mapToDouble(t -> t.likely().value().hours())
        .sum();
  }

  @Property(tries = 60, seed = "20261125")
  void haul_anyBed_agreesWithTheTableOfWaysAndWithWhatIsDrawn(
      @ForAll @IntRange(min = 0, max = 100) int x, @ForAll @IntRange(min = 0, max = 70) int y) {
    PlanKit kit = yard();
    kit.path("branch", 3, 62, 34, 90, 34);
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(x, y, 9, 7));
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<Line> drawn =
        new PilePainter()
            .paint(plan, r).stream()
                .filter(m -> m instanceof Mark.Stroke)
                .map(m -> ((Mark.Stroke) m).line())
                .toList();
    for (Haul haul : r.all(YardFacts.HAULS)) {
      double way = haul.oneWay().value().feet();
      double straight = haul.way().start().distance(haul.way().end()).feet();
      assertTrue(way >= straight - 1e-6, () -> haul.to() + " " + way + " " + straight);
      assertTrue(drawn.contains(haul.way()));
      double factor = haul.by() == Haul.By.PATHS ? 1 : DETOUR;
      assertEquals(haul.way().length().feet() * factor, way, 1e-6);
      if (haul.to().equals("Beans")) {
        assertAgrees(haul, toBed(plan));
      }
    }
  }

  private static void assertAgrees(Haul haul, Cell table) {
    boolean isReached = table.why().isPresent();
    assertEquals(isReached ? Haul.By.PATHS : Haul.By.OPEN_GROUND, haul.by());
    if (isReached) {
      Length listed = (Length) table.value().orElseThrow();
      assertEquals(
          listed.feet(),
          input(haul.oneWay(), "way along paths and hard surfaces to beside it"),
          1e-9);
    }
  }

  /** What "Haul distances" says of the barrow from the drop zone to the bed. */
  private static Cell toBed(Plan plan) {
    Table routes =
        new SitePlugin()
            .tables().stream()
                .filter(t -> t.id().equals("routes"))
                .findFirst()
                .orElseThrow()
                .make(plan, FactGraph.of(new SitePlugin().calculators()).run(plan));
    return routes.rows().stream()
        .filter(row -> row.get(1).equals(Cell.text("beans")))
        .findFirst()
        .orElseThrow()
        .get(2);
  }
}
