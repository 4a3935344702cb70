package yardloom.kernel.unit;

/** A distance, width, height or depth. */
public final class Length extends Quantity<Length> {
  /** Nothing at all. */
  public static final Length ZERO = new Length(0);

  private static final double MEASURED_M = 1e-6;

  private Length(double metres) {
    super(metres);
  }

  /** Metres. */
  public static Length metres(double value) {
    return new Length(Unit.METRE.toSi(value));
  }

  /** The value in metres. */
  public double metres() {
    return in(Unit.METRE);
  }

  /** Millimetres. */
  public static Length millimetres(double value) {
    return new Length(Unit.MILLIMETRE.toSi(value));
  }

  /** The value in millimetres. */
  public double millimetres() {
    return in(Unit.MILLIMETRE);
  }

  /** International feet. */
  public static Length feet(double value) {
    return new Length(Unit.FOOT.toSi(value));
  }

  /** The value in international feet. */
  public double feet() {
    return in(Unit.FOOT);
  }

  /** Inches. */
  public static Length inches(double value) {
    return new Length(Unit.INCH.toSi(value));
  }

  /** The value in inches. */
  public double inches() {
    return in(Unit.INCH);
  }

  /**
   * Whether a measured length falls short of a limit. A micrometre decides nothing: coordinates in
   * metres do not hold feet exactly, and what stands at the limit is far enough wherever it stands.
   */
  public boolean isShortOf(Length limit) {
    return metres() < limit.metres() - MEASURED_M;
  }

  /** The area of a rectangle of these sides. */
  public Area by(Length other) {
    return Area.squareMetres(metres() * other.metres());
  }

  /** The same as {@link #by(Length)}; the plan language's {@code *} arrives here. */
  public Area multiply(Length other) {
    return by(other);
  }

  @Override
  public Dimension dimension() {
    return Dimension.LENGTH;
  }

  @Override
  Length of(double newSi) {
    return new Length(newSi);
  }
}
