package yardloom.site.lawn;

import java.util.List;
import java.util.Set;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;

/** The strips of lawn beside beds; empty if there are none. */
public final class LawnStripTable implements TableMaker {
  @Override
  public String id() {
    return "lawn-strips";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(LawnStrip.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    return of(plan, facts.all(LawnStrip.FACT));
  }

  static Table of(Plan plan, List<LawnStrip> strips) {
    Table.Builder table =
        Table.titled(
                "lawn-strips",
                OpenGround.of(plan) == OpenGround.LAWN
                    ? "Strips of lawn too narrow to mow"
                    : "Narrow strips of " + OpenGround.of(plan).noun())
            .column(Column.text("beside", "Beside"))
            .column(Column.of("width", "Greatest width", Measure.DEPTH))
            .column(Column.of("length", "Length, about", Measure.LENGTH))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.text("offer", "Make of it"));
    Area sum = Area.ZERO;
    for (LawnStrip strip : strips) {
      Area area = strip.ground().area();
      table.row(
          Cell.text(strip.names()),
          Cell.of(strip.width()),
          Cell.of(
              Derived.by("area / greatest width", LawnStripCheck.PRACTICE)
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
          "Open ground of the lot that touches a bed or mulched ground and where no circle of 30 in (76 cm) fits; less"
              + " than a square foot is not listed.");
    }
    return table.build();
  }
}
