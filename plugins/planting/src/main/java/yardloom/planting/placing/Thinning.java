package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/**
 * Which plants of a dense planting stay when it is thinned: each second, third … of a row, and of
 * the rows, so that those that stay stand as far apart as the plan says, or a little less.
 */
public final class Thinning {
  private Thinning() {}

  /** What the plan says of thinning a planting; empty if nothing, or if it is not in rows. */
  public static Optional<Thinned> of(Planting planting) {
    boolean inRows =
        planting.bed().attributes().all(PlantingKeys.PLANTS).stream()
            .anyMatch(e -> e.place().equals(planting.place()));
    if (!inRows) {
      return Optional.empty();
    }
    return planting.bed().attributes().all(PlantingKeys.THINNED).stream()
        .map(e -> e.value())
        .filter(t -> t.plant().equals(planting.plant().name()))
        .findFirst();
  }

  /** The places of those that stay. */
  public static List<Point> kept(Planting planting, Thinned thinned) {
    int inRow = steps(thinned.to(), planting.spacing());
    int rows = steps(thinned.to(), planting.rowSpacing());
    List<Point> kept = new ArrayList<>();
    List<List<Point>> drills = planting.drills();
    // What is left over at the ends is left over at both.
    for (int row = (drills.size() - 1) % rows / 2; row < drills.size(); row += rows) {
      int size = drills.get(row).size();
      for (int i = (size - 1) % inRow / 2; i < size; i += inRow) {
        kept.add(drills.get(row).get(i));
      }
    }
    return List.copyOf(kept);
  }

  /**
   * What stands once it is grown.
   *
   * @param spacing distance of neighbours then
   * @param rowSpacing distance of rows then
   */
  public record Grown(List<Point> at, Length spacing, Length rowSpacing) {
    public Grown {
      at = List.copyOf(at);
    }
  }

  /** What stands of a planting once it is grown: those that stay where it is thinned, else all. */
  public static Grown grown(Planting planting) {
    return of(planting)
        .map(
            t ->
                new Grown(
                    kept(planting, t),
                    planting.spacing().times(steps(t.to(), planting.spacing())),
                    planting.rowSpacing().times(steps(t.to(), planting.rowSpacing()))))
        .orElseGet(() -> new Grown(planting.at(), planting.spacing(), planting.rowSpacing()));
  }

  /** Of those that stand once it is grown, the ones too near a point, after {@link Planting}. */
  public static List<Point> tooNear(Planting planting, Point to) {
    // A plant that the placing has set just at the distance is not too near.
    Length least = Planting.offStem(planting.plant()).times(1 - 1e-9);
    return grown(planting).at().stream()
        .filter(at -> to.distance(at).compareTo(least) < 0)
        .toList();
  }

  private static int steps(Length to, Length spacing) {
    return Math.max(1, (int) Math.round(to.ratioTo(spacing)));
  }
}
