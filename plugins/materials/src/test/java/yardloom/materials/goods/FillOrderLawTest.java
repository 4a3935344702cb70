package yardloom.materials.goods;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Carry;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/** Soil in a frame lies on the cardboard and below compost: it comes in between, once. */
class FillOrderLawTest {
  @Property(tries = 40, seed = "20261127")
  void soil_comesNotBeforeTheCardboardNorAfterTheCompost(
      @ForAll @IntRange(min = 3, max = 30) int feet,
      @ForAll @IntRange(min = 1, max = 3) int courses,
      @ForAll boolean annual) {
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", annual ? BedUse.ANNUAL : BedUse.PERENNIAL, PlanKit.box(0, 0, feet, 4));
    HardWords.frame(bed, "2x12", Length.feet(8), null, null, courses);
    kit.bed("flat", BedUse.PERENNIAL, PlanKit.box(0, 9, feet, 3));
    Results r = PlanKit.run(kit.plan());
    Job fill =
        r.all(YardFacts.JOBS).stream()
            .filter(j -> j.task() == WorkTask.FILL_FRAMES)
            .findFirst()
            .orElseThrow();
    Carry carry = r.all(YardFacts.CARRIES).get(0);
    assertEquals(1, r.all(YardFacts.CARRIES).size());
    assertEquals(fill.phase(), carry.phase());
    // What is wheeled is what lies there and a seventh or so (15 %) that settles.
    double there = ((Volume) fill.amount().value()).cubicFeet();
    assertEquals(1.15 * there, carry.volume().value().cubicFeet(), 1e-9 * there);
    MulchSurface framed =
        r.all(YardFacts.SURFACES).stream()
            .filter(s -> s.of().name().equals("a"))
            .findFirst()
            .orElseThrow();
    for (LaidLayer course : framed.courses()) {
      int order = fill.phase().compareTo(course.phase());
      assertTrue(course.material().equals(Material.CARDBOARD) ? order >= 0 : order <= 0);
    }
  }
}
