package yardloom.planting.harvest.formula;

import java.util.Locale;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;

/**
 * What an area of growing ground brings in a year.
 *
 * <p>References: definition; pound and foot after NIST Special Publication 811, appendix B.8.
 *
 * @param kilogramsPerSquareMetre not negative
 */
public record AreaYield(double kilogramsPerSquareMetre) implements Comparable<AreaYield> {
  public AreaYield {
    if (!(kilogramsPerSquareMetre >= 0) || Double.isInfinite(kilogramsPerSquareMetre)) {
      throw new IllegalArgumentException("yield of " + kilogramsPerSquareMetre + " kg/m²");
    }
  }

  /** A harvest over the ground it grew on, which must not be empty. */
  public static AreaYield of(Mass harvest, Area ground) {
    return new AreaYield(harvest.kilograms() / ground.squareMetres());
  }

  /** From pounds a square foot. */
  public static AreaYield poundsPerSquareFoot(double pounds) {
    return of(Mass.pounds(pounds), Area.squareFeet(1));
  }

  /** In pounds a square foot. */
  public double poundsPerSquareFoot() {
    return Mass.kilograms(kilogramsPerSquareMetre * Area.squareFeet(1).squareMetres()).pounds();
  }

  /** With two decimals, such as {@code 0.57}, in lb/sq ft or kg/m². */
  public String number(UnitSystem units) {
    double shown = units == UnitSystem.US ? poundsPerSquareFoot() : kilogramsPerSquareMetre;
    return String.format(Locale.ROOT, "%.2f", shown);
  }

  /** The unit of {@link #number}. */
  public static String unit(UnitSystem units) {
    return units == UnitSystem.US
        ? Unit.POUND.symbol() + "/" + Unit.SQUARE_FOOT.symbol()
        : Unit.KILOGRAM.symbol() + "/" + Unit.SQUARE_METRE.symbol();
  }

  @Override
  public int compareTo(AreaYield other) {
    return Double.compare(kilogramsPerSquareMetre, other.kilogramsPerSquareMetre);
  }
}
