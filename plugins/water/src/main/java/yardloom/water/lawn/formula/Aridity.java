package yardloom.water.lawn.formula;

import yardloom.kernel.unit.Length;

/**
 * Whether a climate is a dry one: its year's rain over its year's evapotranspiration lies below
 * 0.65.
 *
 * <p>References: [1] United Nations Environment Programme, Law and Environment Assistance Platform,
 * glossary, dryland (after the UNCCD reporting glossary, 2013): drylands have a ratio of 0.05 to
 * 0.65.
 */
public final class Aridity {
  /** The ratio below which a climate is dry. */
  public static final double LIMIT = 0.65;

  private Aridity() {}

  /** False where nothing evaporates. */
  public static boolean isDry(Length yearlyRain, Length yearlyEt) {
    return yearlyRain.compareTo(yearlyEt.times(LIMIT)) < 0;
  }
}
