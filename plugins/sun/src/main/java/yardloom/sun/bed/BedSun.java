package yardloom.sun.bed;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.ElementId;
import yardloom.sun.hours.DayLight;
import yardloom.sun.light.LightScheme.LightClass;
import yardloom.sun.light.formula.LightOfDays.Arriving;

/**
 * The sun of one bed, or of open ground.
 *
 * @param bed empty for open level ground at the same site
 * @param monthHours mean over the bed of direct hours on each month's mean day
 * @param seasonHours mean over bed and season of direct hours a day
 * @param morningHours the part of it before solar noon
 * @param middle the course of each month's mean day at the bed's inmost point
 * @param skyView share of the sky seen from there in each month
 * @param dailyLight what arrives there on each month's mean day; empty where radiation is unknown
 */
public record BedSun(
    Optional<ElementId> bed,
    List<Double> monthHours,
    double seasonHours,
    double morningHours,
    List<DayLight> middle,
    List<Double> skyView,
    List<Arriving> dailyLight,
    LightClass lightClass) {
  public BedSun {
    monthHours = List.copyOf(monthHours);
    middle = List.copyOf(middle);
    skyView = List.copyOf(skyView);
    dailyLight = List.copyOf(dailyLight);
  }
}
