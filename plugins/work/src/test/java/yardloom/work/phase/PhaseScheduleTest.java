package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.facts.work.WorkPhase;
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

  private static PhaseTime of(List<PhaseTime> times, WorkPhase id) {
    return times.stream().filter(t -> t.phase().id() == id).findFirst().orElseThrow();
  }

  private static Phase phase(WorkPhase id, WorkPhase... after) {
    return new Phase(id, List.of(after), 0, List.of(), List.of(), List.of());
  }

  @Test
  void shippedPhases_tradeOrder_holds() {
    List<PhaseTime> times = PhaseSchedule.of(PhaseData.phases(), Map.of(), WorkSettings.defaults());
    assertEquals(13, times.size());
    for (PhaseTime t : times) {
      for (WorkPhase before : t.phase().after()) {
        PhaseTime b = of(times, before);
        assertTrue(b.firstDay() + b.days() <= t.firstDay(), before + " before " + t.phase().id());
      }
    }
    assertEquals(WorkPhase.MARK, times.get(0).phase().id());
    assertEquals(3, times.get(0).days());
    assertEquals(WorkPhase.ESTABLISH, times.get(12).phase().id());
  }

  @Test
  void days_hoursOfCrew_roundUp() {
    // 21 hours for 2 people at 5 hours a day: 2.1 days, so 3.
    List<PhaseTime> times =
        PhaseSchedule.of(
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
        PhaseSchedule.of(
            List.of(phase(WorkPhase.MARK), phase(WorkPhase.STAKE, WorkPhase.MARK)),
            Map.of(),
            work("2026-09-18", null, null));
    assertEquals(LocalDate.parse("2026-09-18"), times.get(0).start().orElseThrow());
    assertEquals(LocalDate.parse("2026-09-21"), times.get(1).start().orElseThrow());
    // A start on a Saturday moves to Monday.
    assertEquals(
        LocalDate.parse("2026-09-21"),
        PhaseSchedule.of(List.of(phase(WorkPhase.MARK)), Map.of(), work("2026-09-19", null, null))
            .get(0)
            .start()
            .orElseThrow());
  }

  @Test
  void planting_inLateAutumn_waitsForTheLastFrost() {
    List<PhaseTime> times =
        PhaseSchedule.of(
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
        PhaseSchedule.of(
            List.of(phase(WorkPhase.PLANT)), Map.of(), work("2026-09-01", "04-20", "10-20"));
    assertEquals(LocalDate.parse("2026-09-01"), times.get(0).start().orElseThrow());
  }

  @Test
  void planting_southernYear_frostInsideTheYear() {
    // Frost from June to August; in mid May less than six weeks are left.
    List<PhaseTime> times =
        PhaseSchedule.of(
            List.of(phase(WorkPhase.PLANT)), Map.of(), work("2026-05-15", "08-31", "06-10"));
    assertEquals(LocalDate.parse("2026-09-01"), times.get(0).start().orElseThrow());
  }

  @Test
  void phases_inACircle_areRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                PhaseSchedule.of(
                    List.of(
                        phase(WorkPhase.MARK, WorkPhase.STAKE),
                        phase(WorkPhase.STAKE, WorkPhase.MARK)),
                    Map.of(),
                    WorkSettings.defaults()));
    assertEquals(ProblemCode.CYCLE, e.problems().get(0).code());
    assertThrows(
        PlanException.class,
        () ->
            PhaseSchedule.of(
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
  void frostOfTheClimate_goesBehindThePlansOwn() {
    WorkSettings own = work("2026-09-14", "04-20", "10-20");
    assertEquals(own, own.orFrost(MonthDay.of(5, 1), MonthDay.of(10, 1)));
    WorkSettings filled = WorkSettings.defaults().orFrost(MonthDay.of(5, 1), MonthDay.of(10, 1));
    assertEquals(MonthDay.of(5, 1), filled.lastFrost().orElseThrow());
    assertEquals(MonthDay.of(10, 1), filled.firstFrost().orElseThrow());
  }
}
