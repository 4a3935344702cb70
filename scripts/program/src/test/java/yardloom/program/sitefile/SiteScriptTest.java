package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.vocab.Lexicon;
import yardloom.language.limit.RunLimits;
import yardloom.language.run.PlanRunner;
import yardloom.site.SitePlugin;

/** Measuring words as a script writes them. */
class SiteScriptTest {
  @TempDir Path folder;

  private Plan run(String script) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.groovy"), script);
    Lexicon lexicon =
        Lexicon.of(
            List.of(
                new SitePlugin().vocabularies().get(0),
                new SiteFilePlugin().vocabularies().get(0)));
    return new PlanRunner(lexicon, RunLimits.standard(), (s, w) -> Optional.empty())
        .run(file, Map.of());
  }

  @Test
  void run_deedWithCurveAndSightTriangle_makesTheLot() throws IOException {
    Plan plan =
        run(
            """
            def parcel = deed('Lot 7', start: point(0.ft, 0.ft)) {
              course 'North', 100.ft, name: 'west'
              course 'East', 80.ft, name: 'north'
              course 'South', 80.ft, name: 'east'
              curve radius: 20.ft, delta: '90-00-00', chordBearing: 'S 45-00-00 W', turn: 'right', name: 'corner'
              course 'West', 60.ft, name: 'front'
            }
            def yard = lotFrom(parcel) {
              side 'front', role: 'front', setback: 20.ft, rule: 'demo'
              sightTriangle 'front', 'east', legFirst: 25.ft, legSecond: 25.ft, clearFrom: 30.inch, clearTo: 8.ft
            }
            bed 'inner', yard.shape.shrunk(10.ft).rounded(2.ft)
            gate 'gate', point(5.ft, 5.ft)
            """);
    double quarter = 400 * (1 - Math.PI / 4);
    assertEquals(8000 - quarter, plan.lot().get().shape().area().squareFeet(), 0.5);
    assertEquals(1, plan.all(Element.Bed.class).size());
  }

  @Test
  void run_tapesLevelsAndContours_makeGroundAndBeds() throws IOException {
    Plan plan =
        run(
            """
            def a = point(0.ft, 0.ft)
            def b = point(60.ft, 0.ft)
            def c = point(60.ft, 40.ft)
            def corner = tied('house corner') {
              tape a, 43.68.ft, name: 'SW stake'
              tape b, 21.63.ft
              tape c, 33.29.ft
            }
            def ground = levels(contours: 1.ft) {
              level a, 100.ft
              level b, 101.ft
              level c, 105.ft
              level point(0.ft, 40.ft), 104.ft
            }
            building 'house', rect(corner.x, corner.y, 10.ft, 10.ft), eaves: 9.ft
            swale 'swale', ground.contour(102.ft), depth: 6.inch
            beds('row', rect(5.ft, 22.ft, 30.ft, 14.ft), width: 3.ft, gap: 2.ft, bearing: ground.contourBearing(point(20.ft, 28.ft)), paths: 'foot')
            bed 'spiral', ring(point(50.ft, 30.ft), 1.ft, 3.ft)
            """);
    Surface ground = plan.attributes().get(Surface.KEY).orElseThrow();
    assertEquals(4, ground.spots().size());
    assertTrue(plan.all(Element.Bed.class).size() > 2);
    assertTrue(plan.all(Element.Path.class).size() >= 1);
  }

  @Test
  void run_geoJsonOutline_makesTheLot() throws IOException {
    Plan plan =
        run(
            """
            lotOutline(geoOutline('''{"type": "Polygon", "coordinates": [[[-122.43, 37.75], [-122.4297, 37.75],
              [-122.4297, 37.7503], [-122.43, 37.7503], [-122.43, 37.75]]]}''',
              latitude: 37.75.deg, longitude: -122.43.deg)) {
              side 'south', role: 'front', setback: 3.m
            }
            """);
    assertEquals(26.43 * 33.3, plan.lot().get().shape().area().squareMetres(), 2);
  }
}
