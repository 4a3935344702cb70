package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Says which trees lack winter chill. */
public final class ChillCheck implements Check {
  private static final Source CULTIVARS =
      Source.commonPractice("fruit trees with too little chill leaf out late and bear little");

  @Override
  public String id() {
    return "planting.chill";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.WINTER_CHILL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<Double> hours = facts.find(YardFacts.WINTER_CHILL).map(c -> c.hours().value());
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      for (Entry<Double> need : tree.attributes().all(ChillWords.CHILL)) {
        hours
            .filter(h -> h < need.value())
            .ifPresent(h -> found.add(lacking(h, need).about(tree.id(), need.place())));
      }
    }
    return found;
  }

  private Finding lacking(double hours, Entry<Double> need) {
    return Finding.of(
        id(),
        Severity.WARNING,
        String.format(
            Locale.ROOT,
            "it asks for %.0f h of winter chill; a usual winter here has about %.0f h below 45 °F"
                + " (7 °C), by hours drawn between the days' extremes",
            need.value(),
            hours),
        "choose a variety that needs less chill",
        CULTIVARS);
  }
}
