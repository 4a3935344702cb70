package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a script says of standing things reaches bill, setting out, findings and sheet. The trunks
 * are chosen against the rule that holds without a word: the thin tree stands, the thick one is
 * new. Amounts: counted in the script; 24 sq ft of path at 6 in are 24 × 6 / 324 = 0.44 cu yd.
 */
class StandingFromScriptTest {
  private static final String YARD =
      """
      plan 'Standing', units: 'us'
      site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 70.ft), point(0.ft, 70.ft)])
      building 'house', rect(30.ft, 2.ft, 30.ft, 20.ft), eaves: 10.ft
      fence 'old fence', line([point(1.ft, 40.ft), point(1.ft, 60.ft)]), height: 4.ft
      fence 'new fence', line([point(3.ft, 65.ft), point(24.ft, 65.ft)]), height: 4.ft, standing: false
      structure 'new shed', rect(70.ft, 50.ft, 8.ft, 10.ft), height: 8.ft, standing: false
      paving 'old drive', rect(66.ft, 0.ft, 9.ft, 30.ft), standing: true
      path 'old path', line([point(10.ft, 30.ft), point(10.ft, 50.ft)]), width: 3.ft, standing: true
      path 'new path', line([point(20.ft, 30.ft), point(20.ft, 38.ft)]), width: 3.ft, standing: false
      sheetMulch { chips path: 6.inch }
      tree('old plum', point(40.ft, 55.ft), crown: 10.ft, height: 12.ft, trunk: 3.inch, standing: true) {
        species 'European plum'
      }
      tree('new pear', point(55.ft, 55.ft), crown: 14.ft, height: 15.ft, trunk: 5.inch, standing: false) {
        species 'European pear'
      }
      tree('unsaid', point(80.ft, 40.ft), crown: 14.ft, height: 15.ft, trunk: 7.inch)
      bed('bed', rect(30.ft, 30.ft, 4.ft, 12.ft)) {
        plant 'asparagus', spacing: 24.inch, share: 0.5, standing: true
        plant 'chives', spacing: 12.inch, share: 0.5
      }
      """;

  @TempDir Path dir;
  private Path out;

  @BeforeEach
  void draw() throws IOException {
    Path script = dir.resolve("standing.groovy");
    Files.writeString(script, YARD);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "svg,csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    out = dir.resolve("out/standing");
  }

  private String text(String file) throws IOException {
    return Files.readString(out.resolve(file)).replace('\u00a0', ' ');
  }

  private List<String> rows(String table) throws IOException {
    return Files.readAllLines(out.resolve("tables/" + table + ".csv"));
  }

  @Test
  void plants_onlyNewOnes_areBought() throws IOException {
    String list = text("tables/plant-list.csv");
    assertTrue(list.contains("European pear"), list);
    assertTrue(list.contains("chives"), list);
    assertFalse(list.contains("European plum"), list);
    assertFalse(list.contains("asparagus"), list);
  }

  @Test
  void paths_onlyNewOnes_areMulched() throws IOException {
    List<String> paths =
        rows("materials-take-off").stream().filter(r -> r.contains(",path,")).toList();
    assertEquals(1, paths.size(), paths.toString());
    assertTrue(
        paths.get(0).startsWith("New path,") && paths.get(0).endsWith(",0.44"), paths.get(0));
  }

  @Test
  void settingOut_hasWhatIsNewOnly() throws IOException {
    List<String> names =
        rows("setting-out").stream().skip(1).map(r -> r.split(",")[0]).distinct().toList();
    assertEquals(List.of("bed", "new path", "new shed", "new fence", "new pear"), names);
  }

  @Test
  void tree_ofWhichNothingIsSaid_isAFinding() throws IOException {
    List<String> said =
        text("findings.txt").lines().filter(l -> l.contains("tree-standing")).toList();
    assertEquals(1, said.size(), said.toString());
    assertTrue(text("findings.txt").contains("tree \"unsaid\": taken as standing already"));
  }

  @Test
  void legend_tellsExistingFromNew() throws IOException {
    // Long entries of a legend break into lines, each an element of its own.
    String sheet = text("sheets/02-layout.svg").replaceAll("\\s*<[^>]*>\\s*", " ");
    sheet = sheet.replaceAll(" +", " ");
    for (String entry :
        List.of(
            "Fence or hedge, new",
            "Fence or hedge, existing",
            "Paving, existing",
            "Path, new",
            "Path, existing",
            "Structure, new")) {
      assertTrue(sheet.contains(entry), entry);
    }
    assertFalse(sheet.contains("Paving, new"));
  }
}
