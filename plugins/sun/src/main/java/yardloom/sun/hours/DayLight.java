package yardloom.sun.hours;

/**
 * A day's sun at one place, in hours; times count from solar noon, negative before it.
 *
 * @param directHours direct sun, behind thin shade by the share that passes
 * @param morningHours the part of it before solar noon
 * @param firstHour when sun first arrives; equal to {@code lastHour} on a day without sun
 * @param lastHour when it leaves
 * @param longestHours direct hours of the spell without a break that has most of them
 */
public record DayLight(
    double directHours,
    double morningHours,
    double firstHour,
    double lastHour,
    double longestHours) {}
