package yardloom.planting.suit.rule;

import java.util.Comparator;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/**
 * Does a tree near it give off juglone, which the kind suffers from? The source asks for 50 to 60
 * ft; the wider figure is used. Standing trees count.
 *
 * <p>References: [1] Iowa State University Extension, PM 814, Where to put your vegetable garden,
 * revised May 2005 (tomatoes, eggplant, peppers).
 */
public final class JugloneNearRule implements SuitRule {
  /** The distance from which nothing is flagged. */
  public static final Length LIMIT = Length.feet(60);

  private record Near(Candidate tree, Length distance) {}

  @Override
  public String id() {
    return "neighbours";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    if (plant.plant().juglone().isEmpty()) {
      return Optional.empty();
    }
    return yard.plants().stream()
        .filter(other -> other.plant().makesJuglone())
        .flatMap(tree -> plant.at().stream().map(at -> new Near(tree, distance(tree, at))))
        .min(Comparator.comparing(Near::distance))
        .filter(near -> near.distance().compareTo(LIMIT) < 0)
        .map(
            near ->
                new Reason(
                    id(),
                    Suits.DOES_NOT_FIT,
                    "stands "
                        + Words.both(yard.plan(), near.distance())
                        + " from a "
                        + near.tree().plant().name()
                        + ", whose roots poison it",
                    "keep it at least " + Words.both(yard.plan(), LIMIT) + " away",
                    plant.plant().juglone().get()));
  }

  private static Length distance(Candidate tree, Point at) {
    return tree.at().stream().map(at::distance).min(Comparator.naturalOrder()).get();
  }
}
