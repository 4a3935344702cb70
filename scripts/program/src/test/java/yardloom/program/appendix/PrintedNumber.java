package yardloom.program.appendix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.unit.Unit;

/**
 * A number as the appendix prints it, read back: every SI value that rounds to what is printed.
 * Days of the year count from 1 January. Whole numbers without unit are exact.
 */
final class PrintedNumber {
  private static final Pattern NUMBER =
      Pattern.compile("^(-?)([$€£]?)(-?[0-9][0-9,]*(?:\\.([0-9]+))?(?:e([+-][0-9]+))?)");
  private static final Pattern FEET =
      Pattern.compile("^(?:([0-9]+)'-)?([0-9]*)([¼½¾]?)\"( \\(\\*\\)| .*)?$");
  private static final Pattern DAY = Pattern.compile("^([0-9]{1,2}) ([A-Z][a-z]{2})$");
  private static final Pattern CORNER = Pattern.compile("\\(([^,]+), ([^)]+)\\)");
  private static final String MONTHS = "JanFebMarAprMayJunJulAugSepOctNovDec";
  private static final int[] BEFORE = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
  private static final Map<String, Unit> UNITS = units();

  private PrintedNumber() {}

  private static Map<String, Unit> units() {
    // Longest first, so that "m" does not stand for "mm".
    Map<String, Unit> units =
        new TreeMap<>(
            Comparator.comparing(String::length).reversed().thenComparing(String::toString));
    for (Unit unit : Unit.values()) {
      if (!unit.symbol().isEmpty()) {
        units.put(unit.symbol(), unit);
      }
    }
    return units;
  }

  /** The unit at the start of the text, not followed by more of a word. */
  static Optional<Unit> unitAt(String text) {
    return UNITS.entrySet().stream()
        .filter(e -> text.startsWith(e.getKey()))
        .filter(e -> !text.substring(e.getKey().length()).matches("(?s)^[\\p{L}²³/(].*"))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Empty if the text is no number. */
  static Optional<Interval> read(String printed) {
    String text = printed.replaceAll("(?<=[0-9])\u00a0(?=[0-9]{3})", "").replace('\u00a0', ' ');
    Matcher day = DAY.matcher(text);
    if (day.matches() && MONTHS.contains(day.group(2))) {
      int month = MONTHS.indexOf(day.group(2)) / 3;
      return Optional.of(Interval.exact(BEFORE[month] + Integer.parseInt(day.group(1))));
    }
    Matcher feet = FEET.matcher(text);
    if (feet.matches()) {
      return Optional.of(Interval.exact(feet(feet)));
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.find()) {
      return Optional.empty();
    }
    String rest = text.substring(number.end()).strip();
    Optional<Unit> unit = rest.isEmpty() ? Optional.empty() : unitAt(rest);
    // What stands behind may be a remark of the table, such as (*).
    String remark = unit.map(u -> rest.substring(u.symbol().length())).orElse(rest).strip();
    if (!remark.isEmpty() && !remark.startsWith("(")) {
      return Optional.empty();
    }
    double value = Double.parseDouble(number.group(1) + number.group(3).replace(",", ""));
    int decimals = number.group(4) == null ? 0 : number.group(4).length();
    int exponent = number.group(5) == null ? 0 : Integer.parseInt(number.group(5));
    boolean exact = decimals == 0 && unit.isEmpty();
    double half = exact ? 0 : 0.5 * Math.pow(10, exponent - decimals);
    Interval shown = new Interval(value - half, value + half);
    return Optional.of(unit.map(u -> shown.rising(u::toSi)).orElse(shown));
  }

  private static double feet(Matcher text) {
    double inches = text.group(2).isEmpty() ? 0 : Integer.parseInt(text.group(2));
    inches += text.group(3).isEmpty() ? 0 : ("¼½¾".indexOf(text.group(3)) + 1) * 0.25;
    double feet = text.group(1) == null ? 0 : Integer.parseInt(text.group(1));
    return Unit.FOOT.toSi(feet) + Unit.INCH.toSi(inches);
  }

  /** Corners such as {@code (0.000, 1.500) (2.000, 1.500) ft}; empty if there are none. */
  static List<List<Interval>> corners(String printed) {
    String text = printed.replace('\u00a0', ' ');
    List<List<Interval>> corners = new ArrayList<>();
    Matcher corner = CORNER.matcher(text);
    String unit = text.substring(text.lastIndexOf(')') + 1).strip();
    while (corner.find()) {
      corners.add(
          List.of(
              read(corner.group(1) + " " + unit).orElseThrow(),
              read(corner.group(2) + " " + unit).orElseThrow()));
    }
    return corners;
  }
}
