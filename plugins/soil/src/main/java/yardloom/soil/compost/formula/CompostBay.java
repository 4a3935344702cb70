package yardloom.soil.compost.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * The bays that hold a season's mix.
 *
 * <p>A heap holds heat from a cube of 3 ft on and breathes up to 5 ft. The side is that of a cube
 * that holds the mix, held between the two; so many bays as then are needed, none for nothing.
 *
 * <p>References: [1] Klickitat County, Volume and construction (3 ft and 5 ft cubes).
 */
public final class CompostBay {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Compost volume and construction: at least 3 ft, at most 5 ft each way",
          "Klickitat County",
          0,
          "");

  private static final Length LEAST = Length.feet(3);
  private static final Length MOST = Length.feet(5);

  private CompostBay() {}

  public static Length side(Volume mix) {
    Length cube = Length.metres(Math.cbrt(mix.cubicMetres()));
    return cube.max(LEAST).min(MOST);
  }

  public static int bays(Volume mix) {
    double sideM = side(mix).metres();
    return (int) Math.ceil(mix.cubicMetres() / (sideM * sideM * sideM) - 1e-9);
  }
}
