package yardloom.kernel.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class PlanTest {
  private static Draft draft() {
    return new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.US, "$"));
  }

  private static void bed(Draft draft, String name, int line) {
    Shape shape = Shape.rectangle(Point.metres(0, 0), Length.metres(1), Length.metres(1));
    draft.add(
        new ElementId(ElementKind.BED, name),
        new SourceRef("a.groovy", line, 1),
        c -> new Element.Bed(c, shape, Element.BedUse.ANNUAL));
  }

  @Property(tries = 30, seed = "20261125")
  void elements_anyOrderOfStatements_areSortedNaturally(@ForAll Random random) {
    List<String> names = new ArrayList<>(List.of("bed 1", "bed 2", "bed 10", "kale"));
    Collections.shuffle(names, random);
    Draft draft = draft();
    names.forEach(n -> bed(draft, n, 1));
    assertEquals(
        List.of("bed 1", "bed 2", "bed 10", "kale"),
        draft.freeze().elements().stream().map(e -> e.id().name()).toList());
  }

  @Test
  void sameNameTwice_pointsAtTheFirst() {
    Draft draft = draft();
    bed(draft, "a", 3);
    PlanException e = assertThrows(PlanException.class, () -> bed(draft, "a", 9));
    assertEquals(ProblemCode.DUPLICATE, e.problems().get(0).code());
    assertEquals(9, e.problems().get(0).place().line());
    assertTrue(e.getMessage().contains("already given at a.groovy:3:1"));
  }

  @Test
  void attributes_keepOrderAndPlace() {
    AttributeKey<String> key = new AttributeKey<>("test.word", String.class);
    Attributes.Builder builder = new Attributes.Builder();
    builder.add(key, "one", new SourceRef("a", 1, 1)).add(key, "two", new SourceRef("a", 2, 1));
    Attributes attributes = builder.build();
    assertEquals("two", attributes.get(key).orElseThrow());
    assertEquals(List.of(1, 2), attributes.all(key).stream().map(e -> e.place().line()).toList());
  }

  /** A guard against scripts that loop: twenty thousand elements and not one more. */
  @Test
  void elements_areTwentyThousandAtMost() {
    Draft draft = draft();
    for (int i = 1; i <= 20_000; i++) {
      bed(draft, "b" + i, i);
    }
    PlanException e = assertThrows(PlanException.class, () -> bed(draft, "one more", 20_001));
    assertEquals(ProblemCode.LIMIT, e.problems().get(0).code());
    assertEquals("a plan holds at most 20000 elements", e.problems().get(0).message());
  }
}
