package yardloom.kernel.rules;

import java.util.List;
import java.util.function.Function;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** All tables that the kernel itself brings. */
public final class KernelTables {
  private KernelTables() {}

  /** The tables, in the order in which sheets list them. */
  public static List<TableMaker> tables() {
    return List.of(
        new PlanTable("ties", SurveyTables::ties),
        new PlanTable("deed", SurveyTables::deeds),
        new PlanTable("lot-sides", SiteTables::lotSides),
        new PlanTable("areas", SiteTables::areas),
        new PlanTable("why-not-here", SiteTables::whyNotHere),
        new PlanTable("beds", SiteTables::beds),
        new PlanTable("setting-out", SettingOutTable::of),
        new PlanTable("routes", AccessRules::routes),
        new PlanTable("level-beds", GroundTables::levelBeds),
        new PlanTable("earth", GroundTables::earth),
        new PlanTable("swales", GroundTables::swales));
  }

  /** A table made from the plan alone. */
  private record PlanTable(String id, Function<Plan, Table> body) implements TableMaker {
    @Override
    public Table make(Plan plan, Facts facts) {
      return body.apply(plan);
    }
  }
}
