package yardloom.materials.work;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.materials.model.MaterialKeys;

/** Gives the shipped generic rules, those of the region and those of the plan. */
public final class LocalRuleCalculator implements Calculator {
  private static final DataTable GENERIC =
      DataTable.shipped(LocalRuleCalculator.class, "local-rule.csv");

  @Override
  public String id() {
    return "materials.local-rules";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.LOCAL_RULES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (DataRow row : GENERIC.rows()) {
      out.give(
          YardFacts.LOCAL_RULES,
          new LocalRule(
              row.text("topic"), "generic", LocalRule.GENERIC, row.text("text"), row.source()));
    }
    LocalData local = LocalData.of(plan);
    for (var entry : plan.attributes().all(MaterialKeys.LOCAL_RULE)) {
      LocalRule rule = entry.value();
      int rank = local.rank(entry.place());
      String region =
          rank == LocalRule.REGIONAL ? local.region().orElseThrow().name() : rule.region();
      out.give(
          YardFacts.LOCAL_RULES,
          new LocalRule(rule.topic(), region, rank, rule.text(), rule.source()));
    }
  }

  /** For each topic, sorted, the rules of the highest rank. */
  public static Map<String, List<LocalRule>> inForce(List<LocalRule> rules) {
    Map<String, List<LocalRule>> byTopic = new TreeMap<>();
    for (LocalRule rule : rules) {
      int highest =
          rules.stream()
              .filter(r -> r.topic().equals(rule.topic()))
              .mapToInt(LocalRule::rank)
              .max()
              .orElseThrow();
      byTopic.put(
          rule.topic(),
          rules.stream()
              .filter(r -> r.topic().equals(rule.topic()) && r.rank() == highest)
              .toList());
    }
    return byTopic;
  }
}
