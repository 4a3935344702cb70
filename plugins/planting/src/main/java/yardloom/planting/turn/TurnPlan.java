package yardloom.planting.turn;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.placing.Planting;

/**
 * The crops that follow each other, ground by ground.
 *
 * @param grounds each with its crops in the order of the year, two at least
 */
public record TurnPlan(List<List<Turn>> grounds) {
  /** The plugin's own fact. */
  public static final FactKey<TurnPlan> KEY =
      FactKey.one("planting.turns", TurnPlan.class).called("crops that follow each other");

  public TurnPlan {
    grounds = grounds.stream().map(List::copyOf).toList();
  }

  /** The turn of a planting; empty if its ground carries nothing else, or days are not known. */
  public Optional<Turn> of(Planting planting) {
    return all().stream().filter(t -> t.planting().equals(planting)).findFirst();
  }

  /** The first turn of a kind that a line of a bed plants. */
  public Optional<Turn> of(ElementId bed, SourceRef line, String plant) {
    return all().stream()
        .filter(t -> t.planting().bed().id().equals(bed) && t.planting().place().equals(line))
        .filter(t -> t.planting().plant().name().equals(plant))
        .findFirst();
  }

  public List<Turn> all() {
    return grounds.stream().flatMap(List::stream).toList();
  }

  /**
   * The turns of a kind that stands first on all its grounds, in their order; empty if it stands
   * alone on any of them.
   *
   * @param plantings all of the kind that follow nothing
   */
  public List<Turn> first(List<Planting> plantings) {
    List<Turn> own = plantings.stream().map(this::of).flatMap(Optional::stream).toList();
    return own.size() < plantings.size() ? List.of() : own;
  }
}
