package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

class WayNetworkTest {
  private static final Length REACH = Length.metres(0.6);

  private static Point p(double x, double y) {
    return Point.metres(x, y);
  }

  private static WayNetwork.Way path(Point... points) {
    Line line = Line.through(List.of(points));
    return new WayNetwork.Way(PathStrip.centred(line, Length.metres(1)), Optional.of(line));
  }

  private static Shape bed(double x, double y) {
    return Shape.rectangle(p(x, y), Length.metres(1), Length.metres(1));
  }

  @Test
  void to_bedBesideTheMiddle_isTheLengthAlongThePath() {
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(20, 0))), p(0, 0), REACH);
    assertEquals(9, net.to(bed(9, 0.5), REACH).get().length().metres(), 1e-6);
    assertTrue(net.to(bed(9, 2), REACH).isEmpty(), "1.5 m from the path");
  }

  @Test
  void to_branchThatEndsAtThePathsEdge_isJoined() {
    // The branch starts at the edge of the main path, half a metre off its middle line.
    WayNetwork net =
        new WayNetwork(
            List.of(path(p(0, 0), p(20, 0)), path(p(10, 0.5), p(10, 10))), p(0, 0), REACH);
    assertEquals(10 + 10, net.to(bed(10.5, 9.999), REACH).get().length().metres(), 0.01);
  }

  @Test
  void to_loop_takesTheShorterWay() {
    WayNetwork net =
        new WayNetwork(
            List.of(path(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0))), p(2, 0), REACH);
    assertEquals(2 + 7, net.to(bed(-1.5, 7), REACH).get().length().metres(), 1e-4);
  }

  @Test
  void to_acrossASurface_isStraight() {
    Shape yard = Shape.rectangle(p(10, -5), Length.metres(10), Length.metres(10));
    WayNetwork net =
        new WayNetwork(
            List.of(
                path(p(0, 0), p(10, 0)),
                new WayNetwork.Way(yard, Optional.empty()),
                path(p(20, 4), p(30, 4))),
            p(0, 0),
            REACH);
    double across = Math.hypot(10, 4);
    assertEquals(10 + across + 5, net.to(bed(25, 4.5), REACH).get().length().metres(), 0.6);
  }

  @Test
  void to_pathThatDoesNotTouch_isNoWay() {
    WayNetwork net =
        new WayNetwork(List.of(path(p(0, 0), p(5, 0)), path(p(7, 0), p(12, 0))), p(0, 0), REACH);
    assertTrue(net.to(bed(10, 0.5), REACH).isEmpty());
  }

  @Test
  void to_startFarFromAnyWay_isNoWay() {
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(5, 0))), p(0, 9), REACH);
    assertTrue(net.to(bed(2, 0.5), REACH).isEmpty());
  }

  @Test
  void to_noWaysAtAll_isNoWay() {
    assertTrue(new WayNetwork(List.of(), p(0, 0), REACH).to(bed(0, 0), REACH).isEmpty());
  }

  @Test
  void to_fromAHeapBesideThePath_isCountedFromTheHeapsMiddle() {
    Shape heap = Shape.rectangle(p(0, 0.5), Length.metres(2), Length.metres(4));
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(20, 0))), heap, REACH);
    // Its middle lies 2.5 m off the path's middle line, a metre along it.
    assertEquals(2.5 + 8, net.to(bed(9, 0.5), REACH).get().length().metres(), 1e-6);
  }

  @Test
  void isCutOff_heapAwayFromAllWays_isTrue() {
    Shape heap = Shape.rectangle(p(0, 5), Length.metres(2), Length.metres(4));
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(20, 0))), heap, REACH);
    assertTrue(net.isCutOff());
    assertTrue(net.to(bed(9, 0.5), REACH).isEmpty());
  }

  @Test
  void to_lShapedPath_goesRoundItsBend() {
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(12, 0), p(12, 30))), p(0, 0), REACH);
    Route way = net.to(bed(12.5, 20), REACH).get();
    assertEquals(List.of(p(0, 0), p(12, 0), p(12, 20)), way.bends());
    assertEquals(12 + 20, way.length().metres(), 1e-9);
  }

  @Test
  void halfwayAlong_lShapedPath_isHalfItsLength() {
    Line middle = Line.through(List.of(p(5, 0), p(12, 0), p(12, 30)));
    WayNetwork net =
        new WayNetwork(
            List.of(
                path(p(0, 0), p(5, 0)),
                new WayNetwork.Way(
                    PathStrip.centred(middle, Length.metres(1)), Optional.of(middle))),
            p(0, 0),
            REACH);
    // 5 m to its beginning, then half of 7 + 30 m: 11.5 m up its second leg.
    Route way = net.halfwayAlong(middle).get();
    assertEquals(5 + 18.5, way.length().metres(), 1e-6);
    assertEquals(11.5, way.end().y().metres(), 1e-6);
    assertTrue(net.halfwayAlong(Line.between(p(0, 0), p(1, 0))).isEmpty(), "not of the network");
  }

  @Test
  void to_acrossAnLShapedSurface_turnsAtItsInnerCorner() {
    Shape yard = Shape.polygon(List.of(p(0, 0), p(10, 0), p(10, 4), p(4, 4), p(4, 10), p(0, 10)));
    WayNetwork net =
        new WayNetwork(
            List.of(new WayNetwork.Way(yard, Optional.empty()), path(p(2, 10), p(2, 20))),
            p(10, 2),
            REACH);
    // From (10, 2) to the inner corner (4, 4) and on to (2, 10), never over the ground between.
    double round = Math.hypot(6, 2) + Math.hypot(2, 6);
    Route way = net.to(bed(2.5, 15), REACH).get();
    assertEquals(round + 5, way.length().metres(), 1e-6);
    assertTrue(way.bends().contains(p(4, 4)), way::toString);
  }

  /** Not by an end of the path, (10, 2), and along it, which is 18.2 m. */
  @Test
  void halfwayAlong_pathOverOpenGround_isReachedStraight() {
    Shape yard = Shape.rectangle(p(0, 0), Length.metres(20), Length.metres(20));
    WayNetwork.Way over = path(p(10, 2), p(10, 18));
    WayNetwork net =
        new WayNetwork(List.of(new WayNetwork.Way(yard, Optional.empty()), over), p(0, 0), REACH);
    Route way = net.halfwayAlong(over.middle().orElseThrow()).orElseThrow();
    assertEquals(Math.hypot(10, 10), way.length().metres(), 1e-6);
  }

  @Property(tries = 200, seed = "20261125")
  void to_anyPathsAndBed_isNeverShorterThanTheStraightLine(
      @ForAll @Size(min = 2, max = 8) List<@IntRange(min = 0, max = 899) Integer> bends,
      @ForAll @IntRange(min = 0, max = 899) int bedAt) {
    List<WayNetwork.Way> ways = new ArrayList<>();
    for (int i = 1; i < bends.size(); i++) {
      Point a = onGrid(bends.get(i - 1));
      Point b = onGrid(bends.get(i));
      if (!a.equals(b)) {
        ways.add(path(a, b));
      }
    }
    ways.add(
        new WayNetwork.Way(
            Shape.rectangle(p(10, 10), Length.metres(6), Length.metres(6)), Optional.empty()));
    Point start = onGrid(bends.get(0));
    Point corner = onGrid(bedAt);
    Shape goal = bed(corner.x().metres(), corner.y().metres());
    Optional<Route> way = new WayNetwork(ways, start, REACH).to(goal, REACH);
    Statistics.label("way").collect(way.isPresent());
    if (way.isPresent()) {
      Route r = way.get();
      assertEquals(start, r.bends().get(0));
      assertTrue(r.length().metres() >= start.distance(r.end()).metres() - 1e-9, r::toString);
      // It ends beside the bed: half a path's width and the reach away at most.
      assertTrue(goal.distance(r.end()).metres() <= 0.5 + 0.6 + 1e-3, r::toString);
    }
  }

  private static Point onGrid(int cell) {
    return p(cell % 30, cell / 30);
  }
}
