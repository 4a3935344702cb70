package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.work.labour.Workdays;

/**
 * The fewest visits that plant every kind in its days, by hand; the calendar of 2027: 1 March is a
 * Monday, 6 and 7 March a weekend.
 */
class PlantingVisitTest {
  private static final LocalDate READY = LocalDate.of(2027, 3, 1);

  /** Days of the year as {@code 03-01 03-20}. */
  private static PlantingWindow window(String plant, WorkPhase phase, String... periods) {
    return new PlantingWindow(
        plant,
        phase,
        Arrays.stream(periods)
            .map(p -> p.split(" "))
            .map(p -> new PlantingWindow.Period(p[2], day(p[0]), day(p[1])))
            .toList());
  }

  private static Derived<MonthDay> day(String day) {
    return Derived.given(MonthDay.parse("--" + day), "day", SourceRef.NONE);
  }

  private static PlantingWindow window(String plant, String... periods) {
    return window(plant, WorkPhase.PLANT, periods);
  }

  private static List<String> visits(Workdays days, PlantingWindow... windows) {
    return PlantingVisit.of(List.of(windows), READY, days).stream()
        .map(v -> v.number() + " " + v.date() + " " + v.kinds())
        .toList();
  }

  /** Kale until 20 March, peas from 15 March: one visit on the 15th; tomatoes from 10 May alone. */
  @Test
  void kindsThatOverlap_areOneVisit_onTheFirstDayThatSuitsAll() {
    assertEquals(
        List.of("1 2027-03-15 {kale=plug, pea=seed}", "2 2027-05-10 {tomato=pot}"),
        visits(
            Workdays.ALL,
            window("tomato", "05-10 06-01 pot"),
            window("kale", "02-20 03-20 plug"),
            window("pea", "03-15 04-20 seed")));
  }

  /** Kale ends on Friday 12 March, peas begin on Monday the 15th: two visits, kale at once. */
  @Test
  void kindsThatDoNotMeet_areTwoVisits() {
    assertEquals(
        List.of("1 2027-03-01 {kale=plug}", "2 2027-03-15 {pea=seed}"),
        visits(
            Workdays.ALL, window("kale", "02-20 03-14 plug"), window("pea", "03-13 04-20 seed")));
  }

  /** A period that begins on a Saturday is worked from Monday on, and a day off pushes it on. */
  @Test
  void weekendsAndDaysOff_areNotWorked() {
    assertEquals(
        List.of("1 2027-03-08 {pea=seed}"),
        visits(Workdays.ALL, window("pea", "03-06 04-20 seed")));
    Workdays monday = new Workdays(Set.of(LocalDate.of(2027, 3, 8)), Set.of(MonthDay.of(3, 9)));
    assertEquals(
        List.of("1 2027-03-10 {pea=seed}"), visits(monday, window("pea", "03-06 04-20 seed")));
  }

  /**
   * One of two periods: bare roots until 31 March, pots from 15 April; on 20 April with what begins
   * then, it would be out of its first period's row, so it comes alone.
   */
  @Test
  void kindOfTwoPeriods_isPlantedInTheFirst() {
    assertEquals(
        List.of("1 2027-03-01 {currant=bare}", "2 2027-04-20 {squash=pot}"),
        visits(
            Workdays.ALL,
            window("currant", "01-10 03-31 bare", "04-15 05-30 pot"),
            window("squash", "04-20 06-01 pot")));
  }

  /** What may be planted all year ends after a year, not never. */
  @Test
  void kindInSeasonAllYear_joinsWhateverComes() {
    assertEquals(
        List.of("1 2027-05-10 {fern=pot, tomato=pot}"),
        visits(
            Workdays.ALL, window("fern", "01-01 12-31 pot"), window("tomato", "05-10 06-01 pot")));
  }

  @Test
  void hours_areThoseOfItsKinds() {
    PlantingVisit visit =
        new PlantingVisit(1, READY, new TreeMap<>(Map.of("kale", "plug", "pea", "seed")));
    assertEquals(2.5, visit.hours(Map.of("kale", 2.0, "pea", 0.5, "tomato", 7.0)));
    assertEquals(2.0, visit.hours(Map.of("kale", 2.0)));
  }

  @Test
  void visitsOfTwoPhases_areNumberedByDate_andJoinedOnOneDay() {
    List<PlantingVisit> joined =
        PlantingVisit.inOrder(
            List.of(
                new PlantingVisit(1, READY.plusDays(7), new TreeMap<>(Map.of("pea", "seed"))),
                new PlantingVisit(1, READY, new TreeMap<>(Map.of("apple", "bare root"))),
                new PlantingVisit(2, READY.plusDays(7), new TreeMap<>(Map.of("plum", "pot")))));
    assertEquals(
        List.of("1 2027-03-01 {apple=bare root}", "2 2027-03-08 {pea=seed, plum=pot}"),
        joined.stream().map(v -> v.number() + " " + v.date() + " " + v.kinds()).toList());
  }

  @Test
  void windows_areThoseOfThePhase() {
    assertEquals(
        1,
        PlantingVisit.windowsOf(
                WorkPhase.TREES,
                List.of(
                    window("pea", "03-13 04-20 seed"),
                    window("apple", WorkPhase.TREES, "03-01 03-31 pot")))
            .size());
  }
}
