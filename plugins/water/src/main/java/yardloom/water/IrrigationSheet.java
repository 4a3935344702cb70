package yardloom.water;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.balance.MonthTable;
import yardloom.water.drip.DripRun;
import yardloom.water.lawn.LawnTable;
import yardloom.water.line.HeadTable;
import yardloom.water.line.HydraulicsTable;
import yardloom.water.line.LineTable;
import yardloom.water.line.PartsTable;
import yardloom.water.line.ZoneTable;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.overflow.OverflowTable;
import yardloom.water.roof.RoofDrainageTable;
import yardloom.water.tank.TankTable;
import yardloom.water.timetable.IrrigationTable;

/** The irrigation plan: rows of dripline, zones and taps, without plants; what to buy and run. */
public final class IrrigationSheet implements SheetMaker {
  private static final int NUMBER = 31;

  private static final List<TableMaker> TABLES =
      List.of(
          new IrrigationTable(),
          new HydraulicsTable(),
          new ZoneTable(),
          new HeadTable(),
          new LineTable(),
          new PartsTable(),
          new EstablishmentTable(),
          new MonthTable(),
          new LawnTable(),
          new TankTable(),
          new RoofDrainageTable(),
          new OverflowTable());

  @Override
  public String id() {
    return "water.irrigation";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new LinkedHashSet<>();
    reads.add(DripRun.KEY);
    TABLES.forEach(maker -> reads.addAll(maker.reads()));
    return reads;
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.all(DripRun.KEY).isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.IRRIGATION)));
    for (TableMaker maker : TABLES) {
      Table table = maker.make(plan, facts);
      if (!table.isEmpty()) {
        panels.add(new Panel.TableBlock(table));
      }
    }
    panels.add(
        new Panel.Notes(
            "Laying dripline",
            List.of(
                "Lay the rows on the soil or compost, under the chips, and pin them down.",
                "Flush every zone before you close the ends; then look for dry ends.",
                "Dig the trenches a spade wide along the edges that are drawn, clear of buried lines;"
                    + " lay the pipes of all zones in them and mark each end with its zone.",
                "Fill the trenches when every zone has run and holds.")));
    return List.of(new SheetPlan(NUMBER, "irrigation", "Irrigation", panels));
  }
}
