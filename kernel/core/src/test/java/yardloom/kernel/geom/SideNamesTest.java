package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the sides of a lot with four corners are called, whichever corner is said first. */
class SideNamesTest {
  private static List<String> names(List<Point> corners, int first) {
    List<Point> turned = new ArrayList<>(corners);
    Collections.rotate(turned, -first);
    return Sides.namesOfFour(turned);
  }

  /**
   * 20 by 30 m, counter-clockwise from its lower left corner, turned to the left: by 30° its first
   * side still faces more to the south than to the east, by 60° more to the east, by 200° to the
   * north and a little to the west.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, south east north west", "0, 1, east north west south", "0, 2, north west south east",
    "0, 3, west south east north", "30, 0, south east north west", "60, 0, east north west south",
    "60, 3, south east north west", "200, 0, north west south east", "-40, 2, north west south east"
  })
  void sides_areCalledByWhereTheyFace(double turnDeg, int first, String expected) {
    double sin = Math.sin(Math.toRadians(turnDeg));
    double cos = Math.cos(Math.toRadians(turnDeg));
    List<Point> corners = new ArrayList<>();
    for (double[] c : new double[][] {{0, 0}, {20, 0}, {20, 30}, {0, 30}}) {
      corners.add(Point.metres(c[0] * cos - c[1] * sin, c[0] * sin + c[1] * cos));
    }
    assertEquals(List.of(expected.split(" ")), names(corners, first));
  }

  /**
   * A square on its corner: its sides face between two directions, and the lower left one is called
   * the south side, so that its neighbour on the lower right is the east side.
   */
  @ParameterizedTest
  @CsvSource({
    "0, east north west south",
    "1, north west south east",
    "2, west south east north",
    "3, south east north west"
  })
  void squareOnItsCorner_isCalledAlikeFromEveryCorner(int first, String expected) {
    List<Point> corners =
        List.of(Point.metres(0, -1), Point.metres(1, 0), Point.metres(0, 1), Point.metres(-1, 0));
    assertEquals(List.of(expected.split(" ")), names(corners, first));
  }
}
