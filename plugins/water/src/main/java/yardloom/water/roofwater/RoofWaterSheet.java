package yardloom.water.roofwater;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.overflow.Basin;
import yardloom.water.overflow.BasinTable;
import yardloom.water.overflow.LotRunoffTable;
import yardloom.water.roof.RoofDrainageTable;
import yardloom.water.tank.StandingTable;
import yardloom.water.tank.TankCurve;
import yardloom.water.tank.TankHeadTable;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankTable;
import yardloom.water.tank.TankYearTable;
import yardloom.water.timetable.TankLevelTable;

/** The sheet of roof water, where the plan has a tank or a basin. */
public final class RoofWaterSheet implements SheetMaker {
  private static final int NUMBER = 32;

  private static final List<TableMaker> TABLES =
      List.of(
          new StandingTable(),
          new TankHeadTable(),
          new TankTable(),
          new TankYearTable(),
          new TankLevelTable(),
          new RoofDrainageTable(),
          new BasinTable(),
          new LotRunoffTable());

  /** Whether the plan has what it shows. */
  public static boolean isDrawn(Plan plan) {
    return !plan.attributes().all(TankPlan.KEY).isEmpty()
        || !plan.attributes().all(Basin.KEY).isEmpty();
  }

  @Override
  public String id() {
    return "water.roof-water";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new LinkedHashSet<>();
    reads.add(TankCurve.KEY);
    TABLES.forEach(maker -> reads.addAll(maker.reads()));
    return reads;
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (!isDrawn(plan)) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(Set.of(new RoofWaterPainter().layer().id())));
    facts
        .all(TankCurve.KEY)
        .forEach(curve -> panels.add(TankFigure.of(curve, plan.info().units())));
    for (TableMaker maker : TABLES) {
      Table table = maker.make(plan, facts);
      if (!table.isEmpty()) {
        panels.add(new Panel.TableBlock(table));
      }
    }
    return List.of(new SheetPlan(NUMBER, "roof-water", "Roof water", panels));
  }
}
