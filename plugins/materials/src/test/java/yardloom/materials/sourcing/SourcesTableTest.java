package yardloom.materials.sourcing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;

/** What a supplier is asked for in one call; addition by hand. */
class SourcesTableTest {
  private static void order(Sink out, String item, WorkPhase phase, Object amount) {
    Derived<?> told = Derived.by("told", Source.commonPractice("told by the test")).gives(amount);
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.SHEET_MULCH,
            phase,
            item,
            Optional.empty(),
            Optional.empty(),
            told,
            told,
            "none"));
  }

  /** The first three cells of its rows: what, how much, from whom. */
  private static List<String> asked() {
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.BILL);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            order(out, "wood-chip mulch", WorkPhase.SHEET, Volume.cubicYards(11));
            order(out, "compost", WorkPhase.SHEET, Volume.cubicYards(3.5));
            order(out, "cardboard, sheets", WorkPhase.SHEET, 41);
            order(out, "wood-chip mulch", WorkPhase.FINISH, Volume.cubicYards(6.5));
            order(out, "cardboard, sheets", WorkPhase.LATER, 29);
            order(out, "wood-chip mulch", WorkPhase.LATER, Volume.cubicYards(2));
          }
        };
    Plan plan = PlanKit.us().plan();
    Facts facts = FactGraph.of(List.of(told, new SupplyCalculator())).run(plan);
    return PlanKit.printed("materials-sources", plan, facts).stream()
        .map(row -> String.join(" | ", List.of(row.split(" \\| ")).subList(0, 3)))
        .map(row -> row.replace('\u00a0', ' '))
        .toList();
  }

  /**
   * 11 + 6.5 + 2 = 19.5 cu yd of chips for three phases are asked for at once, where the first of
   * them stands; sheets, which are counted, stay apart.
   */
  @Test
  void bulkOfAllPhases_isOneOrder_andWhatIsCountedIsNot() {
    assertEquals(
        List.of(
            "wood-chip mulch | 19.50 cu yd | tree crews working near by",
            "wood-chip mulch | 19.50 cu yd | bulk yard",
            "compost | 3.50 cu yd | municipal compost site",
            "compost | 3.50 cu yd | spent mushroom substrate",
            "compost | 3.50 cu yd | bulk yard",
            "cardboard, sheets | 41 | appliance, bicycle and furniture stores",
            "cardboard, sheets | 41 | paper supplier",
            "cardboard, sheets | 29 | appliance, bicycle and furniture stores",
            "cardboard, sheets | 29 | paper supplier"),
        asked());
  }
}
