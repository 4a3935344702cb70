package yardloom.sun.light;

import java.util.List;
import yardloom.kernel.source.Source;

/**
 * A way to name amounts of direct sun. Classes are not standardised, so the scheme is printed with
 * every result.
 *
 * @param classes from the most sun to the least; the last one starts at zero
 */
public record LightScheme(String name, List<LightClass> classes, Source source) {

  /**
   * One class of a scheme.
   *
   * @param fromHours mean direct sun in hours a day at which it begins
   * @param inclusive whether exactly that much belongs to it
   */
  public record LightClass(String name, double fromHours, boolean inclusive) {
    boolean holds(double hours) {
      return inclusive ? hours >= fromHours : hours > fromHours;
    }

    /** {@code full sun from 6 h} or {@code full sun above 6 h}. */
    public String text() {
      return name + (inclusive ? " from " : " above ") + plain(fromHours) + " h";
    }

    private static String plain(double hours) {
      return hours == Math.rint(hours) ? Long.toString((long) hours) : Double.toString(hours);
    }
  }

  public LightScheme {
    classes = List.copyOf(classes);
    if (classes.isEmpty()) {
      throw new IllegalArgumentException("scheme " + name + " has no classes");
    }
    for (int i = 1; i < classes.size(); i++) {
      if (classes.get(i).fromHours() >= classes.get(i - 1).fromHours()) {
        throw new IllegalArgumentException("scheme " + name + " is not in falling order");
      }
    }
    LightClass last = classes.get(classes.size() - 1);
    if (last.fromHours() != 0 || !last.inclusive()) {
      throw new IllegalArgumentException("scheme " + name + " does not end at 0 h");
    }
  }

  /** The class of a mean of {@code hours} a day, not negative, as printed to a tenth. */
  public LightClass of(double hours) {
    double printed = Math.rint(hours * 10) / 10;
    return classes.stream().filter(c -> c.holds(printed)).findFirst().orElseThrow();
  }

  /** All thresholds in one line. */
  public String text() {
    return String.join(", ", classes.stream().map(LightClass::text).toList());
  }
}
