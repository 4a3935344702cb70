package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.HeadPart;
import yardloom.water.head.Supply;
import yardloom.water.route.LineWays;

/** Where the head and its timer stand, which way water goes through them, and their power. */
public final class HeadPlace {
  private static final double SAME_M = 1e-6;

  private HeadPlace() {}

  /** In words, all common practice but for the places, which are the plan's. */
  public static List<String> notes(Plan plan, Facts facts) {
    List<String> notes = new ArrayList<>();
    boolean isTank = Supply.isTank(plan);
    HeadAssembly head = HeadAssembly.of(plan);
    List<HeadPart> parts = head.parts(isTank);
    String place = place(plan, facts).map(p -> (isTank ? "tank " : "tap ") + p).orElse("the tap");
    int zones = facts.all(ZoneLine.KEY).size();
    notes.add(
        "Flow: "
            + place
            + " → "
            + parts.stream().map(HeadPart::name).collect(Collectors.joining(" → "))
            + (zones == 1 ? " → zone 1." : " → zones 1 to " + zones + ".")
            + " The arrow on each part points away from "
            + (isTank ? "the tank." : "the tap."));
    notes.add(
        (isTank
                ? "The head stands at the foot of the tank, lower than its stop level, "
                : "The head stands at the wall or on a post by the tap, ")
            + "at the square on the plan, in reach without a ladder; valves and filter in a box"
            + " with a lid."
            + (HighestOutlet.matters(plan) ? vacuumBreaker(plan, facts) : ""));
    notes.add(joints(plan, isTank));
    if (parts.stream().anyMatch(p -> p.kind() == HeadPart.Kind.TIMER)) {
      notes.add(power(zones, isTank));
    }
    return notes;
  }

  private static String vacuumBreaker(Plan plan, Facts facts) {
    return " The vacuum breaker stands higher than every outlet"
        + HighestOutlet.aboveTap(plan, facts)
            .map(
                above ->
                    " (the highest lies "
                        + HighestOutlet.text(plan, above)
                        + " above the ground at the tap)")
            .orElse("")
        + ", by as much as the local code says, and is of the kind for standing pressure, as valves"
        + " close behind it.";
  }

  private static String joints(Plan plan, boolean isTank) {
    String thread = plan.info().units() == UnitSystem.US ? "3/4 in" : "G 3/4";
    return "Joints: "
        + thread
        + " threads (common practice), tape on those without a washer; "
        + (isTank ? "" : "at the tap a hose thread with a washer, screwed on by hand; ")
        + "threaded tees between the zone valves, an adapter for tube at the end of each zone's"
        + " parts. Parts of other threads need a reducer: compare before you buy.";
  }

  private static String power(int zones, boolean isTank) {
    return "Timer: behind the shut-off valve, in the shade; on batteries (common practice), changed"
        + " each spring"
        + (zones > 1
            ? "; it has "
                + zones
                + " stations, one for each zone valve, or the valves are turned by hand"
            : "")
        + (isTank ? "; of the kind that opens a ball valve at low pressure" : "")
        + ". One that is plugged in needs an outdoor outlet with ground-fault protection, set by a"
        + " licensed electrician: none is in this plan.";
  }

  private static Optional<String> place(Plan plan, Facts facts) {
    if (Supply.isTank(plan)) {
      return Supply.tank(plan).map(t -> t.name());
    }
    Optional<Point> start = facts.find(LineWays.KEY).map(LineWays::start);
    return start.flatMap(
        s ->
            plan.all(Element.WaterPoint.class).stream()
                .filter(tap -> tap.at().distance(s).metres() < SAME_M)
                .map(tap -> tap.id().name())
                .findFirst());
  }
}
