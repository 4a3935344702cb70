package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.ElementKind;

/** What is drawn as new is ordered and worked, or a finding says that it is not. */
class EverythingDrawnTest {
  private static final String SCRIPT =
      """
      plan 'Kinds', units: 'us'
      demonstrationPrices()
      lot([point(0.ft, 0.ft), point(100.ft, 0.ft), point(100.ft, 80.ft), point(0.ft, 80.ft)])
      building 'house', rect(40.ft, 5.ft, 20.ft, 20.ft), eaves: 10.ft, ridge: 14.ft, roof: 'gable'
      structure 'new shed', rect(5.ft, 60.ft, 8.ft, 6.ft), height: 8.ft, standing: false
      structure 'old shed', rect(15.ft, 60.ft, 8.ft, 6.ft), height: 8.ft
      structure 'counted shed', rect(25.ft, 60.ft, 8.ft, 6.ft), height: 8.ft, standing: false
      fence 'new fence', line([point(1.ft, 79.ft), point(60.ft, 79.ft)]), height: 6.ft, standing: false
      fence 'counted fence', line([point(1.ft, 20.ft), point(1.ft, 73.ft)]), height: 6.ft, standing: false
      hedge 'new hedge', line([point(70.ft, 77.ft), point(98.ft, 77.ft)]), height: 4.ft, width: 2.ft, standing: false
      paving 'new terrace', rect(40.ft, 26.ft, 20.ft, 8.ft), surface: 'concrete', standing: false
      tree 'nameless', point(85.ft, 60.ft), crown: 20.ft, height: 20.ft, standing: false
      tree('named', point(85.ft, 30.ft), crown: 10.ft, height: 10.ft, standing: false) {
        species 'apple (semi-dwarf)'
        mulchRing 2.ft
      }
      path 'way', line([point(5.ft, 40.ft), point(35.ft, 40.ft)]), width: 3.ft
      bed('leaves', rect(5.ft, 43.ft, 20.ft, 4.ft), use: 'annual') {
        plant 'kale'
        frame '2x10', stock: 8.ft
      }
      mulchedGround 'corner', rect(5.ft, 60.ft, 10.ft, 8.ft)
      tap 'hose', point(40.ft, 12.ft)
      roof 'slope', rect(40.ft, 5.ft, 20.ft, 10.ft), surface: 'metal'
      trellis 'vine wires', line([point(66.ft, 44.ft), point(80.ft, 44.ft)]), wires: 3
      tank('barrel', point(65.ft, 10.ft), roof: 'slope') { round diameter: 3.ft, height: 4.ft ; stand 12.inch }
      overflow(line([point(65.ft, 8.ft), point(92.ft, 20.ft)]), from: 'barrel', inside: 3.inch)
      basin('hollow', rect(92.ft, 18.ft, 6.ft, 5.ft), drains: 'slope', depth: 6.inch)
      downspout point(60.ft, 12.ft), roof: 'slope', inside: 3.inch
      rainGarden 'slope', slope: 3, storm: 1.inch
      utility 'gas', line([point(0.ft, 2.ft), point(40.ft, 4.ft)]), carries: 'gas', clearance: 0.5.ft
      keepOut 'field', rect(70.ft, 5.ft, 20.ft, 10.ft), reason: 'leach field'
      item 'shed kit', of: 'counted shed', price: 2100.money, hours: 14, phase: 'finish'
      task 'build the fence', of: 'counted fence', amount: 53.ft, per: 'ft', hours: 0.4, phase: 'earth'
      item 'lost', of: 'counted shad', phase: 'finish'
      """;

  @TempDir private static Path dir;

  private static Map<String, String> files;

  @BeforeAll
  static void draw() throws IOException {
    Files.writeString(dir.resolve("kinds.groovy"), SCRIPT);
    Run run = Run.in(dir, "draw", "kinds.groovy", "--out", "out", "--as", "csv,json");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    files = Run.files(dir.resolve("out/kinds"));
  }

  /** What each kind is known by in orders, hours or findings; every kind must have an answer. */
  private static Map<ElementKind, List<String>> answers() {
    Map<ElementKind, List<String>> answers = new TreeMap<>();
    answers.put(ElementKind.LOT, List.of("stake out"));
    answers.put(ElementKind.STRUCTURE, List.of("new shed", "shed kit"));
    answers.put(ElementKind.FENCE, List.of("fence posts", "hedge plants", "build the fence"));
    answers.put(ElementKind.PAVING, List.of("ready-mix concrete", "form, pour and finish slabs"));
    answers.put(ElementKind.TREE, List.of("tree \"nameless\"", "apple (semi-dwarf)"));
    answers.put(ElementKind.PATH, List.of("wood-chip mulch"));
    answers.put(ElementKind.BED, List.of("fill frames and raised beds", "lumber 2x10"));
    answers.put(ElementKind.MULCHED_GROUND, List.of("wood-chip mulch", "cardboard"));
    // These are always there before the work begins, or only keep ground free.
    answers.put(ElementKind.BUILDING, List.of());
    answers.put(ElementKind.WATER_POINT, List.of());
    answers.put(ElementKind.ROOF, List.of());
    answers.put(ElementKind.UTILITY, List.of());
    answers.put(ElementKind.KEEP_OUT, List.of());
    return answers;
  }

  @Test
  void everyKind_isOrderedWorkedOrFound() {
    assertEquals(List.of(ElementKind.values()).size(), answers().size(), "a new kind: answer it");
    String said =
        files.get("tables/materials-orders-by-phase.csv").replace("\"\"", "\"")
            + files.get("tables/materials-labour.csv")
            + files.get("findings.txt");
    answers()
        .forEach(
            (kind, texts) -> texts.forEach(t -> assertTrue(said.contains(t), kind + ": " + t)));
  }

  @Test
  void whatNobodyCounts_isFound() {
    String findings = files.get("findings.txt");
    String found =
        findings
            .lines()
            .filter(l -> l.contains("is drawn as new, and") || l.startsWith("    also: "))
            .collect(Collectors.joining("\n"));
    assertTrue(found.contains("\"nameless\""), findings);
    for (String name :
        List.of("new shed", "new fence", "new hedge", "new terrace", "counted shed", "old shed")) {
      assertFalse(found.contains("\"" + name + "\""), name + findings);
    }
    assertEquals(1, found.lines().filter(l -> l.contains("is drawn as new, and")).count(), found);
    assertTrue(findings.contains("Did you mean `counted shed`?"), findings);
  }

  /** Of each element the table says what is bought and done in which phase, or why nothing is. */
  @Test
  void table_answersForEveryElement() {
    List<String> rows = files.get("tables/work-elements.csv").lines().skip(1).toList();
    assertEquals(24, rows.size());
    for (String row : rows) {
      boolean counted = row.endsWith(",");
      boolean told = row.contains(",,,,");
      assertTrue(counted ^ told, row);
    }
    assertRow(rows, "House,building,,,,is there already");
    assertRow(rows, "Old shed,structure,,,,is there already");
    assertRow(rows, "Nameless,tree,,,,not counted: give it as an item of its own");
    assertRow(rows, "Gas,utility,,,,is there; its marks are called for");
    assertRow(rows, "Field,keep out,,,,keeps ground free");
    assertRow(rows, "Counted fence,fence,,build the fence,Earthwork,");
    assertRow(rows, "Counted shed,structure,shed kit,install shed kit,Finish mulch,");
    assertRow(
        rows,
        "vine wires,trellis,\"posts for vine wires, wire for vine wires, wire strainers for vine"
            + " wires\",\"set posts, stretch wire\",Edges and trench,");
    assertRow(
        rows,
        "overflow pipe from barrel,overflow,overflow pipe,\"dig and fill trenches for pipe, lay"
            + " pipe in trenches\",Earthwork,");
    assertRow(
        rows,
        "frame of Leaves,frame,\"exterior screws, lumber 2x10, stakes\",saw and set frames,Edges"
            + " and trench,");
    assertRow(
        rows,
        "downspout of slope,downspout,,,,hangs at the house already; its inlet comes with a tank");
    assertRow(
        rows,
        "rain garden for slope,rain garden,,,,a size to choose; a basin or swale of that size is"
            + " dug");
    assertRow(rows, "hollow,basin,,dig swales and cuts by hand,Earthwork,");
    String barrel =
        rows.stream().filter(r -> r.startsWith("barrel,tank,")).findFirst().orElseThrow();
    for (String part :
        List.of("stand of a tank", "valve at the foot", "first-flush", "set tanks")) {
      assertTrue(barrel.contains(part), barrel);
    }
    assertTrue(barrel.endsWith(",Head assembly,"), barrel);
    assertRow(rows, "New hedge,fence,hedge plants,plant shrubs and vines,Plant trees and shrubs,");
  }

  private static void assertRow(List<String> rows, String row) {
    assertTrue(rows.contains(row), row + "\n" + String.join("\n", rows));
  }

  /** The kit's 14 h and 53 ft × 0.4 = 21.2 h. */
  @Test
  void whatThePlanCounts_isInHoursAndOrders() {
    assertTrue(
        files.get("tables/materials-labour.csv").contains("install shed kit,Finish mulch,1,,14.0"));
    assertTrue(
        files
            .get("tables/materials-labour.csv")
            .replace('\u00a0', ' ')
            .contains("build the fence,Earthwork,53.0,ft,21.2,21.2,21.2"));
    assertTrue(
        files
            .get("tables/materials-orders-by-phase.csv")
            .contains("\"shed kit, Counted shed\",1,,"));
  }
}
