package yardloom.sheet.svg;

import yardloom.kernel.draw.Style.Hatch;

/**
 * The tile that a hatch repeats; lines run on across tile edges without a seam.
 *
 * @param filled whether the path is filled instead of stroked
 */
record HatchTile(double widthMm, double heightMm, String path, double lineMm, boolean filled) {

  static HatchTile of(Hatch hatch) {
    return switch (hatch) {
      case NONE -> throw new IllegalArgumentException("no hatch has no tile");
      case DIAGONAL -> lines(2.4, "M-0.6 0.6L0.6 -0.6M0 2.4L2.4 0M1.8 3L3 1.8");
      case DIAGONAL_BACK -> lines(2.4, "M-0.6 1.8L0.6 3M0 0L2.4 2.4M1.8 -0.6L3 0.6");
      case CROSS ->
          lines(
              3.2,
              "M-0.6 0.6L0.6 -0.6M0 3.2L3.2 0M2.6 3.8L3.8 2.6"
                  + "M-0.6 2.6L0.6 3.8M0 0L3.2 3.2M2.6 -0.6L3.8 0.6");
      case HORIZONTAL -> lines(1.8, "M0 0.9L1.8 0.9");
      case VERTICAL -> lines(1.8, "M0.9 0L0.9 1.8");
      case DOTS -> dots(1.8, 0.45, 0.45, 1.35, 1.35);
      case SPARSE_DOTS -> dots(3.6, 0.9, 0.9, 2.7, 2.7);
      case CHIPS ->
          lines(
              5,
              "M0.6 0.9L1.5 0.5M2.7 0.8L3.3 1.5M4.1 0.4L4.6 1.1M1 2.4L1.7 3M3.1 2.6L4 2.3"
                  + "M0.5 4L1.3 3.9M2.2 4.3L2.8 3.7M3.9 4.4L4.5 3.8");
      case BRICK ->
          new HatchTile(
              5,
              2.5,
              "M0 0.02L5 0.02M0 1.25L5 1.25M1.25 0L1.25 1.25M3.75 1.25L3.75 2.5",
              0.13,
              false);
    };
  }

  private static HatchTile lines(double size, String path) {
    return new HatchTile(size, size, path, 0.13, false);
  }

  /** Small squares turned by 45 degrees: at print size they read as dots. */
  private static HatchTile dots(double size, double... centres) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < centres.length; i += 2) {
      path.append('M')
          .append(SvgXml.number(centres[i] - 0.2))
          .append(' ')
          .append(SvgXml.number(centres[i + 1]))
          .append("l0.2 -0.2l0.2 0.2l-0.2 0.2Z");
    }
    return new HatchTile(size, size, path.toString(), 0, true);
  }
}
