package yardloom.climate.et.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.radiation.formula.SolarDay;

/**
 * Station days of The ASCE Standardized Reference Evapotranspiration Equation, ASCE-EWRI, 2005, as
 * REF-ET 4.1 (University of Idaho) and WSWUP/RefET (Apache-2.0) print them: short grass by our
 * equation, alfalfa by our intermediates with the standard's constants (1600 and 0.38). Its full
 * clear-sky radiation is written out here.
 */
class StandardizedTest {
  private static final double LATITUDE = 39.4575;
  private static final double ELEVATION_M = 1208.5;

  private record Day(
      int day, double maxC, double minC, double solarMj, double windMs, double vapourKpa) {
    double pressureKpa() {
      return Air.pressureKpa(ELEVATION_M);
    }

    double clearSkyMj() {
      double phi = Math.toRadians(LATITUDE);
      double sine =
          Math.sin(0.85 + 0.3 * phi * Math.sin(2 * Math.PI / 365 * day - 1.39) - 0.42 * phi * phi);
      double water = 0.14 * vapourKpa * pressureKpa() + 2.1;
      double kb =
          0.98 * Math.exp(-0.00146 * pressureKpa() / sine - 0.075 * Math.pow(water / sine, 0.4));
      double kd = kb >= 0.15 ? 0.35 - 0.36 * kb : 0.18 + 0.82 * kb;
      return (kb + kd) * SolarDay.of(phi, day).radiationMj();
    }

    double net() {
      double clear = clearSkyMj();
      return Radiation.netShortwave(solarMj)
          - Radiation.netLongwave(maxC, minC, vapourKpa, solarMj, clear);
    }

    double grass() {
      return new PenmanMonteith(
              (maxC + minC) / 2,
              net(),
              0,
              windMs,
              Air.meanSaturationKpa(maxC, minC),
              vapourKpa,
              pressureKpa())
          .et0MmPerDay();
    }

    double alfalfa() {
      return tall((maxC + minC) / 2, net(), Air.meanSaturationKpa(maxC, minC), 1600, 0.38);
    }

    double tall(double meanC, double energyMj, double saturationKpa, double cn, double cd) {
      double slope = Air.slopeKpaPerC(meanC);
      double gamma = Air.psychrometricKpaPerC(pressureKpa());
      double wind = gamma * cn / (meanC + 273) * windMs * (saturationKpa - vapourKpa);
      return (0.408 * slope * energyMj + wind) / (slope + gamma * (1 + cd * windMs));
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "G06, 105, 12.77, -7.21, 27.32, 1.94, -13.5, 3.57, 4.70",
    "G07, 121, 27.67, 6.38, 29.58, 1.29, -3.11, 5.44, 6.86",
    "G08, 196, 33.72, 13.82, 31.23, 1.49, 5.95, 6.75, 8.43"
  })
  void stationDay_ofFallon_equalsRefEt(
      String id,
      int day,
      double maxC,
      double minC,
      double solarMj,
      double wind,
      double dewC,
      double grass,
      double alfalfa) {
    double wind2 = Fao56Test.windAt2m(wind, 3);
    Day station = new Day(day, maxC, minC, solarMj, wind2, Air.saturationKpa(dewC));
    assertEquals(grass, station.grass(), 0.02, id);
    assertEquals(alfalfa, station.alfalfa(), 0.02, id);
  }

  /** G10: 1 July 2015 in the units of the station: 674.07 ly, 4.80 mph at 3 m. */
  @Test
  void dayWithExactInputs_equalsPublished() {
    double wind = Fao56Test.windAt2m(4.80 * 0.44704, 3);
    double solar = 674.07 * 0.041868;
    double max = (102.80 - 32) / 1.8;
    double min = (66.65 - 32) / 1.8;
    Day day = new Day(182, max, min, solar, wind, Air.saturationKpa((49.84 - 32) / 1.8));
    assertEquals(7.942, day.grass(), 0.005, "G10");
    assertEquals(10.571, day.alfalfa(), 0.005, "G10");
  }

  /** G12: the hour of 18:00 UT, whose net radiation is published as 1.7427 MJ (G11). */
  @Test
  void hour_equalsPublished() {
    double wind = Fao56Test.windAt2m(3.33 * 0.44704, 3);
    double meanC = (91.80 - 32) / 1.8;
    Day hour = new Day(182, meanC, meanC, 0, wind, Air.saturationKpa((49.36 - 32) / 1.8));
    double saturation = Air.saturationKpa(meanC);
    assertEquals(0.6065, hour.tall(meanC, 0.9 * 1.7427, saturation, 37, 0.24), 0.001, "G12");
    assertEquals(0.7202, hour.tall(meanC, 0.96 * 1.7427, saturation, 66, 0.25), 0.001, "G12");
  }
}
