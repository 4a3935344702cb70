package yardloom.planting.suit.rule;

import java.util.Locale;
import java.util.Optional;
import yardloom.facts.SoilAcidity;
import yardloom.planting.traits.SoilNeed;

/**
 * Is the soil as acid as the kind wants it? Half a unit beyond its best range is let pass, a whole
 * one on the sweet side of kinds that are not of acid soil: most garden plants bear neutral ground.
 * As much again can be amended; more cannot be held for years in open ground. What the plan does to
 * the soil must not spoil what was right.
 *
 * <p>References: [1] FAO, ECOCROP, optimum pH (a range of best growth, not a limit); [2] University
 * of Idaho Extension, Blueberries, 2012 (pH 4.2 to 5.2). The half and the whole unit are common
 * practice.
 */
public final class AcidityRule implements SuitRule {
  private static final double LET_PASS = 0.5;
  private static final double LET_PASS_SWEET = 1.0;
  private static final double OF_ACID_SOIL = 6.0;
  private static final double ROUNDING = 1e-9;

  @Override
  public String id() {
    return "acidity";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<SoilNeed> need = SoilNeed.of(plant.plant());
    if (need.isEmpty() || yard.ground().acidity().isEmpty()) {
      return Optional.empty();
    }
    SoilAcidity acidity = yard.ground().acidity().get();
    double found = acidity.found().value();
    double steps = steps(found, need.get());
    if (steps <= 1) {
      return acidity
          .wanted()
          .filter(w -> steps(w, need.get()) > 1)
          .map(w -> spoiled(need.get(), w));
    }
    boolean amends = acidity.wanted().filter(w -> steps(w, need.get()) <= 1).isPresent();
    boolean fails = steps > 2 && !amends;
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

  /** The ground is right as it is, and what the plan does to it is not. */
  private Reason spoiled(SoilNeed need, double wanted) {
    return new Reason(
        id(),
        Suits.FITS_IF,
        String.format(
            Locale.ROOT,
            "it wants pH %.1f to %.1f, near what is there; the plan brings the soil to %.1f",
            need.lowPh(),
            need.highPh(),
            wanted),
        (wanted > need.highPh() ? "keep lime" : "keep sulfur") + " off its bed, and order less",
        need.phSource());
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

  /** How far the soil lies outside the best range, in steps of what is let pass; 0 within it. */
  static double steps(double ph, SoilNeed need) {
    double sweet = need.highPh() < OF_ACID_SOIL ? LET_PASS : LET_PASS_SWEET;
    double steps = Math.max((need.lowPh() - ph) / LET_PASS, (ph - need.highPh()) / sweet);
    return Math.max(0, steps - ROUNDING);
  }
}
