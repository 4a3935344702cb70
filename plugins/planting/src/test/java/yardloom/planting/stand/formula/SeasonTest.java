package yardloom.planting.stand.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Crop.Coefficients;
import yardloom.planting.catalogue.Crop.Stages;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.formula.BedShares;

class SeasonTest {
  private static final Coefficients KC = new Coefficients(0.4, 1.0, 0.6);
  private static final StageShares SHARES = StageShares.RECALLED;

  private static List<Temperature> celsius(double... means) {
    return Arrays.stream(means).mapToObj(Temperature::celsius).toList();
  }

  @Test
  void season_ofNorthernYear_runsFromSpringToAutumn() {
    List<Temperature> means = celsius(-4, -2, 4, 11, 17, 22, 24, 23, 19, 12, 5, -2);
    assertEquals(
        List.of(3, 4, 5, 6, 7, 8, 9, 10), GrowingSeason.months(means, GrowingSeason.HARDY));
    assertEquals(List.of(3, 4, 5, 6, 7, 8, 9), GrowingSeason.months(means, GrowingSeason.TENDER));
  }

  @Test
  void season_ofSouthernYear_runsAcrossNewYear() {
    List<Temperature> means = celsius(20, 19, 16, 12, 8, 4, 3, 4, 8, 12, 15, 18);
    assertEquals(
        List.of(8, 9, 10, 11, 0, 1, 2, 3, 4), GrowingSeason.months(means, GrowingSeason.HARDY));
  }

  @Test
  void season_ofPolarYear_isEmpty() {
    List<Temperature> cold = celsius(-9, -9, -9, -9, 0, 1, 2, 1, 0, -9, -9, -9);
    assertEquals(List.of(), GrowingSeason.months(cold, GrowingSeason.HARDY));
    List<Double> evergreen = CropCurve.monthly(KC, SHARES, Plant.Season.EVERGREEN, List.of());
    assertEquals(List.of(0.4, 0.4), evergreen.subList(0, 2));
    assertEquals(0, CropCurve.monthly(KC, SHARES, Plant.Season.DECIDUOUS, List.of()).get(6));
  }

  @Test
  void curve_atStageEnds_hasThePublishedCoefficients() {
    assertEquals(0.4, CropCurve.at(KC, SHARES, 0));
    assertEquals(0.4, CropCurve.at(KC, SHARES, 0.15));
    assertEquals(0.7, CropCurve.at(KC, SHARES, 0.275), 1e-12);
    assertEquals(1.0, CropCurve.at(KC, SHARES, 0.6));
    assertEquals(0.6, CropCurve.at(KC, SHARES, 1), 1e-12);
  }

  /** H12: tomato 30, 40, 45 and 30 of 145 days (FAO-56 Table 11). */
  @Test
  void curve_ofStagesInDays_bendsWhereTheyEnd() {
    StageShares tomato = StageShares.of(new Stages(30, 40, 45, 30, "", ""));
    assertEquals(30 / 145.0, tomato.initialEnd(), 1e-12);
    assertEquals(70 / 145.0, tomato.developmentEnd(), 1e-12);
    assertEquals(115 / 145.0, tomato.middleEnd(), 1e-12);
    assertEquals(0.7, CropCurve.at(KC, tomato, 50 / 145.0), 1e-12);
    assertEquals(0.8, CropCurve.at(KC, tomato, 130 / 145.0), 1e-12);
  }

  /** A last stage of no days leaves no slope to divide by. */
  @Test
  void curve_withoutALastStage_staysInTheMiddle() {
    StageShares picked = StageShares.of(new Stages(90, 45, 40, 0, "", ""));
    assertEquals(1.0, CropCurve.at(KC, picked, 1));
  }

  @Test
  void months_outsideSeason_areZero_andMidSeasonIsMiddle() {
    List<Double> kc =
        CropCurve.monthly(KC, SHARES, Plant.Season.DECIDUOUS, List.of(3, 4, 5, 6, 7, 8, 9));
    assertEquals(0, kc.get(2));
    assertEquals(1.0, kc.get(6), 1e-12);
    assertEquals(0, kc.get(10));
  }

  /** By hand: 20 days from 22 December, all in the first stage: 10 days of 31 in each month. */
  @Test
  void annualAcrossNewYear_drawsInBothMonths() {
    StageShares flat = new StageShares(1, 1, 1);
    List<Double> kc = AnnualCurve.monthly(KC, flat, MonthDay.of(12, 22), 20);
    assertEquals(0.4 * 10 / 31, kc.get(11), 1e-12);
    assertEquals(0.4 * 10 / 31, kc.get(0), 1e-12);
    assertEquals(0, kc.get(1) + kc.get(10));
    List<Double> later = AnnualCurve.monthly(KC, flat, MonthDay.of(12, 27), 5);
    assertEquals(kc, AnnualCurve.more(kc, later), "a second sowing takes no second ground");
  }

  /** The whole year at the middle coefficient is the middle coefficient every month. */
  @Test
  void annualOfAYear_hasEveryDay() {
    List<Double> kc = AnnualCurve.monthly(KC, new StageShares(0, 0, 1), MonthDay.of(5, 9), 365);
    kc.forEach(month -> assertEquals(1.0, month, 1e-12));
    assertThrows(
        IllegalArgumentException.class,
        () -> AnnualCurve.monthly(KC, SHARES, MonthDay.of(5, 9), 366));
  }

  @Test
  void shares_thatExceedTheBed_areRefused() {
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.metres(6), Length.metres(1));
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> BedShares.cut(bed, List.of(Optional.of(0.7), Optional.of(0.4))));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertThrows(
        PlanException.class, () -> BedShares.cut(bed, List.of(Optional.of(1.0), Optional.empty())));
  }

  @Test
  void openShares_divideTheRestInOrder() {
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.metres(6), Length.metres(1));
    List<Shape> pieces =
        BedShares.cut(bed, List.of(Optional.empty(), Optional.of(0.5), Optional.empty()));
    assertEquals(1.5, pieces.get(0).area().squareMetres(), 1e-6);
    assertEquals(3.0, pieces.get(1).area().squareMetres(), 1e-6);
    assertEquals(3.0, pieces.get(1).centroid().x().metres(), 1e-6);
    assertEquals(1.5, pieces.get(2).area().squareMetres(), 1e-6);
  }

  /**
   * Where all months are warm and alike the year begins in January, with two coldest in the first.
   */
  @Test
  void season_ofTheWholeYear_beginsInTheColdestMonth() {
    List<Integer> year = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
    List<Temperature> alike = celsius(20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20);
    assertEquals(year, GrowingSeason.months(alike, GrowingSeason.TENDER));
    List<Temperature> june = celsius(20, 20, 20, 20, 20, 15, 15, 20, 20, 20, 20, 20);
    assertEquals(
        List.of(5, 6, 7, 8, 9, 10, 11, 0, 1, 2, 3, 4),
        GrowingSeason.months(june, GrowingSeason.TENDER));
  }

  /**
   * A month at the limit counts; of two seasons as long the one after the coldest month is taken.
   */
  @Test
  void season_ofTwoWarmSpells_isTheFirst() {
    List<Temperature> means = celsius(0, 2, 10, 12, 9, 8, 9, 11, 10, 3, 2, 1);
    assertEquals(List.of(2, 3), GrowingSeason.months(means, GrowingSeason.TENDER));
  }
}
