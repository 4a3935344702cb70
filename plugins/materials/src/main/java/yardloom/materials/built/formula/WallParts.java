package yardloom.materials.built.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Blocks, base and drainage of a wall laid dry.
 *
 * <p>Courses = height / course, rounded up, and one below the ground. Blocks = courses × (length /
 * block, rounded up). The base is 6 in of gravel in a trench twice as wide as the wall; the rock
 * behind a wall that holds earth is 12 in thick over its height. A wall of no length or height has
 * none of them.
 *
 * <p>References: public wall calculators with worked examples: [1] 20 ft by 3 ft of 12 by 6 in
 * blocks are 6 courses of 20, with 5 % for cuts 126, and 20 caps; [2] base 6 in deep and twice the
 * block's depth wide, drain rock 12 in; 20 ft by 3 ft take 2.2 cu yd.
 */
public final class WallParts {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Retaining wall calculator: blocks, base and drainage",
          "public calculator pages",
          0,
          "worked examples");

  /** Gravel under the first course. */
  public static final Length BASE = Length.inches(6);

  /** Rock behind a wall that holds earth. */
  public static final Length DRAIN = Length.inches(12);

  private static final double EPS = 1e-9;

  private WallParts() {}

  /** Courses that are seen. */
  public static int courses(Length height, Length course) {
    return (int) Math.ceil(height.ratioTo(course) - EPS);
  }

  /** Blocks of one course. */
  public static int along(Length length, Length block) {
    return (int) Math.ceil(length.ratioTo(block) - EPS);
  }

  /** From the bottom of the buried course to the top. */
  public static Length whole(Length height, Length course) {
    return course.times(courses(height, course) + 1);
  }

  public static Volume base(Length length, Length thickness) {
    return length.by(thickness.times(2)).deep(BASE);
  }

  public static Volume drain(Length length, Length height) {
    return length.by(height).deep(DRAIN);
  }
}
