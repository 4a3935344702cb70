package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Published figures that pipes take over as they are. */
class PublishedRowsTest {
  /** HF-29, EPANET 2.2 User Manual, Table 3.2: plastic 0.005 × 10⁻³ ft (read). */
  @Test
  void plastic_isAsRoughAsTheManualSays() {
    assertEquals(0.005, 1000 * DarcyWeisbach.PLASTIC_M / 0.3048, 0.0001);
  }
}
