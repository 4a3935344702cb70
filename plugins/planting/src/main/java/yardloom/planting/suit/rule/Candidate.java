package yardloom.planting.suit.rule;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;

/**
 * A plant in its place, or one that might stand there.
 *
 * @param in the bed or tree
 * @param place the script line
 * @param at where each stands
 * @param width of one when grown, or as it is kept
 * @param trained whether it is kept flat or narrow
 * @param stands whether it stands already: it has shown what it bears there
 * @param variety what the plan says of its variety, if it does
 */
public record Candidate(
    Plant plant,
    ElementId in,
    SourceRef place,
    List<Point> at,
    Length width,
    boolean trained,
    boolean stands,
    Optional<Variety> variety) {
  public Candidate {
    at = List.copyOf(at);
  }

  /** A plant of the catalogue that might be planted there. */
  public static Candidate thoughtOf(Plant plant, ElementId in, SourceRef place, List<Point> at) {
    return new Candidate(
        plant, in, place, at, plant.size().spread().middle(), false, false, Optional.empty());
  }
}
