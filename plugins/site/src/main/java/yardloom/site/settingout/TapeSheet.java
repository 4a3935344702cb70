package yardloom.site.settingout;

import java.util.List;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;

/** The tapes on a page to carry: a long table would push the drawing off the crew's page. */
public final class TapeSheet implements SheetMaker {
  /** Behind the crew's page of staking out. */
  private static final int NUMBER = 61;

  @Override
  public String id() {
    return "site.tapes";
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts) {
    Table table = SettingOutTable.toCarry(plan);
    return table.isEmpty()
        ? List.of()
        : List.of(
            new SheetPlan(
                NUMBER,
                "crew-stake-tapes",
                "Crew: Setting out",
                SheetPlan.Format.PAGE,
                List.of(new Panel.TableBlock(table))));
  }
}
