package yardloom.water.drip;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.pipe.formula.Emitter;
import yardloom.water.pipe.formula.Water;

/**
 * The {@code drip} line of a bed.
 *
 * @param emitter flow of one outlet at its rated pressure
 * @param spacing distance of outlets along the tube
 * @param rowSpacing distance of tubes
 * @param rated the pressure of that flow
 * @param exponent power of pressure by which the flow grows
 * @param isCompensating whether outlets hold their flow from {@link #LEAST} on
 * @param bore inside diameter of the tube
 * @param share of the ground under its plants that single emitters on the tube are to wet, which
 *     the spacing then follows from; 0 for dripline, whose outlets come with it
 */
public record DripChoice(
    Flow emitter,
    Length spacing,
    Length rowSpacing,
    Pressure rated,
    double exponent,
    boolean isCompensating,
    Length bore,
    double share) {
  /** The dripline of a bed. */
  public static final AttributeKey<DripChoice> KEY =
      new AttributeKey<>("water.drip", DripChoice.class);

  /** A bed that the plan leaves without water, and why. */
  public static final AttributeKey<String> DRY = new AttributeKey<>("water.dry", String.class);

  /** What outlets' flow is usually given for; from memory. */
  static final Pressure USUAL_RATING = Pressure.psi(20);

  /** Of outlets with a winding passage, from memory. */
  static final double TURBULENT = 0.5;

  /** Of outlets that compensate pressure, from memory; 0 would be perfect. */
  static final double COMPENSATING = 0.03;

  /** Below this outlets that compensate begin to fail; from memory. */
  public static final Pressure LEAST = Pressure.psi(8);

  /** Of common 17 mm dripline; from memory. */
  static final Length USUAL_BORE = Length.millimetres(14.5);

  /** Whether emitters are set one by one, by the plants. */
  public boolean isSingle() {
    return share > 0;
  }

  /** The same with tube and emitters as they are laid. */
  DripChoice spaced(Length outlets, Length rows) {
    return new DripChoice(emitter, outlets, rows, rated, exponent, isCompensating, bore, share);
  }

  /** Whether outlets that compensate cannot do so at that pressure. */
  public boolean isTooLow(Pressure pressure) {
    return isCompensating && pressure.compareTo(LEAST) < 0;
  }

  /** The outlet as hydraulics take it. */
  public Emitter outlet() {
    Emitter law =
        Emitter.rated(emitter.cubicMetresPerSecond(), Water.head(rated).metres(), exponent);
    return isCompensating ? law.from(Water.head(LEAST).metres()) : law;
  }
}
