package yardloom.kernel.study;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Shape;

/**
 * Marks the ground of findings on the site plan, numbered as in the list of findings. Not a {@link
 * yardloom.kernel.draw.Painter}, because findings are no facts.
 */
public final class FindingMarks {
  public static final Layer LAYER = new Layer("kernel.findings", "Findings", Layer.Band.NOTES);

  private FindingMarks() {}

  /** The marks of {@code findings} under the numbers of their groups; accepted ones have none. */
  public static List<Mark> of(List<Finding> findings) {
    List<Mark> marks = new ArrayList<>();
    for (FindingGroup group : FindingGroup.of(findings)) {
      if (group.first().severity() == Severity.ACCEPTED) {
        continue;
      }
      for (Finding finding : group.all()) {
        finding.ground().ifPresent(ground -> mark(finding, ground, group.number(), marks));
      }
    }
    return marks;
  }

  private static void mark(Finding finding, Shape ground, int number, List<Mark> marks) {
    marks.add(new Mark.Region(ground, style(finding), "finding " + number));
    marks.add(new Mark.Label(ground.heart(), "(" + number + ")", 2.5, true, 1, Mark.Anchor.NEAR));
  }

  private static Style style(Finding finding) {
    return finding.severity() == Severity.ERROR ? Palette.FINDING_ERROR : Palette.FINDING_WARNING;
  }

  /** What the legend says about those marks. */
  public static List<LegendEntry> legend(List<Finding> findings) {
    List<LegendEntry> entries = new ArrayList<>();
    List<Finding> marked =
        findings.stream()
            .filter(f -> f.ground().isPresent() && f.severity() != Severity.ACCEPTED)
            .toList();
    boolean error = marked.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    boolean other = marked.stream().anyMatch(f -> f.severity() != Severity.ERROR);
    if (error) {
      entries.add(LegendEntry.line("(n) finding: must be changed", Palette.FINDING_ERROR));
    }
    if (other) {
      entries.add(LegendEntry.line("(n) finding: to decide", Palette.FINDING_WARNING));
    }
    return entries;
  }
}
