package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.work.labour.WorkSettings;

class PhaseScheduleTest {
  private static WorkSettings work(String start, String last, String first) {
    return new WorkSettings(
        2,
        5,
        0,
        WorkSettings.VISITS,
        Optional.ofNullable(start).map(LocalDate::parse),
        Optional.ofNullable(last).map(t -> MonthDay.parse("--" + t)),
        Optional.ofNullable(first).map(t -> MonthDay.parse("--" + t)),
        SourceRef.NONE);
  }

  private static List<PhaseTime> schedule(
      List<Phase> phases, Map<WorkPhase, Double> hours, WorkSettings work) {
    return PhaseSchedule.of(phases, hours, work, List.of(), EnumSet.allOf(Month.class));
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
    assertEquals(14, times.size());
    for (PhaseTime t : times) {
      for (WorkPhase before : t.phase().after()) {
        PhaseTime b = of(times, before);
        assertTrue(b.firstDay() + b.days() <= t.firstDay(), before + " before " + t.phase().id());
      }
    }
    assertEquals(WorkPhase.MARK, times.get(0).phase().id());
    assertEquals(3, times.get(0).days());
    assertEquals(WorkPhase.ESTABLISH, times.get(13).phase().id());
  }

  @Test
  void days_hoursOfCrew_roundUp() {
    // 21 hours for 2 people at 5 hours a day: 2.1 days, so 3.
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.MARK), phase(WorkPhase.STAKE, WorkPhase.MARK)),
            Map.of(WorkPhase.MARK, 21.0),
            work(null, null, null));
    assertEquals(3, times.get(0).days());
    assertEquals(4, times.get(1).firstDay());
    assertEquals(1, times.get(1).days());
  }

  @Test
  void dates_weekend_isSkipped() {
    // 2026-09-18 is a Friday.
    List<PhaseTime> times =
        schedule(
            List.of(phase(WorkPhase.MARK), phase(WorkPhase.STAKE, WorkPhase.MARK)),
            Map.of(),
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
    List<PlantingVisit> visits = PlantingVisit.of(windows, LocalDate.parse("2027-03-20"));
    assertEquals(
        List.of(LocalDate.parse("2027-05-10"), LocalDate.parse("2027-10-01")),
        visits.stream().map(PlantingVisit::date).toList());
    assertEquals(Set.of("kale", "pear", "tomato"), visits.get(0).kinds().keySet());
    assertEquals("potted", visits.get(1).kinds().get("garlic"));
    List<PlantingVisit> late = PlantingVisit.of(windows, LocalDate.parse("2027-05-15"));
    assertEquals(3, late.size());
    assertEquals(LocalDate.parse("2027-05-17"), late.get(0).date());
    assertEquals(Set.of("pear", "tomato"), late.get(0).kinds().keySet());
    assertEquals(LocalDate.parse("2028-03-28"), late.get(2).date());
  }

  @Test
  void planting_waitsForItsFirstVisit_onAWorkingDay() {
    List<PhaseTime> times =
        PhaseSchedule.of(
            List.of(phase(WorkPhase.PLANT)),
            Map.of(),
            work("2027-03-20", "04-20", "10-20"),
            List.of(window("tomato", "05-09", "05-22")),
            EnumSet.allOf(Month.class));
    // 9 May 2027 is a Sunday.
    assertEquals(LocalDate.parse("2027-05-10"), times.get(0).start().orElseThrow());
    assertEquals("waits for the season of its plants", times.get(0).why());
  }

  /** Trees before the cardboard and what is planted through it wait for seasons of their own. */
  @Test
  void treesAndPlants_waitForTheirOwnKindsOnly() {
    PlantingWindow pear =
        new PlantingWindow("pear", WorkPhase.TREES, window("pear", "11-15", "12-20").periods());
    List<PhaseTime> times =
        PhaseSchedule.of(
            List.of(phase(WorkPhase.TREES), phase(WorkPhase.PLANT)),
            Map.of(),
            work("2027-10-04", "04-20", "10-20"),
            List.of(window("kale", "03-28", "05-14"), pear),
            EnumSet.allOf(Month.class));
    // 15 November 2027 is a Monday; 28 March 2028 a Tuesday.
    assertEquals(LocalDate.parse("2027-11-15"), times.get(0).start().orElseThrow());
    assertEquals(LocalDate.parse("2028-03-28"), times.get(1).start().orElseThrow());
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
        PlantingVisit.of(windows, LocalDate.of(2027, 1, 1).plusDays(ready));
    assertEquals(visits, PlantingVisit.of(windows, visits.get(0).date()));
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

  private static final Set<Month> APRIL_TO_OCTOBER = EnumSet.range(Month.APRIL, Month.OCTOBER);

  /**
   * Twelve Mondays: 5, 12, 19, 26 October 2026, then after winter 5, 12, 19, 26 April and 3, 10,
   * 17, 24 May 2027; 5 October to 24 May are 33 weeks, 33 × 5 + 1 working days.
   */
  @Test
  void visits_ofAnAutumnPlanting_goOnInSpring() {
    LookAfter visits = LookAfter.of(work("2026-10-05", "04-20", "10-20"), 1, APRIL_TO_OCTOBER);
    assertEquals(new LookAfter(1, 166, true), visits);
    assertEquals(
        LocalDate.parse("2027-05-24"),
        PhaseSchedule.workingDay(
            LocalDate.parse("2026-10-05"), visits.first() + visits.days() - 1));
  }

  /**
   * Planted at rest on 16 November: the first visit is on Monday, 5 April, the last eleven weeks
   * on.
   */
  @Test
  void visits_ofAPlantingAtRest_beginWithGrowth() {
    LookAfter visits = LookAfter.of(work("2026-11-16", "04-20", "10-20"), 1, APRIL_TO_OCTOBER);
    assertEquals(11 * 5 + 1, visits.days());
    assertEquals(
        LocalDate.parse("2027-04-05"),
        PhaseSchedule.workingDay(LocalDate.parse("2026-11-16"), visits.first()));
    assertEquals(false, visits.pauses());
  }
}
