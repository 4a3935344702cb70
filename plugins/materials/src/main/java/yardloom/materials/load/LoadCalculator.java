package yardloom.materials.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;

/**
 * Gives truckloads and weight of every bulk order: what is of one kind and phase comes together.
 */
public final class LoadCalculator implements Calculator {
  private static final Source SUM = Source.plan("sum over the things of the plan");

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
    Map<String, List<BillLine>> together = new LinkedHashMap<>();
    for (BillLine line : in.all(YardFacts.BILL)) {
      boolean bulk = rates.materialOf(line.item()).isPresent();
      if (bulk && line.order().value() instanceof Volume) {
        String key = BillLine.stem(line.item()) + "|" + line.phase();
        together.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
      }
    }
    together.values().forEach(lines -> out.give(YardFacts.LOADS, loads(lines, rates)));
  }

  private static BulkLoads loads(List<BillLine> lines, BulkRates rates) {
    BillLine first = lines.get(0);
    Derived<Volume> order = first.order().map(v -> (Volume) v);
    if (lines.size() > 1) {
      Derived.Builder why = Derived.by("sum over what is ordered", SUM);
      Volume sum = Volume.ZERO;
      for (BillLine line : lines) {
        why.from(line.element().map(Object::toString).orElse(line.item()), line.order());
        sum = sum.plus((Volume) line.order().value());
      }
      order = why.gives(sum);
    }
    String material = rates.materialOf(first.item()).orElseThrow();
    return rates.loads(BillLine.stem(first.item()), material, first.phase(), order);
  }
}
