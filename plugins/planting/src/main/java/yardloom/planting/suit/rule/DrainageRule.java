package yardloom.planting.suit.rule;

import java.util.Optional;
import yardloom.planting.traits.SoilNeed;

/**
 * Does the kind bear heavy soil? What rots in wet winters may stand on it if it is raised.
 *
 * <p>References: common practice; the figures of the kinds are recalled, so that this is never more
 * than a condition.
 */
public final class DrainageRule implements SuitRule {
  @Override
  public String id() {
    return "drainage";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<SoilNeed> need = SoilNeed.of(plant.plant());
    boolean perennial = !plant.plant().growth().season().isAnnual();
    boolean heavy = yard.ground().profile().filter(s -> s.heavy()).isPresent();
    if (need.isEmpty() || !heavy || !perennial || need.get().drainage() != SoilNeed.Drainage.GOOD) {
      return Optional.empty();
    }
    return Optional.of(
        new Reason(
            id(),
            Suits.FITS_IF,
            "it wants well-drained soil; "
                + yard.ground().profile().get().texture()
                + " drains slowly",
            "plant it on a mound or in a raised bed, and not where water stands in winter",
            need.get().drainageSource()));
  }
}
