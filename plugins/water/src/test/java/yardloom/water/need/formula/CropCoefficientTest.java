package yardloom.water.calc.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CropCoefficientTest {
  /** H13: FAO-56 equation 62 and its Taipei example (from memory). */
  @Test
  void middleCoefficient_inStillDampAir_isLower() {
    assertEquals(1.07, CropCoefficient.adjusted(1.20, 1.3, 75, 2), 0.005);
  }

  /** H14: UCCE and DWR guide of 2000 (read): species 0.5, density 1.0, microclimate 1.2. */
  @Test
  void landscapeCoefficient_isTheProduct() {
    assertEquals(0.60, CropCoefficient.landscape(0.5, 1.0, 1.2), 1e-6);
  }
}
