package yardloom.work.stage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;

/** What is made when: the yard with its stages, their table and what they cost. */
public final class StageSheet implements SheetMaker {
  private static final int NUMBER = 12;

  @Override
  public String id() {
    return "work.stages";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new HashSet<>(new StageTable().reads());
    reads.addAll(new StageCostTable().reads());
    return reads;
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.all(PartOfPlan.FACT).isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(Set.of(StagePainter.LAYER)));
    panels.add(new Panel.TableBlock(new StageTable().make(plan, facts)));
    Table costs = new StageCostTable().make(plan, facts);
    if (!costs.isEmpty()) {
      panels.add(new Panel.TableBlock(costs));
    }
    return List.of(new SheetPlan(NUMBER, "stages", "Stages", panels));
  }
}
