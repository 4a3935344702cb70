package yardloom.climate.radiation.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The sun of an hour, and clear skies. */
class SunAboveTheAirTest {
  private static final double N_DIAYE = Math.toRadians(16 + 13 / 60.0);
  private static final double N_DIAYE_EAST = -(16 + 15 / 60.0);

  /**
   * FAO-56, example 19 (from memory): N'Diaye, 16°13' N 16°15' W, 1 October, 14 to 15 h local time,
   * which is an hour behind universal time: 3.543 MJ/m² above the air.
   */
  @Test
  void hour_ofNDiaye_isThatOfThePaper() {
    SolarHour hour = SolarHour.of(N_DIAYE, N_DIAYE_EAST, 274, 15.5);
    assertEquals(3.543, hour.radiationMj(), 0.002);
    // δ −0.0753, ω 0.682: sin φ sin δ + cos φ cos δ cos ω = −0.0210 + 0.9575 × 0.7763 = 0.7223
    assertEquals(0.7223, hour.sine(), 5e-4);
  }

  /** All hours of a day are the day: equations 21 and 28 integrate the same sun. */
  @Test
  void hours_addUpToTheDay() {
    for (int day : new int[] {15, 105, 196, 288}) {
      double sum = 0;
      for (int h = 0; h < 24; h++) {
        sum += SolarHour.of(N_DIAYE, N_DIAYE_EAST, day, h + 0.5).radiationMj();
      }
      assertEquals(SolarDay.of(N_DIAYE, day).radiationMj(), sum, 1e-3 * sum, "day " + day);
    }
  }

  @Test
  void night_hasNothing_andTheSunBelowTheHorizon() {
    SolarHour night = SolarHour.of(N_DIAYE, N_DIAYE_EAST, 274, 1.5);
    assertEquals(0, night.radiationMj());
    assertEquals(true, night.sine() < 0);
    assertEquals(0, ClearSky.hourMj(night, 101.3, 20));
    // North of the circle the winter day has no sun at all, at noon neither.
    assertEquals(0, SolarHour.of(Math.toRadians(75), 0, 355, 12).radiationMj());
  }

  /**
   * ASCE-EWRI, appendix D. Sine 0.8, 100 kPa, 20 mm of water: beam 0.98 exp(−0.1825 − 0.075 ×
   * 25^0.4) = 0.98 × exp(−0.4543) = 0.6222; sky 0.35 − 0.36 × 0.6222 = 0.1260; in all 0.7482.
   */
  @Test
  void clearHour_isBeamAndSkyLight() {
    assertEquals(3 * 0.7482, ClearSky.hourMj(new SolarHour(0.8, 3), 100, 20), 2e-4);
  }

  /**
   * Sine 0.05: beam 0.98 exp(−2.92 − 0.075 × 400^0.4) = 0.02319, which is below 0.15: sky 0.18 +
   * 0.82 × 0.02319 = 0.1990; in all 0.2222. A sine of 0.002 is held to 0.01, with 90 kPa and 10 mm
   * 0.98 exp(−13.14 − 1.19) = 6 × 10⁻⁷ and sky 0.18.
   */
  @Test
  void lowSun_hasMostlySkyLight() {
    assertEquals(2 * 0.2222, ClearSky.hourMj(new SolarHour(0.05, 2), 100, 20), 1e-4);
    assertEquals(2 * 0.18, ClearSky.hourMj(new SolarHour(0.002, 2), 90, 10), 1e-4);
    assertEquals(0, ClearSky.hourMj(new SolarHour(0, 2), 90, 10));
  }

  /**
   * Latitude 0.6, day 172: mean sine sin(0.85 + 0.18 sin(2π/365 × 172 − 1.39) − 0.42 × 0.36) =
   * sin(0.8788) = 0.7700; 95 kPa and 25 mm: beam 0.98 exp(−0.1801 − 0.075 × 32.47^0.4) = 0.6053,
   * sky 0.1321; in all 0.7374. In polar night the sine is held to 0.1.
   */
  @Test
  void clearDay_goesByTheMeanSun() {
    SolarDay day = new SolarDay(1, 0.4, 1.8, 40);
    assertEquals(40 * 0.7374, ClearSky.dayMj(day, 0.6, 172, 95, 25), 40 * 2e-4);
    // sin(0.85 − 0.36 − 0.605) is below nothing; at 0.1: 0.98 exp(−1.387 − 0.075 × 250^0.4) etc.
    double beam = 0.98 * Math.exp(-0.00146 * 95 / 0.1 - 0.075 * Math.pow(250, 0.4));
    double all = beam >= 0.15 ? beam + 0.35 - 0.36 * beam : beam + 0.18 + 0.82 * beam;
    assertEquals(5 * all, ClearSky.dayMj(new SolarDay(1, -0.4, 0.1, 5), 1.2, 355, 95, 25), 1e-9);
  }

  /** 40 MJ evaporate 16.32 mm; a surface square to the sun takes 4.92 MJ an hour at distance 1. */
  @Test
  void day_readsAsADepthOfWater_andSquareToTheSun() {
    SolarDay day = new SolarDay(1.02, 0.4, 1.8, 40);
    assertEquals(16.32, day.radiationMm(), 1e-9);
    assertEquals(4.92 * 1.02, day.normalMjPerHour(), 1e-9);
  }

  /**
   * Black body 4.903e-9 / 24 × 298.16⁴ = 1.6145 MJ/m² an hour at 25 °C; at 2.25 kPa (0.34 − 0.14 ×
   * 1.5) = 0.13, and half the cloud factor: 0.1049. Cloud: 0.8 of a clear sky is 1.35 × 0.8 − 0.35
   * = 0.73, held from 0.055 to 1.
   */
  @Test
  void cloudAndLongwave_ofAnHour() {
    assertEquals(0.1049, Radiation.netLongwaveOfHour(25, 2.25, 0.5), 1e-4);
    assertEquals(0.73, Radiation.cloud(2.4, 3), 1e-9);
    assertEquals(0.055, Radiation.cloud(0.1, 3), 1e-9);
    assertEquals(1, Radiation.cloud(4, 3), 1e-9);
    assertEquals(1, Radiation.cloud(4, 0), 1e-9);
  }
}
