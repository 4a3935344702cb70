package yardloom.water.overflow.formula;

import java.util.Optional;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;

/**
 * Sizes a planted hollow that takes roof water into the ground.
 *
 * <p>Area = drained area × size factor of the soil and depth; depth follows from the slope. The
 * factor is for catchments within about 30 ft; check the volume too. Keep it 10 ft and more from
 * buildings, off septic fields and away from slopes.
 *
 * <p>References: [1] Illinois DNR, Rain Garden Size Requirement Instructions. [2] University of
 * Rhode Island Cooperative Extension, Rain Gardens: A Design Guide for Homeowners, after UW
 * Extension GWQ037.
 */
public final class RainGarden {
  /** How deep a garden on a slope is, from and to. */
  public record Depth(Length from, Length to) {}

  private RainGarden() {}

  public static Area area(Area drained, double sizeFactor) {
    if (!(sizeFactor > 0 && sizeFactor <= 1)) {
      throw new IllegalArgumentException("size factor " + sizeFactor);
    }
    return drained.times(sizeFactor);
  }

  /**
   * The depth for a slope in percent; empty on more than 12 percent, where another place is due.
   */
  public static Optional<Depth> depth(double slopePercent) {
    if (slopePercent < 0) {
      throw new IllegalArgumentException("slope " + slopePercent + " percent");
    }
    if (slopePercent > 12) {
      return Optional.empty();
    }
    double[] inches =
        slopePercent <= 4
            ? new double[] {3, 5}
            : slopePercent <= 7 ? new double[] {6, 7} : new double[] {8, 8};
    return Optional.of(new Depth(Length.inches(inches[0]), Length.inches(inches[1])));
  }

  /** The area that holds {@code runoff} at once at this depth. */
  public static Area holding(Volume runoff, Length depth) {
    return Area.squareMetres(runoff.cubicMetres() / depth.metres());
  }

  /** How long ponded water takes to sink in. */
  public static TimeSpan drawdown(Length ponded, Length infiltrationPerHour) {
    return TimeSpan.hours(ponded.ratioTo(infiltrationPerHour));
  }
}
