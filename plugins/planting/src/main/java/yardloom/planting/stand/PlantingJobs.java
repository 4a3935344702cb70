package yardloom.planting.stand;

import java.util.List;
import java.util.Optional;
import yardloom.facts.BillGroup;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
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
    return plant.form().isWoody() ? BillGroup.TREES : BillGroup.PLANTS;
  }

  /**
   * What is to be done for plants of one kind.
   *
   * @param amount plants, or the length of their drills
   */
  static List<Job> of(Plant plant, StockForm stock, UnitSystem units, Derived<?> amount) {
    WorkPhase phase = plant.phase();
    Job set =
        new Job(
            stock.task(),
            phase,
            amount,
            Optional.empty(),
            stock
                .minutes()
                .map(m -> new Job.Pace(stock.name(units), m.times(1 / MINUTES_PER_HOUR))),
            Optional.of(plant.name()));
    return amount.value() instanceof Integer
        ? List.of(
            set,
            new Job(
                WorkTask.WATER_IN,
                phase,
                amount,
                Optional.empty(),
                Optional.empty(),
                Optional.of(plant.name())))
        : List.of(set);
  }
}
