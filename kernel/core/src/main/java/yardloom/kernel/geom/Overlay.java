package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import yardloom.kernel.unit.Length;

/**
 * The set operations and offsets behind {@link Shape}; the one caller of JTS overlay and buffer.
 *
 * <p>Overlays run on a fixed grid of 0.1 µm: floating-point overlay was seen to throw on random
 * lots, the fixed grid never did. Pieces below {@link #SLIVER_M2} are numerical dust and are
 * dropped. Results are valid and normalised, so that the same input gives the same vertex order.
 */
final class Overlay {
  static final GeometryFactory FACTORY = new GeometryFactory();
  static final double SLIVER_M2 = 1e-6;
  private static final double MOST_MITRE = 2;
  private static final Length ROUNDING = Length.millimetres(0.5);
  private static final PrecisionModel GRID = new PrecisionModel(1e7);

  private Overlay() {}

  static Geometry union(Geometry a, Geometry b) {
    return polygonal(OverlayNG.overlay(a, b, OverlayNG.UNION, GRID));
  }

  static Geometry unionAll(List<? extends Geometry> parts) {
    List<Geometry> areas = new ArrayList<>();
    for (Geometry part : parts) {
      if (part.getDimension() == 2 && !part.isEmpty()) {
        areas.add(part);
      }
    }
    return areas.isEmpty()
        ? FACTORY.createPolygon()
        : polygonal(UnaryUnionNG.union(FACTORY.buildGeometry(areas), GRID));
  }

  static Geometry difference(Geometry a, Geometry b) {
    return polygonal(OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, GRID));
  }

  static Geometry intersection(Geometry a, Geometry b) {
    return polygonal(OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, GRID));
  }

  /** The parts of a line that lie in an area. */
  static Geometry lineInside(Geometry area, Geometry line) {
    return OverlayNG.overlay(area, line, OverlayNG.INTERSECTION, GRID);
  }

  /** {@link RoundBuffer} to half a millimetre. */
  static Geometry fineBuffer(Geometry g, double distanceM) {
    return RoundBuffer.of(g, distanceM, 2, ROUNDING);
  }

  /** An offset whose corners stay corners, cut off beyond twice the distance. */
  static Geometry mitred(Geometry g, double distanceM) {
    return BufferOp.bufferOp(
        g,
        distanceM,
        new BufferParameters(
            BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
            BufferParameters.CAP_FLAT,
            BufferParameters.JOIN_MITRE,
            MOST_MITRE));
  }

  /** How far an inner point is from the boundary. */
  static double depthInside(Geometry area, Coordinate at) {
    return area.getBoundary().distance(FACTORY.createPoint(at));
  }

  /** The lines divided wherever they meet, without doubles. */
  static Geometry noded(List<? extends Geometry> lines) {
    return UnaryUnionNG.union(FACTORY.buildGeometry(lines), GRID);
  }

  /** The pieces of {@code lines} that lie outside {@code area}. */
  static Geometry linesOutside(Geometry lines, Geometry area) {
    return OverlayNG.overlay(lines, area, OverlayNG.DIFFERENCE, GRID);
  }

  /** Pieces of lines joined where two of them meet. */
  static List<Line> merged(Geometry pieces) {
    LineMerger merger = new LineMerger();
    merger.add(pieces);
    List<Line> lines = new ArrayList<>();
    for (Object line : merger.getMergedLineStrings()) {
      lines.add(new Line((LineString) line));
    }
    return lines;
  }

  /** The valid polygonal part of {@code g}, slivers dropped, in normal form. */
  static Geometry polygonal(Geometry g) {
    Geometry valid = g.isValid() ? g : GeometryFixer.fix(g);
    List<Polygon> kept = new ArrayList<>();
    for (Object part : PolygonExtracter.getPolygons(valid)) {
      Polygon polygon = (Polygon) part;
      if (polygon.getArea() > SLIVER_M2) {
        kept.add(polygon);
      }
    }
    if (kept.isEmpty()) {
      return FACTORY.createPolygon();
    }
    kept.forEach(Polygon::normalize);
    kept.sort(
        Comparator.comparing((Polygon p) -> p.getEnvelopeInternal().getMinX())
            .thenComparing(p -> p.getEnvelopeInternal().getMinY())
            .thenComparing(Polygon::getArea));
    return kept.size() == 1
        ? kept.get(0)
        : FACTORY.createMultiPolygon(kept.toArray(new Polygon[0]));
  }

  static Polygon ring(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < corners.size(); i++) {
      ring[i] = corners.get(i).coordinate();
    }
    ring[corners.size()] = ring[0].copy();
    return FACTORY.createPolygon(ring);
  }
}
