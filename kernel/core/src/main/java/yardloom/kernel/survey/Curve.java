package yardloom.kernel.survey;

import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * A circular curve of a deed or plat.
 *
 * <p>With Δ in radians: arc L = RΔ, chord C = 2R sin(Δ/2), segment R²/2 (Δ − sin Δ). The definition
 * says how the length of the curve is counted: along the arc (highways) or along chords of 100 ft
 * (railroads); the two differ by feet on sharp curves, so it is kept with the curve.
 *
 * <p>References: [1] J. Mahun, Open Access Surveying Library, COGO chapters F and G. [2] US Army FM
 * 5-430-00-1, appendix F: R = 5,729.578 ft at a degree of curve of 1°.
 *
 * @param delta the central angle, above 0 and below 360°
 */
public record Curve(Length radius, Angle delta, Definition definition) {
  private static final double STATION_FT = 100;

  /** How the length of the curve is counted. */
  public enum Definition {
    ARC,
    CHORD
  }

  private double half() {
    return delta.radians() / 2;
  }

  /** The true length along the arc. */
  public Length arc() {
    return radius.times(delta.radians());
  }

  public Length chord() {
    return radius.times(2 * StrictMath.sin(half()));
  }

  /** Between chord and arc. */
  public Area segment() {
    double d = delta.radians();
    return Area.squareMetres(radius.metres() * radius.metres() / 2 * (d - StrictMath.sin(d)));
  }

  /** The angle that one station of 100 ft subtends, by this curve's definition. */
  public Angle degreeOfCurve() {
    return degreeOfCurve(radius, definition);
  }

  static Angle degreeOfCurve(Length radius, Definition definition) {
    double stations = Length.feet(STATION_FT).metres() / radius.metres();
    return Angle.radians(
        definition == Definition.ARC ? stations : 2 * StrictMath.asin(Math.min(1, stations / 2)));
  }

  /** The radius of a curve of so many degrees. */
  public static Length radiusOf(Angle degreeOfCurve, Definition definition) {
    double d = degreeOfCurve.radians();
    return Length.feet(
        definition == Definition.ARC ? STATION_FT / d : STATION_FT / 2 / StrictMath.sin(d / 2));
  }

  /** The length as its definition counts it: 100 ft × Δ/D. */
  public Length countedLength() {
    return definition == Definition.ARC
        ? arc()
        : Length.feet(STATION_FT).times(delta.ratioTo(degreeOfCurve()));
  }
}
