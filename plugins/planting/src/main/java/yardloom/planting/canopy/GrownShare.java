package yardloom.planting.canopy;

import yardloom.facts.Obstacle.Stage;
import yardloom.planting.catalogue.Plant;

/**
 * The share of full height and spread that a plant has reached: of what is woody 0.3 in the first
 * year and 0.8 in the fifth, of herbs that return 0.5 and all, of annuals all.
 *
 * <p>References: common practice, no source.
 */
public final class GrownShare {
  private GrownShare() {}

  public static double share(Plant plant, Stage stage) {
    if (plant.growth().season().isAnnual() || stage == Stage.MATURE || stage == Stage.STANDING) {
      return 1;
    }
    boolean first = stage == Stage.YEAR_1;
    return plant.growth().form().isWoody() ? woody(stage) : (first ? 0.5 : 1);
  }

  /** Of what is woody. */
  public static double woody(Stage stage) {
    return stage == Stage.YEAR_1 ? 0.3 : stage == Stage.YEAR_5 ? 0.8 : 1;
  }
}
