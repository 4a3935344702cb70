package yardloom.site.settingout;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** What is where: lines to keep, measures, buried lines, and the tapes that set it all out. */
public final class LayoutSheet implements SheetMaker {
  private static final int NUMBER = 10;

  @Override
  public String id() {
    return "site.layout";
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (plan.lot().isEmpty() && plan.elements().isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.LAYOUT)));
    offers.tables(SheetPage.LAYOUT).forEach(t -> panels.add(new Panel.TableBlock(t)));
    return List.of(new SheetPlan(NUMBER, "layout", "Layout and setting out", panels));
  }
}
