package yardloom.planting.suit.rule;

import java.util.Locale;
import java.util.Optional;
import yardloom.facts.SoilAcidity;
import yardloom.planting.traits.SoilNeed;

/**
 * Is the soil as acid as the kind wants it? Half a unit beyond its best range is let pass; up to a
 * unit beyond can be amended; more cannot be held for years in open ground.
 *
 * <p>References: [1] FAO, ECOCROP, optimum pH (a range of best growth, not a limit); [2] University
 * of Idaho Extension, Blueberries, 2012 (pH 4.2 to 5.2). The half and the whole unit are common
 * practice.
 */
public final class AcidityRule implements SuitRule {
  private static final double LET_PASS = 0.5;
  private static final double AMENDABLE = 1.0;
  private static final double ROUNDING = 1e-9;

  @Override
  public String id() {
    return "acidity";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<SoilNeed> need = SoilNeed.of(plant.plant().name());
    if (need.isEmpty() || yard.acidity().isEmpty()) {
      return Optional.empty();
    }
    SoilAcidity acidity = yard.acidity().get();
    double found = acidity.found().value();
    double beyond = beyond(found, need.get());
    if (beyond <= LET_PASS + ROUNDING) {
      return Optional.empty();
    }
    boolean amends =
        acidity.wanted().filter(w -> beyond(w, need.get()) <= LET_PASS + ROUNDING).isPresent();
    boolean fails = beyond > AMENDABLE + ROUNDING && !amends;
    return Optional.of(
        new Reason(
            id(),
            fails ? Suits.DOES_NOT_FIT : Suits.FITS_IF,
            String.format(
                Locale.ROOT,
                "it wants pH %.1f to %.1f; the soil test found %.1f",
                need.get().lowPh(),
                need.get().highPh(),
                found),
            todo(found, acidity, need.get(), fails, amends),
            need.get().phSource()));
  }

  private static String todo(
      double found, SoilAcidity acidity, SoilNeed need, boolean fails, boolean amends) {
    if (amends) {
      return String.format(
          Locale.ROOT,
          "bring the soil to pH %.1f first, as the plan wants, and test it again each year",
          acidity.wanted().get());
    }
    boolean sweet = found > need.highPh();
    if (fails) {
      return sweet
          ? "grow it in a tub or bed of acid soil kept apart from the ground, or another kind;"
              + " sulfur does not last in limy soil"
          : "lime over years and test again before planting, or grow another kind";
    }
    return String.format(
        Locale.ROOT,
        "bring the soil to pH %.1f with %s and test again before planting",
        sweet ? need.highPh() : need.lowPh(),
        sweet ? "sulfur" : "lime");
  }

  /** By how much the soil lies outside the best range; 0 within it. */
  static double beyond(double ph, SoilNeed need) {
    return Math.max(0, Math.max(need.lowPh() - ph, ph - need.highPh()));
  }
}
