package yardloom.kernel.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/** Numbers of findings, and where they stand on the ground. */
class FindingMarksTest {
  private static final Source BOOK = Source.commonPractice("test");

  private static Shape ground(double x) {
    return Shape.rectangle(Point.metres(x, 2), Length.metres(4), Length.metres(6));
  }

  private static Finding finding(Severity severity, String text) {
    return Finding.of("test.rule", severity, text, "mend it", BOOK);
  }

  private static Finding about(String bed) {
    return finding(Severity.WARNING, "too wide")
        .about(new ElementId(ElementKind.BED, bed), new SourceRef("a", 1, 1));
  }

  @Test
  void findings_thatSayTheSame_shareANumber_andEachGroundHasItsMark() {
    List<Mark> marks =
        FindingMarks.of(
            List.of(
                finding(Severity.ERROR, "in the setback").marking(ground(0)),
                finding(Severity.WARNING, "no ground"),
                finding(Severity.WARNING, "too wide").marking(ground(10)),
                finding(Severity.WARNING, "too wide").marking(ground(20)),
                finding(Severity.WARNING, "nothing left").marking(Shape.EMPTY),
                finding(Severity.WARNING, "too long").marking(ground(30)).accepted("it may")));
    // Middles of 4 m by 6 m from (x, 2): x + 2 and 2 + 3.
    assertEquals(
        List.of(
            "finding 1 finding-error",
            "(1) 2.00 5.00",
            "finding 3 finding-warning",
            "(3) 12.00 5.00",
            "finding 3 finding-warning",
            "(3) 22.00 5.00"),
        marks.stream().map(FindingMarksTest::shown).toList());
  }

  private static String shown(Mark mark) {
    if (mark instanceof Mark.Region region) {
      return region.about() + " " + region.style().name();
    }
    Mark.Label label = (Mark.Label) mark;
    return String.format(
        java.util.Locale.ROOT,
        "%s %.2f %.2f",
        label.text(),
        label.at().x().metres(),
        label.at().y().metres());
  }

  @Test
  void legend_hasALineForEachColourThatIsDrawn() {
    LegendEntry error = LegendEntry.line("(n) finding: must be changed", Palette.FINDING_ERROR);
    LegendEntry other = LegendEntry.line("(n) finding: to decide", Palette.FINDING_WARNING);
    Finding bad = finding(Severity.ERROR, "bad").marking(ground(0));
    Finding note = finding(Severity.NOTE, "see").marking(ground(0));
    assertEquals(List.of(error, other), FindingMarks.legend(List.of(bad, note)));
    assertEquals(List.of(error), FindingMarks.legend(List.of(bad)));
    assertEquals(List.of(other), FindingMarks.legend(List.of(note)));
    assertEquals(
        List.of(),
        FindingMarks.legend(
            List.of(note.accepted("so be it"), finding(Severity.ERROR, "without ground"))));
  }

  @Test
  void counts_sayEachSeverityInWords() {
    assertEquals("", FindingGroup.counts(List.of()));
    assertEquals(
        "1 error, 2 warnings, 3 notes, 2 accepted",
        FindingGroup.counts(
            List.of(
                finding(Severity.NOTE, "a"),
                finding(Severity.NOTE, "b"),
                finding(Severity.NOTE, "c"),
                finding(Severity.WARNING, "d"),
                finding(Severity.WARNING, "e"),
                finding(Severity.ERROR, "f"),
                finding(Severity.NOTE, "g").accepted("x"),
                finding(Severity.NOTE, "h").accepted("x"))));
  }

  @Test
  void group_namesSixElements_andCountsTheRest() {
    List<Finding> six = new ArrayList<>();
    for (String bed : List.of("b1", "b2", "b3", "b4", "b5", "b6")) {
      six.add(about(bed));
    }
    String named = "bed \"b1\", bed \"b2\", bed \"b3\", bed \"b4\", bed \"b5\", bed \"b6\"";
    assertEquals(named + ": ", FindingGroup.of(six).get(0).about());
    six.add(about("b6"));
    assertEquals(named + ": ", FindingGroup.of(six).get(0).about(), "b6 twice is one bed");
    six.add(about("b7"));
    six.add(about("b8"));
    FindingGroup group = FindingGroup.of(six).get(0);
    assertEquals(named + " and 2 more: ", group.about());
    assertEquals(six.get(0), group.first());
    assertEquals(9, group.all().size());
    assertEquals("", FindingGroup.of(List.of(finding(Severity.NOTE, "all"))).get(0).about());
  }
}
