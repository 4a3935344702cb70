package yardloom.water.roof.formula;

import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * The flow that a roof sheds in a cloudburst, and the roof that a downspout can drain.
 *
 * <p>The rule of a square inch of downspout for each 100 square feet holds for 12 inches an hour;
 * it scales with the local intensity.
 *
 * <p>References: [1] trade rule after SMACNA: 1 in² of downspout drains 1,200 ft² at 1 in/h.
 */
public final class RoofDrainage {
  private static final double SQFT_PER_SQIN_AT_ONE_INCH = 1200;

  private RoofDrainage() {}

  public static Flow flow(Area plan, Length rainPerHour) {
    return plan.deep(rainPerHour).per(TimeSpan.hours(1));
  }

  /**
   * The plan area that a downspout of this cross-section drains.
   *
   * @throws IllegalArgumentException if the rain is not positive
   */
  public static Area drained(Area section, Length rainPerHour) {
    if (rainPerHour.inches() <= 0) {
      throw new IllegalArgumentException("rain intensity " + rainPerHour + " an hour");
    }
    double squareInches = section.squareFeet() * 144;
    return Area.squareFeet(squareInches * SQFT_PER_SQIN_AT_ONE_INCH / rainPerHour.inches());
  }
}
