package yardloom.work.labour;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Hours by task. */
public final class LabourTable implements TableMaker {
  @Override
  public String id() {
    return "materials-labour";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TaskLoad.FACT);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    WorkSettings work = WorkSettings.of(plan);
    Table.Builder table =
        Table.titled(id(), "Labour")
            .column(Column.text("task", "Task"))
            .column(Column.text("phase", "Phase"))
            .column(Column.text("amount", "Amount"))
            .column(Column.of("low", "Low", Measure.HOURS))
            .column(Column.of("likely", "Likely", Measure.HOURS))
            .column(Column.of("high", "High", Measure.HOURS));
    List<TaskLoad> tasks = facts.all(TaskLoad.FACT);
    for (TaskLoad t : tasks) {
      table.row(
          Cell.text(t.title()),
          Cell.text(t.phase().title(plan)),
          Amounts.cell(plan, t.amount()),
          Cell.of(t.low()),
          Cell.of(t.likely()),
          Cell.of(t.high()));
    }
    if (!tasks.isEmpty()) {
      TaskLoad.Sum all = TaskLoad.sum(tasks);
      table.total(
          Cell.text("all, hours of one person"),
          Cell.BLANK,
          Cell.BLANK,
          Cell.of(all.low()),
          Cell.of(all.likely()),
          Cell.of(all.high()));
      double days = all.likely().hours() / (work.crew() * work.hoursPerDay());
      table.note(
          String.format(
              java.util.Locale.ROOT,
              "A crew of %d working %.1f hours a day needs about %.1f days.",
              work.crew(),
              work.hoursPerDay(),
              days));
    }
    return table.note("Most rates are from memory; keep your own and put them in.").build();
  }
}
