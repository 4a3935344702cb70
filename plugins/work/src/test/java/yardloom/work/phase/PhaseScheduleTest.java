package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

class PhaseScheduleTest {
  private static final CareMonths ALL_YEAR =
      CareMonths.of(List.of(), Optional.empty(), Optional.empty());

  private static WorkSettings work(String start, String last, String first) {
    return new WorkSettings(
        2,
        5,
        0,
        WorkSettings.VISITS,
        Optional.ofNullable(start).map(LocalDate::parse),
        Optional.ofNullable(last).map(t -> MonthDay.parse("--" + t)),
        Optional.ofNullable(first).map(t -> MonthDay.parse("--" + t)),
        Workdays.ALL,
        SourceRef.NONE);
  }

  private static List<PhaseTime> schedule(
      List<Phase> phases, Map<WorkPhase, Double> hours, WorkSettings work) {
    return schedule(phases, hours, work, List.of());
  }

  private static List<PhaseTime> schedule(
      List<Phase> phases,
      Map<WorkPhase, Double> hours,
      WorkSettings work,
      List<PlantingWindow> windows) {
    return PhaseSchedule.of(
            phases,
            new PhaseSchedule.Given(hours, work, windows, Map.of(), ALL_YEAR, Set.of(), Map.of()))
        .times();
  }

  private static PhaseTime of(List<PhaseTime> times, WorkPhase id) {
    return times.stream().filter(t -> t.phase().id() == id).findFirst().orElseThrow();
  }

  private static Phase phase(WorkPhase id, WorkPhase... after) {
    return new Phase(id, List.of(after), 0, List.of(), List.of(), List.of());
  }

  @Test
  void shippedPhases_tradeOrder_holds() {
    List<PhaseTime> times = schedule(PhaseData.phases(), Map.of(), WorkSettings.defaults());
    assertEquals(15, times.size());
    for (PhaseTime t : times) {
      for (WorkPhase before : t.phase().after()) {
        PhaseTime b = of(times, before);
        assertTrue(b.ends() <= t.begins(), before + " before " + t.phase().id());
      }
    }
    assertEquals(WorkPhase.MARK, times.get(0).phase().id());
    assertEquals(3, times.get(0).days());
    assertEquals(WorkPhase.ESTABLISH, times.get(14).phase().id());
  }

  /** 21 hours for 2 people at 5 hours a day are 2.1 days: three begun, and the next within it. */
  @Test
  void days_hoursOfCrew_areBegunOnes() {
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.MARK), phase(WorkPhase.STAKE, WorkPhase.MARK)),
            Map.of(WorkPhase.MARK, 21.0),
            work(null, null, null));
    assertEquals(3, times.get(0).days());
    assertEquals(3, times.get(1).firstDay());
    assertEquals(0.1, times.get(1).gone(), 1e-9);
    assertEquals(1, times.get(1).days());
  }

  @Test
  void dates_weekend_isSkipped() {
    // 2026-09-18 is a Friday.
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.MARK), phase(WorkPhase.STAKE, WorkPhase.MARK)),
            Map.of(WorkPhase.MARK, 10.0),
            work("2026-09-18", null, null));
    assertEquals(LocalDate.parse("2026-09-18"), times.get(0).start().orElseThrow());
    assertEquals(LocalDate.parse("2026-09-21"), times.get(1).start().orElseThrow());
    // A start on a Saturday moves to Monday.
    assertEquals(
        LocalDate.parse("2026-09-21"),
        schedule(List.of(phase(WorkPhase.MARK)), Map.of(), work("2026-09-19", null, null))
            .get(0)
            .start()
            .orElseThrow());
  }

  @Test
  void planting_inLateAutumn_waitsForTheLastFrost() {
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.SHEET), phase(WorkPhase.PLANT, WorkPhase.SHEET)),
            Map.of(),
            work("2026-10-05", "04-20", "10-20"));
    PhaseTime plant = of(times, WorkPhase.PLANT);
    assertEquals(LocalDate.parse("2027-04-21"), plant.start().orElseThrow());
    assertEquals("waits for the last frost", plant.why());
  }

  @Test
  void planting_sixWeeksAheadOfFrost_goesOn() {
    List<PhaseTime> times =
        schedule(List.of(phase(WorkPhase.PLANT)), Map.of(), work("2026-09-01", "04-20", "10-20"));
    assertEquals(LocalDate.parse("2026-09-01"), times.get(0).start().orElseThrow());
  }

  /** 20 October less six weeks is 8 September: the day before, planting goes on. */
  @ParameterizedTest
  @CsvSource({"2026-09-07, 2026-09-07", "2026-09-08, 2027-04-21"})
  void planting_atSixWeeksToTheDay_waits(String start, String planted) {
    List<PhaseTime> times =
        schedule(List.of(phase(WorkPhase.PLANT)), Map.of(), work(start, "04-20", "10-20"));
    assertEquals(LocalDate.parse(planted), times.get(0).start().orElseThrow());
  }

  @Test
  void planting_southernYear_frostInsideTheYear() {
    // Frost from June to August; in mid May less than six weeks are left.
    List<PhaseTime> times =
        schedule(List.of(phase(WorkPhase.PLANT)), Map.of(), work("2026-05-15", "08-31", "06-10"));
    assertEquals(LocalDate.parse("2026-09-01"), times.get(0).start().orElseThrow());
  }

  @Test
  void phases_inACircle_areRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                schedule(
                    List.of(
                        phase(WorkPhase.MARK, WorkPhase.STAKE),
                        phase(WorkPhase.STAKE, WorkPhase.MARK)),
                    Map.of(),
                    WorkSettings.defaults()));
    assertEquals(ProblemCode.CYCLE, e.problems().get(0).code());
    assertThrows(
        PlanException.class,
        () ->
            schedule(
                List.of(phase(WorkPhase.MARK, WorkPhase.ESTABLISH)),
                Map.of(),
                WorkSettings.defaults()));
  }

  @Test
  void orders_leadTime_counts() {
    assertEquals(
        Optional.of(LocalDate.parse("2026-08-15")),
        PhaseSchedule.orderBy(Optional.of(LocalDate.parse("2026-09-14")), 30));
    assertEquals(Optional.empty(), PhaseSchedule.orderBy(Optional.empty(), 30));
  }

  @Test
  void frostOfThePlan_holdsForTheScheduleToo() {
    WorkSettings filled =
        work("2026-09-14", "04-20", "10-20").withFrost(MonthDay.of(5, 1), MonthDay.of(10, 1));
    assertEquals(MonthDay.of(5, 1), filled.lastFrost().orElseThrow());
    assertEquals(MonthDay.of(10, 1), filled.firstFrost().orElseThrow());
  }

  private static PlantingWindow window(String plant, String from, String until) {
    return new PlantingWindow(
        plant,
        WorkPhase.PLANT,
        List.of(
            new PlantingWindow.Period(
                "potted",
                Derived.given(MonthDay.parse("--" + from), "from", SourceRef.NONE),
                Derived.given(MonthDay.parse("--" + until), "until", SourceRef.NONE))));
  }

  /**
   * By hand from 20 March 2027: kale until 14 May and tomatoes from 9 May, a Sunday, meet on Monday
   * the 10th, when pears from 15 March to 20 June are in season too; garlic in October needs a
   * visit of its own. On Saturday, 15 May, kale is over: next year's is another visit.
   */
  @Test
  void visits_areAsFewAsPlantEveryKindInSeason() {
    List<PlantingWindow> windows =
        List.of(
            window("kale", "03-28", "05-14"),
            window("tomato", "05-09", "05-22"),
            window("pear", "03-15", "06-20"),
            window("garlic", "10-01", "10-31"));
    List<PlantingVisit> visits =
        PlantingVisit.of(windows, LocalDate.parse("2027-03-20"), Workdays.ALL);
    assertEquals(
        List.of(LocalDate.parse("2027-05-10"), LocalDate.parse("2027-10-01")),
        visits.stream().map(PlantingVisit::date).toList());
    assertEquals(Set.of("kale", "pear", "tomato"), visits.get(0).kinds().keySet());
    assertEquals("potted", visits.get(1).kinds().get("garlic"));
    List<PlantingVisit> late =
        PlantingVisit.of(windows, LocalDate.parse("2027-05-15"), Workdays.ALL);
    assertEquals(3, late.size());
    assertEquals(LocalDate.parse("2027-05-17"), late.get(0).date());
    assertEquals(Set.of("pear", "tomato"), late.get(0).kinds().keySet());
    assertEquals(LocalDate.parse("2028-03-28"), late.get(2).date());
  }

  @Test
  void planting_waitsForItsFirstVisit_onAWorkingDay() {
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.PLANT)),
            Map.of(),
            work("2027-03-20", "04-20", "10-20"),
            List.of(window("tomato", "05-09", "05-22")));
    // 9 May 2027 is a Sunday.
    assertEquals(LocalDate.parse("2027-05-10"), times.get(0).start().orElseThrow());
    assertEquals("waits for the season of its plants", times.get(0).why());
  }

  /**
   * Garlic is set on Friday 1 October 2027 by two people of five hours. 8 h fill 0.8 of that day:
   * chips are spread from then on, but a truck would come in its last quarter, so on Monday. Of
   * 10.4 h the last 0.2 h of each are done the same evening, and Monday begins with the chips.
   */
  @ParameterizedTest
  @CsvSource({
    "8, false, 2027-10-01, 0.8",
    "8, true, 2027-10-04, 0",
    "7, true, 2027-10-01, 0.7",
    "10.4, true, 2027-10-04, 0"
  })
  void chipsOverWhatIsPlantedLater_followItAsPhasesDo(
      double garlic, boolean byTruck, String start, double gone) {
    List<PhaseTime> times =
        PhaseSchedule.of(
                List.of(phase(WorkPhase.PLANT), phase(WorkPhase.LATER, WorkPhase.PLANT)),
                new PhaseSchedule.Given(
                    Map.of(WorkPhase.PLANT, 3 + garlic, WorkPhase.LATER, 4.0),
                    work("2027-03-20", null, null),
                    List.of(window("kale", "03-28", "05-14"), window("garlic", "10-01", "10-31")),
                    Map.of("kale", 3.0, "garlic", garlic),
                    ALL_YEAR,
                    byTruck ? Set.of(WorkPhase.LATER) : Set.of(),
                    Map.of(WorkPhase.LATER, Set.of("garlic"))))
            .times();
    PhaseTime later = of(times, WorkPhase.LATER);
    assertEquals(LocalDate.parse(start), later.start().orElseThrow());
    assertEquals(gone, later.gone(), 1e-9);
    assertEquals("waits until what grows under it is planted", later.why());
  }

  /** Trees before the cardboard and what is planted through it wait for seasons of their own. */
  @Test
  void treesAndPlants_waitForTheirOwnKindsOnly() {
    PlantingWindow pear =
        new PlantingWindow("pear", WorkPhase.TREES, window("pear", "11-15", "12-20").periods());
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.TREES), phase(WorkPhase.PLANT)),
            Map.of(),
            work("2027-10-04", "04-20", "10-20"),
            List.of(window("kale", "03-28", "05-14"), pear));
    // 15 November 2027 is a Monday; 28 March 2028 a Tuesday.
    assertEquals(LocalDate.parse("2027-11-15"), times.get(0).start().orElseThrow());
    assertEquals(LocalDate.parse("2028-03-28"), times.get(1).start().orElseThrow());
  }

  /**
   * Marks take three working days from Wednesday 23 December 2026: with Christmas of every year and
   * Monday the 28th off these are the 23rd, 24th and 29th; the 17 h of stakes are 1.7 days and end
   * on the 31st, and with New Year's Day off mowing, of which 3 of 4 h fit into that day, ends on
   * Monday the 4th.
   */
  @Test
  void daysOff_areNoWorkingDays() {
    Workdays days =
        new Workdays(
            Set.of(LocalDate.parse("2026-12-28")), Set.of(MonthDay.of(12, 25), MonthDay.of(1, 1)));
    List<PhaseTime> times =
        schedule(
            List.of(
                new Phase(WorkPhase.MARK, List.of(), 3, List.of(), List.of(), List.of()),
                phase(WorkPhase.STAKE, WorkPhase.MARK),
                phase(WorkPhase.MOW, WorkPhase.STAKE)),
            Map.of(WorkPhase.STAKE, 17.0, WorkPhase.MOW, 4.0),
            work("2026-12-23", null, null).on(days));
    assertEquals(
        List.of(
            "MARK 2026-12-23 2026-12-29 3",
            "STAKE 2026-12-30 2026-12-31 2",
            "MOW 2026-12-31 2027-01-04 2"),
        times.stream()
            .map(
                t ->
                    t.phase().id()
                        + " "
                        + t.start().orElseThrow()
                        + " "
                        + t.end().orElseThrow()
                        + " "
                        + t.days())
            .toList());
  }

  /** A day off more never makes any phase begin earlier, and none begins or ends on one. */
  @Property(tries = 100)
  void aDayOffMore_isNeverEarlier(
      @ForAll @Size(max = 6) List<@IntRange(min = 0, max = 60) Integer> off,
      @ForAll @IntRange(min = 0, max = 60) int more) {
    LocalDate start = LocalDate.parse("2027-05-20");
    Set<LocalDate> dates = new java.util.HashSet<>();
    off.forEach(d -> dates.add(start.plusDays(d)));
    Workdays few = new Workdays(dates, Set.of());
    dates.add(start.plusDays(more));
    Workdays many = new Workdays(dates, Set.of());
    for (int day = 1; day < 40; day++) {
      assertTrue(!many.day(start, day).isBefore(few.day(start, day)));
      assertTrue(!many.isOff(many.day(start, day)));
    }
  }

  private static List<PhaseTime> withTrees(String from, String until) {
    PlantingWindow pear =
        new PlantingWindow("pear", WorkPhase.TREES, window("pear", from, until).periods());
    return schedule(
        List.of(
            phase(WorkPhase.EDGE),
            phase(WorkPhase.TREES, WorkPhase.EDGE),
            phase(WorkPhase.SHEET, WorkPhase.EDGE, WorkPhase.TREES),
            phase(WorkPhase.PLANT, WorkPhase.SHEET),
            phase(WorkPhase.FINISH, WorkPhase.SHEET, WorkPhase.PLANT)),
        Map.of(WorkPhase.EDGE, 10.0, WorkPhase.PLANT, 10.0),
        work("2027-10-04", "04-20", "10-20"),
        List.of(window("kale", "03-28", "05-14"), pear));
  }

  /**
   * Edges fill Monday 4 October 2027; trees not before 15 March 2028, a Wednesday: 116 working days
   * later. So the cardboard lies on the 5th, the trees go through it, then the kale on 28 March.
   */
  @Test
  void treesOfAnotherSeason_doNotKeepTheCardboardWaiting() {
    List<PhaseTime> times = withTrees("03-15", "04-10");
    assertEquals(
        List.of(
            "EDGE 2027-10-04",
            "SHEET 2027-10-05",
            "TREES 2028-03-15",
            "PLANT 2028-03-28",
            "FINISH 2028-03-29"),
        times.stream().map(t -> t.phase().id() + " " + t.start().orElseThrow()).toList());
  }

  /** From Tuesday the 5th, 20 working days are Tuesday 2 November: four weeks are waited for. */
  @Test
  void treesSoonInSeason_goBeforeTheCardboard() {
    assertEquals(WorkPhase.TREES, withTrees("11-02", "12-20").get(1).phase().id());
    assertEquals(WorkPhase.SHEET, withTrees("11-03", "12-20").get(1).phase().id());
  }

  /** Visits chosen again from the first one's day are the same visits. */
  @Property
  void visits_fromTheFirstOnesDay_areTheSame(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 364) Integer> starts,
      @ForAll @IntRange(min = 0, max = 364) int ready) {
    List<PlantingWindow> windows = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      MonthDay from = MonthDay.from(LocalDate.of(2027, 1, 1).plusDays(starts.get(i)));
      MonthDay until = MonthDay.from(from.atYear(2027).plusDays(20 + 17L * i));
      windows.add(window("kind " + i, from.toString().substring(2), until.toString().substring(2)));
    }
    List<PlantingVisit> visits =
        PlantingVisit.of(windows, LocalDate.of(2027, 1, 1).plusDays(ready), Workdays.ALL);
    assertEquals(visits, PlantingVisit.of(windows, visits.get(0).date(), Workdays.ALL));
    for (PlantingVisit visit : visits) {
      for (PlantingWindow w : windows) {
        assertEquals(
            visit.kinds().containsKey(w.plant()),
            visit.kinds().containsKey(w.plant()) && w.on(visit.date()).isPresent(),
            "planted in season");
      }
    }
    assertEquals(
        windows.size(), visits.stream().mapToInt(v -> v.kinds().size()).sum(), "each kind once");
  }
}
