package yardloom.kernel.unit;

import java.util.regex.Pattern;

/**
 * Texts that say a measure in both systems, such as {@code 3 ft (0.9 m)}, as the readers of one
 * plan read them: a crew with metric tapes needs no feet.
 */
public final class OwnMeasures {
  private static final String NUMBER = "(?:\\d[\\d.,]*(?:[/–-]\\d[\\d.]*)?[½¼¾]?|[½¼¾])";
  private static final String AMOUNT =
      "(?:half an|an?|" + NUMBER + ")(?:(?: to | by | or | and )" + NUMBER + ")*";
  private static final String US =
      side("cu yd|sq ft|ft|inch(?:es)?|in|gph|gpm|psi|lb|gal|°F|yd|miles?|oz");
  private static final String METRIC = side("m²|m³|mm|cm|km|m|L/h|L/min|kPa|kg|g|L|°C|ha");
  private static final Pattern US_FIRST = pair(US, METRIC);
  private static final Pattern METRIC_FIRST = pair(METRIC, US);

  private OwnMeasures() {}

  private static String side(String units) {
    String one = AMOUNT + " (?:" + units + ")";
    return one + "(?: (?:to|by|or|and|in) " + one + ")?";
  }

  private static Pattern pair(String said, String meant) {
    return Pattern.compile("(?<![\\w.])(" + said + ") \\((" + meant + ")\\)");
  }

  /**
   * The text with each measure that is said in both systems said in {@code units} alone; others,
   * and numbers of one system only, stay as they are.
   */
  public static String of(String text, UnitSystem units) {
    if (text.indexOf('(') < 0) {
      return text;
    }
    boolean us = units == UnitSystem.US;
    String once = US_FIRST.matcher(text).replaceAll(us ? "$1" : "$2");
    return METRIC_FIRST.matcher(once).replaceAll(us ? "$2" : "$1");
  }
}
