package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Remarks and acceptances, from script to findings and drawing. */
class RemarksTest {
  /**
   * Beds 7 ft wide with paths on no side: from 24 in at each edge 3 ft stay out of reach, and 2 ft
   * at either end do not: 3 × (20 − 4) = 48 sq ft in each.
   */
  private static final String SCRIPT =
      """
      plan 'Remarks', units: 'us'
      lot([point(0.ft, 0.ft), point(52.ft, 0.ft), point(52.ft, 40.ft), point(0.ft, 40.ft)])
      bed 'Herbs', rect(5.ft, 5.ft, 20.ft, 7.ft), use: 'perennial'
      bed 'Kale', rect(5.ft, 25.ft, 20.ft, 7.ft), use: 'annual'
      bed 'Roots', rect(30.ft, 25.ft, 20.ft, 7.ft), use: 'annual'
      """;

  @TempDir private static Path dir;

  private static Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "svg");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  @Test
  void sameFinding_ofThreeBeds_isOneWithThreePlaces() throws IOException {
    String findings = drawn("plain", SCRIPT).get("findings.txt");
    assertEquals(1, findings.split("lie further than 24 in", -1).length - 1, findings);
    assertTrue(findings.contains(":3:1: bed \"Herbs\": 48.0 sq ft lie further"), findings);
    assertTrue(findings.contains("\n    also: " + dir + "/plain.groovy:4:1: bed \"Kale\"\n"));
    assertTrue(findings.contains("\n    also: " + dir + "/plain.groovy:5:1: bed \"Roots\"\n"));
  }

  @Test
  void accepted_isPrintedSoWithItsReason_andNoLongerMarked() throws IOException {
    Map<String, String> plain = drawn("before", SCRIPT);
    Map<String, String> files =
        drawn(
            "accepted", SCRIPT + "accept 'site.bed-reach', why: 'they step on boards', of: 'Kale'");
    String findings = files.get("findings.txt");
    assertTrue(findings.contains("ACCEPTED  "), findings);
    assertTrue(findings.contains("bed \"Kale\": 48.0 sq ft"), findings);
    assertTrue(findings.contains("\n    accepted: they step on boards\n"), findings);
    assertTrue(findings.contains("WARNING  " + dir + "/accepted.groovy:3:1: bed \"Herbs\""));
    assertFalse(findings.contains("also: " + dir + "/accepted.groovy:4:1"), findings);
    assertEquals(marks(plain) - 1, marks(files), "one is no longer marked");
  }

  private static int marks(Map<String, String> files) {
    return times(files.get("sheets/02-layout.svg"), "finding-warning\" ");
  }

  private static int times(String text, String part) {
    return text.split(part, -1).length - 1;
  }

  @Test
  void acceptanceOfNothing_isTold() throws IOException {
    String script =
        SCRIPT
            + "accept 'site.bed-reech', why: 'x'\naccept 'site.deed', why: 'x'\n"
            + "hideLabel 'Rots'\nhideLabel 'paths'\n";
    String findings = drawn("idle", script).get("findings.txt");
    assertTrue(findings.contains("idle.groovy:6:1: no rule is called 'site.bed-reech'. Did you"));
    assertTrue(findings.contains("Did you mean `site.bed-reach`?"), findings);
    assertTrue(findings.contains("idle.groovy:7:1: nothing is found by 'site.deed'"), findings);
    assertTrue(findings.contains("no label is hidden. Did you mean `Roots`?"), findings);
    assertTrue(findings.contains("called 'paths'"), findings);
  }

  /** A bed that leaves the lot is an error, whatever is accepted; the run still says so. */
  @Test
  void error_cannotBeAccepted() throws IOException {
    Files.writeString(
        dir.resolve("error.groovy"),
        SCRIPT
            + "bed 'Out', rect(45.ft, 5.ft, 9.ft, 3.ft), use: 'annual'\n"
            + "accept 'site.bed-outside-lot', why: 'nobody minds'\n");
    Run run = Run.in(dir, "check", "error.groovy");
    assertEquals(ExitCode.FINDINGS, run.code(), run.out() + run.err());
    assertTrue(run.out().contains("is an error here and cannot be accepted"), run.out());
  }

  /** 13 ft lie between the beds; the label of one bed is hidden, its ground is not. */
  @Test
  void noteDimensionAndHiddenLabel_areOnTheSitePlan() throws IOException {
    String svg =
        drawn(
                "said",
                SCRIPT
                    + """
                    note 'old well, filled', at: point(40.ft, 12.ft)
                    dimension point(5.ft, 12.ft), point(5.ft, 25.ft), offset: 2.ft, text: 'lawn'
                    hideLabel 'Kale'
                    """)
            .get("sheets/02-layout.svg");
    assertTrue(svg.contains("Old well, filled"));
    assertTrue(svg.contains("lawn 13'-0"), "the dimension");
    String plain = drawn("unsaid", SCRIPT).get("sheets/02-layout.svg");
    assertEquals(times(plain, ">Kale<") - 2, times(svg, ">Kale<"), "letters and their halo");
    assertEquals(times(plain, ">Herbs<"), times(svg, ">Herbs<"));
  }
}
