package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.MulchWords;
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTime;

/** Layers, phases, orders and hours of any yard say the same; with and without every layer. */
class LayerOrderLawTest {
  private static PlanKit yard(List<Integer> seeds) {
    PlanKit kit = PlanKit.us();
    int n = 0;
    for (int s : seeds) {
      var box = PlanKit.box(s % 37, s / 37 % 31, 2 + s % 7, 3 + s % 5);
      String name = "e" + n++;
      switch (s % 5) {
        case 0 -> kit.path(name, box);
        case 1 -> kit.tree(name, s % 37, s / 37 % 31, 2 + s % 9);
        default -> {
          var bed = kit.bed(name, s % 5 == 2 ? BedUse.ANNUAL : BedUse.PERENNIAL, box);
          MulchWords.mulch(bed, Length.inches(s % 4));
          MulchWords.compost(bed, Length.inches(s / 5 % 3));
          if (s % 7 == 0) {
            MulchWords.noCardboard(bed);
          }
        }
      }
    }
    return kit;
  }

  private static Results run(Plan plan, int dripEvery) {
    List<Dripline> driplines = new ArrayList<>();
    List<Element.Bed> beds = plan.all(Element.Bed.class);
    for (int i = 0; i < beds.size(); i += dripEvery) {
      driplines.add(
          new Dripline(
              beds.get(i).id(),
              Derived.given(Length.feet(10 + i), "test", SourceRef.NONE),
              List.of(),
              Length.inches(12)));
    }
    return PlanKit.run(plan, List.of(), Optional.empty(), driplines);
  }

  @Property(tries = 60, seed = "20261127")
  void noLayer_isWorkedBeforeTheOneBelow(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 5000) Integer> seeds,
      @ForAll @IntRange(min = 1, max = 3) int dripEvery) {
    Results r = run(yard(seeds).plan(), dripEvery);
    Map<WorkPhase, PhaseTime> times = new EnumMap<>(WorkPhase.class);
    r.all(PhaseTime.FACT).forEach(t -> times.put(t.phase().id(), t));
    for (MulchSurface s : r.all(YardFacts.SURFACES)) {
      for (int i = 1; i < s.courses().size(); i++) {
        PhaseTime below = times.get(s.courses().get(i - 1).phase());
        PhaseTime above = times.get(s.courses().get(i).phase());
        if (above != null && below != null && above != below) {
          assertTrue(below.ends() <= above.begins(), s.courses().toString());
        }
      }
      cardboardIsCoveredInItsOwnPhase(s);
    }
  }

  private static void cardboardIsCoveredInItsOwnPhase(MulchSurface s) {
    boolean chips = !s.lifts(Material.WOOD_CHIPS).isEmpty();
    boolean compost = !s.lifts(Material.COMPOST).isEmpty();
    if (s.sheets().isPresent() && (chips || compost)) {
      LaidLayer cover = s.courses().get(1);
      assertTrue(cover.volume().isPresent(), s.courses().toString());
      assertEquals(s.courses().get(0).phase(), cover.phase(), s.courses().toString());
    }
  }

  /** What is printed as taken off, what is ordered before rounding, and what is spread. */
  @Property(tries = 60, seed = "20261127")
  void lifts_addUpToTakeOffBillAndHours(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 5000) Integer> seeds) {
    Plan plan = yard(seeds).plan();
    Results r = run(plan, 2);
    for (Material material : List.of(Material.COMPOST, Material.WOOD_CHIPS)) {
      double lifts = 0;
      for (MulchSurface s : r.all(YardFacts.SURFACES)) {
        for (LaidLayer c : s.courses()) {
          lifts += c.material().equals(material) ? ((Volume) c.amount().value()).cubicYards() : 0;
        }
      }
      Table takeOff = PlanKit.table("materials-take-off", plan, r);
      if (!takeOff.rows().isEmpty()) {
        int column = material.equals(Material.COMPOST) ? 5 : 7;
        Object printed = takeOff.rows().get(takeOff.rows().size() - 1).get(column).value().get();
        assertEquals(lifts, ((Volume) printed).cubicYards(), 1e-9);
      }
      double billed =
          r.all(YardFacts.BILL).stream()
              .filter(l -> l.item().equals(material.title()))
              .mapToDouble(l -> ((Volume) l.exact().value()).cubicYards())
              .sum();
      assertEquals(lifts, billed, 1e-9);
    }
    double spread =
        r.all(TaskLoad.FACT).stream()
            .filter(t -> t.task() == WorkTask.SPREAD)
            .mapToDouble(t -> ((Volume) t.amount().value()).cubicYards())
            .sum();
    double laid =
        r.all(YardFacts.SURFACES).stream()
            .flatMap(s -> s.courses().stream())
            .flatMap(c -> c.volume().stream())
            .mapToDouble(v -> v.value().cubicYards())
            .sum();
    assertEquals(laid, spread, 1e-9);
  }
}
