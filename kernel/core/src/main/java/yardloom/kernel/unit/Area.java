package yardloom.kernel.unit;

/** The size of a surface in plan. */
public final class Area extends Quantity<Area> {
  /** Nothing at all. */
  public static final Area ZERO = new Area(0);

  private Area(double squareMetres) {
    super(squareMetres);
  }

  /** Square metres. */
  public static Area squareMetres(double value) {
    return new Area(Unit.SQUARE_METRE.toSi(value));
  }

  /** The value in square metres. */
  public double squareMetres() {
    return in(Unit.SQUARE_METRE);
  }

  /** Square feet. */
  public static Area squareFeet(double value) {
    return new Area(Unit.SQUARE_FOOT.toSi(value));
  }

  /** The value in square feet. */
  public double squareFeet() {
    return in(Unit.SQUARE_FOOT);
  }

  /** The volume of a layer of even depth over this area. */
  public Volume deep(Length depth) {
    return Volume.cubicMetres(squareMetres() * depth.metres());
  }

  /** The same as {@link #deep(Length)}; the plan language's {@code *} arrives here. */
  public Volume multiply(Length depth) {
    return deep(depth);
  }

  @Override
  public Dimension dimension() {
    return Dimension.AREA;
  }

  @Override
  Area of(double newSi) {
    return new Area(newSi);
  }
}
