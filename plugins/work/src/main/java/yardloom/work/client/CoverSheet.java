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
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTime;

/** The cover: the grown yard in colour, the list of sheets, the figures that matter most. */
public final class CoverSheet implements SheetMaker {
  private static final int NUMBER = 1;

  @Override
  public String id() {
    return "work.cover";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.MULCH_TOTALS,
        YardFacts.HARVEST,
        YardFacts.LAWN_WATER,
        TaskLoad.FACT,
        PhaseTime.FACT);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    Set<String> picture = offers.layers(SheetPage.COVER);
    if (plan.lot().isEmpty() || picture.isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.only(picture));
    panels.add(new Panel.TableBlock(KeyFigures.of(plan, facts)));
    panels.add(new Panel.SheetIndex());
    offers.tables(SheetPage.COVER).forEach(t -> panels.add(new Panel.TableBlock(t)));
    panels.add(
        new Panel.Notes(
            "About this set",
            List.of(
                "Plants are drawn at their mature spread, trees at the crown that the plan gives.",
                "Scale drawings from the graphic scale if the print is not at full size.",
                "Tables that explain or compare stand in the report, not on the sheets.")));
    plan.site().ifPresent(s -> panels.add(new Panel.Notes("Where", List.of(s.name()))));
    return List.of(new SheetPlan(NUMBER, "cover", "The yard when grown", panels));
  }
}
