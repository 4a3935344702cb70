package yardloom.planting.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.planting.model.Plant;

/**
 * Gives the shade of tall plants in beds: each planting above 3 ft when grown is one block over the
 * discs of its spread, from the ground to its full height.
 *
 * <p>Trees are plan elements and cast their shade through the plan; this adds none for them. A
 * block shades somewhat more than the plants it stands for. Light that passes: 0.3 in leaf, 0.7
 * without leaves, 1 where the plant dies back or is not there (from memory, unverified). Leaf
 * months are May to October, in the south November to April.
 */
public final class CanopyCalculator implements Calculator {
  /** Below this height a plant is not counted as an obstacle. */
  public static final Length LOW = Length.feet(3);

  private static final double IN_LEAF = 0.3;
  private static final double BARE = 0.7;

  @Override
  public String id() {
    return "planting.canopy";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    boolean south = plan.site().map(s -> s.latitude().degrees() < 0).orElse(false);
    for (Planting p : Planting.of(plan)) {
      Length height = p.plant().height().middle();
      if (p.at().isEmpty() || height.compareTo(LOW) <= 0) {
        continue;
      }
      Length radius = p.plant().spread().middle().div(2);
      Shape crowns = Shape.union(p.at().stream().map(c -> Shape.circle(c, radius)).toList());
      out.give(
          YardFacts.OBSTACLES,
          new Obstacle(
              p.bed().id(),
              Obstacle.Form.PRISM,
              crowns,
              Length.ZERO,
              height,
              passes(p.plant(), south)));
    }
  }

  private static List<Double> passes(Plant plant, boolean south) {
    double winter =
        switch (plant.season()) {
          case EVERGREEN -> IN_LEAF;
          case DECIDUOUS -> plant.form().isWoody() ? BARE : 1;
          case ANNUAL, TENDER_ANNUAL -> 1;
        };
    List<Double> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      boolean summer = m >= 4 && m <= 9;
      months.add(summer != south ? IN_LEAF : winter);
    }
    return months;
  }
}
