package yardloom.materials.mulch.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Limits for chips about trees and beside houses.
 *
 * <p>About trees 3 to 4 in on well-drained soil and 2 to 3 in on heavy soil, at least 6 in from the
 * trunk; sources differ between 3 and 6 in for the gap, the larger is used. At a house no mulch
 * within 12 in of the foundation and 6 in between siding and ground.
 *
 * <p>References: [1] Iowa State University Extension, horticulture news (trees). [2] North Carolina
 * State University Extension, termite notes. [3] University of Florida IFAS, ENY-832, figure 1.
 */
public final class MulchLimits {
  /** Printed beside findings about trees. */
  public static final Source TREES =
      Source.read(
          "Mulching trees with wood chips", "Iowa State University Extension", 0, "hortnews FAQ");

  /** Printed beside findings about houses. */
  public static final Source HOUSES =
      Source.read("Termite notes", "North Carolina State University Extension", 0, "12 in strip");

  /** Least bare ground about a trunk. */
  public static final Length TRUNK_GAP = Length.inches(6);

  /** Least bare strip along a foundation. */
  public static final Length WALL_GAP = Length.inches(12);

  private MulchLimits() {}

  /** How a value stands to a range. */
  public enum Verdict {
    GOOD,
    TOO_LITTLE,
    TOO_MUCH
  }

  public static Verdict aroundTree(Length depth, boolean heavySoil) {
    Length least = Length.inches(heavySoil ? 2 : 3);
    Length most = Length.inches(heavySoil ? 3 : 4);
    if (depth.compareTo(least) < 0) {
      return Verdict.TOO_LITTLE;
    }
    return depth.compareTo(most) > 0 ? Verdict.TOO_MUCH : Verdict.GOOD;
  }

  public static boolean trunkGapIsEnough(Length gap) {
    return gap.compareTo(TRUNK_GAP) >= 0;
  }

  public static boolean wallGapIsEnough(Length gap) {
    return gap.compareTo(WALL_GAP) >= 0;
  }
}
