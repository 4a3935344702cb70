package yardloom.work.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;

/**
 * Says when a price of the plan is for nothing on the bill, but for a letter or two.
 *
 * <p>A price book serves many yards, so that items which this bill lacks are no mistake.
 */
public final class PriceCheck implements Check {
  private static final Source NAMES =
      Source.commonPractice("prices are found by the name on the bill");

  @Override
  public String id() {
    return "work.price-names";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Set<String> known = new TreeSet<>(PriceBook.demo().items());
    facts.all(YardFacts.BILL).forEach(line -> known.add(line.item()));
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<Price> entry : plan.attributes().all(Price.KEY)) {
      String item = entry.value().item();
      String hint = known.contains(item) ? "" : Nearest.hint(item, known);
      if (!hint.isEmpty()) {
        findings.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    "nothing is called '" + item + "', so this price is not used." + hint,
                    "write the item as the cost table does",
                    NAMES)
                .at(entry.place()));
      }
    }
    return findings;
  }
}
