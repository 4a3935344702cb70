package yardloom.sun.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;
import yardloom.sun.body.Ground;

/** Whose shadows are drawn on which of the nine pictures. */
class ShadowFigureTest {
  private static Obstacle tall(List<Double> passes) {
    return new Obstacle(
        new ElementId(ElementKind.BED, "tomatoes"),
        Obstacle.Form.PRISM,
        TestYards.rectangle(-2, -1, 2, 1),
        Length.ZERO,
        Length.metres(1.6),
        passes);
  }

  private static long shadows(Obstacle obstacle) {
    Draft draft = TestYards.at(40, -88);
    TestYards.bed(draft, obstacle.of(), TestYards.rectangle(-8, -8, 8, 8));
    Plan plan = draft.freeze();
    return new ShadowFigure(plan, plan.site().orElseThrow(), new Ground(0, 0), List.of(obstacle))
        .make().marks().stream()
            .filter(m -> m instanceof Mark.Region r && r.about().startsWith("shade"))
            .count();
  }

  /** A crop that stands from May to October shades in June only; a wall on all three days. */
  @Test
  void shadow_ofACrop_isDrawnInItsMonthsOnly() {
    List<Double> crop = new ArrayList<>(Collections.nCopies(12, 1.0));
    for (int m = 4; m <= 9; m++) {
      crop.set(m, 0.3);
    }
    assertEquals(3, shadows(tall(crop)));
    assertEquals(9, shadows(tall(Collections.nCopies(12, 0.0))));
  }
}
