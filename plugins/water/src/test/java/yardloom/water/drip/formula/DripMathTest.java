package yardloom.water.drip.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Unit;
import yardloom.water.timetable.formula.RunTime;
import yardloom.water.timetable.formula.WateringPlan;

class DripMathTest {
  private static final OutsideRows ROWS = OutsideRows.of(DripMathTest.class, "grid.csv");

  @ParameterizedTest
  @CsvFileSource(resources = "grid.csv", numLinesToSkip = 1)
  void rate_ofOutletGrid_isThePublishedOne(
      String id,
      double outlet,
      String flowUnit,
      double row,
      double spacing,
      String lengthUnit,
      double expected,
      String unit) {
    Unit length = Unit.byWord(lengthUnit).orElseThrow();
    Flow flow = Flow.cubicMetresPerSecond(Unit.byWord(flowUnit).orElseThrow().toSi(outlet));
    Length rate =
        ApplicationRate.perHour(
            flow, Length.metres(length.toSi(row)).by(Length.metres(length.toSi(spacing))));
    ROWS.check(id, expected, rate.in(Unit.byWord(unit).orElseThrow()), expected * 1e-4);
  }

  /** Trade sheets print 231.1; the exact constant is 231. */
  @Test
  void rate_usesTheExactGallon_notTheTradeConstant() {
    Length rate =
        ApplicationRate.perHour(Flow.gallonsPerHour(1), Length.inches(1).by(Length.inches(1)));
    assertEquals(231, rate.inches(), 1e-9);
    assertNotEquals(231.1, rate.inches(), 0.05);
  }

  /** D-07: 1 in at an efficiency of 0.90 and 0.4278 in/h; computed from the formula. */
  @Test
  void runTime_ofAnInch_is156Minutes() {
    Length rate =
        ApplicationRate.perHour(Flow.gallonsPerHour(0.6), Length.inches(18).by(Length.inches(18)));
    assertEquals(155.8, RunTime.of(Length.inches(1), rate, 0.90).minutes(), 0.1);
    assertThrows(IllegalArgumentException.class, () -> RunTime.of(Length.inches(1), rate, 1.2));
  }

  /** D-04: gallons a minute in a hundred feet of dripline, by definition. */
  @Test
  void outlets_ofHundredFeet_giveTheKnownFlow() {
    Length run = Length.feet(100);
    assertEquals(1.5, 0.9 * DripLayout.outlets(run, Length.inches(12)) / 60, 1.5e-4);
    assertEquals(1.3333, 0.4 * DripLayout.outlets(run, Length.inches(6)) / 60, 1.4e-4);
    assertEquals(0.8333, 0.5 * DripLayout.outlets(run, Length.inches(12)) / 60, 1e-4);
  }

  /** D-09: procedure of the UC Davis sheet on 24 readings; figures computed by that procedure. */
  @Test
  void uniformity_of24Readings_matchesTheProcedure() {
    CatchUniformity catches =
        CatchUniformity.of(
            60, 62, 58, 55, 64, 61, 59, 57, 63, 65, 52, 54, 60, 61, 50, 66, 58, 62, 57, 59, 63, 48,
            61, 60);
    assertEquals(58.958, catches.mean(), 1e-3);
    assertEquals(0.8933, catches.lowQuarter(), 1e-4);
    assertEquals(0.9428, catches.lowHalf(), 1e-4);
    assertEquals(0.9412, catches.christiansen(), 1e-4);
    assertEquals(0.0772, catches.variation(), 1e-4);
  }

  /** D-10 and D-11: formula of Keller and Karmeli, from memory. */
  @Test
  void designUniformity_ofTwoCases() {
    assertEquals(0.9182, DesignUniformity.of(0.05, 1, 0.98044), 1e-4);
    assertEquals(0.8887, DesignUniformity.of(0.07, 4, 1.86 / 2.00), 1e-4);
  }

  @Test
  void multipliers_ofLowQuarter75() {
    assertEquals(1.3333, WateringPlan.multiplierByLowQuarter(0.75), 1e-4); // D-08, read
    assertEquals(1.1765, WateringPlan.multiplierByLowHalf(0.75), 1e-4); // D-15, memory
    assertEquals(1.7, WateringPlan.schedulingCoefficient(12, 7), 0.02); // D-14, read
  }

  /** D-16: 1.5 in/ft held, 1 ft roots, half may dry, ETo 0.20 in × 0.8. */
  @Test
  void interval_andRunTime_ofALawn() {
    double days = WateringPlan.interval(1.5 / 12, Length.feet(1), 0.5, Length.inches(0.16)).days();
    assertEquals(4.69, days, 0.05);
    double minutes = RunTime.of(Length.inches(0.16 * 4), Length.inches(0.8), 0.85).minutes();
    assertEquals(56.5, minutes, 0.05);
  }

  /** D-17: NRCS Practice Standard 441, wetted over root area. */
  @Test
  void wettedShare_ofTwoFootCircleInFourFootSquare() {
    Area wetted = Area.squareFeet(Math.PI);
    assertEquals(0.196, WateringPlan.wettedShare(wetted, Area.squareFeet(16)), 5e-4);
    assertEquals(1, WateringPlan.wettedShare(Area.squareFeet(20), Area.squareFeet(16)));
  }

  @Property(seed = "20261125")
  void uniformity_isOneForEqualReadings_andNeverMore(
      @ForAll @Size(min = 4, max = 40) List<@DoubleRange(min = 0.1, max = 9) Double> readings) {
    CatchUniformity u =
        CatchUniformity.of(readings.stream().mapToDouble(Double::doubleValue).toArray());
    assertTrue(u.lowQuarter() <= u.lowHalf() + 1e-12);
    assertTrue(u.lowHalf() <= 1 + 1e-12 && u.christiansen() <= 1 + 1e-12);
  }

  @Property(seed = "20261125")
  void rows_ofAnyBed_lieInside_andAddUp(
      @ForAll @DoubleRange(min = 0.4, max = 3) double widthM,
      @ForAll @DoubleRange(min = 3.1, max = 9) double lengthM,
      @ForAll @DoubleRange(min = 0.2, max = 0.6) double rowM,
      @ForAll @DoubleRange(min = -90, max = 90) double turn) {
    Shape bed =
        Shape.rectangle(Point.metres(0, 0), Length.metres(lengthM), Length.metres(widthM))
            .turned(Angle.degrees(turn), Point.metres(1, 1));
    List<Line> rows = DripLayout.rows(bed, Length.metres(rowM), Length.metres(0.3));
    double length = 0;
    for (Line row : rows) {
      length += row.length().metres();
      assertEquals(lengthM, row.length().metres(), 1e-5);
      Point middle =
          Point.metres(
              (row.start().x().metres() + row.end().x().metres()) / 2,
              (row.start().y().metres() + row.end().y().metres()) / 2);
      assertTrue(bed.contains(middle));
    }
    assertEquals(Math.max(1, Math.floor(widthM / rowM + 0.5 + 1e-6)) * lengthM, length, 1e-4);
  }
}
