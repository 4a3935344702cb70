package yardloom.water.overflow.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.overflow.formula.CurveNumber.Patch;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.roof.formula.RainYield;
import yardloom.water.roof.formula.RoofDrainage;

class RunoffTest {
  private static final OutsideRows YIELDS = OutsideRows.of(RunoffTest.class, "yields.csv");
  private static final OutsideRows CURVE_NUMBER =
      OutsideRows.of(RunoffTest.class, "curve-number.csv");

  private static final double EXACT = 144.0 / 231;

  /** Published figures carry their own factor; ours is exact, so they are compared at theirs. */
  @ParameterizedTest
  @CsvFileSource(resources = "yields.csv", numLinesToSkip = 1)
  void yield_atThePublishedFactor_isThePublishedFigure(
      String id,
      double areaSqft,
      double rainIn,
      double share,
      double factor,
      double gallons,
      double tolerance) {
    double ours = RainYield.of(Area.squareFeet(areaSqft), Length.inches(rainIn), share).gallons();
    YIELDS.check(id, "at its factor", gallons, ours * factor / EXACT, tolerance);
    YIELDS.check(id, "exactly", gallons, ours, gallons * 0.006);
  }

  @Test
  void yield_ofShareAboveOne_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> RainYield.of(Area.squareFeet(1), Length.inches(1), 1.1));
  }

  /** R-07, Surfrider Foundation: 248 gal are 33 ft³. */
  @Test
  void basin_ofRoofRain_hasThePublishedArea() {
    Volume rain = Volume.gallons(248);
    assertEquals(33, rain.cubicFeet(), 0.5);
    assertEquals(33, RainGarden.holding(rain, Length.feet(1)).squareFeet(), 0.5);
    assertEquals(66, RainGarden.holding(rain, Length.inches(6)).squareFeet(), 0.5);
  }

  /** 10 gallons for 1,000 sq ft. */
  @Test
  void firstFlush_ofThousandSquareFeet_isTenGallons() {
    assertEquals(10, FirstFlush.of(Area.squareFeet(1000), FirstFlush.LEAST).gallons(), 1e-9);
    assertEquals(0.01604, FirstFlush.LEAST.inches(), 1e-5);
  }

  /** inches of pipe for a gallon; printed 33, 18, 8 (read), exact by arithmetic. */
  @ParameterizedTest
  @CsvSource({"3, 33, 32.68", "4, 18, 18.38", "6, 8, 8.17"})
  void firstFlushPipe_forAGallon(double inside, double printed, double exact) {
    double found = FirstFlush.pipe(Volume.gallons(1), Length.inches(inside)).inches();
    assertEquals(printed, found, 0.4);
    assertEquals(exact, found, 0.01);
  }

  /** SMACNA-type rule on gutter pages. */
  @Test
  void roofDrainage_ofPublishedCases() {
    double flow = RoofDrainage.flow(Area.squareFeet(1500), Length.inches(4)).gallonsPerMinute();
    assertEquals(62.4, flow, 62.4 * 0.002);
    assertEquals(200, drained(1, 6), 1e-9);
    assertEquals(100, drained(1, 12), 1e-9);
    assertEquals(300, drained(1, 4), 1e-9);
    assertEquals(600, drained(6, 12), 1e-9);
    assertEquals(1200, drained(12, 12), 1e-9);
  }

  private static double drained(double squareInches, double inchesPerHour) {
    return RoofDrainage.drained(Area.squareFeet(squareInches / 144), Length.inches(inchesPerHour))
        .squareFeet();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "curve-number.csv", numLinesToSkip = 1)
  void runoff_ofPublishedStorms(
      String id, double rainIn, double cn, double loss, double expected, double tolerance) {
    double found = CurveNumber.runoff(Length.inches(rainIn), cn, loss).inches();
    CURVE_NUMBER.check(id, expected, found, tolerance);
  }

  /** C-03 and C-09: averaging numbers instead of runoff is 25 percent off on roof and lawn. */
  @Test
  void composite_understatesRunoffOfRoofAndLawn() {
    List<Patch> pasture =
        List.of(new Patch(Area.squareFeet(30), 61), new Patch(Area.squareFeet(70), 74));
    assertEquals(70.1, CurveNumber.composite(pasture), 1e-9);
    List<Patch> yard =
        List.of(new Patch(Area.squareFeet(2000), 98), new Patch(Area.squareFeet(4000), 61));
    double cn = CurveNumber.composite(yard);
    assertEquals(73.33, cn, 0.005);
    assertEquals(0.874, CurveNumber.runoff(Length.inches(3), cn).inches(), 0.002);
    assertEquals(1.166, CurveNumber.weightedRunoff(Length.inches(3), yard).inches(), 0.002);
  }

  /** C-12, SWB documentation: borders of the hydrologic soil groups. */
  @ParameterizedTest
  @CsvSource({
    "0.301, A",
    "0.30, B",
    "0.151, B",
    "0.15, C",
    "0.051, C",
    "0.05, D",
    "0.04, D",
    "0, D"
  })
  void soilGroup_byInfiltration(double inchesPerHour, SoilGroup expected) {
    assertEquals(expected, SoilGroup.of(Length.inches(inchesPerHour)));
  }

  /** G-01 Illinois DNR (read); G-04 GWQ037 (memory). */
  @Test
  void rainGarden_ofPublishedRoofs() {
    assertEquals(187.5, RainGarden.area(Area.squareFeet(750), 0.25).squareFeet(), 1e-9);
    assertEquals(150, RainGarden.area(Area.squareFeet(600), 0.25).squareFeet(), 1e-9);
  }

  /** G-02, University of Rhode Island. */
  @ParameterizedTest
  @CsvSource({"3, 3, 5", "5, 6, 7", "7, 6, 7", "8, 8, 8", "12, 8, 8"})
  void rainGardenDepth_bySlope(double slope, double from, double to) {
    RainGarden.Depth depth = RainGarden.depth(slope).orElseThrow();
    assertEquals(from, depth.from().inches(), 1e-9);
    assertEquals(to, depth.to().inches(), 1e-9);
  }

  @Test
  void rainGarden_onSteepSlope_belongsElsewhere() {
    assertEquals(Optional.empty(), RainGarden.depth(12.5));
  }

  /** G-06, arithmetic. */
  @Test
  void drawdownAndSwale() {
    assertEquals(24, RainGarden.drawdown(Length.inches(6), Length.inches(0.25)).hours(), 1e-9);
  }

  @Property(seed = "20261125")
  void runoff_staysBelowRain_andGrowsWithRainAndNumber(
      @ForAll @DoubleRange(min = 0, max = 20) double rainIn,
      @ForAll @DoubleRange(min = 30, max = 99) double cn) {
    double q = CurveNumber.runoff(Length.inches(rainIn), cn).inches();
    assertTrue(q >= 0 && q <= rainIn + 1e-12);
    assertTrue(CurveNumber.runoff(Length.inches(rainIn + 0.5), cn).inches() >= q);
    assertTrue(CurveNumber.runoff(Length.inches(rainIn), cn + 1).inches() >= q - 1e-12);
    assertEquals(rainIn, CurveNumber.runoff(Length.inches(rainIn), 100).inches(), 1e-9);
  }
}
