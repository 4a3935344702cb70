package yardloom.work.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.PartTables;
import yardloom.kernel.table.Table;
import yardloom.work.cost.BagChoice;
import yardloom.work.cost.BagTable;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.CostTable;
import yardloom.work.cost.DriverTable;
import yardloom.work.haul.HaulTable;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.LabourTable;
import yardloom.work.labour.TaskLoad;
import yardloom.work.own.OwnItemTable;
import yardloom.work.phase.CareVisit;
import yardloom.work.phase.CareVisitTable;
import yardloom.work.phase.OrdersTable;
import yardloom.work.phase.PhaseTable;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;
import yardloom.work.visit.SiteVisit;
import yardloom.work.visit.SiteVisitTable;

/** Phases, hours and cost, for who plans the work; drawn where the plan asks for it. */
public final class WorkSheet implements SheetMaker {
  private static final int WORK = 45;

  @Override
  public String id() {
    return "work.work";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        TaskLoad.FACT,
        PhaseTime.FACT,
        PlantingVisit.FACT,
        KindHours.FACT,
        CostEstimate.FACT,
        SiteVisit.FACT,
        CareVisit.FACT,
        YardFacts.HAULS,
        YardFacts.BILL,
        BagChoice.FACT,
        YardFacts.SUPPLIES,
        YardFacts.FROST);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.all(PhaseTime.FACT).isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    List<Table> tables = new ArrayList<>();
    List.of(
            new LabourTable(),
            new PhaseTable(),
            new SiteVisitTable(),
            new CareVisitTable(),
            new OwnItemTable(),
            new OrdersTable())
        .forEach(m -> tables.add(PartTables.of(m, plan, facts)));
    List.of(new CostTable(), new DriverTable(), new BagTable())
        .forEach(m -> tables.add(PartTables.of(m, plan, facts)));
    tables.addAll(offers.tables(SheetPage.WORK_COST));
    tables.add(PartTables.of(new HaulTable(), plan, facts));
    tables.addAll(offers.tables(SheetPage.WORK_PLACE));
    for (Table table : tables) {
      if (!table.isEmpty()) {
        panels.add(new Panel.TableBlock(table));
      }
    }
    return List.of(new SheetPlan(WORK, "work", "Work, orders and cost", panels).onRequest());
  }
}
