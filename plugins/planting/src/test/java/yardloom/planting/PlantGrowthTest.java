package yardloom.planting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.scope.BedScope;
import yardloom.planting.placing.PlacingWords;
import yardloom.planting.placing.PlantPlaces;

/**
 * What many plants in one bed cost, all calculators, checks, tables and painters of this plugin
 * together, in processor time: 4,000 under two seconds, and growth of n log n, by which four times
 * as many take 4.7 times as long. Measured, so not in every build.
 */
@Tag("heavy")
class PlantGrowthTest {
  private static final com.sun.management.OperatingSystemMXBean MACHINE =
      (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** A square of so many plants a foot apart each way. */
  private static PlantYard square(String how, int side) {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost("04-25", "10-14");
    BedScope bed = yard.bed("b", 0, 0, side, side);
    switch (how) {
      case "rows" -> yard.planted(bed, "chives", 1);
      case "mix" -> {
        PlacingWords.plantMix(bed, "chives", 0.5, null, null);
        PlacingWords.plantMix(bed, "garlic chives", 0.5, null, null);
      }
      default -> throw new IllegalArgumentException(how);
    }
    yard.tree("t", "apple (semi-dwarf)", side / 2.0, side / 2.0, 1);
    return yard;
  }

  private static double seconds(PlantYard yard) {
    return DoubleStream.generate(
            () -> {
              long from = MACHINE.getProcessCpuTime();
              yard.outcome();
              return (MACHINE.getProcessCpuTime() - from) / 1e9;
            })
        .limit(3)
        .min()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"rows", "mix"})
  void fourThousandPlants_takeUnderTwoSeconds_andGrowthIsNLogN(String how) {
    seconds(square(how, 20));
    StringBuilder table = new StringBuilder(how);
    double before = 0;
    for (int side : new int[] {32, 64, 128}) {
      double now = seconds(square(how, side));
      table.append(String.format("; %d plants %.2f s", side * side, now));
      if (side == 64) {
        assertTrue(now < 2, table.toString());
      }
      // A quarter of a second for what does not grow; the square would be sixteen times.
      assertTrue(side == 32 || now < 0.25 + 8 * before, table.toString());
      before = now;
    }
    System.out.println(table);
  }

  /** The yards of the other test hold what they say. */
  @Test
  void squaresAreFull() {
    int found =
        square("rows", 64).outcome().results().get(PlantPlaces.KEY).plantings().stream()
            .mapToInt(p -> p.at().size())
            .sum();
    assertEquals(64 * 64, found, 30);
  }
}
