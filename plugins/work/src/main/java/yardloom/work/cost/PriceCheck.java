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
 * Says when a price of the plan is for nothing on the bill: a warning where it misses by a letter
 * or two, else one note for all, since a price book serves many yards.
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
    Set<String> onBill = new TreeSet<>();
    facts.all(YardFacts.BILL).forEach(line -> onBill.add(line.item()));
    Set<String> known = new TreeSet<>(PriceBook.demo().items());
    known.addAll(onBill);
    List<Finding> findings = new ArrayList<>();
    Set<String> idle = new TreeSet<>();
    for (Attributes.Entry<Price> entry : plan.attributes().all(Price.KEY)) {
      String item = entry.value().item();
      if (onBill.contains(item) || PriceBook.isGeneral(item)) {
        continue;
      }
      String hint = known.contains(item) ? "" : Nearest.hint(item, known);
      if (hint.isEmpty()) {
        idle.add("'" + item + "'");
      } else {
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
    if (!idle.isEmpty()) {
      findings.add(
          Finding.of(
              id(),
              Severity.NOTE,
              "nothing on this bill is called " + String.join(", ", idle) + ": not used",
              "write items as the bill does; a price book for many yards may keep them",
              NAMES));
    }
    return findings;
  }
}
