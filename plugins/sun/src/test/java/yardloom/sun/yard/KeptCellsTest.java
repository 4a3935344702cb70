package yardloom.sun.yard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.Field;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;
import yardloom.sun.bed.SunHoursCalculator;

/**
 * The sun of a yard after an edit, with cells kept, is the one worked out whole, to the last bit.
 */
class KeptCellsTest {
  private static final ElementId BED = new ElementId(ElementKind.BED, "b");
  private static final ElementId WALL = new ElementId(ElementKind.FENCE, "wall");
  private static final ElementId TREE = new ElementId(ElementKind.TREE, "plum");

  private final Recall recall = new Recall();
  private int edits;

  private static Obstacle obstacle(ElementId of, Form form, Shape on, double topM, double passes) {
    return new Obstacle(
        of, form, on, Length.ZERO, Length.metres(topM), Collections.nCopies(12, passes));
  }

  private static Obstacle wall(double y) {
    return obstacle(WALL, Form.PRISM, TestYards.rectangle(2, y, 9, y + 0.2), 1.9, 0);
  }

  private static Obstacle plum(double x) {
    return obstacle(TREE, Form.CYLINDER, TestYards.rectangle(x, 6, x + 1.5, 7.5), 3.1, 0.4);
  }

  private static Obstacle rows(double x) {
    return obstacle(BED, Form.PRISM, TestYards.rectangle(x, 1, x + 1, 3.5), 0.7, 0.3);
  }

  /** Only the field of the last run tells which cells are kept; what gives obstacles is new. */
  private static FactGraph graph(String name, List<Obstacle> obstacles) {
    Calculator given =
        new Calculator() {
          @Override
          public String id() {
            return name;
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.OBSTACLES);
          }

          @Override
          public void compute(Plan plan, Facts in, Sink out) {
            obstacles.forEach(o -> out.give(YardFacts.OBSTACLES, o));
          }
        };
    return FactGraph.of(List.of(given, new SceneCalculator(), new SunHoursCalculator()));
  }

  private void compare(double bedX, Obstacle... obstacles) {
    compare(bedX, 0, 9, obstacles);
  }

  private void compare(double bedX, double soilM, double shedX, Obstacle... obstacles) {
    Draft draft = TestYards.at(40, -105);
    draft.lot(new Lot(SourceRef.NONE, TestYards.rectangle(0, 0, 12, 9), List.of()));
    draft
        .add(
            BED,
            SourceRef.NONE,
            c ->
                new Element.Bed(
                    c, TestYards.rectangle(bedX, 1, bedX + 1, 3.5), Element.BedUse.ANNUAL))
        .attributes()
        .add(YardWords.BED_HEIGHT, Length.metres(soilM), SourceRef.NONE);
    draft.add(
        new ElementId(ElementKind.STRUCTURE, "shed"),
        SourceRef.NONE,
        c ->
            new Element.Structure(
                c, TestYards.rectangle(shedX, 1, shedX + 2, 2.5), Length.metres(2)));
    Plan plan = draft.freeze();
    FactGraph graph = graph("test.obstacles " + edits++, List.of(obstacles));
    SunField kept = graph.run(plan, recall).get(SunField.KEY);
    recall.keep();
    SunField whole = graph.run(plan).get(SunField.KEY);
    assertArrayEquals(values(whole.season()), values(kept.season()), "season of edit " + edits);
    assertArrayEquals(values(whole.morning()), values(kept.morning()), "mornings of edit " + edits);
    for (int m = 0; m < 12; m++) {
      assertArrayEquals(
          values(whole.months().get(m)), values(kept.months().get(m)), m + " of edit " + edits);
    }
  }

  private static double[] values(Field field) {
    double[] values = new double[field.rows() * field.columns()];
    for (int i = 0; i < values.length; i++) {
      values[i] = field.at(i % field.columns(), i / field.columns()).orElse(-1);
    }
    return values;
  }

  @Test
  void afterEachEdit_keptCellsAreThoseWorkedOutWhole() {
    compare(3, wall(5), plum(7), rows(3));
    compare(4, wall(5), plum(7), rows(4)); // a bed and its plants moved
    compare(4, wall(5.5), plum(7), rows(4)); // a wall moved
    compare(4, wall(5.5), rows(4)); // a tree felled
    compare(4, wall(5.5), plum(2), rows(4)); // another planted
    compare(4, plum(2), wall(5.5), rows(4)); // told in another order
    compare(6, plum(2), wall(0.5)); // a bed without plants, north of the wall
    compare(6, 0.4, 9, plum(2), wall(0.5)); // its soil raised by 0.4 m
    compare(6, 0.4, 1, plum(2), wall(0.5)); // a shed moved, whose shade nobody counts
  }

  private static YardSun sun(Obstacle... obstacles) {
    Plan plan = TestYards.at(40, -105).freeze();
    return new YardSun(plan, plan.site().orElseThrow(), List.of(obstacles), Optional.empty());
  }

  @Test
  void whatChanged_isNamed() {
    YardSun before = sun(wall(5), plum(7), rows(3));
    assertEquals(Optional.of(Set.of(BED)), sun(wall(5), plum(7), rows(4)).changedSince(before));
    assertEquals(Optional.of(Set.of(WALL)), sun(plum(7), rows(3)).changedSince(before));
    assertEquals(Optional.of(Set.of()), before.changedSince(before));
    assertEquals(Optional.empty(), sun(plum(7), wall(5), rows(3)).changedSince(before));
    YardSun fewer = sun(wall(5));
    assertTrue(before.changedSince(fewer).orElseThrow().containsAll(Set.of(TREE, BED)));
  }
}
