package yardloom.planting.bay.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * What a row of compost bins is made of: a post at each corner of each bin, mesh behind, at both
 * ends and between them, boards that lift out in front.
 *
 * <p>So many bins as have 3 ft of the length each, one at least. Mesh is length + (bins + 1) ×
 * depth, posts are 2 × (bins + 1), boards of a bin so many as the height holds whole. Nothing is
 * asked of bins deeper than 5 ft, which do not breathe: the caller says so.
 *
 * <p>References: [1] Three-bin compost system, Pierce County, Washington: 9 by 3 by 3 ft of
 * hardware cloth on dividers and back, 18 front slats of 1×6, a roll of 25 ft. [2] Make a compost
 * bin, an allotment page: two bins of 3 ft on six posts.
 *
 * @param bins side by side along the length
 */
public record BayParts(Length length, Length depth, Length height, int bins) {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Three-bin compost system: mesh on dividers and back, front slats",
          "Pierce County, Washington",
          0,
          "");

  /** A bin holds its heat from this side on. */
  public static final Length BIN = Length.feet(3);

  /** A board of 1×6 as it is. */
  public static final Length BOARD = Length.inches(5.5);

  /** How deep posts stand in the ground: a stake of 4 ft 6 in for a bin of 3 ft. */
  public static final Length BURIED = Length.inches(18);

  /** The parts of a row of bins of a length and a depth. */
  public static BayParts of(Length length, Length depth, Length height) {
    return new BayParts(length, depth, height, Math.max(1, (int) (length.ratioTo(BIN) + 1e-9)));
  }

  public int posts() {
    return 2 * (bins + 1);
  }

  /** Behind, at the ends and between bins. */
  public Length mesh() {
    return length.plus(depth.times(bins + 1));
  }

  /** In front of all bins. */
  public int boards() {
    return bins * (int) (height.ratioTo(BOARD) + 1e-9);
  }

  /** How long a board is: as wide as a bin. */
  public Length board() {
    return length.div(bins);
  }
}
