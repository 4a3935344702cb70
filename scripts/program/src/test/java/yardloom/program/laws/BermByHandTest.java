package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * The earth of a swale as a bank. The swale is 2 ft wide at its bottom, 8 in deep, with sides of
 * 3:1: (2 + 3 × 2/3) × 2/3 = 2.667 sq ft, over 30 ft 80 cu ft = 2.963 cu yd. A bank with a flat top
 * of 1 ft and sides of 2:1 of that section: h + 2 h² = 2.667, h = (√(1 + 8 × 2.667) − 1) / 4 =
 * 0.9315 ft = 11.18 in, and 1 + 4 × 0.9315 = 4.726 ft at its foot. Check: (1 + 4.726) / 2 × 0.9315
 * = 2.667.
 */
class BermByHandTest {
  private static final String YARD =
      """
      plan 'Bank', units: 'us'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 60.ft), point(0.ft, 60.ft)])
      %s
      swale 'ditch', line([point(20.ft, 30.ft), point(50.ft, 30.ft)]), depth: 8.inch
      """;

  /** Falls to the south, where the points of the line lie to the right. */
  private static final String SOUTH =
      "levels { level(point(0.ft, 0.ft), 100.ft); level(point(80.ft, 0.ft), 100.ft);"
          + " level(point(0.ft, 60.ft), 103.ft); level(point(80.ft, 60.ft), 103.ft) }";

  private static Element.Structure bank(Drawn yard) {
    return (Element.Structure)
        yard.outcome().plan().element(new ElementId(ElementKind.STRUCTURE, "bank")).orElseThrow();
  }

  @Test
  void bank_isAsHighAsItsEarth_andIsWorked() {
    Drawn yard = Drawn.of(YARD.formatted("") + "berm 'bank', of: 'ditch', side: 'left'\n");
    assertEquals("ditch", yard.printed("berms", "bank", "swale"));
    assertEquals("30.0", yard.printed("berms", "bank", "length"));
    assertEquals("4.7", yard.printed("berms", "bank", "foot"));
    assertEquals("11.2", yard.printed("berms", "bank", "height"));
    assertEquals("2.96", yard.printed("berms", "bank", "volume"));
    assertEquals("fill and tamp by hand", yard.printed("work-elements", "Bank", "done"));
    // Its ground begins where the swale ends, 3 ft north of the line, and is 4.726 ft wide.
    var box = bank(yard).shape().bounds();
    assertEquals(33, box.getMinY() / 0.3048, 1e-6);
    assertEquals(37.726, box.getMaxY() / 0.3048, 1e-3);
  }

  @Test
  void otherTopAndSides_giveAnotherBank() {
    // Without a flat top and with sides of 3:1: √(2.667 / 3) = 0.943 ft = 11.3 in, 5.7 ft wide.
    Drawn yard =
        Drawn.of(
            YARD.formatted("") + "berm 'bank', of: 'ditch', side: 'right', top: 0.ft, sides: 3\n");
    assertEquals("11.3", yard.printed("berms", "bank", "height"));
    assertEquals("5.7", yard.printed("berms", "bank", "foot"));
    assertEquals(27, bank(yard).shape().bounds().getMaxY() / 0.3048, 1e-6);
  }

  @Test
  void withoutASide_itLiesBelowByTheLevels() {
    String berm = "berm 'bank', of: 'ditch'\n";
    Drawn south = Drawn.of(YARD.formatted(SOUTH) + berm);
    assertEquals(27, bank(south).shape().bounds().getMaxY() / 0.3048, 1e-6);
    Drawn north = Drawn.of(YARD.formatted(SOUTH.replace("103", "97")) + berm);
    assertEquals(33, bank(north).shape().bounds().getMinY() / 0.3048, 1e-6);
    PlanException e = assertThrows(PlanException.class, () -> Drawn.of(YARD.formatted("") + berm));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
    assertEquals(5, e.problems().get(0).place().line());
  }

  @Test
  void bankOfNoSwale_isRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> Drawn.of(YARD.formatted("") + "berm 'bank', of: 'dish', side: 'left'\n"));
    assertTrue(e.getMessage().contains("no swale 'dish'"), e.getMessage());
  }
}
