package yardloom.climate.frost.formula;

import yardloom.kernel.unit.Temperature;

/**
 * Plant hardiness zone of a place.
 *
 * <p>Zones are 10 °F wide from -60 °F, halves a (colder) and b are 5 °F; a value on a border
 * belongs to the warmer half. The input is the mean of the coldest temperatures of many years, not
 * the record low. Outside -60 °F to 70 °F the answer says so and is not clamped.
 *
 * <p>References: [1] definition of 10 °F zones and 5 °F half zones, planthardiness.ars.usda.gov.
 */
public sealed interface HardinessZone {
  /** A zone of the scale. */
  record Zone(int number, char half) implements HardinessZone {
    /** {@code 7b}. */
    public String text() {
      return number + Character.toString(half);
    }
  }

  /** Colder than the scale. */
  record BelowScale(Temperature lowest) implements HardinessZone {}

  /** Warmer than the scale. */
  record AboveScale(Temperature lowest) implements HardinessZone {}

  /** The zone for a mean annual extreme minimum. */
  static HardinessZone of(Temperature meanAnnualLowest) {
    // Kelvin arithmetic leaves a dust; borders are whole degrees Fahrenheit.
    double aboveF = Math.rint((meanAnnualLowest.fahrenheit() + 60) * 1e6) / 1e6;
    if (aboveF < 0) {
      return new BelowScale(meanAnnualLowest);
    }
    if (aboveF >= 130) {
      return new AboveScale(meanAnnualLowest);
    }
    return new Zone((int) Math.floor(aboveF / 10) + 1, aboveF % 10 >= 5 ? 'b' : 'a');
  }
}
