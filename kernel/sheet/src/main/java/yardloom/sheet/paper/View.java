package yardloom.sheet.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Point;

/**
 * Where metres of the plan come to lie on paper.
 *
 * @param mmPerM paper millimetres for a metre
 * @param leftM plan x that lies on {@code origin}
 * @param topM plan y that lies on {@code origin}
 */
public record View(double mmPerM, double leftM, double topM, Xy origin) {

  /** The view that puts the middle of {@code extent} in the middle of {@code room}. */
  public static View centred(Envelope extent, double mmPerM, Box room) {
    double left = room.x() + (room.width() - extent.getWidth() * mmPerM) / 2;
    double top = room.y() + (room.height() - extent.getHeight() * mmPerM) / 2;
    return new View(mmPerM, extent.getMinX(), extent.getMaxY(), new Xy(left, top));
  }

  public Xy toPaper(Point p) {
    return toPaper(p.coordinate());
  }

  public Xy toPaper(Coordinate c) {
    return origin.plus((c.x - leftM) * mmPerM, (topM - c.y) * mmPerM);
  }

  public List<Xy> toPaper(LineString line) {
    return Stream.of(line.getCoordinates()).map(this::toPaper).toList();
  }

  public Point toPlan(Xy at) {
    return Point.metres(
        leftM + (at.x() - origin.x()) / mmPerM, topM - (at.y() - origin.y()) / mmPerM);
  }

  /**
   * The ground that the marks cover. Texts do not count. With a focus, what lies further outside it
   * than a tenth of its size is cut off.
   */
  public static Envelope extent(List<Mark> marks, Optional<Envelope> focus) {
    Envelope all = new Envelope();
    marks.forEach(m -> corners(m).forEach(all::expandToInclude));
    if (focus.isEmpty()) {
      return all;
    }
    Envelope near = new Envelope(focus.get());
    double beyond = Math.max(near.getWidth(), near.getHeight()) / 10;
    near.expandBy(beyond);
    Envelope shown = all.isNull() ? new Envelope() : all.intersection(near);
    shown.expandToInclude(focus.get());
    return shown;
  }

  private static Stream<Coordinate> corners(Mark mark) {
    if (mark instanceof Mark.Region region) {
      return region.shape().isEmpty() ? Stream.of() : corners(region.shape().bounds());
    }
    if (mark instanceof Mark.Stroke stroke) {
      return corners(stroke.line().jts().getEnvelopeInternal());
    }
    if (mark instanceof Mark.Symbol symbol) {
      Envelope around = new Envelope(symbol.at().coordinate());
      around.expandBy(symbol.form().isTrueSize() ? symbol.size().metres() / 2 : 0);
      return corners(around);
    }
    if (mark instanceof Mark.Dimension dimension) {
      return DimensionInk.ends(dimension).stream();
    }
    return Stream.of(((Mark.Label) mark).at().coordinate());
  }

  private static Stream<Coordinate> corners(Envelope box) {
    return Stream.of(
        new Coordinate(box.getMinX(), box.getMinY()), new Coordinate(box.getMaxX(), box.getMaxY()));
  }
}
