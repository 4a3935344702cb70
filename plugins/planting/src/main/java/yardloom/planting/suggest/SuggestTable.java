package yardloom.planting.suggest;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Kinds for the beds that ask for some, each with what it brings. */
public final class SuggestTable implements TableMaker {
  @Override
  public String id() {
    return "suggestions";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Suggestions.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Suggested plants")
            .column(Column.text("bed", "Bed"))
            .column(Column.of("set", "Set", Measure.COUNT))
            .column(Column.text("plant", "Plant"))
            .column(Column.of("count", "Room for", Measure.COUNT))
            .column(Column.text("harvest", "Picked in"))
            .column(Column.text("uses", "Uses"))
            .column(Column.text("why", "Why"));
    Suggestions all = facts.get(Suggestions.KEY);
    for (Suggestions.Bed bed : all.beds()) {
      int number = 0;
      for (Suggestions.Set set : bed.sets()) {
        number++;
        for (Suggestions.Line line : set.lines()) {
          table.row(
              Cell.text(bed.in().name()),
              Cell.number(number),
              Cell.text(line.plant()),
              line.count().isPresent() ? Cell.number(line.count().getAsInt()) : Cell.BLANK,
              text(line.harvest()),
              text(line.uses()),
              Cell.text(line.why()));
        }
      }
      if (bed.sets().isEmpty()) {
        none(table, bed);
      }
      note(table, bed);
    }
    if (!all.beds().isEmpty()) {
      table.note(
          "Every kind fits its bed by all that is asked in the table of fit, has room in an equal"
              + " part of it when grown, and agrees with the others: no two of one genus, one"
              + " watering, one soil, no runner beside a low kind,"
              + " another runner or, where it is held back with a spade, what stays. Of these the set with most"
              + " months of harvest, then most uses, then most layers. Set 2 has no kind of set 1."
              + " Room is what an equal part of the bed holds, not what a household needs; fill the rest"
              + " with more kinds. Months are recalled for most; tall kinds go to the shady side.");
    }
    return table.build();
  }

  /**
   * A bed that asks and gets nothing is told so in a row: a table of notes alone is not printed.
   */
  private static void none(Table.Builder table, Suggestions.Bed bed) {
    table.row(
        Cell.text(bed.in().name()),
        Cell.BLANK,
        Cell.text("none"),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.text(
            bed.looked()
                + " kinds suit it, no "
                + bed.wish().kinds()
                + " of them together; ask for fewer kinds or wish for less"));
  }

  private static void note(Table.Builder table, Suggestions.Bed bed) {
    String name = bed.in().name();
    if (!bed.sets().stream().allMatch(Suggestions.Set::exact)) {
      table.note(name + ": the search was ended before all sets were looked at.");
    }
    if (!bed.tender()) {
      table.note(
          name
              + ": no hardiness zone is known, so kinds that winter only in zone "
              + Kind.TENDER_ZONE
              + " and warmer are left out; give `hardinessZone`.");
    }
    if (!bed.monthsKnown()) {
      table.note(name + ": months are not known without frost dates.");
    }
  }

  private static Cell text(String text) {
    return text.isEmpty() ? Cell.BLANK : Cell.text(text);
  }
}
