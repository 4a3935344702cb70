package yardloom.planting.suit.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;

/**
 * Does a tree near it give off juglone, which the kind suffers from? The source asks for 50 to 60
 * ft; the wider figure is used. Standing trees count.
 *
 * <p>References: [1] Iowa State University Extension, PM 814, Where to put your vegetable garden,
 * revised May 2005 (tomatoes, eggplant, peppers).
 */
public final class JugloneNearRule implements SuitRule {
  private static final String ID = "neighbours";

  /** The distance from which nothing is flagged. */
  private static final Length LIMIT = Length.feet(60);

  /** A plant whose roots give off juglone. */
  public record Poison(String name, Point at) {}

  private record Near(Poison tree, Length distance) {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    List<Poison> trees =
        yard.plants().stream()
            .filter(other -> other.plant().juglone().makes())
            .flatMap(tree -> tree.at().stream().map(at -> new Poison(tree.plant().name(), at)))
            .toList();
    return judge(yard.plan(), plant.plant(), plant.at(), trees);
  }

  /** The same by kind, the places where it stands, and the plants that poison it. */
  public static Optional<Reason> judge(
      Plan plan, Plant plant, List<Point> places, List<Poison> trees) {
    if (plant.juglone().suffers().isEmpty()) {
      return Optional.empty();
    }
    return trees.stream()
        .flatMap(tree -> places.stream().map(at -> new Near(tree, tree.at().distance(at))))
        .min(Comparator.comparing(Near::distance))
        .filter(near -> near.distance().compareTo(LIMIT) < 0)
        .map(
            near ->
                new Reason(
                    ID,
                    Suits.DOES_NOT_FIT,
                    "stands "
                        + ReasonWords.both(plan, near.distance())
                        + " from a "
                        + near.tree().name()
                        + ", whose roots poison it",
                    "keep it at least " + ReasonWords.both(plan, LIMIT) + " away",
                    plant.juglone().suffers().get()));
  }
}
