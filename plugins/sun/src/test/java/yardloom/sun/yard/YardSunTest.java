package yardloom.sun.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Obstacle;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.light.formula.LightOfDays;
import yardloom.sun.shade.ShadeScene;

/** The scene of a yard: its ground, cells, growth and light. */
class YardSunTest {
  private static Draft lot(double wideM, double deepM) {
    Draft draft = TestYards.at(40, -105);
    draft.lot(new Lot(SourceRef.NONE, TestYards.rectangle(0, 0, wideM, deepM), List.of()));
    return draft;
  }

  private static YardSun sun(Draft draft, List<Obstacle> obstacles) {
    Plan plan = draft.freeze();
    return new YardSun(plan, plan.site().orElseThrow(), obstacles, Optional.empty());
  }

  private static Spot spot(double x, double y, double z) {
    return new Spot(Point.metres(x, y), Length.metres(z));
  }

  /**
   * Levels of a plane that rises 0.1 m a metre to the right and falls 0.05 up the plan; a pit where
   * the house stands does not count, since what is built is left out.
   */
  @Test
  void levelsOfTheLot_makeThePlaneItsGroundIs() {
    Draft draft = lot(20, 10);
    draft
        .attributes()
        .add(
            Surface.KEY,
            Surface.of(
                List.of(spot(0, 0, 5), spot(20, 0, 7), spot(20, 10, 6.5), spot(0, 10, 4.5)),
                List.of()),
            SourceRef.NONE);
    YardSun sun = sun(draft, List.of());
    assertEquals(0.1, sun.ground().heightM(1, 0), 1e-9);
    assertEquals(-0.05, sun.ground().heightM(0, 1), 1e-9);
    // A fall that the plan states goes before its levels: 1 in 4 down to the true south.
    YardWords.groundFall(
        new yardloom.kernel.scope.PlanScope(draft, SourceRef.NONE),
        Length.metres(1),
        Length.metres(4),
        yardloom.kernel.unit.Angle.degrees(180));
    assertEquals(0.25, sun(draft, List.of()).ground().heightM(0, 1), 1e-9);
    assertEquals(0, sun(lot(20, 10), List.of()).ground().steepest());
  }

  /** A pit of 2 m under the house, in the middle of one side, would tilt the plane. */
  @Test
  void groundUnderTheHouse_doesNotCount() {
    Draft draft = lot(20, 10);
    draft
        .attributes()
        .add(
            Surface.KEY,
            Surface.of(
                List.of(
                    spot(0, 0, 5),
                    spot(20, 0, 5),
                    spot(20, 10, 5),
                    spot(0, 10, 5),
                    spot(14, 2, 5),
                    spot(18, 2, 5),
                    spot(18, 8, 5),
                    spot(14, 8, 5),
                    spot(16, 5, 3)),
                List.of()),
            SourceRef.NONE);
    assertTrue(sun(draft, List.of()).ground().steepest() > 0.005);
    draft.add(
        new ElementId(ElementKind.BUILDING, "house"),
        SourceRef.NONE,
        c ->
            new Element.Building(
                c,
                TestYards.rectangle(13.5, 1.5, 18.5, 8.5),
                Length.metres(3),
                Length.metres(3),
                Length.ZERO,
                Element.RoofForm.FLAT,
                false));
    assertEquals(0, sun(draft, List.of()).ground().steepest(), 1e-9);
  }

  /**
   * Cells of a foot: 30 m are 99 of them. 40 by 40 m would be 132², 17424 of more than 16000, so
   * they are made twice as wide, 66²; asked for, up to 60000 are kept: 75 m at a foot are 247²,
   * 61009, which is doubled once too.
   */
  @ParameterizedTest
  @CsvSource({
    "30, false, 0.3048, 99",
    "40, false, 0.6096, 66",
    "40, true, 0.3048, 132",
    "74, true, 0.3048, 243",
    "75, true, 0.6096, 124"
  })
  void cells_areMadeLarger_whereTheyWouldBeTooMany(
      double sideM, boolean asked, double cellM, int columns) {
    Draft draft = lot(sideM, sideM);
    if (asked) {
      draft.attributes().add(YardWords.CELL, Length.feet(1), SourceRef.NONE);
    }
    CellGrid grid = sun(draft, List.of()).grid(draft.freeze()).orElseThrow();
    assertEquals(cellM, grid.cellM(), 1e-12);
    assertEquals(columns, grid.columns());
    assertEquals(columns, grid.rows());
  }

  @Test
  void grid_coversBedsBeyondTheLot_andNothingHasNone() {
    Draft draft = lot(3, 3);
    TestYards.bed(draft, new ElementId(ElementKind.BED, "out"), TestYards.rectangle(-4, 1, -2, 5));
    CellGrid grid = sun(draft, List.of()).grid(draft.freeze()).orElseThrow();
    assertEquals(-4, grid.cornerXM(), 1e-12);
    assertEquals(0, grid.cornerYM(), 1e-12);
    assertEquals((int) Math.ceil(7 / 0.3048), grid.columns());
    assertEquals((int) Math.ceil(5 / 0.3048), grid.rows());
    Draft empty = TestYards.at(40, -105);
    assertTrue(sun(empty, List.of()).grid(empty.freeze()).isEmpty());
  }

  private static Obstacle shrub(Obstacle.Stage stage) {
    return new Obstacle(
        new ElementId(ElementKind.BED, stage.name()),
        Obstacle.Form.PRISM,
        TestYards.rectangle(0, 0, 1, 1),
        Length.ZERO,
        Length.metres(1),
        Collections.nCopies(12, 0.0),
        stage);
  }

  /** What stands casts shade at any stage, what is planted at the chosen one only. */
  @Test
  void plants_countAtTheChosenStage() {
    List<Obstacle> all =
        List.of(
            shrub(Obstacle.Stage.STANDING),
            shrub(Obstacle.Stage.YEAR_1),
            shrub(Obstacle.Stage.YEAR_5),
            shrub(Obstacle.Stage.MATURE));
    Draft draft = lot(5, 5);
    assertEquals(List.of(all.get(0), all.get(3)), sun(draft, all).standing());
    draft.attributes().add(YardWords.STAGE, "year 5", SourceRef.NONE);
    assertEquals(List.of(all.get(0), all.get(2)), sun(draft, all).standing());
  }

  /**
   * Open level ground gets what is measured, direct and diffuse together, whatever the split: 8 MJ
   * in January, 1 MJ more each month. 1 kWh, 3.6 MJ, of it brings 7.265 mol (Faust and Logan,
   * 2018).
   */
  @Test
  void measuredRadiation_isWhatArrivesInTheOpen() {
    List<Double> monthly = IntStream.range(0, 12).mapToObj(m -> 8.0 + m).toList();
    Source by = Source.plan("measured");
    SolarRadiation radiation =
        new SolarRadiation(
            List.of(15.0, 20.0, 27.0, 35.0, 40.0, 42.0, 41.0, 37.0, 30.0, 22.0, 16.0, 14.0),
            Collections.nCopies(12, 22.0),
            "test",
            Collections.nCopies(12, new SolarRadiation.Sky(4.92, 101.3, 20)),
            by,
            Optional.of(new SolarRadiation.Given(monthly, by)));
    Plan plan = lot(5, 5).freeze();
    YardSun yard = new YardSun(plan, plan.site().orElseThrow(), List.of(), Optional.of(radiation));
    SunEngine.Looker looker = yard.looker();
    looker.at(1, 1, 0, ShadeScene.NOBODY);
    double[] open = new double[12];
    java.util.Arrays.fill(open, 1);
    List<LightOfDays.Arriving> light = yard.dailyLight(looker, open);
    for (int m = 0; m < 12; m++) {
      assertEquals(8.0 + m, light.get(m).direct() + light.get(m).diffuse(), 1e-6, "month " + m);
      assertEquals((8.0 + m) / 3.6 * 7.265, light.get(m).mol(), 1e-6, "month " + m);
    }
    assertTrue(sun(lot(5, 5), List.of()).dailyLight(looker, open).isEmpty());
  }
}
