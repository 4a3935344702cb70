package yardloom.planting.suit;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.rule.Candidate;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.Suits;
import yardloom.planting.suit.rule.Yard;
import yardloom.planting.traits.Growth;

/**
 * Kinds that could stand where one does not fit: of the same layer and length of life, no wider,
 * with a use in common, and with nothing that speaks against them there but what is a condition for
 * the kind itself too. Relatives come first, then those that share most uses, then by name.
 */
final class Substitutes {
  private static final int MOST = 3;

  private Substitutes() {}

  /** Up to three names; none if nothing does better. */
  static List<String> of(Candidate plant, Yard yard) {
    Growth growth = Growth.of(plant.plant());
    Set<String> known = conditions(SuitRules.judge(plant, yard));
    return PlantCatalogue.of(yard.plan()).all().stream()
        .filter(p -> !p.name().equals(plant.plant().name()))
        .filter(p -> Growth.of(p).layer() == growth.layer())
        .filter(p -> Growth.of(p).life() == growth.life())
        .filter(p -> p.growth().form() == plant.plant().growth().form())
        .filter(p -> p.size().spread().middle().compareTo(plant.width().times(1.1)) <= 0)
        .filter(p -> shared(p, plant.plant()) > 0)
        .filter(p -> doesBetter(SuitRules.judge(inPlaceOf(plant, p), yard), known))
        .sorted(
            Comparator.comparing((Plant p) -> !p.genus().equals(plant.plant().genus()))
                .thenComparing(p -> -shared(p, plant.plant()))
                .thenComparing(Plant::name))
        .limit(MOST)
        .map(Plant::name)
        .toList();
  }

  private static Set<String> conditions(List<Reason> reasons) {
    return reasons.stream()
        .filter(r -> r.suits() == Suits.FITS_IF)
        .map(Reason::rule)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean doesBetter(List<Reason> reasons, Set<String> known) {
    return reasons.stream().allMatch(r -> r.suits() == Suits.FITS_IF && known.contains(r.rule()));
  }

  private static Candidate inPlaceOf(Candidate plant, Plant other) {
    return Candidate.thoughtOf(other, plant.in(), plant.place(), plant.at());
  }

  private static long shared(Plant a, Plant b) {
    List<String> roles = Growth.roles(b);
    return Growth.roles(a).stream().filter(roles::contains).count();
  }
}
