package yardloom.kernel.ground;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Whether the ground falls away from a house as it should.
 *
 * <p>At least 6 in within the first 10 ft, which is 5 %. Where a lot line or wall is nearer than 10
 * ft, a slope of 5 % to a drain or swale will do; hard surfaces need 2 %.
 *
 * <p>References: [1] International Residential Code 2006, R401.3, as quoted by home inspectors.
 *
 * @param ratio fall over distance; negative if the ground falls towards the house
 * @param byException whether it passes only as a slope to a drain or as a hard surface
 */
public record FallFromHouse(boolean passes, double ratio, boolean byException) {
  public static final Source SOURCE =
      Source.read("International Residential Code", "International Code Council", 2006, "R401.3");

  /** Within this distance the fall is measured. */
  public static final Length REACH = Length.feet(10);

  /** The fall that is asked over the whole reach. */
  public static final Length FALL = Length.inches(6);

  private static final double TO_DRAIN = 0.05;
  private static final double HARD = 0.02;
  private static final double SLACK = 1e-9;

  /**
   * Judges one place.
   *
   * @param wall level of the ground at the wall
   * @param ground level of the ground at {@code distance} from it
   * @param hard whether the ground between is a hard surface
   */
  public static FallFromHouse judge(Length wall, Length ground, Length distance, boolean hard) {
    double ratio = wall.minus(ground).ratioTo(distance);
    if (hard) {
      return new FallFromHouse(ratio >= HARD - SLACK, ratio, ratio < TO_DRAIN);
    }
    boolean whole = distance.metres() >= REACH.metres() - SLACK;
    boolean enough =
        whole ? ratio * REACH.metres() >= FALL.metres() - SLACK : ratio >= TO_DRAIN - SLACK;
    return new FallFromHouse(enough, ratio, !whole);
  }
}
