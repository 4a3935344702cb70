package yardloom.materials.load;

import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;

/** Gives truckloads and weight of every bulk order of the sheet mulch. */
public final class LoadCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.loads";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.LOADS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    BulkRates rates = BulkRates.of(plan, in.find(YardFacts.REGION));
    for (BillLine line : in.all(YardFacts.BILL)) {
      if (line.group() == BillGroup.SHEET_MULCH && line.order().value() instanceof Volume order) {
        out.give(
            YardFacts.LOADS, rates.loads(line.item(), line.phase(), line.order().map(v -> order)));
      }
    }
  }
}
