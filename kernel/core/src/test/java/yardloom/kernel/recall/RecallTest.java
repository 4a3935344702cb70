package yardloom.kernel.recall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class RecallTest {
  private static final AttributeKey<String> CROP = new AttributeKey<>("test.crop", String.class);
  private static final AttributeKey<String> NOTE = new AttributeKey<>("test.note", String.class);

  private static final FactKey<Derived> AREA = FactKey.one("test.area", Derived.class);
  private static final FactKey<Element> BED = FactKey.one("test.bed", Element.class);
  private static final FactKey<String> SAYS = FactKey.one("test.says", String.class);
  private static final FactKey<Supplier> CODE = FactKey.one("test.code", Supplier.class);

  /** A bed on a line of the script, 3 m deep. */
  private record Bed(String name, int line, double widthM, String crop, String note) {}

  private static Plan plan(Bed... beds) {
    Draft draft = new Draft(new PlanInfo("test", "Test", "", "", "", "", UnitSystem.METRIC, "USD"));
    double x = 0;
    for (Bed bed : beds) {
      SourceRef place = new SourceRef("plan.groovy", bed.line(), 1);
      Shape shape =
          Shape.rectangle(
              new Point(Length.metres(x), Length.ZERO),
              Length.metres(bed.widthM()),
              Length.metres(3));
      ElementDraft drawn =
          draft.add(
              new ElementId(ElementKind.BED, bed.name()),
              place,
              common -> new Element.Bed(common, shape, Element.BedUse.ANNUAL));
      drawn.attributes().add(CROP, bed.crop(), place).add(NOTE, bed.note(), place);
      x += 10;
    }
    return draft.freeze();
  }

  private static Calculator calculator(
      String id, Set<FactKey<?>> wants, FactKey<?> gives, Work work) {
    return new Calculator() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public Set<FactKey<?>> wants() {
        return wants;
      }

      @Override
      public Set<FactKey<?>> gives() {
        return Set.of(gives);
      }

      @Override
      public void compute(Plan plan, Facts in, Sink out) {
        work.compute(plan, in, out);
      }
    };
  }

  private interface Work {
    void compute(Plan plan, Facts in, Sink out);
  }

  private static Element.Bed first(Plan plan) {
    return plan.all(Element.Bed.class).get(0);
  }

  /** Gives the area of the first bed with the line it is given on. */
  private static final Calculator SIZES =
      calculator(
          "test.sizes",
          Set.of(),
          AREA,
          (plan, in, out) ->
              out.give(
                  AREA,
                  Derived.by("area of the outline", Source.plan("plan"))
                      .from("bed", "outline", first(plan).place())
                      .gives(first(plan).shape().area())));

  /** Hands the first bed on without looking at its attributes. */
  private static final Calculator HANDS_ON =
      calculator("test.hands", Set.of(), BED, (plan, in, out) -> out.give(BED, first(plan)));

  /** Says what grows in the bed that it is handed. */
  private static final Calculator SPEAKS =
      calculator(
          "test.speaks",
          Set.of(BED),
          SAYS,
          (plan, in, out) -> out.give(SAYS, in.get(BED).attributes().get(CROP).orElse("nothing")));

  private final Recall recall = new Recall();

  private Results run(Plan plan, Calculator... calculators) {
    Results results = FactGraph.of(List.of(calculators)).run(plan, recall);
    recall.keep();
    return results;
  }

  private List<String> worked() {
    List<String> names = new ArrayList<>();
    recall.worked().forEach(w -> names.add(w.replace("calculator test.", "")));
    return names;
  }

  @Test
  void samePlan_nobodyWorksAndTheSameValuesAreGiven() {
    Results one = run(plan(new Bed("a", 4, 2, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    assertEquals(List.of("hands", "sizes", "speaks"), worked());
    Results two = run(plan(new Bed("a", 4, 2, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    assertEquals(List.of(), worked());
    assertSame(one.get(AREA), two.get(AREA));
  }

  @Test
  void lineMoved_nobodyWorksAndPlacesAreNew() {
    run(plan(new Bed("a", 4, 2, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    Results moved = run(plan(new Bed("a", 7, 2, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    assertEquals(List.of(), worked());
    Derived<?> area = moved.get(AREA);
    assertEquals(7, area.inputs().get(0).place().line());
    assertEquals(Area.squareMetres(6), area.value(), "2 m × 3 m");
    assertEquals(7, moved.get(BED).place().line());
    assertEquals("kale", moved.get(SAYS));
  }

  @Test
  void widthChanged_onlyReadersOfShapesWork() {
    run(plan(new Bed("a", 4, 2, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    Results wider = run(plan(new Bed("a", 4, 5, "kale", "")), SIZES, HANDS_ON, SPEAKS);
    assertEquals(List.of("hands", "sizes", "speaks"), worked());
    assertEquals(Area.squareMetres(15), ((Derived<?>) wider.get(AREA)).value(), "5 m × 3 m");
  }

  @Test
  void attributeThatNobodyReads_isHandedOnFreshAllTheSame() {
    run(plan(new Bed("a", 4, 2, "kale", "early")), SIZES, HANDS_ON, SPEAKS);
    Results noted = run(plan(new Bed("a", 4, 2, "kale", "late")), SIZES, HANDS_ON, SPEAKS);
    assertEquals(List.of("hands", "speaks"), worked(), "who hands a bed on hands on all of it");
    assertEquals("late", noted.get(BED).attributes().get(NOTE).orElseThrow());
  }

  @Test
  void attributeThatIsReadFromThePlan_letsItsReaderWork() {
    Calculator crop =
        calculator(
            "test.crop",
            Set.of(),
            SAYS,
            (plan, in, out) -> out.give(SAYS, first(plan).attributes().get(CROP).orElse("")));
    run(plan(new Bed("a", 4, 2, "kale", "early")), SIZES, crop);
    Results tomato = run(plan(new Bed("a", 4, 2, "tomato", "early")), SIZES, crop);
    assertEquals(List.of("crop"), worked());
    assertEquals("tomato", tomato.get(SAYS));
    run(plan(new Bed("a", 4, 2, "tomato", "late")), SIZES, crop);
    assertEquals(List.of(), worked(), "nobody reads the note");
  }

  @Test
  void attributeOfAnElementInAFact_isReadFresh() {
    run(plan(new Bed("a", 4, 2, "kale", "")), HANDS_ON, SPEAKS);
    Results tomato = run(plan(new Bed("a", 4, 2, "tomato", "")), HANDS_ON, SPEAKS);
    assertEquals("tomato", tomato.get(SAYS));
  }

  @Test
  void statementsInAnotherOrder_whoReadsBothPlacesWorks() {
    Calculator both =
        calculator(
            "test.both",
            Set.of(),
            SAYS,
            (plan, in, out) ->
                out.give(
                    SAYS,
                    plan.all(Element.Bed.class).stream()
                        .sorted((x, y) -> x.place().compareTo(y.place()))
                        .map(b -> b.id().name())
                        .toList()
                        .toString()));
    run(plan(new Bed("a", 4, 2, "", ""), new Bed("b", 9, 2, "", "")), both);
    Results turned = run(plan(new Bed("a", 9, 2, "", ""), new Bed("b", 4, 2, "", "")), both);
    assertEquals("[b, a]", turned.get(SAYS));
    assertEquals(List.of("both"), worked());
  }

  @Test
  void codeInAFact_isNeverTakenForTheSame() {
    Calculator code =
        calculator(
            "test.lazy",
            Set.of(),
            CODE,
            (plan, in, out) -> {
              Element.Bed bed = first(plan);
              out.give(CODE, () -> bed.attributes().get(CROP).orElse(""));
            });
    Results one = run(plan(new Bed("a", 4, 2, "kale", "")), code);
    Results two = run(plan(new Bed("a", 4, 2, "tomato", "")), code);
    assertNotSame(one.get(CODE), two.get(CODE));
    assertEquals("tomato", two.get(CODE).get());
  }

  @Test
  void failedRun_isForgotten() {
    run(plan(new Bed("a", 4, 2, "kale", "")), SIZES);
    // A run that does not come to its end keeps nothing.
    FactGraph.of(List.of(SIZES)).run(plan(new Bed("a", 4, 9, "kale", "")), recall);
    Results again = run(plan(new Bed("a", 4, 2, "kale", "")), SIZES);
    assertEquals(Area.squareMetres(6), ((Derived<?>) again.get(AREA)).value(), "2 m × 3 m");
    assertEquals(List.of(), worked());
  }

  @Test
  void places_twoOnOneLineOrTurnedRound_doNotStandForEachOther() {
    Moves moves = new Moves();
    assertTrue(moves.pair(at(3), at(5)));
    assertTrue(moves.pair(at(3), at(5)));
    assertFalse(moves.areNone());
    assertFalse(new Moves().pair(at(3), new SourceRef("other.groovy", 3, 1)), "another file");
    BiConsumer<Integer, Integer> refused =
        (was, is) -> {
          Moves both = new Moves();
          both.pair(at(3), at(5));
          assertFalse(both.pair(at(was), at(is)), was + " to " + is);
        };
    refused.accept(3, 6);
    refused.accept(4, 5);
    refused.accept(4, 4);
    refused.accept(2, 7);
  }

  @Test
  void orderOfAMap_countsWhereThereIsOne() {
    Map<String, Integer> ab = new LinkedHashMap<>(Map.of("a", 1));
    ab.put("b", 2);
    Map<String, Integer> ba = new LinkedHashMap<>(Map.of("b", 2));
    ba.put("a", 1);
    assertFalse(Likeness.exact(Collections.unmodifiableMap(ab), Collections.unmodifiableMap(ba)));
    assertFalse(
        Likeness.exact(
            Collections.unmodifiableSet(ab.keySet()), Collections.unmodifiableSet(ba.keySet())));
    assertTrue(Likeness.exact(Map.copyOf(ab), Map.copyOf(ba)));
    assertFalse(Likeness.exact(Map.copyOf(ab), Map.of("a", 1, "b", 3)));
  }

  private static SourceRef at(int line) {
    return new SourceRef("plan.groovy", line, 1);
  }

  @Test
  void lastTime_sameInput_isNotWorkedOnAgain() {
    LastTime<List<Double>, Double> sums = new LastTime<>();
    List<Integer> worked = new ArrayList<>();
    for (List<Double> input : List.of(List.of(1.5, 2.0), List.of(1.5, 2.0), List.of(1.5, 2.5))) {
      sums.of(
          "sum",
          input,
          in -> {
            worked.add(in.size());
            return in.stream().mapToDouble(d -> d).sum();
          });
    }
    assertEquals(2, worked.size());
    assertEquals(4.0, sums.of("sum", List.of(1.5, 2.5), in -> 0.0), "1.5 + 2.5");
  }
}
