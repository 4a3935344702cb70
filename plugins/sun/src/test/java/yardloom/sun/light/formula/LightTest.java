package yardloom.sun.light.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;
import yardloom.sun.shade.Scenes;
import yardloom.sun.shade.ShadeScene;

/** Daily light and clear-sky radiation: rows I01 to I06, F06, F07, G09, G11. */
class LightTest {
  @Test
  void photonFluxOverHours_givesDailyLight() {
    assertEquals(28.8, DailyLight.ofPhotonFlux(500, 16), 0.01, "I01");
    assertEquals(0.0864, DailyLight.ofPhotonFlux(1, 24), 1e-12, "I02");
  }

  @Test
  void globalRadiation_givesDailyLightAsPublished() {
    assertEquals(36.3, DailyLight.ofKwh(5), 0.1, "I03, Faust and Logan 2018");
    assertEquals(40.4, DailyLight.ofMegajoules(20), 0.2, "I05");
    // I04: the older factor of 7.058 mol/kWh would give 35.3; ours must not.
    assertTrue(DailyLight.ofKwh(5) - 5 * 7.058 > 0.9, "I04");
  }

  /** I06: an open sunny summer day brings 50 to 60 mol, the United States 3 to 60 over the year. */
  @Test
  void openGround_staysInThePublishedBand() {
    SunYear year = new SunYear(-105);
    double latitude = Math.toRadians(40);
    LightOfDays light =
        new LightOfDays(
            new ClearSky[] {new ClearSky(0, 1.5), new ClearSky(0, 1.5)},
            latitude,
            year,
            288,
            171,
            354);
    SunEngine engine = new SunEngine(Scenes.scene(40), year, 288);
    SunEngine.Looker looker =
        engine.looker(
            DayGroups.season(java.time.MonthDay.of(4, 1), java.time.MonthDay.of(9, 30)), 171, 354);
    looker.at(0, 0, 0, ShadeScene.NOBODY);
    double[] open = {1, 1};
    double june = light.at(looker, open).get(0);
    double december = light.at(looker, open).get(1);
    assertTrue(june >= 50 && june <= 62, "June: " + june);
    assertTrue(december >= 3 && december <= 25, "December: " + december);
    assertEquals(DailyLight.ofMegajoules(light.open(0)), june, 0.3, "nothing hides the open");
  }

  /** F06, F07: example 8 of FAO-56, 3 September at 20° S. */
  @Test
  void radiationAboveAir_equalsFaoExample() {
    assertEquals(0.985, ClearSky.distanceFactor(245), 0.0005, "F06");
    assertEquals(32.2, ClearSky.aboveAir(Math.toRadians(-20), 0.120, 245), 0.05, "F07");
  }

  @Test
  void simpleClearSky_equalsProgramOutput() {
    // G09: Ra 41.676 at 1208.5 m gives 32.26 by the simple form.
    assertEquals(32.26, ClearSky.simple(41.676, 1208.5), 0.01, "G09");
  }

  /** G11: hour around 18:00 UT on 2015-07-01 at Fallon: Ra 4.306, full clear sky 3.351 MJ. */
  @Test
  void hourOfClearSky_equalsProgramOutput() {
    int day = 181;
    double sine = 4.306 / (4.92 * ClearSky.distanceFactor(day));
    ClearSky.Hour hour = new ClearSky(1208.5, 1.199010).hour(sine, day);
    assertEquals(3.351, hour.beam() + hour.diffuse(), 0.005, "G11");
  }

  /** G09: the day's sum by the standard's one mean sine is 31.55; ours adds up the hours. */
  @Test
  void dayOfClearSky_isNearTheStandardsDailyForm() {
    LightOfDays light =
        new LightOfDays(
            new ClearSky[] {new ClearSky(1208.5, 1.220667)},
            Math.toRadians(39.4575),
            new SunYear(-118.8),
            288,
            181);
    assertEquals(31.55, light.open(0), 0.02 * 31.55, "G09");
  }

  @ParameterizedTest(name = "polar night at {0}°")
  @CsvSource({"75", "90"})
  void polarNight_bringsNothing(double latitude) {
    assertEquals(0, ClearSky.aboveAir(Math.toRadians(latitude), Math.toRadians(-23), 354), 1e-12);
  }

  /**
   * Madison, Wisconsin, in June: clearness 0.55 gives a diffuse share of 0.38 (Duffie, Beckman,
   * Solar Engineering of Thermal Processes, example 2.12.1; from memory). Clear places have less.
   */
  @Test
  void diffuseShare_fallsWithClearness() {
    double longDay = Math.toRadians(114);
    assertEquals(0.38, DiffuseShare.of(0.55, longDay), 0.005);
    double before = 1.01;
    for (double k = 0; k <= 1; k += 0.05) {
      for (double sunset : new double[] {Math.toRadians(70), longDay}) {
        double share = DiffuseShare.of(k, sunset);
        assertTrue(share > 0.1 && share <= 1, k + ": " + share);
      }
      assertTrue(DiffuseShare.of(k, longDay) <= before, "at " + k);
      before = DiffuseShare.of(k, longDay);
    }
  }

  @Test
  void givenRadiation_arrivesInFullInTheOpenAndByItsPartsInTheShade() {
    double latitude = Math.toRadians(40);
    SunYear year = new SunYear(-105);
    double declination = StrictMath.atan(year.tan(171));
    double above = ClearSky.aboveAir(latitude, declination, 171);
    double sunset = DayLength.sunsetHourAngle(latitude, declination);
    LightOfDays light =
        new LightOfDays(new ClearSky[] {new ClearSky(0, 1.5)}, latitude, year, 288, 171)
            .measured(new double[] {18}, new double[] {above}, new double[] {sunset});
    assertEquals(18, light.open(0), 1e-9);
    SunEngine.Looker looker =
        new SunEngine(Scenes.scene(40), year, 288)
            .looker(
                DayGroups.season(java.time.MonthDay.of(4, 1), java.time.MonthDay.of(9, 30)), 171);
    looker.at(0, 0, 0, ShadeScene.NOBODY);
    assertEquals(
        DailyLight.ofMegajoules(18), light.at(looker, new double[] {1}).get(0), 0.005 * 36.3);
    double dark = light.at(looker, new double[] {0}).get(0);
    double share = DiffuseShare.of(18 / above, sunset);
    assertEquals(DailyLight.ofMegajoules(18 * (1 - share)), dark, 0.005 * 36.3);
  }
}
