package yardloom.work.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.UnitSystem;
import yardloom.work.cost.CostEstimate;

/** Costs by stage as they are printed; each column adds up to its total. */
class StageCostTableTest {
  private static final Plan PLAN =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "$")).freeze();

  private static CostEstimate.Row row(String item, double cost) {
    Derived<Money> money =
        Derived.by("told", Source.commonPractice("told")).gives(Money.amount(cost));
    return new CostEstimate.Row(item, money, money, money, money);
  }

  private static Calculator told(CostEstimate whole, Map<String, Facts> stages) {
    return new Calculator() {
      @Override
      public String id() {
        return "told";
      }

      @Override
      public Set<FactKey<?>> gives() {
        return Set.of(CostEstimate.FACT, PartOfPlan.FACT);
      }

      @Override
      public void compute(Plan of, Facts in, Sink out) {
        out.give(CostEstimate.FACT, whole);
        stages.forEach((name, facts) -> out.give(PartOfPlan.FACT, new PartOfPlan(name, of, facts)));
      }
    };
  }

  private static Facts facts(CostEstimate cost) {
    return FactGraph.of(List.of(told(cost, Map.of()))).run(PLAN);
  }

  private static CostEstimate cost(double total, CostEstimate.Row... rows) {
    return new CostEstimate(Arrays.asList(rows), row("total", total), List.of(), List.of(), false);
  }

  /**
   * At once a frame is cut from boards of 12 ft, in the first stage alone from those of 8 ft; peas
   * are sown twice, in one year for 3 and 4, so that the bill has them twice: 30 + 3 + 4 = 37, and
   * 25 + 3 + 4 = 32 in the first stage.
   */
  @Test
  void everyItemOfAStage_hasItsCostInOneRow() {
    CostEstimate whole = cost(37, row("boards by 12 ft", 30), row("peas", 3), row("peas", 4));
    Facts first = facts(cost(32, row("boards by 8 ft", 25), row("peas", 3), row("peas", 4)));
    Facts second = facts(cost(11, row("boards by 12 ft", 11)));
    Map<String, Facts> stages = new LinkedHashMap<>();
    stages.put("back", first);
    stages.put("front", second);
    Table table =
        new StageCostTable().make(PLAN, FactGraph.of(List.of(told(whole, stages))).run(PLAN));
    TableFormat format = new TableFormat(UnitSystem.US, "$");
    assertEquals(
        List.of(
            "boards by 12 ft | | 11 | 11",
            "peas | 7 | | 7",
            "boards by 8 ft | 25 | | 25",
            "total | 32 | 11 | 43"),
        table.rows().stream()
            .map(
                r ->
                    IntStream.range(0, r.size())
                        .mapToObj(i -> format.text(table.columns().get(i), r.get(i)))
                        .collect(Collectors.joining(" | "))
                        .replace("|  |", "| |"))
            .toList());
  }
}
