package yardloom.planting.suit.rule;

import java.util.Locale;
import java.util.Optional;
import yardloom.planting.traits.ChillNeeds;

/**
 * Has the winter the hours below 45 °F (7 °C) that the kind asks for? Fewer than the least of its
 * varieties asks for is a failure; fewer than the most is a matter of the variety.
 *
 * <p>References: as the rows of {@link ChillNeeds} say.
 */
public final class ChillRule implements SuitRule {
  @Override
  public String id() {
    return "chill";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    return yard.weather()
        .chill()
        .flatMap(
            chill ->
                ChillNeeds.of(plant.plant()).flatMap(need -> judge(need, chill.hours().value())));
  }

  /** The same by need and hours. */
  public static Optional<Reason> judge(ChillNeeds.Need need, double hours) {
    if (hours < need.low()) {
      return Optional.of(
          new Reason(
              "chill",
              Suits.DOES_NOT_FIT,
              asks(need) + here(hours),
              "choose a variety that is bred for little chill, or another kind",
              need.source()));
    }
    if (need.high().isPresent() && hours < need.high().getAsDouble()) {
      return Optional.of(
          new Reason(
              "chill",
              Suits.FITS_IF,
              asks(need) + here(hours),
              String.format(Locale.ROOT, "choose a variety that asks for %.0f h or less", hours),
              need.source()));
    }
    return Optional.empty();
  }

  /** What a usual winter has, in words. */
  public static String here(double hours) {
    return String.format(
        Locale.ROOT, "; a usual winter here has about %.0f h below 45 °F (7 °C)", hours);
  }

  private static String asks(ChillNeeds.Need need) {
    return need.high().isPresent()
        ? String.format(
            Locale.ROOT,
            "asks for %.0f to %.0f h of winter chill by variety",
            need.low(),
            need.high().getAsDouble())
        : String.format(Locale.ROOT, "asks for %.0f h of winter chill or more", need.low());
  }
}
