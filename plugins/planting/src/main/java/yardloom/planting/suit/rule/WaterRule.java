package yardloom.planting.suit.rule;

import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.traits.WaterClass;

/**
 * Can one watering suit all that hangs on a valve? Dry and thirsty kinds on one valve do not: one
 * of both gets the wrong amount.
 *
 * <p>References: common practice of irrigation: plants of like need share a valve.
 */
public final class WaterRule implements SuitRule {
  @Override
  public String id() {
    return "water";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<WaterClass.Said> own = WaterClass.of(plant.plant());
    Integer valve = yard.valves().get(plant.in());
    if (own.isEmpty() || valve == null || own.get().of() != WaterClass.LOW) {
      return Optional.empty();
    }
    TreeSet<String> thirsty =
        yard.plants().stream()
            .filter(other -> valve.equals(yard.valves().get(other.in())))
            .filter(other -> clash(own.get().of(), other.plant()))
            .map(other -> other.plant().name())
            .collect(Collectors.toCollection(TreeSet::new));
    if (thirsty.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Reason(
            id(),
            Suits.FITS_IF,
            "it likes "
                + Choices.text(own.get().of())
                + " water; valve "
                + valve
                + " also waters "
                + String.join(", ", thirsty)
                + ", which likes much",
            "give it a valve of its own, fewer emitters, or other company",
            own.get().source()));
  }

  private static boolean clash(WaterClass own, Plant other) {
    return WaterClass.of(other).filter(w -> !own.sharesWith(w.of())).isPresent();
  }
}
