package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;

/**
 * The ground on which a field reaches a level, by marching squares: straight between the centres of
 * neighbouring cells, at saddles by the mean of the four.
 *
 * <p>Cells that are left out take the mean of the neighbours that have a value, so that lines run
 * up to walls; the field's border cells stand for one more ring outside. A field that nowhere
 * reaches the level gives the empty shape; the level is moved up by 1e-9 so that no centre lies on
 * the line.
 *
 * <p>References: [1] C. Maple, Geometric design and space planning using the marching squares and
 * marching cube algorithms, GMAG 2003 (from memory).
 */
public final class Isolines {
  private static final double OUTSIDE = -1e9;
  private static final double DUST_M2 = 1e-6;
  private static final GeometryFactory FACTORY = Shape.EMPTY.jts().getFactory();

  private final double[] values;
  private final int columns;
  private final int rows;
  private final double cornerXM;
  private final double cornerYM;
  private final double cellM;

  public Isolines(Field field) {
    columns = field.columns() + 4;
    rows = field.rows() + 4;
    cellM = field.cell().metres();
    cornerXM = field.corner().x().metres() - 1.5 * cellM;
    cornerYM = field.corner().y().metres() - 1.5 * cellM;
    values = new double[columns * rows];
    Arrays.fill(values, OUTSIDE);
    double[] filled = filled(field);
    for (int r = 1; r < rows - 1; r++) {
      for (int c = 1; c < columns - 1; c++) {
        int fc = Math.max(0, Math.min(field.columns() - 1, c - 2));
        int fr = Math.max(0, Math.min(field.rows() - 1, r - 2));
        values[r * columns + c] = filled[fr * field.columns() + fc];
      }
    }
  }

  private static double[] filled(Field field) {
    int n = field.columns();
    double[] now = new double[n * field.rows()];
    for (int i = 0; i < now.length; i++) {
      now[i] = field.at(i % n, i / n).orElse(Double.NaN);
    }
    boolean open = true;
    while (open) {
      double[] next = now.clone();
      open = false;
      for (int i = 0; i < now.length; i++) {
        if (Double.isNaN(now[i])) {
          OptionalDouble mean = neighbours(now, n, field.rows(), i);
          next[i] = mean.orElse(Double.NaN);
          open |= mean.isPresent();
        }
      }
      now = next;
    }
    return Arrays.stream(now).map(v -> Double.isNaN(v) ? 0 : v).toArray();
  }

  private static OptionalDouble neighbours(double[] values, int columns, int rows, int i) {
    double sum = 0;
    int count = 0;
    for (int dr = -1; dr <= 1; dr++) {
      for (int dc = -1; dc <= 1; dc++) {
        int c = i % columns + dc;
        int r = i / columns + dr;
        if (c >= 0 && r >= 0 && c < columns && r < rows && !Double.isNaN(values[r * columns + c])) {
          sum += values[r * columns + c];
          count++;
        }
      }
    }
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
  }

  /** The same without islands and holes of less than {@code leastM2}. */
  public Shape atLeast(double level, double leastM2) {
    List<Coordinate[]> outer = new ArrayList<>();
    List<Coordinate[]> holes = new ArrayList<>();
    for (Coordinate[] ring : rings(level + 1e-9)) {
      if (Area.ofRing(ring) >= leastM2) {
        // Walked with the high ground on the left: outer rings run counter-clockwise.
        (Area.ofRingSigned(ring) < 0 ? outer : holes).add(ring);
      }
    }
    // Rings of one level never cross: each hole belongs to the least outer ring around it.
    outer.sort(Comparator.comparingDouble(Area::ofRing));
    List<List<LinearRing>> holesOf = new ArrayList<>();
    outer.forEach(o -> holesOf.add(new ArrayList<>()));
    for (Coordinate[] hole : holes) {
      for (int i = 0; i < outer.size(); i++) {
        if (PointLocation.isInRing(hole[0], outer.get(i))) {
          holesOf.get(i).add(FACTORY.createLinearRing(hole));
          break;
        }
      }
    }
    Polygon[] parts = new Polygon[outer.size()];
    for (int i = 0; i < parts.length; i++) {
      parts[i] =
          FACTORY.createPolygon(
              FACTORY.createLinearRing(outer.get(i)), holesOf.get(i).toArray(new LinearRing[0]));
    }
    return parts.length == 0 ? Shape.EMPTY : Shape.of(FACTORY.createMultiPolygon(parts));
  }

  /** All closed lines at a level. Each crossing of a grid edge joins exactly two pieces. */
  private List<Coordinate[]> rings(double level) {
    Map<Integer, Integer> next = new HashMap<>();
    for (int r = 0; r + 1 < rows; r++) {
      for (int c = 0; c + 1 < columns; c++) {
        square(level, c, r, next);
      }
    }
    List<Integer> starts = new ArrayList<>(next.keySet());
    starts.sort(null);
    List<Coordinate[]> rings = new ArrayList<>();
    for (int start : starts) {
      if (next.containsKey(start)) {
        List<Coordinate> ring = new ArrayList<>();
        Integer at = start;
        while (next.containsKey(at)) {
          ring.add(crossing(at, level));
          at = next.remove(at);
        }
        ring.add(ring.get(0).copy());
        rings.add(ring.toArray(new Coordinate[0]));
      }
    }
    return rings;
  }

  /**
   * Adds the pieces of line in the square of four centres whose lower left is (c, r), high ground
   * on the left. Sides: 0 below, 1 right, 2 above, 3 left.
   */
  private void square(double level, int c, int r, Map<Integer, Integer> next) {
    int i = r * columns + c;
    boolean[] high = {
      values[i] >= level,
      values[i + 1] >= level,
      values[i + columns + 1] >= level,
      values[i + columns] >= level
    };
    double mean = (values[i] + values[i + 1] + values[i + columns] + values[i + columns + 1]) / 4;
    boolean saddle = high[0] == high[2] && high[1] == high[3] && high[0] != high[1];
    for (int side = 0; side < 4; side++) {
      // Walking around counter-clockwise, the line enters where high ground ends.
      if (high[side] && !high[(side + 1) % 4]) {
        int turn = saddle && mean >= level ? 1 : 3;
        int out = side;
        do {
          out = (out + turn) % 4;
        } while (!(high[(out + 1) % 4] && !high[out]));
        next.put(edge(c, r, side), edge(c, r, out));
      }
    }
  }

  /** A number for a side of a square, the same from both squares that share it. */
  private int edge(int c, int r, int side) {
    return switch (side) {
      case 0 -> 2 * (r * columns + c);
      case 1 -> 2 * (r * columns + c + 1) + 1;
      case 2 -> 2 * ((r + 1) * columns + c);
      default -> 2 * (r * columns + c) + 1;
    };
  }

  private Coordinate crossing(int edge, double level) {
    int from = edge / 2;
    int to = edge % 2 == 0 ? from + 1 : from + columns;
    double share = (level - values[from]) / (values[to] - values[from]);
    double column = from % columns + (edge % 2 == 0 ? share : 0);
    double row = from / columns + (edge % 2 == 0 ? 0 : share);
    return new Coordinate(cornerXM + column * cellM, cornerYM + row * cellM);
  }

  /**
   * The place on a shape's outlines that lies furthest inside {@code room}, for a label; none if it
   * would lie within {@code leastM} of the room's border.
   */
  public static Optional<Point> labelPlace(Shape shape, Shape room, double leastM) {
    Predicate<Point> inside = room.insideTest();
    Optional<Point> best = Optional.empty();
    double far = leastM;
    for (Coordinate c : shape.jts().getCoordinates()) {
      Point at = Point.metres(c.x, c.y);
      double distance = room.jts().getBoundary().distance(shape.jts().getFactory().createPoint(c));
      if (distance > far && inside.test(at)) {
        far = distance;
        best = Optional.of(at);
      }
    }
    return best;
  }
}
