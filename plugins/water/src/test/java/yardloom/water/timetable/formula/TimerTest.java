package yardloom.water.timetable.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

class TimerTest {
  /**
   * A public worked example, read: 0.26 in may stand on level clay loam, which takes 0.2 in an
   * hour; at 1.5 in an hour turns of 12 minutes, and 78 minutes until 0.26 in have soaked in.
   */
  @Test
  void cycleAndSoak_ofThePublicExample() {
    Length storage = Length.inches(0.26);
    Length rate = Length.inches(1.5);
    Length intake = Length.inches(0.2);
    TimeSpan turn = CycleSoak.longestTurn(storage, rate, intake);
    assertEquals(12, turn.minutes(), 1e-9);
    assertEquals(78, CycleSoak.soak(turn, rate, intake).minutes(), 1e-9);
  }

  @Test
  void soilThatKeepsUp_needsNoTurns() {
    Length slow = Length.inches(0.3);
    assertEquals(0, CycleSoak.soak(TimeSpan.minutes(20), slow, Length.inches(0.4)).minutes(), 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> CycleSoak.longestTurn(Length.inches(0.2), slow, Length.inches(0.4)));
  }

  /** 420 minutes in 30 days, every fifth day: 70 minutes; turns of 25 at most: 3 of 23, 69. */
  @Test
  void program_isAsSeldomAsTheSoilAllows_inWholeMinutes() {
    assertEquals(new TimerProgram(5, 3, 23), TimerProgram.of(420, 30, 5, 25));
    assertEquals(414, TimerProgram.of(420, 30, 5, 25).monthMinutes(30), 1e-9);
  }

  /**
   * 12 minutes in a month of 31 days: 12 × 3 / 31 = 1.2 minutes are too short; every 26th day 10.
   */
  @Test
  void littleNeed_isWateredLessOften() {
    assertEquals(new TimerProgram(26, 1, 10), TimerProgram.of(12, 31, 3, 1000));
  }

  @Property(tries = 1000, seed = "20261127")
  void everyMonth_getsItsNeedWithinAFewPercent(
      @ForAll @DoubleRange(min = 10, max = 4000) double minutes,
      @ForAll @IntRange(min = 28, max = 31) int days,
      @ForAll @IntRange(min = 1, max = 7) int apart,
      @ForAll @DoubleRange(min = 6, max = 400) double longest) {
    TimerProgram program = TimerProgram.of(minutes, days, apart, longest);
    assertEquals(1, program.monthMinutes(days) / minutes, 0.05);
    assertTrue(program.turnMinutes() <= Math.ceil(longest), program + " longest " + longest);
    assertTrue(program.everyDays() <= days);
  }

  /** 420 minutes every fifth of 30 days are 70, in turns of 35 at most: two, not three. */
  @Test
  void turnsThatFillTheirTime_areNotOneMore() {
    assertEquals(new TimerProgram(5, 2, 35), TimerProgram.of(420, 30, 5, 35));
  }

  /** 14 minutes a day where the soil allows no more; 10 a day are just long enough. */
  @Test
  void everyDay_whereTheSoilAsks() {
    assertEquals(new TimerProgram(1, 1, 14), TimerProgram.of(420, 30, 1, 1000));
    assertEquals(new TimerProgram(1, 1, 10), TimerProgram.of(300, 30, 1, 1000));
  }

  /** A minute every third day would bring 10.4 a month; every 30th day 10 minutes do as well. */
  @Test
  void minuteAtATime_isNoWatering() {
    assertEquals(new TimerProgram(30, 1, 10), TimerProgram.of(10.4, 31, 3, 1000));
  }

  /** Three turns of 23 minutes with two waits of 20 between them: 69 + 40. */
  @Test
  void elapsed_hasAWaitLessThanTurns() {
    TimerProgram program = new TimerProgram(5, 3, 23);
    assertEquals(109, program.elapsed(TimeSpan.minutes(20)).minutes(), 1e-9);
    assertEquals(23, new TimerProgram(5, 1, 23).elapsed(TimeSpan.minutes(20)).minutes(), 1e-9);
  }
}
