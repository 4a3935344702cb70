package yardloom.planting.turn;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
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

/** The crops that follow each other on one ground, with their days. */
public final class TurnTable implements TableMaker {
  @Override
  public String id() {
    return "succession";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TurnPlan.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "One crop after another")
            .column(Column.text("bed", "Where"))
            .column(Column.text("crop", "Crop"))
            .column(Column.text("family", "Family"))
            .column(Column.of("plants", "Plants", Measure.COUNT))
            .column(Column.text("planted", "Plant"))
            .column(Column.text("latest", "Not after"))
            .column(Column.text("pick-from", "Pick from"))
            .column(Column.text("pick-until", "Pick until"))
            .column(Column.text("clear", "Ground free"));
    List<List<Turn>> grounds = facts.get(TurnPlan.KEY).grounds();
    grounds.forEach(ground -> ground.forEach(turn -> table.row(row(turn))));
    if (!grounds.isEmpty()) {
      table.note(
          "Days of a usual year: each crop is planted on the first day of its season on which its"
              + " ground is free, and stands as long as the stages of FAO-56, Table 11, or the plan,"
              + " say; frost ends what is tender. Cut what is over at the ground, leave its roots, and"
              + " spread a finger's width of compost before the next.");
    }
    return table.build();
  }

  private static Cell[] row(Turn turn) {
    return new Cell[] {
      Cell.text(turn.planting().bed().id().name()),
      Cell.text((turn.isFirst() ? "" : "then ") + turn.planting().plant().name()),
      Cell.text(turn.planting().plant().family().name()),
      Cell.of(turn.planting().count()),
      turn.inTime() ? day(turn.planted()) : Cell.text("too late"),
      turn.inTime() ? day(turn.latest()) : Cell.BLANK,
      turn.picked().map(p -> day(p.from())).orElse(Cell.BLANK),
      turn.picked().map(p -> day(p.until())).orElse(Cell.BLANK),
      turn.inTime() ? day(turn.over()) : Cell.BLANK
    };
  }

  private static Cell day(LocalDate date) {
    return Cell.of(MonthDay.from(date));
  }
}
