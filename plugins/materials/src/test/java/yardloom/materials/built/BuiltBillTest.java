package yardloom.materials.built;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.built.formula.FenceParts;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;

/** What is bought for new walls and paving, by hand, and which steps trip people. */
class BuiltBillTest {
  private static Line north(double feet) {
    Point foot = new Point(Length.feet(3), Length.feet(5));
    return Line.between(foot, foot.moved(Length.ZERO, Length.feet(feet)));
  }

  private static void bulk(Results results, String item, double cubicFeet, double cubicYards) {
    BillLine line = PlanKit.line(results, item).orElseThrow();
    assertEquals(cubicFeet, ((Volume) line.exact().value()).cubicFeet(), 1e-6, item);
    assertEquals(cubicYards, ((Volume) line.order().value()).cubicYards(), 1e-6, item);
  }

  private static double dug(Results results) {
    return results.all(YardFacts.JOBS).stream()
        .filter(job -> job.task() == WorkTask.DIG_EARTH)
        .mapToDouble(job -> ((Volume) job.amount().value()).cubicFeet())
        .sum();
  }

  /**
   * A wall of 14 ft, 10 in high and 9 in thick, of blocks 21 in by 8 in: 2 courses and one buried
   * of 8 blocks, 24 × 1.1 = 26.4. A base 6 in deep and twice as wide as the wall (as the public
   * wall calculators have it): 14 × 1.5 × 0.5 = 10.5 cu ft, 0.389 cu yd; a fifth more is 0.467, so
   * 0.5. Rock of 12 in behind it: 14 × 10/12 × 1 = 11.67 cu ft, 0.432 cu yd; a fifth more is 0.519,
   * so 1.
   */
  @Test
  void wall_baseAndRock_inHalfYards() {
    PlanKit kit = PlanKit.us();
    BarrierWords.wall(
        kit.words(),
        "bank",
        north(14),
        Length.inches(10),
        Length.inches(9),
        true,
        Length.inches(21),
        Length.inches(8),
        false);
    Results results = PlanKit.run(kit.plan());
    bulk(results, "gravel base", 10.5, 0.5);
    bulk(results, "drain rock", 14 * 10 / 12.0, 1);
    BillLine blocks = PlanKit.line(results, "wall blocks, 21 in by 8 in").orElseThrow();
    assertEquals(24, blocks.exact().value());
    assertEquals(27, blocks.order().value());
  }

  /**
   * Flagstone on 30 by 11 ft: an inch of sand is 27.5 cu ft, 1.0185 cu yd, a fifth more 1.222, so
   * 1.5. Sand weighs 2,600 lb/cu yd, 10 % more or less (density table of a bulk-soil dealer): 3,900
   * lb, from 3,510 to 4,290.
   */
  @Test
  void beddingSand_weighsWhatSandDoes() {
    PlanKit kit = PlanKit.us();
    BuiltWords.paving(kit.words(), "terrace", PlanKit.box(2, 4, 30, 11), "flagstone", false);
    Results results = PlanKit.run(kit.plan());
    bulk(results, "bedding sand", 27.5, 1.5);
    BulkLoads loads =
        results.all(YardFacts.LOADS).stream()
            .filter(l -> l.item().equals("bedding sand"))
            .findFirst()
            .orElseThrow();
    assertEquals(3510, loads.lightest().value().pounds(), 1e-6);
    assertEquals(4290, loads.heaviest().value().pounds(), 1e-6);
  }

  /**
   * 9 by 40 ft, 360 sq ft: 4 in of gravel are 120 cu ft, 4.44 cu yd, a fifth more 5.33, so 5.5. A
   * lane for trucks has a base of 6 in as for cars, 180 cu ft, 6.67 cu yd, a fifth more 8.0; a
   * gravel walk has none. As deep as they lie is dug: 300 and 120 cu ft.
   */
  @Test
  void gravelThatBearsTrucks_hasABaseAsForCars() {
    PlanKit lane = PlanKit.us();
    BuiltWords.truckLane(lane.words(), "lane", north(40), Length.feet(9), null, false);
    Results results = PlanKit.run(lane.plan());
    bulk(results, "gravel", 120, 5.5);
    bulk(results, "gravel base", 180, 8);
    assertEquals(300, dug(results), 1e-6);
    PlanKit walk = PlanKit.us();
    BuiltWords.paving(walk.words(), "walk", PlanKit.box(2, 4, 9, 40), "gravel", false);
    Results foot = PlanKit.run(walk.plan());
    bulk(foot, "gravel", 120, 5.5);
    assertTrue(PlanKit.line(foot, "gravel base").isEmpty());
    assertEquals(120, dug(foot), 1e-6);
  }

  /**
   * A lane for trucks of 10 by 21 ft where no width is said, 210 sq ft: 4 in of gravel are 70 cu
   * ft, 2.593 cu yd, a fifth more 3.11, so 3.5; a base of 6 in as under cars (BuiltPartsTest) is
   * 105 cu ft, 3.889 cu yd, a fifth more 4.67, so 5.
   */
  @Test
  void lane_isTenFeetWide_onABaseForCars() {
    PlanKit kit = PlanKit.us();
    BuiltWords.truckLane(kit.words(), "lane", north(21), null, null, false);
    Results results = PlanKit.run(kit.plan());
    bulk(results, "gravel", 70, 3.5);
    bulk(results, "gravel base", 105, 5);
  }

  /**
   * Two risers and a tread make 26 or 27 in (a garden magazine); the marks at 24 and 28 in and the
   * least tread of 11 in are our own. Treads lie between the risers, one less than these.
   */
  @ParameterizedTest
  @CsvSource({
    // rise, riser, run in inches: 3 × 7 in, 2 treads of 12, 13, 14 and 14.5 in
    "21, 7, 24, false",
    "21, 7, 26, false",
    "21, 7, 28, false",
    "21, 7, 29, true",
    // 4 × 5.25 in, 3 treads of 14 and 13 in: 24.5 and 23.5 in
    "21, 6, 42, false",
    "21, 6, 39, true",
    // 3 × 7.5 in, 2 treads of 11.5 and 10.5 in: 26.5 and 25.5 in
    "22.5, 8, 23, false",
    "22.5, 8, 21, true"
  })
  void steps_outsideTheStride_areSaidToTrip(double rise, double riser, double run, boolean trips) {
    PlanKit kit = PlanKit.us();
    BarrierWords.steps(
        kit.words(),
        "climb",
        north(run / 12),
        Length.inches(rise),
        Length.feet(4),
        Length.inches(riser),
        false);
    Plan plan = kit.plan();
    assertEquals(
        trips,
        PlanKit.findings(plan, PlanKit.run(plan)).stream()
            .anyMatch(f -> f.rule().equals("materials.built") && f.text().contains("trip")));
  }

  /** Boards on posts 8 ft apart at the most where nothing is said: 33 ft in 5 bays, 6 posts. */
  @Test
  void fence_withoutASpacing_hasPostsAtEightFeet() {
    PlanKit kit = PlanKit.us();
    BarrierWords.fence(
        kit.words(), "side", north(33), Length.feet(6), null, null, false, null, null);
    Results results = PlanKit.run(kit.plan());
    BillLine posts = PlanKit.line(results, "fence posts, 4x4 by 9 ft").orElseThrow();
    assertEquals(6, posts.exact().value());
    assertTrue(PlanKit.line(results, "fence rails, 2x4 by 8 ft").isPresent());
    // Holes of 10 in about posts of 3.5 in, 3 ft deep: (π 25 − 12.25) 36 / 1728 = 1.381 cu ft; six
    // of them and a tenth more in bags of 0.45 cu ft are 20.26.
    assertEquals(
        21, PlanKit.line(results, "concrete mix, 60 lb bags").orElseThrow().exact().value());
    // Whole bags hide the post's width: 1.381 cu ft in one hole, 1.366 about a post of 3.6 in. A
    // dressed 4x4 is 3 1/2 in (American Softwood Lumber Standard PS 20, from memory).
    assertEquals(
        1.381,
        FenceParts.concrete(FenceParts.HOLE, FenceParts.POST, Length.feet(3)).cubicFeet(),
        0.0005);
  }
}
