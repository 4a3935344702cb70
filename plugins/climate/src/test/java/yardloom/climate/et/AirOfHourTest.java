package yardloom.climate.et;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import yardloom.climate.radiation.formula.SolarHour;

class AirOfHourTest {
  private static double cloud(double sine) {
    return new AirOfHour(new SolarHour(sine, 1.4), 200, 20, 10, 2, 0.5).cloud(0.77);
  }

  /**
   * Below 0.3 rad, a sine of 0.2955, radiation does not tell of cloud (ASCE-EWRI, 2005, page 34,
   * recalled): the last hour's holds.
   */
  @Test
  void lowSun_keepsTheLastCloud() {
    assertEquals(0.77, cloud(0.295));
    assertNotEquals(0.77, cloud(0.296), 0.01);
  }
}
