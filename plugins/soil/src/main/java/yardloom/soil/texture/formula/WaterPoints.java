package yardloom.soil.texture.formula;

/**
 * Water contents of a soil as shares of its volume.
 *
 * <p>References: as {@link SaxtonRawls}.
 *
 * @param wilting at 1500 kPa, where plants wilt
 * @param fieldCapacity at 33 kPa, after drainage
 * @param saturated all pores full
 * @param saturatedMmPerHour saturated hydraulic conductivity; water enters a soil in use more
 *     slowly, see {@link yardloom.soil.texture.BasicIntake}
 */
public record WaterPoints(
    double wilting, double fieldCapacity, double saturated, double saturatedMmPerHour) {
  /** Water that plants can use, as a share of soil volume. */
  public double available() {
    return fieldCapacity - wilting;
  }
}
