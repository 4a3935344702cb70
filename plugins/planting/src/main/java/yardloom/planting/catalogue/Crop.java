package yardloom.planting.catalogue;

import java.util.Optional;
import yardloom.kernel.unit.Length;

/**
 * A crop as FAO-56 lists it, for what a plant draws from the soil; one row, of shrubs of dry
 * climates, which FAO-56 lacks, is from a guide to landscape plants.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, Tables 11, 12 and 22, as transcribed in pyfao56 (USDA-ARS).
 *
 * @param name its row in those tables
 * @param kc water use as a multiple of reference evapotranspiration, on bare or mulched ground
 * @param inGrass the same of trees with grass below them, grass and tree together
 * @param height the greatest height that {@code kc} is meant for; a garden plant may differ
 * @param source the code of the row's source
 */
public record Crop(
    String name,
    Coefficients kc,
    Optional<Coefficients> inGrass,
    Optional<Length> height,
    Optional<Roots> roots,
    Optional<Stages> stages,
    String source) {

  /** Flat in the first stage, flat in the middle one, falling or rising to the end. */
  public record Coefficients(double initial, double middle, double end) {}

  /**
   * How deep a full-grown crop draws water.
   *
   * @param low where soil is layered, and for timing irrigation
   * @param high in deep soil without layers
   * @param easyShare the share of the water held there that it draws without stress, 0 to 1
   */
  public record Roots(Length low, Length high, double easyShare) {}

  /**
   * Lengths of the four stages in days.
   *
   * @param planted when the crop of the example was planted
   * @param region where it grew
   */
  public record Stages(
      int initial, int development, int middle, int late, String planted, String region) {
    public int total() {
      return initial + development + middle + late;
    }
  }
}
