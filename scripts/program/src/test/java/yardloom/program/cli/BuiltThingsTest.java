package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One thing that is there already, by its own word: nothing is bought or worked for it, so bill,
 * hours and cost are those of the same yard without it; but it is drawn and looked after.
 */
class BuiltThingsTest {
  private static final String YARD =
      """
      plan 'Half built', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 60.ft), point(0.ft, 60.ft)])
      roof 'rear slope', rect(20.ft, 0.ft, 24.ft, 10.ft), surface: 'asphalt shingle'
      tap 'bib', point(20.ft, 12.ft), source: 'mains'
      demonstrationPrices()
      work crew: 2, start: '2027-04-05'
      bed('new', rect(10.ft, 40.ft, 20.ft, 4.ft), use: 'annual') { plant 'kale' }
      """;

  private static final String OLD =
      """
      bed('old', rect(40.ft, 30.ft, 20.ft, 4.ft), use: 'perennial', built: true) {
        plant 'chives'
        frame '2x10', stock: 8.ft
        drip emitter: 0.9.gph, spacing: 12.inch
      }
      beds('row', rect(4.ft, 20.ft, 12.ft, 12.ft), width: 4.ft, gap: 2.ft, built: true) { plant 'thyme' }
      bedAlong('edge', line([point(30.ft, 55.ft), point(50.ft, 55.ft)]), depth: 3.ft, built: true)
      mulchedGround('old ground', rect(60.ft, 5.ft, 10.ft, 10.ft), built: true)
      tank('barrel', point(18.ft, 5.ft), roof: 'rear slope', built: true) {
        round diameter: 2.ft, height: 3.ft
      }
      trellis('grapes', line([point(2.ft, 50.ft), point(28.ft, 50.ft)]), built: true)
      basin('hollow', rect(60.ft, 40.ft, 8.ft, 8.ft), drains: 'rear slope', depth: 6.inch, built: true)
      """;

  private static final List<String> PAID =
      List.of("materials-order", "materials-cost", "materials-labour", "materials-phases");

  @TempDir private Path dir;

  private Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("yardloom-out/" + name));
  }

  @Test
  void built_isNeitherBoughtNorWorked_butLookedAfter() throws IOException {
    Map<String, String> without = drawn("without", YARD);
    Map<String, String> with = drawn("with", YARD + OLD);
    Map<String, String> fresh = drawn("fresh", YARD + OLD.replace(", built: true", ""));
    for (String id : PAID) {
      String table = "tables/" + id + ".csv";
      assertEquals(without.get(table), with.get(table), id);
      assertNotEquals(without.get(table), fresh.get(table), id);
    }
    String elements = with.get("tables/work-elements.csv");
    for (String name : List.of("Old,bed", "Row 1,bed", "Row 2,bed", "Edge,bed", "Old ground")) {
      assertTrue(elements.contains(name), elements);
    }
    assertTrue(elements.contains("Old,bed,,,,is there already"), elements);
    // The chives are cut and watered as any bed's.
    assertTrue(with.get("tables/plant-schedule.csv").contains("hives"), with.keySet()::toString);
  }

  /** A stage that is still to be made cannot hold what is built; one that is built may. */
  @Test
  void built_insideAStageToBeMade_isRefusedAtItsPlace() throws IOException {
    String bed = "bed('old', rect(40.ft, 30.ft, 20.ft, 4.ft), built: true)";
    Files.writeString(dir.resolve("stage.groovy"), YARD + "stage('next') {\n  " + bed + "\n}\n");
    Run run = Run.in(dir, "check", "stage.groovy");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    assertTrue(run.err().contains("stage.groovy:11:3: this is built"), run.err());
    Files.writeString(
        dir.resolve("stage.groovy"), YARD + "stage('before', built: true) {\n  " + bed + "\n}\n");
    assertEquals(ExitCode.FINE, Run.in(dir, "check", "stage.groovy").code());
  }
}
