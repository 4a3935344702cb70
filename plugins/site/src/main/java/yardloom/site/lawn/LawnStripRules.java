package yardloom.site.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.site.element.Show;

/** Says where strips of lawn are left that nobody can mow, and what to make of them. */
public final class LawnStripRules {
  private static final Source PRACTICE =
      Source.commonPractice("lawn narrower than 30 in (76 cm) is not mown but trimmed by hand");

  private LawnStripRules() {}

  public static List<Finding> strips(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (LawnStrip strip : LawnStrip.of(plan)) {
      findings.add(
          Finding.of(
                  "site.lawn-strip",
                  Severity.WARNING,
                  "a strip of lawn up to "
                      + Show.small(plan, strip.width())
                      + " wide, "
                      + Show.area(plan, strip.ground().area())
                      + ", is left beside "
                      + names(strip),
                  strip.advice(),
                  PRACTICE)
              .about(strip.beside().get(0).id(), strip.beside().get(0).place())
              .marking(strip.ground()));
    }
    return findings;
  }

  private static String names(LawnStrip strip) {
    return strip.beside().stream().map(b -> b.id().toString()).collect(Collectors.joining(", "));
  }

  /** The strips as a table; empty if there are none. */
  public static Table table(Plan plan) {
    Table.Builder table =
        Table.titled("lawn-strips", "Strips of lawn too narrow to mow")
            .column(Column.text("beside", "Beside"))
            .column(Column.of("width", "Greatest width", Measure.DEPTH))
            .column(Column.of("length", "Length, about", Measure.LENGTH))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.text("offer", "Make of it"));
    List<LawnStrip> strips = LawnStrip.of(plan);
    Area sum = Area.ZERO;
    for (LawnStrip strip : strips) {
      Area area = strip.ground().area();
      table.row(
          Cell.text(names(strip)),
          Cell.of(strip.width()),
          Cell.of(
              Derived.by("area / greatest width", PRACTICE)
                  .from("area", area)
                  .from("greatest width", strip.width())
                  .gives(strip.length())),
          Cell.of(area),
          Cell.text(strip.advice()));
      sum = sum.plus(area);
    }
    if (!strips.isEmpty()) {
      table.total(Cell.text("All together"), Cell.BLANK, Cell.BLANK, Cell.of(sum), Cell.BLANK);
      table.note(
          "Open ground of the lot that touches a bed and where no circle of 30 in (76 cm) fits; less"
              + " than a square foot is not listed.");
    }
    return table.build();
  }
}
