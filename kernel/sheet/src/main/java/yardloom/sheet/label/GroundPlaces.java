package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Where the label of a piece of ground may stand without a leader: in it, or along its edge. */
final class GroundPlaces {
  /**
   * Steps of the search inside; no more than so many along a side, fewer in winding ground. Across
   * narrow ground they are fine enough to find the room between two rows of pipe.
   */
  private static final double STEP_MM = 1.5;

  private static final double NARROW_STEP_MM = 0.7;
  private static final double NARROW_MM = 25;

  private static final int MOST_STEPS = 48;
  private static final int MANY_CORNERS = 40;

  /** A text beside ground must be no further off than this to be read as its own. */
  private static final double TOUCHING_MM = 2.5;

  private static final double UPRIGHT = 1.5;
  private static final double OFF_CENTRE_PER_MM = 0.1;
  private static final double PER_SIDE = 0.5;

  /** Where texts would rather stand: fixed ones in their ground, others beside it. */
  private static final double SECOND_CHOICE = 7;

  private GroundPlaces() {}

  /** Places with their middle in the bounds, to be tried by cost: few of them need be looked at. */
  static List<Place> in(Footprint ground, LabelRequest request) {
    List<Place> places = in(ground, request, false);
    places.addAll(in(ground, request, true));
    return places;
  }

  /** Those of them that are level, or upright. */
  static List<Place> in(Footprint ground, LabelRequest request, boolean upright) {
    List<Place> places = new ArrayList<>();
    Box bounds = ground.bounds();
    int most = ground.ring().size() > MANY_CORNERS ? MOST_STEPS / 4 : MOST_STEPS;
    double stepX = step(bounds.width(), most);
    double stepY = step(bounds.height(), most);
    int stepsX = (int) Math.ceil(bounds.width() / stepX);
    int stepsY = (int) Math.ceil(bounds.height() / stepY);
    for (int i = -stepsX; i <= stepsX; i++) {
      for (int j = -stepsY; j <= stepsY; j++) {
        Xy middle = request.anchor().plus(i * stepX, j * stepY);
        if (bounds.contains(middle)) {
          double off = OFF_CENTRE_PER_MM * middle.distance(request.anchor());
          double cost = off + (upright ? UPRIGHT : 0) + (request.isCentred() ? 0 : SECOND_CHOICE);
          places.add(new Place(request.around(middle, upright), upright, cost));
        }
      }
    }
    return places;
  }

  private static double step(double sideMm, int most) {
    return Math.max(sideMm < NARROW_MM ? NARROW_STEP_MM : STEP_MM, sideMm / most);
  }

  /** Places along the edge, {@code gapMm} off: above, below, then at the sides, also upright. */
  static List<Place> beside(Footprint ground, LabelRequest request, double gapMm) {
    List<Place> places = new ArrayList<>();
    Box bounds = ground.bounds();
    double first = request.isCentred() ? SECOND_CHOICE : 0;
    for (boolean upright : new boolean[] {false, true}) {
      double width = upright ? request.heightMm() : request.widthMm();
      double height = upright ? request.widthMm() : request.heightMm();
      double turned = first + (upright ? UPRIGHT : 0);
      double above = bounds.y() - gapMm - height / 2;
      double below = bounds.bottom() + gapMm + height / 2;
      double left = bounds.x() - gapMm - width / 2;
      double right = bounds.right() + gapMm + width / 2;
      double[] across = along(bounds.centre().x(), bounds.width() - width);
      double[] down = along(bounds.centre().y(), bounds.height() - height);
      for (int k = 0; k < across.length; k++) {
        double cost = turned + PER_SIDE * k;
        if (!upright) {
          add(places, ground, request, new Xy(across[k], above), false, cost);
          add(places, ground, request, new Xy(across[k], below), false, cost + PER_SIDE);
        }
        add(places, ground, request, new Xy(right, down[k]), upright, cost + 2 * PER_SIDE);
        add(places, ground, request, new Xy(left, down[k]), upright, cost + 3 * PER_SIDE);
      }
    }
    return places;
  }

  /** In the middle, towards both ends, and flush with them. */
  private static double[] along(double middle, double play) {
    return new double[] {
      middle, middle - play / 4, middle + play / 4, middle - play / 2, middle + play / 2
    };
  }

  private static void add(
      List<Place> places,
      Footprint ground,
      LabelRequest request,
      Xy middle,
      boolean upright,
      double cost) {
    Box box = request.around(middle, upright);
    double off = ground.distance(box);
    if (off > 0 && off <= TOUCHING_MM) {
      places.add(new Place(box, upright, cost));
    }
  }
}
