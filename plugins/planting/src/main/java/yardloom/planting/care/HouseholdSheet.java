package yardloom.planting.care;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.PartTables;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/**
 * The page that hangs in the shed: when to do what, and what to look for at first. Weeds and hours
 * fill what room there is, also on the client's page; the bay and the list of losses stand in the
 * report.
 */
public final class HouseholdSheet implements SheetMaker {
  private static final int NUMBER = 44;

  @Override
  public String id() {
    return "planting.care";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY, YardFacts.SURFACES, YardFacts.DRIPLINES);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts) {
    List<CareAct> acts = facts.all(CareAct.KEY);
    if (acts.isEmpty()) {
      return List.of();
    }
    Stream<Panel.TableBlock> tables =
        Stream.<TableMaker>of(
                HouseholdTables.establishment(), new CareHoursTable(), HouseholdTables.weeds())
            .map(m -> block(m, PartTables.forSheet(m, plan, facts)))
            .filter(b -> !b.table().isEmpty());
    return List.of(
        new SheetPlan(
            NUMBER,
            "care",
            "Care of the garden",
            SheetPlan.Format.BOOKLET,
            Stream.<Panel>concat(Stream.of(CareFigure.of(acts)), tables).toList()));
  }

  /** Hours and weeds stand in the report as well: no page is opened for them. */
  private static Panel.TableBlock block(TableMaker maker, Table table) {
    return new Panel.TableBlock(table, maker.onPaper() != OnPaper.ALWAYS);
  }
}
