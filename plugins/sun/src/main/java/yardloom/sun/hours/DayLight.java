package yardloom.sun.hours;

import java.util.List;

/**
 * A day's sun at one place, in hours; times count from solar noon, negative before it.
 *
 * @param directHours direct sun, behind thin shade by the share that passes
 * @param morningHours the part of it before solar noon
 * @param firstHour when sun first arrives; equal to {@code lastHour} on a day without sun
 * @param lastHour when it leaves
 * @param longest the longest time without a break; of no length on a day without sun
 * @param spells the times of sun one after the other, each with the share of light that passes;
 *     none runs over noon
 */
public record DayLight(
    double directHours,
    double morningHours,
    double firstHour,
    double lastHour,
    Spell longest,
    List<Spell> spells) {
  public DayLight {
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

  public double longestHours() {
    return longest.hours();
  }
}
