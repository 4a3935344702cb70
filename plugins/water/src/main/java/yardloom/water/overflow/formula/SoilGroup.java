package yardloom.water.overflow.formula;

import yardloom.kernel.unit.Length;

/**
 * Hydrologic soil groups by how fast wet ground takes water, per hour.
 *
 * <p>References: [1] USGS, Soil-Water-Balance code documentation, Appendix 1, soil group table: A
 * above 0.30, B 0.15 to 0.30, C 0.05 to 0.15, D below 0.05 in/h.
 */
public enum SoilGroup {
  A(0.30),
  B(0.15),
  C(0.05),
  D(0);

  private final double leastInches;

  SoilGroup(double leastInches) {
    this.leastInches = leastInches;
  }

  /** The group of ground that takes {@code perHour}; a rate on a border belongs to the slower. */
  public static SoilGroup of(Length perHour) {
    if (perHour.metres() < 0) {
      throw new IllegalArgumentException("infiltration " + perHour + " an hour");
    }
    for (SoilGroup group : values()) {
      if (perHour.inches() > group.leastInches + 1e-12) {
        return group;
      }
    }
    return D;
  }
}
