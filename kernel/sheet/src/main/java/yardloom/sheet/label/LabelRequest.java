package yardloom.sheet.label;

import java.util.Optional;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/**
 * A label to place.
 *
 * @param widthMm along its lines
 * @param heightMm across its lines
 * @param stand whether it had better stand centred on its point
 * @param upright whether its lines run up the sheet when it does
 * @param ground what it names, if that is more than a point
 * @param solid whether nothing else of the drawing is in that ground, as in a house
 */
record LabelRequest(
    Xy anchor,
    double widthMm,
    double heightMm,
    int rank,
    Anchor stand,
    boolean upright,
    Optional<Footprint> ground,
    boolean solid) {
  LabelRequest(
      Xy anchor,
      double widthMm,
      double heightMm,
      int rank,
      Anchor stand,
      boolean upright,
      Optional<Footprint> ground) {
    this(anchor, widthMm, heightMm, rank, stand, upright, ground, false);
  }

  boolean isNumber() {
    return stand == Anchor.POINT;
  }

  boolean isCentred() {
    return stand == Anchor.CENTRE || stand == Anchor.FIXED || stand == Anchor.INSIDE;
  }

  /** Its room about {@code middle}. */
  Box around(Xy middle, boolean isUpright) {
    return Box.around(middle, isUpright ? heightMm : widthMm, isUpright ? widthMm : heightMm);
  }

  /** A cheap first answer, for most: its ground lies further from {@code box} than that. */
  boolean isBeyond(Box box, double mm) {
    return ground.filter(g -> box.isFurtherThan(mm, g.bounds())).isPresent();
  }

  double distance(Box box) {
    return ground.map(g -> g.distance(box)).orElseGet(() -> Quad.of(box).distance(anchor));
  }
}
