package yardloom.planting.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.PlantYard;

/** What comes into season when the crew has gone, by dates counted on a calendar. */
class PlantedLaterTest {
  private static PlantingWindow window(String plant, WorkPhase phase, String from, String until) {
    return new PlantingWindow(
        plant, phase, List.of(new PlantingWindow.Period("set out", day(from), day(until))));
  }

  private static Derived<MonthDay> day(String day) {
    return Derived.given(MonthDay.parse("--" + day), "day", SourceRef.NONE);
  }

  /**
   * Ready on 15 March. Peas wait for chard, which comes into season on 20 April, before peas go out
   * on 30 April: planted on 20 April, and 42 days later, on 1 June, the crew is there for the last
   * day. Bare roots are planted on 15 March, but the crew stays for the rest.
   */
  @Test
  void crewStays_sixWeeksFromTheLaterPlanting() {
    assertEquals(
        Set.of("okra", "fig"),
        PlantedLaterCalculator.late(
            List.of(
                window("pea", WorkPhase.PLANT, "04-01", "04-30"),
                window("chard", WorkPhase.PLANT, "04-20", "05-31"),
                window("basil", WorkPhase.PLANT, "06-01", "07-10"),
                window("okra", WorkPhase.PLANT, "06-02", "07-05"),
                window("apple", WorkPhase.TREES, "11-01", "03-28"),
                window("plum", WorkPhase.TREES, "05-25", "06-20"),
                window("fig", WorkPhase.TREES, "09-12", "10-24")),
            LocalDate.of(2026, 3, 15)));
  }

  /**
   * Last frost 20 April, first 20 October. Peas are sown to 14 days after the last, 4 May, and
   * again from 98 days before the first, 14 July. Nothing is planted in the first two weeks: who
   * begins on 20 April still sows peas on 4 May, who begins a day later does not, and tomatoes, set
   * out from 4 May on, do not wait.
   */
  @ParameterizedTest(name = "begun {0}: {1}")
  @CsvSource({"2026-04-20, ''", "2026-04-21, 'p: pea'"})
  void nothingIsPlanted_inTheFirstTwoWeeks(LocalDate begun, String later) {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    yard.give(YardFacts.WORK_START, begun);
    yard.planted(yard.bed("p", 0, 0, 4, 8), "pea", 1);
    yard.planted(yard.bed("t", 10, 0, 4, 9), "tomato", 2);
    List<String> said =
        yard.outcome().results().all(YardFacts.PLANTED_LATER).stream()
            .map(l -> l.in().name() + ": " + String.join(", ", l.kinds()))
            .toList();
    assertEquals(later, String.join("; ", said));
  }
}
