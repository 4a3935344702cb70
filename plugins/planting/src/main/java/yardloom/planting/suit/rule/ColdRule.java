package yardloom.planting.suit.rule;

import java.util.Optional;
import yardloom.facts.Hardiness;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.traits.ColdLimits;

/**
 * Does the kind live through the winters of the yard's hardiness zone?
 *
 * <p>References: as the rows of {@link ColdLimits} say.
 */
public final class ColdRule implements SuitRule {
  @Override
  public String id() {
    return "cold";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    return yard.weather().hardiness().flatMap(zone -> judge(plant.plant(), zone));
  }

  /** The same for a kind. */
  public static Optional<Reason> judge(Plant plant, Hardiness site) {
    return ColdLimits.of(plant)
        .filter(limit -> site.zone() < limit.coldest())
        .map(
            limit ->
                new Reason(
                    "cold",
                    Suits.DOES_NOT_FIT,
                    "winters in zone "
                        + limit.coldest()
                        + " and warmer; this yard lies in zone "
                        + site.text()
                        + " ("
                        + site.source().cite()
                        + ")",
                    "choose a hardier kind or variety, or grow it in a pot that winters indoors",
                    limit.source()));
  }
}
