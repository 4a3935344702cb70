package yardloom.kernel.unit;

/** A turn or a slope angle; bearings are clockwise from north. */
public final class Angle extends Quantity<Angle> {
  /** Nothing at all. */
  public static final Angle ZERO = new Angle(0);

  private Angle(double radians) {
    super(radians);
  }

  /** Radians. */
  public static Angle radians(double value) {
    return new Angle(Unit.RADIAN.toSi(value));
  }

  /** The value in radians. */
  public double radians() {
    return in(Unit.RADIAN);
  }

  /** Degrees of arc. */
  public static Angle degrees(double value) {
    return new Angle(Unit.DEGREE.toSi(value));
  }

  /** The value in degrees of arc. */
  public double degrees() {
    return in(Unit.DEGREE);
  }

  @Override
  public Dimension dimension() {
    return Dimension.ANGLE;
  }

  @Override
  Angle of(double newSi) {
    return new Angle(newSi);
  }
}
