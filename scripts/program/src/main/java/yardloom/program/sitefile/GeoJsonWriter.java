package yardloom.program.sitefile;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;

/**
 * Writes the lot and everything on the plan as a GeoJSON FeatureCollection in longitude and
 * latitude, whatever the plan's units. Trees and water points are points, everything else is an
 * area; exterior rings run counter-clockwise, holes clockwise.
 *
 * <p>Degrees have {@value #DECIMALS} decimals, a tenth of a millimetre: enough to read an outline
 * back unchanged, and no claim to know where it lies as well as that.
 *
 * <p>Degenerate input: a plan without a site has no place on earth and gives nothing.
 *
 * <p>References: RFC 7946, The GeoJSON Format, IETF, 2016, sections 3.1.6, 3.3, 4, 5 (bbox) and 6.1
 * (foreign members).
 */
public final class GeoJsonWriter {
  static final int DECIMALS = 9;

  private static final JsonNodeFactory JSON = JsonNodeFactory.withExactBigDecimals(true);

  private final LocalPlane plane;
  private final List<double[]> corners = new ArrayList<>();

  private GeoJsonWriter(LocalPlane plane) {
    this.plane = plane;
  }

  /** Whether there is anything to write: a site, and a lot or an element. */
  public static boolean canWrite(Plan plan) {
    return plan.site().isPresent() && (plan.lot().isPresent() || !plan.elements().isEmpty());
  }

  /**
   * Writes the plan and leaves {@code out} open.
   *
   * @throws java.util.NoSuchElementException if the plan has no site
   */
  public static void write(Plan plan, OutputStream out) throws IOException {
    write(tree(plan), out);
  }

  private static void write(ObjectNode tree, OutputStream out) throws IOException {
    JsonMapper mapper =
        JsonMapper.builder()
            .configure(SerializationFeature.CLOSE_CLOSEABLE, false)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
            .build();
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    mapper.writer(printer).writeValue(out, tree);
  }

  /**
   * Writes what one layer of the drawing shows and leaves {@code out} open: areas, lines and
   * points, without texts and dimensions. Hatches, widths and colours are those of paper and stay
   * there.
   *
   * @throws java.util.NoSuchElementException if the plan has no site
   */
  public static void write(Plan plan, Layer layer, List<Mark> marks, OutputStream out)
      throws IOException {
    write(tree(plan, layer, marks), out);
  }

  /** Whether a layer has more than texts and dimensions. */
  public static boolean canWrite(Plan plan, List<Mark> marks) {
    return plan.site().isPresent() && marks.stream().anyMatch(m -> !about(m).isEmpty());
  }

  private static GeoJsonWriter at(Site site) {
    return new GeoJsonWriter(new LocalPlane(site.latitude(), site.longitude(), site.north()));
  }

  static ObjectNode tree(Plan plan, Layer layer, List<Mark> marks) {
    GeoJsonWriter writer = at(plan.site().orElseThrow());
    ArrayNode features = JSON.arrayNode();
    for (Mark mark : marks) {
      writer.geometry(mark).ifPresent(g -> features.add(feature(layer.title(), about(mark), g)));
    }
    ObjectNode root = writer.root(plan, features);
    return root.put("layer", layer.id());
  }

  /** What a mark is about; empty for texts and dimensions. */
  private static String about(Mark mark) {
    if (mark instanceof Mark.Region region) {
      return region.shape().isEmpty() ? "" : region.about();
    }
    if (mark instanceof Mark.Stroke stroke) {
      return stroke.about();
    }
    return mark instanceof Mark.Symbol symbol ? symbol.about() : "";
  }

  private Optional<ObjectNode> geometry(Mark mark) {
    if (about(mark).isEmpty()) {
      return Optional.empty();
    }
    if (mark instanceof Mark.Region region) {
      return Optional.of(area(region.shape()));
    }
    return mark instanceof Mark.Stroke stroke
        ? Optional.of(line(stroke.line().jts()))
        : Optional.of(point(((Mark.Symbol) mark).at()));
  }

  static ObjectNode tree(Plan plan) {
    GeoJsonWriter writer = at(plan.site().orElseThrow());
    ArrayNode features = JSON.arrayNode();
    plan.lot().ifPresent(lot -> features.add(feature("lot", "lot", writer.area(lot.shape()))));
    for (Element element : plan.elements()) {
      writer
          .geometry(element)
          .ifPresent(
              g -> features.add(feature(element.id().kind().word(), element.id().name(), g)));
    }
    return writer.root(plan, features);
  }

  private ObjectNode root(Plan plan, ArrayNode features) {
    ObjectNode root = JSON.objectNode();
    root.put("type", "FeatureCollection");
    root.put("title", plan.info().title());
    root.put(
        "description",
        "The plan's origin is placed at the latitude and longitude that the plan gives for its site,"
            + " and its true north is taken from the plan. This is no survey: do not set out,"
            + " dig or build from these coordinates.");
    root.set("bbox", box());
    root.set("features", features);
    return root;
  }

  private static ObjectNode feature(String kind, String name, ObjectNode geometry) {
    ObjectNode feature = JSON.objectNode();
    feature.put("type", "Feature");
    feature.putObject("properties").put("kind", kind).put("name", name);
    feature.set("geometry", geometry);
    return feature;
  }

  private Optional<ObjectNode> geometry(Element element) {
    if (element instanceof Element.Tree tree) {
      return Optional.of(point(tree.at()));
    }
    if (element instanceof Element.WaterPoint tap) {
      return Optional.of(point(tap.at()));
    }
    return element.shape().isEmpty() ? Optional.empty() : Optional.of(area(element.shape()));
  }

  private ObjectNode point(Point at) {
    ObjectNode node = JSON.objectNode().put("type", "Point");
    node.set("coordinates", position(at));
    return node;
  }

  private ObjectNode line(LineString line) {
    ObjectNode node = JSON.objectNode().put("type", "LineString");
    ArrayNode positions = node.putArray("coordinates");
    for (Coordinate c : line.getCoordinates()) {
      positions.add(position(Point.metres(c.x, c.y)));
    }
    return node;
  }

  private ObjectNode area(Shape shape) {
    List<ArrayNode> polygons = shape.polygons().stream().map(this::polygon).toList();
    ObjectNode node = JSON.objectNode();
    if (polygons.size() == 1) {
      node.put("type", "Polygon");
      node.set("coordinates", polygons.get(0));
    } else {
      node.put("type", "MultiPolygon");
      node.putArray("coordinates").addAll(polygons);
    }
    return node;
  }

  private ArrayNode polygon(Polygon polygon) {
    ArrayNode rings = JSON.arrayNode();
    rings.add(ring(polygon.getExteriorRing(), true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(ring(polygon.getInteriorRingN(i), false));
    }
    return rings;
  }

  private ArrayNode ring(LinearRing ring, boolean counterClockwise) {
    CoordinateSequence points = ring.getCoordinateSequence();
    boolean turned = Orientation.isCCW(points) != counterClockwise;
    ArrayNode node = JSON.arrayNode();
    for (int i = 0; i < points.size(); i++) {
      Coordinate c = points.getCoordinate(turned ? points.size() - 1 - i : i);
      node.add(position(Point.metres(c.x, c.y)));
    }
    return node;
  }

  private ArrayNode position(Point point) {
    double[] globe = plane.toGlobe(point);
    corners.add(globe);
    return JSON.arrayNode().add(degrees(globe[0])).add(degrees(globe[1]));
  }

  private ArrayNode box() {
    return JSON.arrayNode()
        .add(degrees(corners.stream().mapToDouble(c -> c[0]).min().orElseThrow()))
        .add(degrees(corners.stream().mapToDouble(c -> c[1]).min().orElseThrow()))
        .add(degrees(corners.stream().mapToDouble(c -> c[0]).max().orElseThrow()))
        .add(degrees(corners.stream().mapToDouble(c -> c[1]).max().orElseThrow()));
  }

  private static BigDecimal degrees(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
