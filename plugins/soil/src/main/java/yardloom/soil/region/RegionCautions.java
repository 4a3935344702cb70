package yardloom.soil.region;

import java.util.List;
import java.util.stream.Collectors;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;

/** What a region rules by itself, for whoever has the sheets and not the report. */
public final class RegionCautions {
  private static final Source RULE = Source.commonPractice("local rules go before general advice");

  private RegionCautions() {}

  /** One, if the plan lies in a region that gives rules. */
  public static List<Caution> of(Facts facts) {
    return facts.find(YardFacts.REGION).stream()
        .flatMap(region -> caution(region.name(), facts.all(YardFacts.LOCAL_RULES)).stream())
        .toList();
  }

  private static List<Caution> caution(String region, List<LocalRule> rules) {
    String topics =
        rules.stream()
            .filter(rule -> rule.region().equals(region))
            .map(LocalRule::topic)
            .sorted()
            .collect(Collectors.joining(", "));
    String text = region + " has its own rules on " + topics + ": read them in the report first.";
    return topics.isEmpty()
        ? List.of()
        : List.of(new Caution(text, RULE, Caution.When.BEFORE_WORK));
  }
}
