package yardloom.materials.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Volume;

class OrderingLoadsTest {
  /** A rest of up to a tenth of a load goes on the others; what is less than one load is one. */
  @ParameterizedTest
  @CsvSource({
    "20.5, 10, 2",
    "21, 10, 2",
    "21.5, 10, 3",
    "11, 10, 1",
    "11.5, 10, 2",
    "0.5, 10, 1",
    "20, 10, 2",
    "6.5, 6, 1",
    "7, 6, 2",
    "0, 10, 0"
  })
  void loads_areWhole(double order, double truck, int loads) {
    assertEquals(loads, Ordering.loads(Volume.cubicYards(order), truck));
  }
}
