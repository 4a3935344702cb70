package yardloom.kernel.sheet;

/** An upright rectangle on paper, millimetres, {@code y} down. */
public record Box(double x, double y, double width, double height) {
  static Box around(Xy middle, double width, double height) {
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

  /** This box without {@code mm} on every side. */
  public Box inset(double mm) {
    return new Box(x + mm, y + mm, width - 2 * mm, height - 2 * mm);
  }

  public boolean contains(Xy p) {
    return p.x() >= x && p.x() <= right() && p.y() >= y && p.y() <= bottom();
  }

  /** The point of the box nearest to {@code p}. */
  Xy nearest(Xy p) {
    return new Xy(Math.min(Math.max(p.x(), x), right()), Math.min(Math.max(p.y(), y), bottom()));
  }
}
