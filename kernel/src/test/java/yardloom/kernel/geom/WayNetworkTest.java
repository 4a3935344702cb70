package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
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
    assertEquals(9, net.to(bed(9, 0.5), REACH).get().metres(), 1e-6);
    assertTrue(net.to(bed(9, 2), REACH).isEmpty(), "1.5 m from the path");
  }

  @Test
  void to_branchThatEndsAtThePathsEdge_isJoined() {
    // The branch starts at the edge of the main path, half a metre off its middle line.
    WayNetwork net =
        new WayNetwork(
            List.of(path(p(0, 0), p(20, 0)), path(p(10, 0.5), p(10, 10))), p(0, 0), REACH);
    assertEquals(10 + 10, net.to(bed(10.5, 9.999), REACH).get().metres(), 0.01);
  }

  @Test
  void to_loop_takesTheShorterWay() {
    WayNetwork net =
        new WayNetwork(
            List.of(path(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0))), p(2, 0), REACH);
    assertEquals(2 + 7, net.to(bed(-1.5, 7), REACH).get().metres(), 1e-4);
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
    assertEquals(10 + across + 5, net.to(bed(25, 4.5), REACH).get().metres(), 0.6);
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
    assertEquals(2.5 + 8, net.to(bed(9, 0.5), REACH).get().metres(), 1e-6);
  }

  @Test
  void isCutOff_heapAwayFromAllWays_isTrue() {
    Shape heap = Shape.rectangle(p(0, 5), Length.metres(2), Length.metres(4));
    WayNetwork net = new WayNetwork(List.of(path(p(0, 0), p(20, 0))), heap, REACH);
    assertTrue(net.isCutOff());
    assertTrue(net.to(bed(9, 0.5), REACH).isEmpty());
  }
}
