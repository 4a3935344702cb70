package yardloom.planting.suit.rule;

import java.util.Locale;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.traits.HeatLimits;

/**
 * Does the kind bear the hottest month?
 *
 * <p>References: as the rows of {@link HeatLimits} say.
 */
public final class HeatRule implements SuitRule {
  @Override
  public String id() {
    return "heat";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    return yard.weather()
        .normals()
        .flatMap(ClimateNormals::hottestDays)
        .flatMap(hottest -> judge(yard.plan(), plant.plant(), hottest));
  }

  /** The same for a kind and the mean daily maximum of the hottest month. */
  public static Optional<Reason> judge(Plan plan, Plant plant, Temperature hottest) {
    return HeatLimits.of(plant)
        .filter(limit -> hottest.compareTo(limit.day()) >= 0)
        .map(
            limit ->
                new Reason(
                    "heat",
                    Suits.FITS_IF,
                    "suffers where days reach "
                        + both(plan, limit.day())
                        + "; those of the hottest month here reach "
                        + both(plan, hottest)
                        + " on the mean",
                    "give it shade in the afternoon, or a kind that bears before or after the heat",
                    limit.source()));
  }

  private static String both(Plan plan, Temperature t) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.0f °F", t.fahrenheit()),
            String.format(Locale.ROOT, "%.0f °C", t.celsius()));
  }
}
