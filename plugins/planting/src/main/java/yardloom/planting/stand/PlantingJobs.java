package yardloom.planting.stand;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.facts.BillGroup;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * In which form a kind comes, how that is planted, and when: trees, shrubs and vines before the
 * cardboard, since their holes go through it; all else after.
 */
final class PlantingJobs {
  private static final Map<String, WorkTask> BY_NAME =
      PlantCatalogue.byPlant(
          PlantingJobs.class,
          "stock.csv",
          row -> WorkTask.valueOf(row.text("task").toUpperCase(Locale.ROOT)));

  private PlantingJobs() {}

  /** Where it stands on the bill: what is woody costs several times what is not. */
  static BillGroup group(Plant plant) {
    return plant.form().isWoody() ? BillGroup.TREES : BillGroup.PLANTS;
  }

  /**
   * What is to be done for plants of one kind.
   *
   * @param amount pieces, or the length of its drills
   */
  static List<Job> of(Plant plant, Derived<?> amount) {
    WorkPhase phase = plant.phase();
    Job set = new Job(task(plant), phase, amount);
    return amount.value() instanceof Integer
        ? List.of(set, new Job(WorkTask.WATER_IN, phase, amount))
        : List.of(set);
  }

  private static WorkTask task(Plant plant) {
    if (plant.start().isInDrills()) {
      return WorkTask.SOW;
    }
    WorkTask named = BY_NAME.get(plant.name());
    if (named != null) {
      return named;
    }
    return switch (plant.form()) {
      case TREE -> WorkTask.PLANT_TREE;
      case SHRUB, VINE -> WorkTask.PLANT_SHRUB;
      case ANNUAL -> WorkTask.PLANT_PLUG;
      case HERB -> WorkTask.PLANT_POT;
    };
  }
}
