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
 * @param plant the catalogue name
 * @param at where each plant stands
 * @param area the ground it takes
 * @param spread mature spread of one plant
 * @param kc crop coefficients (FAO-56), January to December; 0 when nothing grows
 * @param drills length of rows when it is sown in drills; empty when planted one by one
 * @param roots how deep it draws water, where known
 * @param stands whether they stand already and are kept: watered, not bought or planted
 * @param phase when they are planted: woody plants before the cardboard, all else through it
 * @param ground of whom they take once that is over; empty for what has ground of its own. Their
 *     crop coefficients are 0 as long as others stand there
 */
public record Stand(
    ElementId in,
    SourceRef place,
    String plant,
    String botanical,
    List<Point> at,
    Area area,
    Length spread,
    List<Double> kc,
    Source kcSource,
    Optional<Length> drills,
    Optional<Roots> roots,
    boolean stands,
    WorkPhase phase,
    Optional<Ground> ground) {
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

  /** Plants that are set through the cardboard, on ground of their own. */
  public Stand(
      ElementId in,
      SourceRef place,
      String plant,
      String botanical,
      List<Point> at,
      Area area,
      Length spread,
      List<Double> kc,
      Source kcSource,
      Optional<Length> drills,
      Optional<Roots> roots,
      boolean stands) {
    this(
        in,
        place,
        plant,
        botanical,
        at,
        area,
        spread,
        kc,
        kcSource,
        drills,
        roots,
        stands,
        WorkPhase.PLANT,
        Optional.empty());
  }

  public Stand {
    at = List.copyOf(at);
    kc = List.copyOf(kc);
  }

  /** Whether others stand on its ground before it in the year. */
  public boolean follows() {
    return ground.isPresent();
  }
}
