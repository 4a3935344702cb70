package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class GeoJsonWriterTest {
  private static final PlanInfo INFO =
      new PlanInfo("t", "Yard", "", "", "", "", UnitSystem.US, "USD");

  private static Plan plan(LonLat at, Angle north, Shape lot, List<Element> elements) {
    Site site =
        new Site(
            "somewhere",
            Angle.degrees(at.latDeg()),
            Angle.degrees(at.lonDeg()),
            Length.ZERO,
            ZoneId.of("UTC"),
            north);
    return new Plan(
        INFO,
        Optional.of(site),
        Optional.of(new Lot(SourceRef.NONE, lot, List.of())),
        elements,
        Attributes.NONE,
        Map.of());
  }

  private static JsonNode written(Plan plan) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    GeoJsonWriter.write(plan, out);
    return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
  }

  private static Element.Common common(ElementKind kind, String name) {
    return new Element.Common(new ElementId(kind, name), SourceRef.NONE, Attributes.NONE);
  }

  private static JsonNode withHole() throws IOException {
    Shape lot = Shape.rectangle(Point.metres(0, 0), Length.metres(20), Length.metres(30));
    Shape hole = Shape.rectangle(Point.metres(5, 5), Length.metres(5), Length.metres(5));
    Element bed =
        new Element.Bed(common(ElementKind.BED, "ring"), lot.minus(hole), Element.BedUse.PERENNIAL);
    Point trunk = Point.metres(7, 8);
    Element tree =
        new Element.Tree(
            common(ElementKind.TREE, "apple"),
            trunk,
            Shape.circle(trunk, Length.metres(2)),
            Length.metres(4),
            Length.metres(4),
            Length.ZERO,
            Length.metres(0.2),
            Element.Leaf.DECIDUOUS);
    return written(plan(new LonLat(-122.44, 37.76), Angle.degrees(0), lot, List.of(bed, tree)));
  }

  private static double twiceArea(JsonNode ring) {
    double sum = 0;
    for (int i = 0; i + 1 < ring.size(); i++) {
      JsonNode a = ring.get(i);
      JsonNode b = ring.get(i + 1);
      sum +=
          (a.get(0).asDouble() + 122.44) * (b.get(1).asDouble() - 37.76)
              - (b.get(0).asDouble() + 122.44) * (a.get(1).asDouble() - 37.76);
    }
    return sum;
  }

  // RFC 7946 section 3.1.6: four or more positions, first and last identical, exterior
  // rings counter-clockwise, holes clockwise.
  @Test
  void rings_areClosedAndWoundByTheRightHandRule() throws IOException {
    JsonNode rings = withHole().at("/features/2/geometry/coordinates");
    assertEquals(2, rings.size());
    assertTrue(twiceArea(rings.get(0)) > 0);
    assertTrue(twiceArea(rings.get(1)) < 0);
    for (JsonNode ring : rings) {
      assertEquals(5, ring.size());
      assertEquals(ring.get(0), ring.get(4));
    }
  }

  // X-06, RFC 7946 section 5: all axes of the most southwesterly point, then of the most
  // northeasterly; in its example [100.0, 0.0, 105.0, 1.0].
  @Test
  void bbox_isSouthWestThenNorthEastOfEveryPosition() throws IOException {
    JsonNode root = withHole();
    JsonNode box = root.get("bbox");
    assertEquals(4, box.size());
    assertEquals(-122.44, box.get(0).asDouble(), 1e-9);
    assertEquals(37.76, box.get(1).asDouble(), 1e-9);
    // 20 m east and 30 m north; 111.195 m a thousandth of a degree on the mean sphere, 0.6 %.
    double east = 20 / (111_195 * Math.cos(Math.toRadians(37.76)));
    assertEquals(east, box.get(2).asDouble() + 122.44, east * 0.006);
    assertEquals(30 / 111_195.0, box.get(3).asDouble() - 37.76, 30 / 111_195.0 * 0.006);
  }

  // X-08, RFC 7946 section 4: degrees only, whatever the plan's units, and it says what it is
  // worth.
  @Test
  void planInFeet_isWrittenInDegreesAndSaysThatItIsNoSurvey() throws IOException {
    JsonNode root = withHole();
    assertEquals("FeatureCollection", root.get("type").asText());
    assertTrue(root.get("description").asText().contains("no survey"));
    assertFalse(root.has("crs"));
    for (JsonNode feature : root.get("features")) {
      assertEquals("Feature", feature.get("type").asText());
      assertTrue(feature.at("/properties/kind").isTextual());
    }
  }

  @Test
  void tree_isAPoint() throws IOException {
    JsonNode tree = withHole().at("/features/1");
    assertEquals("apple", tree.at("/properties/name").asText());
    assertEquals("Point", tree.at("/geometry/type").asText());
    assertEquals(2, tree.at("/geometry/coordinates").size());
  }

  @Test
  void planWithoutSite_cannotBeWritten() {
    Plan nowhere =
        new Plan(INFO, Optional.empty(), Optional.empty(), List.of(), Attributes.NONE, Map.of());
    assertFalse(GeoJsonWriter.canWrite(nowhere));
  }

  /** Law: an outline that is written and read again is the same within a millimetre. */
  @Property(tries = 200, seed = "20261125")
  void outline_writtenAndReadAgain_isTheSame(
      @ForAll @DoubleRange(min = -179, max = 179) double lon,
      @ForAll @DoubleRange(min = -75, max = 75) double lat,
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @DoubleRange(min = 5, max = 150) double radiusM,
      @ForAll @DoubleRange(min = 0.3, max = 1) double flat)
      throws IOException {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = 2 * Math.PI * i / corners + 0.3;
      ring.add(Point.metres(40 + radiusM * Math.cos(turn), -25 + flat * radiusM * Math.sin(turn)));
    }
    LonLat origin = new LonLat(lon, lat);
    Shape lot = Shape.polygon(ring);
    String text = written(plan(origin, Angle.degrees(0), lot, List.of())).toString();
    List<Point> again = GeoOutline.read(text, Optional.of(origin)).shape().corners();
    assertEquals(lot.corners().size(), again.size());
    for (Point corner : lot.corners()) {
      double nearestM =
          again.stream().mapToDouble(p -> p.distance(corner).metres()).min().orElseThrow();
      assertTrue(nearestM < 1e-3, corner + " is off by " + nearestM + " m");
    }
  }
}
