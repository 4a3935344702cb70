package yardloom.sun.hours;

import java.util.List;

/**
 * A day's sun at one place, in hours; times count from solar noon, negative before it.
 *
 * @param directHours direct sun, behind thin shade by the share that passes
 * @param morningHours the part of it before solar noon
 * @param firstHour when sun first arrives; equal to {@code lastHour} on a day without sun
 * @param lastHour when it leaves
 * @param longest the times of sun that make up the spell without a break in which most of it
 *     arrives; none on a day without sun
 * @param spells the times of sun one after the other, each with the share of light that passes;
 *     none runs over noon
 */
public record DayLight(
    double directHours,
    double morningHours,
    double firstHour,
    double lastHour,
    List<Spell> longest,
    List<Spell> spells) {
  public DayLight {
    longest = List.copyOf(longest);
    spells = List.copyOf(spells);
  }

  /**
   * A time of sun.
   *
   * @param share of direct light that passes, above 0 and up to 1
   */
  public record Spell(double fromHour, double toHour, double share) {
    public double hours() {
      return toHour - fromHour;
    }
  }

  /** Direct hours of the longest spell; sun behind a thin crown counts by what passes. */
  public double longestHours() {
    return longest.stream().mapToDouble(s -> s.share() * s.hours()).sum();
  }
}
