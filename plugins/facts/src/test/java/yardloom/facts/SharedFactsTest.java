package yardloom.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.Volume;

/** What facts say of themselves, worked by hand. */
class SharedFactsTest {
  private static final Source SAYS = Source.commonPractice("told by the test");

  private static <T> Derived<T> told(T value) {
    return Derived.by("told", SAYS).gives(value);
  }

  /** Rain on the 3rd and 8th of ten days: two, four and two dry days. */
  @Test
  void drySpell_isTheLongestRunWithoutRain() {
    List<DailyRain.Day> days =
        IntStream.rangeClosed(1, 10)
            .mapToObj(
                d ->
                    new DailyRain.Day(
                        LocalDate.of(2027, 5, d), Length.millimetres(d == 3 || d == 8 ? 4 : 0)))
            .toList();
    DailyRain rain = new DailyRain("gauge", SAYS, days);
    assertEquals(4, rain.longestDrySpell());
    assertEquals(10 / 365.25, rain.years(), 1e-12);
  }

  private static ClimateNormals normals(double coldestC) {
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          new ClimateNormals.Month(
              Length.millimetres(50),
              Temperature.celsius(m == 0 ? coldestC : 12),
              m == 6
                  ? Optional.of(Temperature.celsius(31))
                  : m == 7 ? Optional.of(Temperature.celsius(29)) : Optional.empty(),
              Optional.empty()));
    }
    return new ClimateNormals("here", months, SAYS, SAYS);
  }

  @Test
  void normals_knowTheirHottestDays_andFrozenWinters() {
    assertEquals(31, normals(4).hottestDays().orElseThrow().celsius(), 1e-9);
    assertTrue(normals(-0.1).hasFrozenWinters());
    assertFalse(normals(0).hasFrozenWinters());
    List<ClimateNormals.Month> eleven = normals(0).months().subList(0, 11);
    assertThrows(
        IllegalArgumentException.class, () -> new ClimateNormals("here", eleven, SAYS, SAYS));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ClimateNormals.Air(List.of(1.0), List.of(), List.of(), SAYS));
  }

  /** 12 × 100 L for the lawn, 12 × 30 for the garden, 12 × 8 for trees: 744 L saved. */
  @Test
  void lawnWater_savesWhatGardenAndTreesDoNotTake() {
    LawnWater water =
        new LawnWater(
            told(Area.squareMetres(50)),
            Collections.nCopies(12, told(Volume.litres(100))),
            Collections.nCopies(12, told(Volume.litres(30))),
            Collections.nCopies(12, told(Volume.litres(8))));
    assertEquals(744, water.yearlySaving().litres(), 1e-9);
    assertEquals(360, LawnWater.yearly(water.garden()).litres(), 1e-9);
  }

  @Test
  void spread_rises_andGivesOneForAll() {
    Spread one = Spread.given(null, 3, null, 0, "", SAYS);
    assertEquals(List.of(3.0, 3.0, 3.0), List.of(one.low(), one.likely(), one.high()));
    Spread twice = Spread.given(1, 3, 7, 0, "", SAYS).times(2);
    assertEquals(List.of(2.0, 6.0, 14.0), List.of(twice.low(), twice.likely(), twice.high()));
    assertEquals(0, Spread.given(0, 0, 0, -1, "", SAYS).low(), "a price may be nothing");
    assertThrows(PlanException.class, () -> Spread.given(0, 1, 2, 0, "", SAYS));
    assertThrows(PlanException.class, () -> Spread.given(4, 3, 7, 0, "", SAYS));
    assertThrows(PlanException.class, () -> Spread.given(1, 3, 2, 0, "", SAYS));
    assertThrows(
        PlanException.class, () -> Spread.given(1, 3, Double.POSITIVE_INFINITY, 0, "", SAYS));
    assertThrows(IllegalArgumentException.class, () -> new Spread(2, 1, 3, "", SAYS));
    assertThrows(IllegalArgumentException.class, () -> new Spread(1, 4, 3, "", SAYS));
  }

  private static PlantingWindow.Period period(int fromMonth, int fromDay, int toMonth, int toDay) {
    return new PlantingWindow.Period(
        "bare root", told(MonthDay.of(fromMonth, fromDay)), told(MonthDay.of(toMonth, toDay)));
  }

  /** 1 March to 15 April; 15 November to 10 January across New Year. */
  @ParameterizedTest
  @CsvSource({
    "2027-02-28, 2027-03-01",
    "2027-03-01, 2027-03-01",
    "2027-04-15, 2027-04-15",
    "2027-04-16, 2027-11-15",
    "2027-11-15, 2027-11-15",
    "2027-12-31, 2027-12-31",
    "2028-01-10, 2028-01-10",
    "2028-01-11, 2028-03-01"
  })
  void window_holdsBothOfItsEnds_alsoAcrossNewYear(LocalDate from, LocalDate next) {
    PlantingWindow window =
        new PlantingWindow(
            "apple", WorkPhase.PLANT, List.of(period(3, 1, 4, 15), period(11, 15, 1, 10)));
    assertEquals(next, window.next(from));
    assertEquals(from.equals(next), window.on(from).isPresent());
  }

  @Test
  void windowWithoutDays_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PlantingWindow("apple", WorkPhase.PLANT, List.of()));
  }
}
