package yardloom.planting.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.LightNeed;
import yardloom.facts.SunHours;
import yardloom.facts.WinterChill;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.placing.PlantPlaces;

/** Sun and winter of a place against what plants ask for; the facts are made by hand. */
class FitChecksTest {
  private static final SourceRef PLACE = new SourceRef("plan.groovy", 7, 3);
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));

  private List<Finding> found(Check check, Set<FactKey<?>> gives, Consumer<Sink> giving) {
    Plan plan = draft.freeze();
    Calculator giver =
        new Calculator() {
          @Override
          public String id() {
            return "hand.made";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return gives;
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            giving.accept(out);
          }
        };
    return check.run(plan, FactGraph.of(List.of(giver)).run(plan));
  }

  private static SunHours.Place sun(double hours, String lightClass) {
    return new SunHours.Place(
        Collections.nCopies(12, TimeSpan.hours(9)), TimeSpan.hours(hours), lightClass);
  }

  /**
   * The limits are the scheme's, not the catalogue's: 6.5 h are full sun by one and not by another.
   */
  @ParameterizedTest(name = "{0} at {1} h of {2}")
  @CsvSource({
    "FULL_SUN, 6.5, full sun, false",
    "FULL_SUN, 6.5, part sun, true",
    "SUN_OR_PART_SHADE, 1.5, part sun, false",
    "SUN_OR_PART_SHADE, 3.5, shade, true",
    "HALF_DAY, 4.0, shade, false",
    "HALF_DAY, 3.9, full sun, true"
  })
  void placeThatDoesNotSuit_isNamedWithHoursAndClass(
      LightNeed.Amount amount, double hours, String lightClass, boolean expected) {
    ElementId bed = new ElementId(ElementKind.BED, "a");
    SunHours sun =
        new SunHours(
            Map.of(bed, sun(hours, lightClass)),
            sun(12, "full sun"),
            "1 April to 30 September",
            List.of("full sun", "part sun", "shade"),
            "'own': full sun from some hours",
            "by hand");
    LightNeed need = new LightNeed(bed, PLACE, "tomato", amount, Source.plan("catalogue"));
    List<Finding> found =
        found(
            new LightCheck(),
            Set.of(YardFacts.SUN_HOURS, YardFacts.LIGHT_NEEDS),
            out -> {
              out.give(YardFacts.SUN_HOURS, sun);
              out.give(YardFacts.LIGHT_NEEDS, need);
            });
    assertEquals(expected ? 1 : 0, found.size());
    if (expected) {
      assertEquals(PLACE, found.get(0).place());
      String said = "this place has " + hours + " h of direct sun a day from 1 April to 30";
      assertTrue(found.get(0).text().contains(said), found.get(0).text());
      assertTrue(found.get(0).text().contains(lightClass + " (scheme 'own'"));
    }
  }

  @Test
  void treeThatAsksForMoreChillThanTheWinterHas_isFound() {
    Point at = Point.metres(0, 0);
    Length crown = Length.metres(3);
    ElementDraft apple =
        draft.add(
            new ElementId(ElementKind.TREE, "apple"),
            PLACE,
            c ->
                new Element.Tree(
                    c,
                    at,
                    Shape.circle(at, crown.div(2)),
                    crown,
                    Length.metres(3),
                    Length.metres(1),
                    Length.ZERO,
                    Element.Leaf.DECIDUOUS));
    TreeScope tree = new TreeScope(draft, apple, PLACE);
    PlanException wrong = assertThrows(PlanException.class, () -> ChillWords.chillNeed(tree, -1));
    assertEquals(ProblemCode.OUT_OF_RANGE, wrong.problems().get(0).code());
    assertTrue(wrong.getMessage().contains("0 to 2500"));
    ChillWords.chillNeed(tree, 800);
    assertEquals(1, chill(799).size());
    assertTrue(chill(799).get(0).text().contains("asks for 800 h"));
    assertEquals(0, chill(800).size(), "just enough");
  }

  private List<Finding> chill(double hours) {
    return found(
        new ChillCheck(),
        Set.of(YardFacts.WINTER_CHILL, PlantPlaces.KEY),
        out -> {
          out.give(PlantPlaces.KEY, new PlantPlaces(List.of(), List.of()));
          out.give(
              YardFacts.WINTER_CHILL,
              new WinterChill(Derived.given(hours, "chill", SourceRef.NONE)));
        });
  }
}
