package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A lawn of 40 by 30 ft turned over whole, worked by hand: 1,200 sq ft with a bed of 162, a path of
 * 90, paving of 48, a shed of 16 in a corner and a standing tree in it.
 */
class MulchedGroundTest {
  private static final String SCRIPT =
      """
      plan 'Turned over', units: 'us'
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      sheetMulch { chips annual: 3.inch, path: 5.inch, treeRing: 2.inch ; compost annual: 1.inch }
      mulchedGround('lawn', rect(2.ft, 3.ft, 40.ft, 30.ft)) { mulch 6.inch }
      bed('roots', rect(5.ft, 6.ft, 18.ft, 9.ft), use: 'annual') { }
      path 'way', line([point(25.ft, 3.ft), point(25.ft, 33.ft)]), width: 3.ft
      paving 'pad', rect(30.ft, 20.ft, 8.ft, 6.ft), surface: 'brick'
      structure 'shed', rect(38.ft, 29.ft, 4.ft, 4.ft), height: 7.ft
      tree 'oak', point(36.ft, 10.ft), crown: 9.ft, height: 20.ft, trunk: 12.inch, standing: true
      """;

  @TempDir private Path dir;

  private Map<String, String> drawn(String script) throws IOException {
    Files.writeString(dir.resolve("yard.groovy"), script);
    Run run = Run.in(dir, "draw", "yard.groovy", "--out", "out", "--as", "csv,svg");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/yard"));
  }

  private static List<String> rows(Map<String, String> files, String table) {
    return files.get("tables/" + table + ".csv").replace('\u00a0', ' ').lines().skip(1).toList();
  }

  /**
   * Chips 6 in deep are too deep for the oak: a ring of 6 in + 3 ft from its middle, π 3.5² = 38.48
   * sq ft, less the gap of π 1² = 3.14, so 35.34 at 2 in. Ground: 1,200 − 162 − 90 − 48 − 16 −
   * 38.48 = 845.5, × 6 / 324 = 15.66 cu yd. Sheets cover 3.5 by 2.5 ft: west of the path 645 − 162
   * = 483, so 56; east 465 − 48 − 16 − 38.48 = 362.5, so 42; path 29.5 / 3.5, so 9; bed 5 × 4. All
   * chips 1.389 + 0.218 + 1.5 + 15.658 = 18.765, below the half since the circles lose a little.
   */
  @Test
  void takeOff_isLessBedsPathsPavingShedAndTree() throws IOException {
    assertEquals(
        List.of(
            "Way,path,90,9,,,5.0,1.39",
            "Oak,tree ring,35.3429,,,,2.0,0.22",
            "Roots,annual bed,162,20,1.0,0.50,3.0,1.50",
            "Lawn,mulched ground,845.5155,98,,,6.0,15.66",
            "\"all surfaces, exact\",,1132.8584,127,,0.50,,18.76"),
        rows(drawn(SCRIPT), "materials-take-off"));
  }

  /** All of its chips come with its cardboard, as on paths; nothing is planted in it. */
  @Test
  void order_phases_edgeAndCover() throws IOException {
    Map<String, String> files = drawn(SCRIPT);
    assertTrue(
        rows(files, "materials-stacks").stream()
            .anyMatch(r -> r.endsWith("2,wood-chip mulch,6.0,Cardboard and its cover")),
        rows(files, "materials-stacks")::toString);
    // 15.66 + 1.39 = 17.05, + 10 % = 18.76; after: 1.5 + 0.22 = 1.72, 1.89.
    List<String> order = rows(files, "materials-order");
    assertTrue(
        order.stream().anyMatch(r -> r.contains("mulch,Cardboard and its cover,17.05,19.00")),
        order::toString);
    assertTrue(order.stream().anyMatch(r -> r.contains("Finish mulch,1.72,2.00")), order::toString);
    // Round the ground 140 ft, less 8 along the shed in its corner.
    List<String> labour = rows(files, "materials-labour");
    assertTrue(
        labour.stream().anyMatch(r -> r.startsWith("cut edge,Edges and trench,132.0,ft")),
        labour::toString);
    assertEquals(
        List.of(
            "Shed,16.0",
            "Pad,48.0",
            "Way,90.0",
            "Roots,162.0",
            "Lawn,884.0",
            "Open ground,800.0",
            "lot,2000.0"),
        rows(files, "areas").stream()
            .map(r -> r.substring(0, r.lastIndexOf(',')))
            .map(r -> r.contains(".") ? r : r + ".0")
            .toList());
    assertTrue(files.get("sheets/02-layout.svg").contains("Mulched ground"));
  }

  /** The strip of two feet left of the bed is lawn, until the ground is mulched whole. */
  @Test
  void lawnStrip_isNoneInside_andGroundBeyondTheLotIsAFinding() throws IOException {
    String bare = SCRIPT.replaceAll("mulchedGround.*", "").replace("rect(5.ft, 6", "rect(2.ft, 6");
    assertTrue(drawn(bare).get("findings.txt").contains("site.lawn-strip"));
    String inside = SCRIPT.replace("rect(2.ft, 3.ft, 40.ft", "rect(0.ft, 3.ft, 42.ft");
    String fine = drawn(inside).get("findings.txt");
    assertFalse(fine.contains("site.lawn-strip"), fine);
    assertFalse(fine.contains("site.ground-outside-lot"), fine);
    // 3 ft beyond the west line over 30 ft.
    String out =
        drawn(SCRIPT.replace("rect(2.ft, 3.ft, 40.ft", "rect(-3.ft, 3.ft, 45.ft"))
            .get("findings.txt");
    assertTrue(out.contains("90.0 sq ft of 1350.0 sq ft lie outside the lot"), out);
    assertTrue(out.contains("site.ground-outside-lot"), out);
  }
}
