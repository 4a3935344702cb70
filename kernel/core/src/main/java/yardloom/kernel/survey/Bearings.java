package yardloom.kernel.survey;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Directions as deeds write them.
 *
 * <p>Read are quadrant bearings ({@code N 26°10'00" E}, {@code S15-30W}, {@code N 26 10 E}, {@code
 * N 26.25 E}), the four cardinal words ({@code due North}), and azimuths from north ({@code az
 * 306°54'}). What cannot be a direction is refused: above all {@code S 63028 50 W}, a degree sign
 * lost in copying, which must not become another number.
 *
 * <p>References: bearings by quadrant as deeds and manuals of surveying write them, common
 * practice.
 */
public final class Bearings {
  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
  private static final String ANGLE =
      NUMBER + "(?:[°d\\s-]+" + NUMBER + "(?:['′m\\s-]+" + NUMBER + ")?)?[°d'′m\"″s\\s]*";
  private static final Pattern QUADRANT =
      Pattern.compile("([NS])[\\s.]*" + ANGLE + "([EW])\\.?", Pattern.CASE_INSENSITIVE);
  private static final Pattern AZIMUTH =
      Pattern.compile("az(?:imuth)?\\.?\\s*" + ANGLE, Pattern.CASE_INSENSITIVE);
  private static final Pattern CARDINAL =
      Pattern.compile("(?:due\\s+)?(north|east|south|west)", Pattern.CASE_INSENSITIVE);

  /** As much of {@code 28°49'34"} as has no seconds. */
  private static final int MINUTES = "28°49'".length();

  private Bearings() {}

  /**
   * The azimuth, 0° to below 360°, clockwise from the north that the text means.
   *
   * @throws PlanException (SYNTAX) if it is no bearing, (OUT_OF_RANGE) if a part of it is too large
   */
  public static Angle parse(String text) {
    String clean = text.strip();
    Matcher cardinal = CARDINAL.matcher(clean);
    if (cardinal.matches()) {
      return Angle.degrees(
          switch (cardinal.group(1).toLowerCase(Locale.ROOT)) {
            case "north" -> 0;
            case "east" -> 90;
            case "south" -> 180;
            default -> 270;
          });
    }
    Matcher azimuth = AZIMUTH.matcher(clean);
    if (azimuth.matches()) {
      double deg = degrees(text, azimuth, 1, 360);
      return Angle.degrees(deg == 360 ? 0 : deg);
    }
    Matcher quadrant = QUADRANT.matcher(clean);
    if (!quadrant.matches()) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "'"
              + text
              + "' is no bearing; write a quadrant bearing such as N 26-10-00 E, a word such as"
              + " North, or an azimuth such as az 306-54");
    }
    double deg = degrees(text, quadrant, 2, 90);
    boolean north = quadrant.group(1).equalsIgnoreCase("N");
    boolean east = quadrant.group(5).equalsIgnoreCase("E");
    double full = north ? (east ? deg : 360 - deg) : (east ? 180 - deg : 180 + deg);
    return Angle.degrees(full == 360 ? 0 : full);
  }

  private static double degrees(String text, Matcher m, int group, double most) {
    double deg = Double.parseDouble(m.group(group));
    double min = part(m.group(group + 1));
    double sec = part(m.group(group + 2));
    double all = deg + min / 60 + sec / 3600;
    if (all > most) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "'"
              + text
              + "': "
              + m.group(group)
              + " is more than "
              + (int) most
              + " degrees; was a degree sign lost in copying? An azimuth from north is written as"
              + " az 195-30-00");
    }
    if (min >= 60 || sec >= 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "'" + text + "': minutes and seconds of an angle must be below 60");
    }
    return all;
  }

  private static double part(String text) {
    return text == null ? 0 : Double.parseDouble(text);
  }

  /** The quadrant bearing to the nearest second: {@code N 45°00'00" W}. */
  public static String quadrant(Angle azimuth) {
    return quadrant(azimuth, 1);
  }

  /**
   * The quadrant bearing of a line as fine as tapes tell it, {@code N 45°05' W}: to the nearest 1,
   * 5, 10 or 30 minutes, none finer than the angle by which {@code error} at one end turns a line
   * of that length; a line no longer than the error to the nearest 30 minutes.
   */
  public static String quadrant(Angle azimuth, Length length, Length error) {
    double turned =
        length.metres() <= error.metres()
            ? Double.MAX_VALUE
            : Math.toDegrees(StrictMath.atan2(error.metres(), length.metres())) * 60;
    int minutes = turned <= 1 ? 1 : turned <= 5 ? 5 : turned <= 10 ? 10 : 30;
    return quadrant(azimuth, 60L * minutes);
  }

  private static String quadrant(Angle azimuth, long step) {
    double full = 360 * 3600;
    long sec =
        Math.round(((azimuth.degrees() * 3600) % full + full) % full / step) * step % (360 * 3600);
    boolean north = sec <= 90 * 3600 || sec >= 270 * 3600;
    boolean east = sec <= 180 * 3600;
    long acute = north ? (east ? sec : 360 * 3600 - sec) : Math.abs(180 * 3600 - sec);
    String angle = step < 60 ? dms(acute) : dms(acute).substring(0, MINUTES);
    return (north ? "N " : "S ") + angle + (east ? " E" : " W");
  }

  /** An angle to the nearest second: {@code 28°49'34"}. */
  public static String dms(Angle angle) {
    return dms(Math.round(angle.degrees() * 3600));
  }

  private static String dms(long seconds) {
    return String.format(
        Locale.ROOT, "%02d°%02d'%02d\"", seconds / 3600, seconds / 60 % 60, seconds % 60);
  }

  /** An angle of degrees, minutes and seconds. */
  public static Angle dms(int degrees, int minutes, double seconds) {
    return Angle.degrees(degrees + minutes / 60.0 + seconds / 3600);
  }
}
