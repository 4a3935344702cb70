package yardloom.water.route;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** A tree of trenches by hand: tap, a corner, a fork, and a feed at the end of each branch. */
class LineTreeTest {
  /** 0 the tap, 1 a corner 3 m on, 2 a fork 2 m up, 3 a feed 4 m right, 4 a feed 5 m up. */
  private static LineTree tree() {
    LineTree.Builder builder =
        new LineTree.Builder(List.of(at(0, 0), at(3, 0), at(3, 2), at(7, 2), at(3, 7)));
    builder.add("herbs", List.of(0, 1, 2, 3));
    builder.add("berries", List.of(0, 1, 2, 4));
    return builder.build();
  }

  private static Point at(double x, double y) {
    return Point.metres(x, y);
  }

  private static List<Long> lengths(List<LineTree.Run> runs) {
    return runs.stream().map(r -> Math.round(r.way().length().metres())).toList();
  }

  @Test
  void runs_endAtForksAndFeeds_andKnowTheRunBefore() {
    List<LineTree.Run> runs = tree().runs(List.of("berries", "herbs"));
    assertEquals(List.of(5L, 4L, 5L), lengths(runs));
    assertEquals(List.of(-1, 0, 0), runs.stream().map(LineTree.Run::from).toList());
    assertEquals(
        List.of(Optional.empty(), Optional.of("herbs"), Optional.of("berries")),
        runs.stream().map(LineTree.Run::feed).toList());
  }

  /** With one branch left out there is no fork, and all is one run of 10 m. */
  @Test
  void runs_ofOneFeed_areOne_andUnknownFeedsHaveNone() {
    List<LineTree.Run> one = tree().runs(List.of("berries", "pond"));
    assertEquals(List.of(10L), lengths(one));
    assertEquals(Optional.of("berries"), one.get(0).feed());
    assertTrue(tree().runs(List.of("pond")).isEmpty());
  }

  /** A bed that lies on the way to another: the first run ends at it. */
  @Test
  void feedOnTheWay_endsARun() {
    LineTree.Builder builder = new LineTree.Builder(List.of(at(0, 0), at(3, 0), at(3, 2)));
    builder.add("near", List.of(0, 1));
    builder.add("far", List.of(0, 1, 2));
    List<LineTree.Run> runs = builder.build().runs(List.of("far", "near"));
    assertEquals(List.of(3L, 2L), lengths(runs));
    assertEquals(List.of(-1, 0), runs.stream().map(LineTree.Run::from).toList());
    assertEquals(Optional.of("near"), runs.get(0).feed());
  }

  @Test
  void trenches_areTheRunsOfAll() {
    assertEquals(3, tree().trenches().size());
    assertTrue(tree().reaches("herbs"));
    assertFalse(tree().reaches("pond"));
  }

  /** An elbow is needed at a right angle and at 45°, not at 20°, and at no end. */
  @Test
  void bends_areThoseOfMoreThanThirtyDegrees() {
    assertEquals(0, LineTree.bends(Line.between(at(0, 0), at(5, 0))));
    assertEquals(2, LineTree.bends(Line.through(List.of(at(0, 0), at(3, 0), at(3, 2), at(7, 2)))));
    assertEquals(1, LineTree.bends(Line.through(List.of(at(0, 0), at(3, 0), at(5, 2)))));
    double up = 2 * Math.tan(Math.toRadians(20));
    assertEquals(0, LineTree.bends(Line.through(List.of(at(1, 4), at(4, 4), at(6, 4 + up)))));
    assertEquals(1, LineTree.bends(Line.through(List.of(at(1, 1), at(2, 3), at(0, 4)))));
  }

  /** All corners of a box; of 40 on a curve each third: 14. */
  @Test
  void corners_areAtMostSixteenOfAPart() {
    assertEquals(
        4, Corners.of(Shape.rectangle(at(0, 0), Length.metres(2), Length.metres(1))).size());
    assertEquals(16, Corners.of(round(16)).size());
    assertEquals(9, Corners.of(round(17)).size());
    assertEquals(14, Corners.of(round(40)).size());
  }

  private static Shape round(int corners) {
    return Shape.polygon(
        IntStream.range(0, corners)
            .mapToObj(
                i -> at(Math.cos(i * 2 * Math.PI / corners), Math.sin(i * 2 * Math.PI / corners)))
            .toList());
  }
}
