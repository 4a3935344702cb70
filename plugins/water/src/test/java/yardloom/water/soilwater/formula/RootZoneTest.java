package yardloom.water.soilwater.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import yardloom.water.soilwater.formula.RootZone.Day;
import yardloom.water.soilwater.formula.RootZone.Sum;

/** The balance by hand; equations 82 to 88 of FAO-56. */
class RootZoneTest {
  /**
   * 0.6 m of roots × 0.125 = 75 mm in all (T-04). Kc 1.1 × 6 mm = 6.6 mm a day; easy share 0.65 +
   * 0.04 × (5 − 6.6) = 0.586, so 43.95 mm are easy: used up after 7 days (46.2 mm). Watered: 46.2
   * mm on the 7th evening and again on the 14th; the 15th day leaves 6.6 mm.
   */
  @Test
  void dryDays_wateredWhenTheEasyWaterIsGone() {
    Sum sum = RootZone.run(Collections.nCopies(15, new Day(0, 6, 1.1, 0.6)), 0.125, 0.65, true);
    assertEquals(2, sum.waterings());
    assertEquals(92.4, sum.irrigationMm(), 1e-9);
    assertEquals(99.0, sum.useMm(), 1e-9);
    assertEquals(6.6, sum.endMm(), 1e-9);
    assertEquals(0, sum.shortDays());
  }

  /**
   * Not watered: on the 8th morning 46.2 mm are gone, Ks = (75 − 46.2) / (75 − 43.95) = 0.9275, so
   * 6.1217 mm are drawn; on the 9th Ks = (75 − 52.3217) / 31.05 = 0.7304, 4.8205 mm.
   */
  @Test
  void dryDays_notWatered_drawLessAndLess() {
    Sum sum = RootZone.run(Collections.nCopies(9, new Day(0, 6, 1.1, 0.6)), 0.125, 0.65, false);
    assertEquals(46.2 + 6.1217 + 4.8205, sum.useMm(), 1e-3);
    assertEquals(2, sum.shortDays());
    assertEquals(7, sum.firstShort());
    assertEquals(2, sum.longestShort());
  }

  /**
   * 3 days × 4.2 mm = 12.6 mm drawn, then 40 mm of rain on a day that draws 4.2: 23.2 mm go down.
   */
  @Test
  void moreRainThanTheSoilHolds_percolates() {
    List<Day> days = new ArrayList<>(Collections.nCopies(3, new Day(0, 5, 0.84, 0.4)));
    days.add(new Day(40, 5, 0.84, 0.4));
    Sum sum = RootZone.run(days, 0.15, 0.5, false);
    assertEquals(40 - 4 * 4.2, sum.percolationMm(), 1e-9);
    assertEquals(0, sum.endMm(), 1e-9);
  }

  /** 0.9 mm is less than a fifth of 5 mm, 1.1 mm is not. */
  @Test
  void littleRain_isLostToTheAir() {
    assertEquals(
        1.1,
        RootZone.run(List.of(new Day(0.9, 5, 1, 0.4), new Day(1.1, 5, 1, 0.4)), 0.1, 0.5, false)
            .rainMm(),
        1e-9);
  }

  /**
   * Half-grown coefficient, half the roots; never less than 0.15 m; no shrinking before the end.
   */
  @Test
  void roots_deepenWithTheCoefficient() {
    assertEquals(0.4, RootZone.rootM(0.8, 0.6, 0.6, 1.2), 1e-12);
    assertEquals(0.15, RootZone.rootM(0.8, 0.1, 0.1, 1.2), 1e-12);
    assertEquals(0.8, RootZone.rootM(0.8, 0.7, 1.2, 1.2), 1e-12);
    assertEquals(0.1, RootZone.rootM(0.1, 0.3, 0.3, 1.2), 1e-12, "thin soil");
  }

  @Property(seed = "20261127", tries = 300)
  void whatComesIn_goesOutOrIsMissing(
      @ForAll @Size(min = 1, max = 60) List<@DoubleRange(min = 0, max = 50) Double> rain,
      @ForAll @DoubleRange(min = 0.1, max = 1.3) double kc,
      @ForAll @DoubleRange(min = 0.05, max = 0.2) double available,
      @ForAll boolean watered) {
    List<Day> days = rain.stream().map(r -> new Day(r < 20 ? 0 : r - 20, 5, kc, 0.5)).toList();
    Sum sum = RootZone.run(days, available, 0.5, watered);
    assertEquals(
        sum.rainMm() + sum.irrigationMm() + sum.endMm(), sum.useMm() + sum.percolationMm(), 1e-9);
    assertTrue(sum.endMm() >= 0 && sum.endMm() <= 500 * available + 1e-9);
    assertTrue(sum.useMm() <= days.size() * 5 * kc + 1e-9);
    Sum other = RootZone.run(days, available, 0.5, !watered);
    assertTrue(watered ? sum.useMm() >= other.useMm() - 1e-9 : sum.useMm() <= other.useMm() + 1e-9);
  }

  /** Easy water of 0.5 × 0.4 m × 0.125 = 25 mm is used up on the 5th evening of 5 mm, no later. */
  @Test
  void easyWater_usedUpToTheDrop_isRefilled() {
    Sum sum = RootZone.run(Collections.nCopies(15, new Day(0, 5, 1, 0.4)), 0.125, 0.5, true);
    assertEquals(3, sum.waterings());
    assertEquals(75, sum.irrigationMm(), 1e-9);
  }

  /**
   * Four days leave 20 mm gone. On a day without use 0.2 m of roots hold 25 mm, 0.7 of it easy,
   * 17.5: less than is gone, and yet nobody waters what draws nothing, nor is it short.
   */
  @Test
  void dayWithoutUse_isNeitherWateredNorShort() {
    List<Day> days = new ArrayList<>(Collections.nCopies(4, new Day(0, 5, 1, 0.4)));
    days.add(new Day(0, 5, 0, 0.2));
    Sum sum = RootZone.run(days, 0.125, 0.5, true);
    assertEquals(0, sum.waterings());
    assertEquals(0, sum.shortDays());
    assertEquals(20, sum.endMm(), 1e-9);
  }

  /** Where nothing ever draws there are the least roots. */
  @Test
  void rootsWithoutACoefficient_areTheLeast() {
    assertEquals(0.15, RootZone.rootM(0.8, 0, 0, 0), 1e-12);
  }
}
