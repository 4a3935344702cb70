package yardloom.work.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Says which things have no price where others have, so that nobody takes them for free. */
public final class MissingPriceCheck implements Check {
  private static final Source BOOK = Source.plan("price book of the plan");

  @Override
  public String id() {
    return "work.price-missing";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CostEstimate.FACT);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Set<String> missing = new TreeSet<>();
    facts.find(CostEstimate.FACT).ifPresent(c -> missing.addAll(c.unpriced()));
    List<Finding> findings = new ArrayList<>();
    if (!missing.isEmpty()) {
      findings.add(
          Finding.of(
              id(),
              Severity.NOTE,
              "No price is known for " + String.join(", ", missing) + ": the cost leaves it out.",
              "Give it with `price` or `priceBook`, in the unit in which it is ordered.",
              BOOK));
    }
    return findings;
  }
}
