package yardloom.water.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.UnitSystem;

/** What a trench is called on the map: zones and size, nothing else. */
class TrenchTextTest {
  private static String text(int... zonesThenSizes) {
    List<PipeSize> sizes = PipeSize.shipped(UnitSystem.US);
    List<Trenches.Pipe> pipes = new ArrayList<>();
    for (int i = 0; i < zonesThenSizes.length; i += 2) {
      pipes.add(new Trenches.Pipe(zonesThenSizes[i], sizes.get(zonesThenSizes[i + 1])));
    }
    Line way = Line.between(Point.metres(0, 0), Point.metres(3, 4));
    return new Trenches.Trench(way, pipes, List.of()).text();
  }

  @Test
  void zonesInARow_areOneRun_andSizesStandApart() {
    assertEquals("Z1: 1/2 in", text(1, 0));
    assertEquals("Z1, 2: 1/2 in", text(1, 0, 2, 0));
    assertEquals("Z1-3, 5: 1/2 in; Z4: 3/4 in", text(1, 0, 2, 0, 3, 0, 4, 1, 5, 0));
  }
}
