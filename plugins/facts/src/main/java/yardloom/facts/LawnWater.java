package yardloom.facts;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Volume;

/**
 * Water that a lawn took, beside what takes its place; as drawn from the tap, January to December.
 *
 * @param ground what the lawn covered
 * @param lawn what kept it green
 * @param garden what grown beds and trees of the plan take
 * @param trees what trees take that stood in the lawn and stay; all zero without such trees
 */
public record LawnWater(
    Derived<Area> ground,
    List<Derived<Volume>> lawn,
    List<Derived<Volume>> garden,
    List<Derived<Volume>> trees) {
  public LawnWater {
    lawn = List.copyOf(lawn);
    garden = List.copyOf(garden);
    trees = List.copyOf(trees);
  }

  /** What is saved in a year of average weather; negative if the garden takes more. */
  public Volume yearlySaving() {
    return yearly(lawn).minus(yearly(garden)).minus(yearly(trees));
  }

  /** The sum of twelve months. */
  public static Volume yearly(List<Derived<Volume>> months) {
    return months.stream().map(Derived::value).reduce(Volume.ZERO, Volume::plus);
  }
}
