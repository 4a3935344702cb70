package yardloom.water.need.formula;

/**
 * The part of a month's rain that plants can use, in mm: the form that CROPWAT calls USDA Soil
 * Conservation Service.
 *
 * <p>Continuous at 250 mm; between 0 and the rain itself for all rain up to that of a monsoon.
 *
 * <p>References: [1] FAO CROPWAT, effective rainfall, USDA SCS method; as quoted in the
 * documentation of pyCropWat, citing FAO Irrigation and Drainage Paper 46.
 */
public final class CropwatRain {
  private CropwatRain() {}

  public static double effectiveMm(double rainMm) {
    return rainMm <= 250 ? rainMm * (125 - 0.2 * rainMm) / 125 : 125 + 0.1 * rainMm;
  }
}
