package yardloom.work.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import yardloom.facts.PlanKit;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Money;

/** Cost range and drivers of any yard and prices come from one run and agree. */
class CostAgreementLawTest {
  @Property(tries = 30, seed = "20261127")
  void likelyTotal_liesBetweenOrTheReasonIsPrinted_andIsTheDriversMiddle(
      @ForAll @IntRange(min = 2, max = 60) int feet,
      @ForAll @IntRange(min = 0, max = 20) int low,
      @ForAll @IntRange(min = 0, max = 20) int more,
      @ForAll @IntRange(min = 0, max = 300) int most) {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, feet, 7));
    kit.path("p", PlanKit.box(0, 9, feet, 3));
    price(kit, "wood-chip mulch", "yd3", low, low + more, low + more + most);
    price(kit, "compost", "yd3", low + 3, low + 5, low + 11);
    price(kit, "labour", "h", 20, 20 + more, 20 + more + low);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    CostEstimate cost = r.get(CostEstimate.FACT);
    Table table = PlanKit.table("materials-cost", plan, r);
    boolean said = table.notes().stream().anyMatch(n -> n.contains("outside P10 to P90"));
    assertEquals(!cost.total().likelyLiesBetween(), said);

    double likely = cost.total().likely().value().amount();
    double rows = cost.rows().stream().mapToDouble(x -> x.likely().value().amount()).sum();
    assertEquals(rows, likely, 1e-9 * rows);
    for (CostEstimate.Driver d : cost.drivers()) {
      assertTrue(d.low().amount() <= likely + 1e-9 && likely <= d.high().amount() + 1e-9, d.name());
    }
    Table drivers = PlanKit.table("materials-cost-drivers", plan, r);
    Object middle = drivers.rows().get(0).get(2).value().orElseThrow();
    assertEquals(likely, ((Money) middle).amount(), 1e-9 * likely);
  }

  private static void price(PlanKit kit, String item, String per, double l, double m, double h) {
    PriceWords.price(kit.words(), item, Money.amount(m), Money.amount(l), Money.amount(h), per);
  }
}
