package yardloom.climate.et;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AirOfDayTest {
  /** FAO-56, example 15: Lyon, 45°43' N, July, 26.6 and 14.8 °C: 0.16 √11.8 × 40.6 = 22.3 MJ/m². */
  @Test
  void radiationByTheRange_ofLyonInJuly() {
    AirOfDay lyon = new AirOfDay(Math.toRadians(45 + 43 / 60.0), 200, 196, 26.6, 14.8, 12, 2, 0);
    assertEquals(22.3, lyon.solarFromRangeMj(), 0.05);
  }
}
