package yardloom.planting.stand;

import java.util.List;
import java.util.Optional;
import yardloom.facts.BillGroup;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.stock.StockForm;

/**
 * How what is bought is planted, and when: trees, shrubs and vines before the cardboard, since
 * their holes go through it; all else after.
 */
final class PlantingJobs {
  private static final double MINUTES_PER_HOUR = 60;

  private PlantingJobs() {}

  /** Where it stands on the bill: what is woody costs several times what is not. */
  static BillGroup group(Plant plant) {
    return plant.growth().form().isWoody() ? BillGroup.TREES : BillGroup.PLANTS;
  }

  /**
   * What is to be done for plants of one kind.
   *
   * @param amount plants, or the length of their drills
   */
  static List<Job> of(Plant plant, StockForm stock, UnitSystem units, Derived<?> amount) {
    Optional<Job.Pace> pace =
        stock.minutes().map(m -> new Job.Pace(stock.name(units), m.times(1 / MINUTES_PER_HOUR)));
    Job set = job(stock.task(), plant, amount, pace);
    return amount.value() instanceof Integer
        ? List.of(set, job(WorkTask.WATER_IN, plant, amount, Optional.empty()))
        : List.of(set);
  }

  private static Job job(WorkTask task, Plant plant, Derived<?> amount, Optional<Job.Pace> pace) {
    return new Job(task, plant.phase(), amount, Optional.empty(), pace, Optional.of(plant.name()));
  }
}
