package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.ClimateNormals;
import yardloom.facts.ReferenceEt;
import yardloom.facts.Stand;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

class LookAfterTest {
  /** Inches, 1991 to 2020 (NOAA, Phoenix Sky Harbor; recalled). */
  private static final double[] PHOENIX_RAIN = {
    0.87, 0.87, 0.83, 0.22, 0.13, 0.02, 0.91, 0.93, 0.57, 0.56, 0.57, 0.74
  };

  /** Inches (AZMET, Phoenix Encanto, long-term means; recalled). */
  private static final double[] PHOENIX_ET = {
    2.4, 3.1, 5.1, 7.0, 8.8, 9.3, 9.1, 8.4, 6.7, 5.2, 3.0, 2.2
  };

  /** Inches, Seattle-Tacoma 1991 to 2020 (NOAA; recalled). */
  private static final double[] SEATTLE_RAIN = {
    5.78, 3.76, 4.17, 3.18, 1.88, 1.45, 0.60, 0.97, 1.61, 3.91, 6.31, 5.72
  };

  /** Inches (Puyallup, Washington State University, long-term means; recalled). */
  private static final double[] SEATTLE_ET = {
    0.6, 0.9, 1.8, 2.8, 4.0, 4.7, 5.5, 4.7, 3.1, 1.6, 0.8, 0.5
  };

  private static WorkSettings work(int visits, Workdays days) {
    return new WorkSettings(
        2,
        5,
        0,
        Derived.given(visits, "visits", SourceRef.NONE),
        Optional.of(LocalDate.parse("2027-02-15")),
        Optional.empty(),
        Optional.empty(),
        days,
        SourceRef.NONE);
  }

  private static ClimateNormals climate(double[] rainIn, double... meansC) {
    Source source = Source.plan("test");
    return new ClimateNormals(
        "here",
        java.util.stream.IntStream.range(0, 12)
            .mapToObj(
                m ->
                    new ClimateNormals.Month(
                        Length.inches(rainIn[m]),
                        Temperature.celsius(meansC.length == 0 ? 15 : meansC[m]),
                        Optional.empty(),
                        Optional.empty()))
            .toList(),
        source,
        source);
  }

  private static ReferenceEt et(double... inches) {
    return new ReferenceEt(
        DoubleStream.of(inches)
            .mapToObj(d -> Derived.given(Length.inches(d), "et", SourceRef.NONE))
            .toList(),
        List.of(),
        "test");
  }

  private static Stand stand(String plant, double areaSqft, double kc, boolean stands) {
    Double[] all = new Double[12];
    Arrays.fill(all, kc);
    return new Stand(
        new ElementId(ElementKind.BED, "a"),
        SourceRef.NONE,
        new Stand.Kind(plant, "", Length.feet(3)),
        new Stand.Placed(List.of(), Area.squareFeet(areaSqft), Optional.empty()),
        new Stand.Thirst(List.of(all), Source.plan("test"), Optional.empty()),
        new Stand.Planted(stands, yardloom.facts.work.WorkPhase.PLANT, Optional.empty()));
  }

  /**
   * Coefficients 0.5 on 300 sq ft and 0.9 on 100 sq ft: 0.6 in the mean. In Phoenix 0.6 × 2.4 =
   * 1.44 in in January and 0.6 × 2.2 = 1.32 in in December are more than the 0.87 and 0.74 in of
   * rain: every month is dry. In Seattle May needs 2.4 in against 1.88, April 1.68 against 3.18,
   * September 1.86 against 1.61, October 0.96 against 3.91. What stands already (kc 3) is not
   * asked.
   */
  @Test
  void dryMonths_areThoseInWhichNeedExceedsRain() {
    List<Stand> stands =
        List.of(
            stand("sage", 300, 0.5, false),
            stand("melon", 100, 0.9, false),
            stand("oak", 900, 3, true));
    assertEquals(
        EnumSet.allOf(Month.class),
        CareMonths.of(stands, Optional.of(climate(PHOENIX_RAIN)), Optional.of(et(PHOENIX_ET)))
            .dry());
    assertEquals(
        EnumSet.range(Month.MAY, Month.SEPTEMBER),
        CareMonths.of(stands, Optional.of(climate(SEATTLE_RAIN)), Optional.of(et(SEATTLE_ET)))
            .dry());
    CareMonths unknown = CareMonths.of(stands, Optional.empty(), Optional.of(et(SEATTLE_ET)));
    assertEquals(Set.of(), unknown.dry());
    assertEquals(false, unknown.isKnown());
  }

  @Test
  void thawedMonths_areThoseAboveFreezing() {
    ClimateNormals cold = climate(SEATTLE_RAIN, -4, -2, 5, 11, 17, 22, 24, 23, 19, 12, 0, -1);
    assertEquals(
        EnumSet.range(Month.MARCH, Month.OCTOBER),
        CareMonths.of(List.of(), Optional.of(cold), Optional.empty()).thawed());
  }

  private static List<String> said(List<CareVisit> visits) {
    return visits.stream().map(v -> v.number() + " " + v.date() + " " + v.why()).toList();
  }

  private static CareMonths months(Set<Month> dry, Set<Month> thawed) {
    return new CareMonths(dry, thawed, EnumSet.range(Month.MARCH, Month.NOVEMBER), true);
  }

  /**
   * Planted on Monday 15 March 2027: 22 and 29 March, 12 and 26 April. Four more in the dry June
   * and July, whose Mondays are 7, 14, 21, 28 June and 5, 12, 19, 26 July: the second of each two.
   */
  @Test
  void visits_areFourInTheFirstWeeks_andTheRestInDryMonths() {
    String dry = " a dry month: plants need more than it rains";
    assertEquals(
        List.of(
            "1 2027-03-22 a week after planting",
            "2 2027-03-29 2 weeks after planting",
            "3 2027-04-12 4 weeks after planting",
            "4 2027-04-26 6 weeks after planting",
            "5 2027-06-14" + dry,
            "6 2027-06-28" + dry,
            "7 2027-07-12" + dry,
            "8 2027-07-26" + dry),
        said(
            LookAfter.of(
                work(8, Workdays.ALL),
                List.of(LocalDate.parse("2027-03-15")),
                months(EnumSet.of(Month.JUNE, Month.JULY), EnumSet.allOf(Month.class)))));
  }

  /**
   * Planted on Monday 15 and Thursday 25 February and Monday 3 May 2027, nine visits, of which two
   * are kept for August, Mondays 2, 9, 16, 23, 30: 9 and 23. Seven first weeks: 22 February, 4
   * March, 10 May; 1 March is three days before one, so 11 March and 17 May; fourth weeks 15 March
   * and 25 March, the fourth of the second planting after 4, 11 and 15 March.
   */
  @Test
  void quarterOfTheVisits_isKeptForDryMonths() {
    assertEquals(
        List.of(
            "2027-02-22",
            "2027-03-04",
            "2027-03-11",
            "2027-03-15",
            "2027-03-25",
            "2027-05-10",
            "2027-05-17",
            "2027-08-09",
            "2027-08-23"),
        LookAfter.of(
                work(9, Workdays.ALL),
                List.of(
                    LocalDate.parse("2027-02-15"),
                    LocalDate.parse("2027-02-25"),
                    LocalDate.parse("2027-05-03")),
                months(EnumSet.of(Month.AUGUST), EnumSet.allOf(Month.class)))
            .stream()
            .map(v -> v.date().toString())
            .toList());
  }

  /**
   * Planted on 22 September 2026 and 10 May 2027: the first dry season, of June and July, ends
   * before the year is over, and no visit falls into that of 2028.
   */
  @Test
  void dryVisits_areOfTheFirstSeason() {
    List<CareVisit> visits =
        LookAfter.of(
            work(12, Workdays.ALL),
            List.of(LocalDate.parse("2026-09-22"), LocalDate.parse("2027-05-10")),
            months(EnumSet.of(Month.JUNE, Month.JULY), EnumSet.allOf(Month.class)));
    assertEquals(12, visits.size());
    assertTrue(visits.get(11).date().isBefore(LocalDate.parse("2027-09-22")), "" + visits);
  }

  /**
   * Planted on 16 November and 8 March, in a place that freezes from December to February: after
   * the first only 23 and 30 November, then 15 and 22 March, 5 and 19 April.
   */
  @Test
  void frozenMonths_haveNoVisits() {
    assertEquals(
        List.of("2027-11-23", "2027-11-30", "2028-03-15", "2028-03-22", "2028-04-05", "2028-04-19"),
        LookAfter.of(
                work(6, Workdays.ALL),
                List.of(LocalDate.parse("2027-11-16"), LocalDate.parse("2028-03-08")),
                months(Set.of(), EnumSet.range(Month.MARCH, Month.NOVEMBER)))
            .stream()
            .map(v -> v.date().toString())
            .toList());
  }

  /** Whatever is planted when: four in 45 days of each, none twice, as many as the plan says. */
  @Property(tries = 60)
  void everyPlanting_hasFourVisitsIn45Days(
      @ForAll @IntRange(min = 0, max = 364) int first,
      @ForAll @IntRange(min = 0, max = 200) int apart,
      @ForAll @IntRange(min = 11, max = 40) int most) {
    LocalDate one = Workdays.ALL.day(LocalDate.parse("2027-01-01").plusDays(first), 1);
    LocalDate two = Workdays.ALL.day(one.plusDays(apart), 1);
    List<CareVisit> visits =
        LookAfter.of(
            work(most, Workdays.ALL),
            List.of(one, two),
            months(EnumSet.of(Month.AUGUST), EnumSet.allOf(Month.class)));
    assertEquals(most, visits.size());
    for (LocalDate planted : List.of(one, two)) {
      long soon =
          visits.stream()
              .map(v -> ChronoUnit.DAYS.between(planted, v.date()))
              .filter(d -> d > 0 && d <= 45)
              .count();
      assertTrue(soon >= 4, planted + " " + visits);
    }
  }
}
