package yardloom.kernel.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import yardloom.kernel.hands.LastFirst;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.UnitSystem;

class FactGraphTest {
  private static final FactKey<String> SHADE = FactKey.many("site.shade", String.class);
  private static final FactKey<String> SUN = FactKey.one("sun.hours", String.class);
  private static final FactKey<String> DEMAND = FactKey.one("water.demand", String.class);
  private static final Plan PLAN =
      new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.METRIC, "")).freeze();

  private record Fake(
      String id, Set<FactKey<?>> needs, Set<FactKey<?>> gives, BiConsumer<Facts, Sink> body)
      implements Calculator {
    @Override
    public void compute(Plan plan, Facts in, Sink out) {
      body.accept(in, out);
    }
  }

  private static Calculator calculator(
      String id, Set<FactKey<?>> needs, Set<FactKey<?>> gives, BiConsumer<Facts, Sink> body) {
    return new Fake(id, needs, gives, body);
  }

  private static List<Calculator> chain() {
    return List.of(
        calculator("a.drip", Set.of(DEMAND), Set.of(), (in, out) -> in.get(DEMAND)),
        calculator("b.demand", Set.of(SUN), Set.of(DEMAND), (in, out) -> out.give(DEMAND, "d")),
        calculator(
            "c.sun",
            Set.of(SHADE),
            Set.of(SUN),
            (in, out) -> out.give(SUN, String.join("+", in.all(SHADE)))),
        calculator("d.trees", Set.of(), Set.of(SHADE), (in, out) -> out.give(SHADE, "tree")),
        calculator("e.walls", Set.of(), Set.of(SHADE), (in, out) -> out.give(SHADE, "wall")));
  }

  @Property(tries = 50, seed = "20261125")
  void order_anyRegistrationOrder_isTheSame(@ForAll Random random) {
    List<Calculator> shuffled = new ArrayList<>(chain());
    Collections.shuffle(shuffled, random);
    assertEquals(
        List.of("d.trees", "e.walls", "c.sun", "b.demand", "a.drip"),
        FactGraph.of(shuffled).order().stream().map(Calculator::id).toList());
    assertEquals("tree+wall", FactGraph.of(shuffled).run(PLAN).get(SUN));
  }

  @Test
  void loop_isToldInWords() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                FactGraph.of(
                    List.of(
                        calculator("bad.pruning", Set.of(SUN), Set.of(SHADE), (i, o) -> {}),
                        calculator("sun.hours", Set.of(SHADE), Set.of(SUN), (i, o) -> {}))));
    assertEquals(ProblemCode.CYCLE, e.problems().get(0).code());
    assertEquals(
        "calculators wait for each other: bad.pruning needs sun.hours from sun.hours; sun.hours"
            + " needs site.shade from bad.pruning",
        e.problems().get(0).message());
  }

  @Test
  void twoGiversOfAOneFact_areRefusedByName() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                FactGraph.of(
                    List.of(
                        calculator("x.sun", Set.of(), Set.of(SUN), (i, o) -> {}),
                        calculator("y.sun", Set.of(), Set.of(SUN), (i, o) -> {}))));
    assertEquals(ProblemCode.PLUGIN_CONFLICT, e.problems().get(0).code());
    assertTrue(e.problems().get(0).message().contains("x.sun and y.sun"));
  }

  @Test
  void undeclaredReading_isAnErrorAtOnce() {
    FactGraph graph =
        FactGraph.of(List.of(calculator("a.peek", Set.of(), Set.of(), (in, out) -> in.find(SUN))));
    assertThrows(IllegalStateException.class, () -> graph.run(PLAN));
  }

  @Test
  void undeclaredGiving_isAnErrorAtOnce() {
    FactGraph graph =
        FactGraph.of(
            List.of(calculator("a.push", Set.of(), Set.of(), (in, out) -> out.give(SUN, "s"))));
    assertThrows(IllegalStateException.class, () -> graph.run(PLAN));
  }

  @Test
  void missingNeed_skipsTheCalculatorAndSaysWhy() {
    Results results =
        FactGraph.of(
                List.of(
                    calculator("a.drip", Set.of(DEMAND), Set.of(), (in, out) -> in.get(DEMAND))))
            .run(PLAN);
    assertEquals("nobody gave water.demand", results.skipped().get("a.drip"));
  }

  @Test
  void order_isThatOfWhoWaits() {
    FactGraph graph = FactGraph.of(chain());
    assertEquals(
        List.of("d.trees", "e.walls", "c.sun", "b.demand", "a.drip"),
        graph.order().stream().map(Calculator::id).toList());
    Results results = graph.run(PLAN);
    assertEquals("tree+wall", results.get(SUN));
    assertEquals(List.of("tree", "wall"), results.all(SHADE));
    assertEquals(
        List.of("d.trees", "e.walls"),
        results.given(SHADE).stream().map(Results.Given::giver).toList());
    assertThrows(IllegalStateException.class, () -> results.find(SHADE));
    assertEquals(
        "nobody gave water.supply",
        assertThrows(
                IllegalStateException.class,
                () -> results.get(FactKey.one("water.supply", String.class)))
            .getMessage());
    Facts reader = DeclaredReader.of(results, "test", Set.of(SHADE));
    assertEquals(List.of("tree", "wall"), reader.all(SHADE));
    assertThrows(IllegalStateException.class, () -> reader.find(SUN));
    Facts other = DeclaredReader.of(results, "test", Set.of(SUN));
    assertEquals("tree+wall", other.find(SUN).orElseThrow());
    assertThrows(IllegalStateException.class, () -> other.all(SHADE));
  }

  @Test
  void oneFact_givenTwiceByItsGiver_isAnError_manyIsNot() {
    FactGraph twice =
        FactGraph.of(
            List.of(
                calculator(
                    "a.twice",
                    Set.of(),
                    Set.of(SUN, SHADE),
                    (in, out) -> {
                      out.give(SHADE, "x");
                      out.give(SHADE, "y");
                      out.give(SUN, "1");
                      assertEquals(
                          "a.twice gives sun.hours twice",
                          assertThrows(IllegalStateException.class, () -> out.give(SUN, "2"))
                              .getMessage());
                    })));
    assertEquals(List.of("x", "y"), twice.run(PLAN).all(SHADE));
  }

  @Test
  void key_hasWords_andDerivedValuesKeepTheirReason() {
    assertEquals("sun hours", SUN.words());
    assertEquals("light", SUN.called("light").words());
    assertEquals("site.shade", SHADE.toString());
    assertEquals(FactKey.Arity.MANY, SHADE.called("shade").arity());
    SourceRef place = new SourceRef("a.groovy", 3, 1);
    Derived<Integer> given = Derived.given(4, "beds", place);
    assertEquals(List.of(new Derived.Input("beds", 4, place)), given.inputs());
    Derived<String> text = given.map(n -> n + " beds");
    assertEquals("4 beds", text.value());
    assertEquals(given.inputs(), text.inputs());
  }

  /** Walls give before trees, and whoever reads them still hears of trees first. */
  @Test
  void run_lastFirst_givesTheSameFactsInTheSameOrder() {
    FactGraph graph = FactGraph.of(chain());
    Results inOrder = graph.run(PLAN);
    Results lastFirst = graph.run(PLAN, Again.AFRESH, Map.of(), Set.of(), new LastFirst());
    assertEquals("tree+wall", lastFirst.get(SUN));
    for (FactKey<?> key : List.of(SHADE, SUN, DEMAND)) {
      assertEquals(inOrder.given(key), lastFirst.given(key));
    }
  }

  /** In order b stops the run; c, which fails too, would have come after it. */
  @Test
  void run_lastFirstAndTwoFail_throwsTheFailureOfTheFirst() {
    FactGraph graph =
        FactGraph.of(
            List.of(
                calculator("b.demand", Set.of(), Set.of(DEMAND), (in, out) -> fail("b")),
                calculator("c.sun", Set.of(), Set.of(SUN), (in, out) -> fail("c"))));
    PlanException thrown =
        assertThrows(
            PlanException.class,
            () -> graph.run(PLAN, Again.AFRESH, Map.of(), Set.of(), new LastFirst()));
    assertEquals("b", thrown.problems().get(0).message());
  }

  private static void fail(String what) {
    throw new PlanException(ProblemCode.OUT_OF_RANGE, what);
  }
}
