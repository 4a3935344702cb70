package yardloom.water.head.formula;

import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;

/**
 * The pressure that a tap keeps while water runs, from its pressure at rest and what runs into an
 * open bucket: still × (1 − (flow / open flow)²). What the service line and the tap take grows with
 * the square of the flow, and takes all of it when the tap stands open.
 *
 * <p>References: Torricelli's law for losses by the square of flow, as in the flow test of hydrants
 * (NFPA 291, from memory, with the power 0.54 for long pipe; at a tap the fittings prevail).
 */
public final class TapCurve {
  private TapCurve() {}

  /** Negative where more is asked than the open tap gives; {@code open} is above 0. */
  public static Pressure at(Flow flow, Pressure still, Flow open) {
    double share = flow.ratioTo(open);
    return still.times(1 - share * share);
  }

  /**
   * What a part takes, from what it takes at another flow: by the square of the flow.
   *
   * @param loss at the flow {@code at}
   */
  public static Pressure loss(Flow flow, Pressure loss, Flow at) {
    double share = flow.ratioTo(at);
    return loss.times(share * share);
  }
}
