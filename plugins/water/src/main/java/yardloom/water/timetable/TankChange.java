package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.water.head.Supply;
import yardloom.water.tank.TankYear;
import yardloom.water.tank.TankYearTable;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/** Which tank waters a zone, and how a person changes from tank to tap and back. */
public final class TankChange {
  private TankChange() {}

  /** The year of the tank that feeds the zone, or else waters all of its beds. */
  static Optional<TankYear> of(int zone, Facts facts) {
    Optional<TankZone> fed = TankZone.of(zone, facts);
    List<String> names = Zone.of(zone, facts).beds().stream().map(ElementId::name).toList();
    return facts.all(TankYear.KEY).stream()
        .filter(y -> fed.map(f -> f.tank().equals(y.tank())).orElse(y.serves(names)))
        .findFirst();
  }

  /** Steps for the page beside the timer; none without a tank for a zone. */
  public static List<String> steps(Plan plan, Facts facts) {
    List<String> steps = new ArrayList<>();
    List<TankYear> years =
        facts.all(Zone.KEY).stream()
            .flatMap(z -> of(z.number(), facts).stream())
            .distinct()
            .toList();
    years.forEach(year -> steps.add(TankYearTable.note(year)));
    if (years.isEmpty()) {
      return steps;
    }
    if (Supply.isTank(plan)) {
      steps.add(
          "Timer and valves below a tank open by a ball or by hand: those that the pressure of the"
              + " mains opens stay shut at so little.");
      steps.add(
          "To the tap: when the water stands at the stop level, close the tank's valve, hang the"
              + " tap's hose over the rim, at least 1 in (25 mm) and twice its own width above the"
              + " highest water, and fill. Never lay its end in the water, and never join tap and"
              + " tank by a pipe: the gap of air keeps the drinking water clean.");
      steps.add(
          Supply.open(plan).isPresent()
              ? "How long the tap runs into the tank for one watering says the page for the timer, under"
                  + " 'Tap into tank'. Then open the zone's valve as always."
              : "Time the tap with a bucket once; then the page for the timer"
                  + " says how long it runs into the tank for one watering.");
      steps.add("Back to the tank: when rain has filled it, leave the tap closed.");
    } else {
      steps.add(
          "While the tank has water: timer off for these zones, and water from the tank by its own"
              + " hose, can or pump. When it is empty: timer on. When rain has filled it: timer off"
              + " again.");
      steps.add(
          "Tank and tap stay apart: no fitting joins the tank's hose to the lines of the tap. Where"
              + " one line serves both, its end is screwed to one or the other, never to both.");
    }
    return steps;
  }

  /** How the heading of a zone names it. */
  static String heading(int zone, Facts facts) {
    return String.format(Locale.ROOT, "Zone %d: %s", zone, Zone.of(zone, facts).names());
  }
}
