package yardloom.kernel.recall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.UnitSystem;

class PieceTest {
  private final List<String> made = new ArrayList<>();
  private final Recall recall = new Recall();

  private static Plan plan(String title) {
    return new Draft(new PlanInfo("test", title, "", "", "", "", UnitSystem.METRIC, "USD"))
        .freeze();
  }

  /** What a reader gives that has read the title and makes a piece of {@code input} alone. */
  private String run(String title, List<Double> input) {
    Plan plan = plan(title);
    FactGraph.of(List.of()).run(plan, recall);
    String given =
        recall.of(
            "reader",
            () -> plan.info().title() + " " + Piece.of("sum", List.copyOf(input), this::sum));
    recall.keep();
    return given;
  }

  private double sum(List<Double> input) {
    made.add("sum of " + input);
    return input.stream().mapToDouble(d -> d).sum();
  }

  @Test
  void readerWorksAgain_pieceOfTheSameInputIsKept() {
    assertEquals("one 5.0", run("one", List.of(2.0, 3.0)));
    assertEquals("two 5.0", run("two", List.of(2.0, 3.0)));
    assertEquals(List.of("sum of [2.0, 3.0]"), made);
  }

  @Test
  void inputChanged_pieceIsMadeAgain() {
    run("one", List.of(2.0, 3.0));
    assertEquals("two 7.0", run("two", List.of(2.0, 5.0)));
    assertEquals(List.of("sum of [2.0, 3.0]", "sum of [2.0, 5.0]"), made);
  }

  @Test
  void readerKeptForARun_itsPiecesAreStillThereWhenItWorksNext() {
    run("one", List.of(2.0, 3.0));
    run("one", List.of(2.0, 3.0));
    run("two", List.of(2.0, 3.0));
    assertEquals(1, made.size());
  }

  @Test
  void pieceThatReadsThePlan_isMadeEveryTimeAndWhatItReadIsNoted() {
    for (String title : List.of("one", "two")) {
      Plan plan = plan(title);
      FactGraph.of(List.of()).run(plan, recall);
      String given =
          recall.of("reader", () -> Piece.of("title", "all the same", i -> plan.info().title()));
      recall.keep();
      assertEquals(title, given);
    }
  }

  @Test
  void pieceOfOtherInput_isGivenTheOneBefore() {
    List<Optional<Double>> helped = new ArrayList<>();
    for (double input : new double[] {2, 3}) {
      Plan plan = plan("at " + input);
      FactGraph.of(List.of()).run(plan, recall);
      recall.of(
          "reader",
          () ->
              plan.info().title()
                  + Piece.<Double, Double>after(
                      "square",
                      input,
                      (before, now) -> {
                        helped.add(before.map(Piece.Made::piece));
                        return now * now;
                      }));
      recall.keep();
    }
    assertEquals(List.of(Optional.empty(), Optional.of(4.0)), helped);
  }

  @Test
  void withoutMemory_everyPieceIsMade() {
    Piece.of("sum", List.of(1.0), this::sum);
    Piece.of("sum", List.of(1.0), this::sum);
    assertEquals(2, made.size());
  }
}
