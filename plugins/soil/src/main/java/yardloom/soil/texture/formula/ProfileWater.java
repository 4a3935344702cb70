package yardloom.soil.texture.formula;

import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Plant-available water stored in a soil profile, as a depth of water.
 *
 * <p>The sum over layers of thickness × available share × (1 − rock share): rock holds no water.
 * The published rock table steps by class and lies within 0.025 of this. Thickness ≥ 0, shares 0 to
 * 1; anything else is OUT_OF_RANGE. No layers store nothing.
 *
 * <p>References: [1] USDA-NRCS available-water practice as taught in "Relating texture to
 * hydraulics" (class limits 7.5, 15, 22.5 cm). [2] R. G. Allen et al., FAO Irrigation and Drainage
 * Paper 56, 1998, eq. 82 (from memory).
 */
public final class ProfileWater {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Relating texture to hydraulics", "soil teaching slides (slideserve)", 0, "class limits");

  private ProfileWater() {}

  /**
   * One layer.
   *
   * @param available share of the fine earth's volume
   * @param rock share of the layer's volume that is rock fragments
   */
  public record Layer(Length thickness, double available, double rock) {
    public Layer {
      if (thickness.metres() < 0 || !(available >= 0 && available <= 1 && rock >= 0 && rock <= 1)) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "a soil layer needs a thickness of zero or more and shares from 0 to 1, got "
                + thickness
                + ", "
                + available
                + ", "
                + rock);
      }
    }

    /** Available share of the whole layer, rock counted. */
    public double ofWhole() {
      return available * (1 - rock);
    }
  }

  /** How much a profile holds. */
  public enum StorageClass {
    VERY_LOW,
    LOW,
    MODERATE,
    HIGH
  }

  /** How fast water enters. */
  public enum IntakeClass {
    SLOW,
    MODERATE,
    RAPID
  }

  public static Length stored(List<Layer> layers) {
    Length sum = Length.ZERO;
    for (Layer layer : layers) {
      sum = sum.plus(layer.thickness().times(layer.ofWhole()));
    }
    return sum;
  }

  public static StorageClass storageClass(Length stored) {
    double cm = stored.metres() * 100;
    if (cm < 7.5) {
      return StorageClass.VERY_LOW;
    }
    if (cm < 15) {
      return StorageClass.LOW;
    }
    return cm <= 22.5 ? StorageClass.MODERATE : StorageClass.HIGH;
  }

  /** The class of an intake rate: rapid from 7.5 cm/h, slow below 0.5 cm/h. */
  public static IntakeClass intakeClass(double mmPerHour) {
    if (mmPerHour >= 75) {
      return IntakeClass.RAPID;
    }
    return mmPerHour >= 5 ? IntakeClass.MODERATE : IntakeClass.SLOW;
  }
}
