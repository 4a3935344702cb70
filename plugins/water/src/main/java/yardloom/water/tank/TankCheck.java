package yardloom.water.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.water.roof.Roofs;

/** Tanks that name what is not there, stand in the way or could fall. */
public final class TankCheck implements Check {
  /**
   * Height of the water's middle above the ground, over the width of the foot (common practice).
   */
  private static final double TIPS = 1;

  private static final Source PRACTICE =
      Source.commonPractice("tanks stand level, strapped where tall, clear of what they serve");

  @Override
  public String id() {
    return "water.tank";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    List<String> roofs = Roofs.names(plan).stream().sorted().toList();
    List<String> served = new ArrayList<>();
    plan.all(Element.Bed.class).forEach(b -> served.add(b.id().name()));
    plan.all(Element.Tree.class).forEach(t -> served.add(t.id().name()));
    for (Entry<TankPlan> entry : plan.attributes().all(TankPlan.KEY)) {
      TankPlan tank = entry.value();
      unknown(entry, "roof", tank.filling().roof(), roofs, found);
      tank.drawing().serves().forEach(name -> unknown(entry, "bed or tree", name, served, found));
      tips(entry, found);
      Shape ground = Shape.union(tank.feet());
      plan.lot()
          .filter(lot -> !lot.shape().covers(ground))
          .ifPresent(
              lot ->
                  found.add(
                      finding(entry, "it stands beyond the lot", "move it or link fewer")
                          .marking(ground)));
      for (Element.Building house : plan.all(Element.Building.class)) {
        if (house.shape().overlaps(ground)) {
          found.add(
              finding(
                      entry,
                      "it stands inside '" + house.id().name() + "'",
                      "give the middle of the first tank; linked ones follow to the right")
                  .marking(ground));
        }
      }
    }
    return found;
  }

  private void unknown(
      Entry<TankPlan> entry, String kind, String name, List<String> known, List<Finding> found) {
    if (!known.contains(name)) {
      found.add(
          finding(
              entry,
              "there is no " + kind + " '" + name + "'",
              known.isEmpty()
                  ? "the plan has none"
                  : "name one of " + String.join(", ", known) + "." + Nearest.hint(name, known)));
    }
  }

  private void tips(Entry<TankPlan> entry, List<Finding> found) {
    TankPlan tank = entry.value();
    Length middle = tank.body().stand().plus(tank.body().height().times(0.5));
    Length foot = tank.body().width().min(tank.body().depth());
    if (middle.ratioTo(foot) > TIPS) {
      found.add(
          finding(
              entry,
              String.format(
                  Locale.ROOT,
                  "the middle of its water is %.1f times as high as its foot is wide, so it can"
                      + " tip",
                  middle.ratioTo(foot)),
              "strap it to a wall or post at two heights, or take a lower, wider one or a lower"
                  + " stand"));
    }
  }

  private Finding finding(Entry<TankPlan> entry, String what, String advice) {
    return Finding.of(
            id(),
            Severity.WARNING,
            "tank '" + entry.value().name() + "': " + what,
            advice,
            PRACTICE)
        .at(entry.place());
  }
}
