package yardloom.planting;

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
import yardloom.planting.care.CareAct;
import yardloom.planting.care.CareTable;
import yardloom.planting.harvest.HarvestPlan;
import yardloom.planting.harvest.HarvestTable;
import yardloom.planting.list.PlantList;
import yardloom.planting.list.PlantTable;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.stand.PlantWaterTable;
import yardloom.planting.window.PlantingTimes;

/** The planting plan: where each plant stands, without pipes and dimensions, and what to get. */
public final class PlantingSheet implements SheetMaker {
  private static final int NUMBER = 30;

  @Override
  public String id() {
    return "planting.planting";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.FROST,
        YardFacts.PLANTING_WINDOWS,
        YardFacts.HARVEST,
        PlantPlaces.KEY,
        HarvestPlan.KEY,
        CareAct.KEY);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.get(PlantPlaces.KEY).plantings().isEmpty()) {
      return List.of();
    }
    return List.of(
        new SheetPlan(
            NUMBER,
            "planting",
            "Planting",
            List.of(
                Panel.SitePlan.yardWith(offers.layers(SheetPage.PLANTING)),
                new Panel.TableBlock(new PlantList().make(plan, facts)),
                new Panel.TableBlock(new PlantTable().make(plan, facts)),
                new Panel.TableBlock(new PlantingTimes().make(plan, facts)),
                new Panel.TableBlock(new HarvestTable().make(plan, facts)),
                new Panel.TableBlock(new PlantWaterTable().make(plan, facts)),
                new Panel.TableBlock(new CareTable().make(plan, facts)),
                new Panel.Notes(
                    "Setting out plants",
                    List.of(
                        "Set the plants out on the ground before you plant the first; shift rows"
                            + " that come close to a path.",
                        "Keep half a spacing from every edge of a bed.",
                        "Circles are drawn at the spread of grown plants, dots are not.",
                        "Water each plant in, and keep chips off its stem.")))));
  }
}
