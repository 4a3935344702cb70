package yardloom.planting.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.ClimateNormals;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.PlantYard;

/** How long fruit waits for the warmth of a cool summer, by hand and against published dates. */
class RipeningDelayTest {
  private static final MonthDay BEGINS = MonthDay.of(3, 18);

  /** San Francisco, °F: WRCC cliNORMNCDC ca7772, as in the climate room's data. */
  private static final double[] SAN_FRANCISCO_F = {
    51.1, 54.4, 54.9, 56.0, 56.6, 58.4, 59.1, 60.1, 62.3, 62.0, 57.2, 51.7
  };

  private static Optional<ClimateNormals> climate(double... meansC) {
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (double mean : meansC) {
      months.add(
          new ClimateNormals.Month(
              Length.inches(1), Temperature.celsius(mean), Optional.empty(), Optional.empty()));
    }
    return Optional.of(new ClimateNormals("x", months, Source.plan("x"), Source.plan("x")));
  }

  private static Optional<ClimateNormals> always(double meanC) {
    return climate(IntStream.range(0, 12).mapToDouble(m -> meanC).toArray());
  }

  private static double[] sanFranciscoC() {
    return Arrays.stream(SAN_FRANCISCO_F).map(f -> (f - 32) / 1.8).toArray();
  }

  /**
   * In Seattle 9.81 °C on 15 April and 12.89 on 15 May pass 10 °C after 1.85 days, on the 17th;
   * bloom on 27 April, with 9.81 + 12 / 30 × 3.08 = 11.042 °C and 0.1027 more each day. In 18 days:
   * 18 × 1.042 + 0.10267 × 153 = 34.46 degree days. At 12 °C 18 days bring 36; at 11.5 it takes 23
   * days, at 11 35, at 10.5 69; at 10.2 173, of which 60 count.
   */
  @ParameterizedTest(name = "{0} degrees: {1} days")
  @CsvSource({"12, 0", "11.5, 5", "11, 17", "10.5, 51", "10.2, 60"})
  void coolerThanSeattle_waitsForTheSameWarmth(double meanC, int late) {
    assertEquals(late, RipeningDelay.days(BEGINS, 18, always(meanC)));
  }

  @Test
  void withoutTemperatures_orDays_nothingWaits() {
    assertEquals(0, RipeningDelay.days(BEGINS, 105, Optional.empty()));
    assertEquals(0, RipeningDelay.days(BEGINS, 0, always(11)));
    assertEquals(0, RipeningDelay.days(BEGINS, -20, always(11)));
  }

  /** The usual days were held against Washington's: there none is added, whatever the frost. */
  @Test
  void seattle_addsNone() {
    Optional<ClimateNormals> seattle =
        climate(5.39, 6.11, 7.74, 9.81, 12.89, 15.56, 18.27, 18.40, 15.67, 11.24, 7.32, 4.74);
    for (int days : List.of(30, 105, 175)) {
      assertEquals(0, RipeningDelay.days(MonthDay.of(3, 15), days, seattle));
      assertEquals(0, RipeningDelay.days(MonthDay.of(4, 10), days, seattle));
    }
  }

  private static PlantYard sanFrancisco(String plant) {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.give(
        YardFacts.WARM_SEASON,
        new WarmSeason(
            Derived.given(BEGINS, "first warm day", SourceRef.NONE),
            Derived.given(MonthDay.of(11, 27), "last warm day", SourceRef.NONE),
            Temperature.celsius(12.8)));
    yard.climate(7, sanFranciscoC());
    yard.tree("T", plant, 20, 20, 1);
    return yard;
  }

  private static String[] picked(String plant) {
    return sanFrancisco(plant).printed("care").stream()
        .filter(r -> r.contains("Pick | " + plant))
        .findFirst()
        .orElseThrow()
        .split(" \\| ");
  }

  /**
   * Apples are usually picked 105 to 175 days from bloom. Degree days above 10 °C in Seattle: 34.46
   * until 14 May (18 days), 129.64 until 14 June (31), 206.10 until 14 July (30), 216.38 until 9
   * August (26): 586.58 in 105 days; 41.94 until 14 August (5), 219.45 until 14 September (31),
   * 105.87 until 14 October (30), 4.20 in 4 days more: 958.04 in 175. In San Francisco from 18
   * March: 85.32, 104.83, 128.67, 145.64, in all 464.46 until 14 July; 120.8 in 23 days, 126.3 in
   * 24, so from 8 August; 629.51 until 14 August, 821.79 until 14 September, 135.6 in 20 days,
   * 142.3 in 21, so until 6 October. A plan on its own days would say 1 July to 9 September.
   */
  @Test
  void applesOfSanFrancisco_arePickedFromAugust() {
    String row = String.join(" | ", picked("apple (dwarf)"));
    assertTrue(row.contains("| 8 Aug | 6 Oct |"), row);
  }

  /** Of 60 days 24 are of August, 30 of September, 6 of October. */
  @Test
  void harvestByMonth_hasThemInAugustToOctober() {
    PlantYard yard = sanFrancisco("apple (dwarf)");
    List<String> months = yard.printed("harvest-months");
    double high = Double.parseDouble(yard.printed("harvest").get(0).split(" \\| ")[3]);
    assertTrue(months.get(6).startsWith("Jul | nothing"), months.get(6));
    List<Integer> days = List.of(24, 30, 6);
    for (int i = 0; i < 3; i++) {
      String[] cells = months.get(7 + i).split(" \\| ");
      assertEquals("apple (dwarf)", cells[1]);
      assertEquals(high * days.get(i) / 60, Double.parseDouble(cells[4]), 1);
    }
    assertTrue(months.get(10).startsWith("Nov | nothing"), months.get(10));
  }

  /** What does not rest in winter has no bloom in spring to wait from: 200 days from 18 March. */
  @Test
  void lemons_doNotWait() {
    String row = String.join(" | ", picked("lemon"));
    assertTrue(row.contains("| 4 Oct |"), row);
  }

  /**
   * Of nine published dates of San Francisco Bay the one in the middle begins on 1 August and ends
   * on 20 October; varieties differ by months, the middle may by two weeks.
   */
  @Test
  void published_middleOfVarieties() {
    List<DataRow> rows =
        DataTable.shipped(RipeningDelayTest.class, "apples-san-francisco-bay.csv").rows();
    Optional<ClimateNormals> climate = climate(sanFranciscoC());
    int first = 105 + RipeningDelay.days(BEGINS, 105, climate);
    int last = 175 + RipeningDelay.days(BEGINS, 175, climate);
    assertEquals(9, rows.size());
    assertEquals(middle(rows, "first"), first, 14);
    assertEquals(middle(rows, "last"), last, 14);
  }

  /** Days from 18 March to the middle one of the dates. */
  private static long middle(List<DataRow> rows, String column) {
    long begins = BEGINS.atYear(2021).toEpochDay();
    return rows.stream()
        .mapToLong(r -> MonthDay.parse(r.text(column)).atYear(2021).toEpochDay() - begins)
        .sorted()
        .skip(rows.size() / 2)
        .findFirst()
        .orElseThrow();
  }

  /** A warmer year is never later; later fruit stays later. */
  @Property(tries = 200)
  void warmer_isNeverLater_andOrderStays(
      @ForAll @DoubleRange(min = 10.1, max = 16) double meanC,
      @ForAll @DoubleRange(min = 0, max = 4) double swingC,
      @ForAll @DoubleRange(min = 0, max = 3) double warmerC,
      @ForAll @IntRange(min = 1, max = 250) int days) {
    double[] cool =
        IntStream.range(0, 12)
            .mapToDouble(m -> Math.max(10.05, meanC - swingC * Math.cos(Math.PI * m / 6)))
            .toArray();
    double[] warm = Arrays.stream(cool).map(c -> c + warmerC).toArray();
    int late = RipeningDelay.days(BEGINS, days, climate(cool));
    assertTrue(RipeningDelay.days(BEGINS, days, climate(warm)) <= late);
    assertTrue(late >= 0 && late <= RipeningDelay.LONGEST);
    assertTrue(days + 1 + RipeningDelay.days(BEGINS, days + 1, climate(cool)) >= days + late);
  }
}
