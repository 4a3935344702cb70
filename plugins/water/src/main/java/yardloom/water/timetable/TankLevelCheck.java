package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.head.Supply;
import yardloom.water.need.WaterText;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/**
 * Lines that are to be fed by a tank that is not there, stands too low or is too small for them.
 */
public final class TankLevelCheck implements Check {
  private static final Source PRACTICE =
      Source.commonPractice("a tank feeds lines that its height can drive and its water can fill");

  @Override
  public String id() {
    return "water.tank-lines";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TankZone.KEY, ZoneTimes.KEY, Zone.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    plan.said(Supply.KEY).ifPresent(supply -> unknown(plan, supply, found));
    for (TankZone zone : facts.all(TankZone.KEY)) {
      String head = "tank '" + zone.tank().name() + "': zone " + zone.number();
      if (zone.stop().isEmpty()) {
        found.add(
            finding(
                plan,
                head + " does not run well even from a full tank: " + zone.limit(),
                "raise the tank, move the beds below it, shorten the rows, widen the pipe, or add a"
                    + " pump"));
        continue;
      }
      small(plan, facts, zone, head).ifPresent(found::add);
    }
    return found;
  }

  private void unknown(Plan plan, Entry<Supply> supply, List<Finding> found) {
    List<String> tanks =
        plan.attributes().all(TankPlan.KEY).stream().map(t -> t.value().name()).sorted().toList();
    supply
        .value()
        .tank()
        .filter(name -> !tanks.contains(name))
        .ifPresent(
            name ->
                found.add(
                    finding(
                        plan,
                        "the supply names the tank '" + name + "', which the plan does not have",
                        tanks.isEmpty()
                            ? "say `tank('" + name + "', ...)` or leave `tank:` out"
                            : "name one of "
                                + String.join(", ", tanks)
                                + "."
                                + Nearest.hint(name, tanks))));
  }

  private Optional<Finding> small(Plan plan, Facts facts, TankZone zone, String head) {
    Volume usable =
        zone.tank().between(zone.stop().orElseThrow().water(), zone.tank().body().height());
    return TankLevelTable.peak(zone.number(), facts)
        .filter(peak -> TankLevelTable.watering(zone, peak).value().compareTo(usable) > 0)
        .map(
            peak ->
                finding(
                    plan,
                    String.format(
                        Locale.ROOT,
                        "%s takes %s at one watering in %s, and the full tank gives %s above its"
                            + " stop level",
                        head,
                        WaterText.both(plan, TankLevelTable.watering(zone, peak).value()),
                        Months.name(peak.month()),
                        WaterText.both(plan, usable)),
                    "link more tanks, water fewer beds from it, or fill it from the tap during the"
                        + " watering"));
  }

  private Finding finding(Plan plan, String what, String advice) {
    return Finding.of(id(), Severity.WARNING, what, advice, PRACTICE)
        .at(plan.said(Supply.KEY).orElseThrow().place());
  }
}
