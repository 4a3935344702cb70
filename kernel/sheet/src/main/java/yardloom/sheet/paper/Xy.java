package yardloom.sheet.paper;

/** A place on paper in millimetres: x to the right, y down from the upper left corner. */
public record Xy(double x, double y) {
  public Xy plus(double right, double down) {
    return new Xy(x + right, y + down);
  }

  /** The place at a share of the way to another. */
  public Xy towards(Xy other, double share) {
    return plus((other.x - x) * share, (other.y - y) * share);
  }

  public double distance(Xy other) {
    return Math.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
  }
}
