package yardloom.work.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Money;
import yardloom.site.built.BuiltWords;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.PriceWords;
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTime;

/** Visits share out phases, hours, orders and cost of any yard, and lose or double none. */
class SiteVisitLawTest {
  @Property(tries = 40, seed = "20261127")
  void visits_areAllOfTheWorkOnce(
      @ForAll @IntRange(min = 2, max = 60) int feet,
      @ForAll @IntRange(min = 0, max = 20) int deep,
      @ForAll @IntRange(min = 1, max = 90) int price) {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, feet, 7));
    kit.bed("b", BedUse.ANNUAL, PlanKit.box(0, 8, feet, 4));
    kit.path("p", PlanKit.box(0, 14, feet, 3));
    if (deep > 3) {
      BuiltWords.paving(kit.words(), "walk", PlanKit.box(0, 20, feet, deep), "gravel", false);
    }
    price(kit, "wood-chip mulch", "yd3", price);
    price(kit, "compost", "yd3", price + 3);
    price(kit, "gravel", "yd3", price + 5);
    price(kit, "cardboard, sheets", null, 2);
    price(kit, "delivery of bulk", null, 2 * price);
    price(kit, "labour", "h", price + 11);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<SiteVisit> visits = r.all(SiteVisit.FACT);

    double hours = TaskLoad.sum(r.all(TaskLoad.FACT)).likely().hours();
    assertEquals(hours, visits.stream().mapToDouble(v -> v.hours().value().hours()).sum(), 1e-9);
    assertEquals(r.all(PhaseTime.FACT).stream().mapToDouble(PhaseTime::hours).sum(), hours, 1e-9);
    double cost = r.get(CostEstimate.FACT).total().likely().value().amount();
    assertEquals(
        cost,
        visits.stream().mapToDouble(v -> v.cost().orElseThrow().value().amount()).sum(),
        1e-9 * cost);
    List<WorkPhase> phases = visits.stream().flatMap(v -> v.phases().stream()).toList();
    assertEquals(r.all(PhaseTime.FACT).stream().map(t -> t.phase().id()).toList(), phases);
    List<BillLine> lines = new ArrayList<>(r.all(YardFacts.BILL));
    visits.forEach(v -> v.lines().forEach(l -> assertEquals(true, lines.remove(l), l.item())));
    assertEquals(List.of(), lines);
    assertEquals(
        r.all(YardFacts.LOADS).size(), visits.stream().mapToInt(v -> v.loads().size()).sum());
  }

  private static void price(PlanKit kit, String item, String per, double each) {
    Money money = Money.amount(each);
    PriceWords.price(kit.words(), item, money, money, money, per);
  }
}
