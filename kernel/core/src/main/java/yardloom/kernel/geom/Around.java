package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * All ground within a distance of a line, in pieces: a rectangle per segment, a fan at the outer
 * side of each bend, a disc at each free end.
 *
 * <p>Exact but for the chords of the round parts, which lie within half a millimetre. Lines of more
 * than {@value #MANY_PIECES} pieces are buffered instead, to the same half millimetre, because
 * putting them together from pieces takes forty times as long.
 */
final class Around {
  /** Lines of more pieces than this were walked or drawn freehand, not measured. */
  static final int MANY_PIECES = 150;

  private static final Length ROUNDING = Length.millimetres(0.5);

  private Around() {}

  static List<Geometry> pieces(LineString line, double distanceM) {
    if (line.getNumPoints() > MANY_PIECES) {
      return line.isClosed()
          ? halves(line, distanceM)
          : RoundBuffer.pieces(line, distanceM, ROUNDING);
    }
    Coordinate[] c = line.getCoordinates();
    List<Geometry> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < c.length; i++) {
      pieces.add(
          Quads.of(
              Quads.left(c[i], c[i], c[i + 1], distanceM),
              Quads.left(c[i + 1], c[i], c[i + 1], distanceM),
              Quads.left(c[i + 1], c[i], c[i + 1], -distanceM),
              Quads.left(c[i], c[i], c[i + 1], -distanceM)));
    }
    for (int i = 1; i + 1 < c.length; i++) {
      pieces.add(fan(c[i - 1], c[i], c[i + 1], distanceM));
    }
    if (line.isClosed()) {
      pieces.add(fan(c[c.length - 2], c[0], c[1], distanceM));
    } else {
      pieces.add(disc(c[0], distanceM));
      pieces.add(disc(c[c.length - 1], distanceM));
    }
    return pieces;
  }

  /** A closed line goes in two halves: whole, it may get a hole that is not there (JTS 876). */
  private static List<Geometry> halves(LineString line, double distanceM) {
    LengthIndexedLine index = new LengthIndexedLine(line);
    double half = line.getLength() / 2;
    List<Geometry> pieces = new ArrayList<>();
    for (double from : new double[] {0, half}) {
      LineString part = (LineString) index.extractLine(from, from + half);
      pieces.addAll(RoundBuffer.pieces(part, distanceM, ROUNDING));
    }
    return pieces;
  }

  private static Geometry disc(Coordinate centre, double radiusM) {
    return Overlay.fineBuffer(Overlay.FACTORY.createPoint(centre), radiusM);
  }

  /** The sector between the normals of two segments on the outer side of their bend. */
  static Geometry fan(Coordinate before, Coordinate at, Coordinate after, double radiusM) {
    double from = StrictMath.atan2(at.y - before.y, at.x - before.x);
    double to = StrictMath.atan2(after.y - at.y, after.x - at.x);
    double turn = Math.IEEEremainder(to - from, 2 * Math.PI);
    // A left turn opens on the right, where the normals point a quarter turn clockwise.
    double quarter = turn >= 0 ? -Math.PI / 2 : Math.PI / 2;
    int chords = Arc.chordCount(Length.metres(radiusM), Angle.radians(Math.abs(turn)), ROUNDING);
    Coordinate[] ring = new Coordinate[chords + 3];
    ring[0] = at.copy();
    for (int i = 0; i <= chords; i++) {
      double a = from + quarter + turn * i / chords;
      ring[i + 1] =
          new Coordinate(at.x + radiusM * StrictMath.cos(a), at.y + radiusM * StrictMath.sin(a));
    }
    ring[chords + 2] = at.copy();
    return Overlay.FACTORY.createPolygon(ring);
  }
}
