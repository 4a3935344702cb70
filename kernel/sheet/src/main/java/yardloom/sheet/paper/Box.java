package yardloom.sheet.paper;

/** An upright rectangle on paper, millimetres, {@code y} down. */
public record Box(double x, double y, double width, double height) {
  public static Box around(Xy middle, double width, double height) {
    return new Box(middle.x() - width / 2, middle.y() - height / 2, width, height);
  }

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public Xy centre() {
    return new Xy(x + width / 2, y + height / 2);
  }

  /** One of this size elsewhere. */
  public Box movedTo(double newX, double newY) {
    return new Box(newX, newY, width, height);
  }

  /** This box without {@code mm} on every side. */
  public Box inset(double mm) {
    return new Box(x + mm, y + mm, width - 2 * mm, height - 2 * mm);
  }

  public boolean contains(Xy p) {
    return p.x() >= x && p.x() <= right() && p.y() >= y && p.y() <= bottom();
  }

  /** The point of the box nearest to {@code p}. */
  public Xy nearest(Xy p) {
    return new Xy(Math.min(Math.max(p.x(), x), right()), Math.min(Math.max(p.y(), y), bottom()));
  }

  /** Whether it lies clearly further than {@code mm} from the other, upwards or sideways. */
  public boolean isFurtherThan(double mm, Box other) {
    double sideways = Math.max(other.x - right(), x - other.right());
    double upwards = Math.max(other.y - bottom(), y - other.bottom());
    return Math.max(sideways, upwards) > mm + 1e-6;
  }

  /**
   * Whether the segment passes through the inside.
   *
   * <p>References: [1] Y.-D. Liang, B. A. Barsky, A new concept and method for line clipping, ACM
   * Transactions on Graphics 3(1), 1984, pp. 1-22 (from memory).
   */
  public boolean isCrossedBy(Xy from, Xy to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double left = x - from.x();
    double right = x + width - from.x();
    double top = y - from.y();
    double bottom = y + height - from.y();
    // Most lines run past; that is known without a division.
    if (Math.max(dx, 0) < left
        || Math.min(dx, 0) > right
        || Math.max(dy, 0) < top
        || Math.min(dy, 0) > bottom
        || dx == 0 && !(left < 0 && right > 0)
        || dy == 0 && !(top < 0 && bottom > 0)) {
      return false;
    }
    double enters = Math.max(0, Math.max(enters(dx, left, right), enters(dy, top, bottom)));
    double leaves = Math.min(1, Math.min(leaves(dx, left, right), leaves(dy, top, bottom)));
    return enters < leaves && isLong(leaves - enters, dx, dy);
  }

  /** The longer leg nearly always tells; the root is dear. */
  private static boolean isLong(double share, double dx, double dy) {
    return share * Math.max(Math.abs(dx), Math.abs(dy)) > 1e-6
        || share * StrictMath.hypot(dx, dy) > 1e-6;
  }

  /** The share of the segment at which it comes between two parallel lines. */
  private static double enters(double step, double low, double high) {
    return step == 0 ? 0 : step > 0 ? low / step : high / step;
  }

  /** The share at which it leaves them. */
  private static double leaves(double step, double low, double high) {
    return step == 0 ? 1 : step > 0 ? high / step : low / step;
  }
}
