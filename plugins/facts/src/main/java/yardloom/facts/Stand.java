package yardloom.facts;

import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Plants of one kind in one bed, or one tree.
 *
 * @param in the bed or tree it belongs to
 */
public record Stand(
    ElementId in, SourceRef place, Kind kind, Placed placed, Thirst thirst, Planted planted) {
  /**
   * Of what kind they are.
   *
   * @param plant the catalogue name
   * @param spread mature spread of one plant
   */
  public record Kind(String plant, String botanical, Length spread) {}

  /**
   * Where they stand.
   *
   * @param at each plant
   * @param area the ground they take
   * @param drills length of rows when sown in drills; empty when planted one by one
   */
  public record Placed(List<Point> at, Area area, Optional<Length> drills) {
    public Placed {
      at = List.copyOf(at);
    }
  }

  /**
   * What they draw.
   *
   * @param kc crop coefficients (FAO-56), January to December; 0 when nothing grows
   * @param roots how deep they draw water, where known
   */
  public record Thirst(List<Double> kc, Source kcSource, Optional<Roots> roots) {
    public Thirst {
      kc = List.copyOf(kc);
    }
  }

  /**
   * When they come there.
   *
   * @param stands whether they stand already and are kept: watered, not bought or planted
   * @param phase when they are planted: woody plants before the cardboard, all else through it
   * @param ground of whom they take once that is over; empty for what has ground of its own. Their
   *     crop coefficients are 0 as long as others stand there
   */
  public record Planted(boolean stands, WorkPhase phase, Optional<Ground> ground) {
    /** Set through the cardboard, on ground of their own. */
    public static final Planted THROUGH_CARDBOARD =
        new Planted(false, WorkPhase.PLANT, Optional.empty());
  }

  /** What stands first on a ground in a year. */
  public record Ground(SourceRef place, String plant) {}

  /**
   * How deep a full-grown crop draws water.
   *
   * @param depth the depth for timing irrigation: the lower one of a range
   * @param easyShare the share of the water held there that it draws without stress, 0 to 1
   * @param isNewEachYear whether roots start anew each year, as those of annuals do
   */
  public record Roots(Length depth, double easyShare, Source source, boolean isNewEachYear) {}

  /** The catalogue name. */
  public String plant() {
    return kind.plant();
  }

  /** Whether others stand on its ground before it in the year. */
  public boolean follows() {
    return planted.ground().isPresent();
  }
}
