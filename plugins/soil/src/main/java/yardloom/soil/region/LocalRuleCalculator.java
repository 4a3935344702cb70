package yardloom.soil.region;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.DigCall;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Region;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Gives the rules in force: the plan's, else the region's, else the shipped generic ones. */
public final class LocalRuleCalculator implements Calculator {
  /** On the plan, any number: rules that hold where it lies. */
  public static final AttributeKey<LocalRule> KEY =
      new AttributeKey<>("soil.local-rule", LocalRule.class);

  private static final DataTable GENERIC =
      DataTable.shipped(LocalRuleCalculator.class, "local-rule.csv");

  @Override
  public String id() {
    return "soil.local-rules";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION, YardFacts.DIG_CALL);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.LOCAL_RULES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<LocalRule> rules = new ArrayList<>();
    Optional<DigCall> dig = in.find(YardFacts.DIG_CALL);
    GENERIC.rows().forEach(row -> rules.add(generic(row, dig)));
    Optional<Region> region = in.find(YardFacts.REGION);
    for (var entry : plan.attributes().all(KEY)) {
      LocalRule rule = entry.value();
      Optional<Region> says = region.filter(r -> r.says(entry.place()));
      rules.add(
          new LocalRule(
              rule.topic(),
              says.map(Region::name).orElse(rule.region()),
              says.isPresent() ? LocalRule.REGIONAL : LocalRule.PLAN,
              rule.text(),
              rule.source()));
    }
    inForce(rules).forEach(rule -> out.give(YardFacts.LOCAL_RULES, rule));
  }

  /** A shipped rule; who is to be called stands in it where that is known. */
  private static LocalRule generic(DataRow row, Optional<DigCall> dig) {
    String text = row.text("text");
    boolean calls = text.contains(DigCall.IN_TEXT);
    return new LocalRule(
        row.text("topic"),
        "most places",
        LocalRule.GENERIC,
        text.replace(DigCall.IN_TEXT, DigCall.inBrackets(dig)),
        dig.filter(c -> calls).map(DigCall::source).orElseGet(row::source));
  }

  /** For each topic, sorted, the rules of the highest rank. */
  public static List<LocalRule> inForce(List<LocalRule> rules) {
    Map<String, Integer> highest = new TreeMap<>();
    rules.forEach(r -> highest.merge(r.topic(), r.rank(), Math::max));
    List<LocalRule> inForce = new ArrayList<>();
    highest.forEach(
        (topic, rank) ->
            rules.stream()
                .filter(r -> r.topic().equals(topic) && r.rank() == rank)
                .forEach(inForce::add));
    return List.copyOf(inForce);
  }
}
