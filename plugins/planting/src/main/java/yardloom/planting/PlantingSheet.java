package yardloom.planting;

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
import yardloom.planting.bloom.BloomFigure;
import yardloom.planting.care.CareAct;
import yardloom.planting.care.CareTable;
import yardloom.planting.harvest.HarvestPlan;
import yardloom.planting.harvest.HarvestTable;
import yardloom.planting.harvest.HarvestYear;
import yardloom.planting.harvest.HarvestYearTable;
import yardloom.planting.list.PlantKeys;
import yardloom.planting.list.PlantSchedule;
import yardloom.planting.placing.GuildTable;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.ThinningTable;
import yardloom.planting.stock.StockPlan;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.turn.TurnTable;
import yardloom.planting.view.GuildSection;
import yardloom.planting.view.YoungView;
import yardloom.planting.window.PlantingTimes;

/** The planting plan: where each plant stands, without pipes and dimensions, and what to get. */
public final class PlantingSheet implements SheetMaker {
  private static final int NUMBER = 30;

  private static final List<String> NOTES =
      List.of(
          "Set the plants out on the ground before you plant the first; shift rows that come close"
              + " to a path.",
          "Keep half a spacing from every edge of a bed.",
          "Circles are drawn at the spread of grown plants; keys stand in the schedule.",
          "Water each plant in, and keep chips off its stem.");

  @Override
  public String id() {
    return "planting.planting";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.FROST,
        YardFacts.WARM_SEASON,
        YardFacts.CLIMATE,
        YardFacts.PLANTING_WINDOWS,
        YardFacts.PLANTING_DAYS,
        YardFacts.HARVEST,
        YardFacts.STANDS,
        PlantPlaces.KEY,
        HarvestPlan.KEY,
        HarvestYear.KEY,
        StockPlan.KEY,
        TurnPlan.KEY,
        CareAct.KEY);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.get(PlantPlaces.KEY).plantings().isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.PLANTING)));
    List.of(
            new PlantSchedule(),
            new ThinningTable(),
            new TurnTable(),
            new GuildTable(),
            new PlantingTimes(),
            new HarvestTable(),
            new CareTable())
        .forEach(m -> panels.add(new Panel.TableBlock(PartTables.forSheet(m, plan, facts))));
    panels.add(new Panel.TableBlock(new HarvestYearTable().make(plan, facts), true));
    PlantPlaces places = facts.get(PlantPlaces.KEY);
    panels.add(YoungView.of(plan, places));
    GuildSection.of(places, PlantKeys.of(places), plan.info().units()).ifPresent(panels::add);
    panels.addAll(BloomFigure.of(plan, facts));
    panels.add(new Panel.Notes("Setting out plants", NOTES));
    return List.of(new SheetPlan(NUMBER, "planting", "Planting", panels));
  }
}
