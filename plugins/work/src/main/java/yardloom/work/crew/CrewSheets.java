package yardloom.work.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Course;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.Surface;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.work.cost.BillSums;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/** One page for each phase: when, where, what to bring, what to order, what to do and mind. */
public final class CrewSheets implements SheetMaker {
  private static final int FIRST = 60;

  @Override
  public String id() {
    return "work.crew";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        TaskLoad.FACT,
        PhaseTime.FACT,
        PlantingVisit.FACT,
        YardFacts.SURFACES,
        YardFacts.BILL,
        YardFacts.SUPPLIES,
        YardFacts.DIG_CALL);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    List<SheetPlan> sheets = new ArrayList<>();
    int number = FIRST;
    for (PhaseTime time : facts.all(PhaseTime.FACT)) {
      sheets.add(page(number, time, plan, facts, offers));
      number++;
    }
    return sheets;
  }

  private static SheetPlan page(int number, PhaseTime time, Plan plan, Facts facts, Offers offers) {
    UnitSystem units = plan.info().units();
    List<Panel> panels = new ArrayList<>();
    panels.add(new Panel.Notes(time.phase().title(), steps(time, plan, facts)));
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.WAYS, time.phase().id())));
    panels.add(new Panel.Notes("Safety", texts(time.phase().cautions(), units)));
    for (Table table :
        List.of(needed(time, plan, facts), tasks(time, plan, facts), layers(time, plan, facts))) {
      if (!table.isEmpty()) {
        panels.add(new Panel.TableBlock(table));
      }
    }
    panels.add(
        new Panel.Notes(
            "Done", List.of("Date ____________  Hours ________  By ____________________")));
    return new SheetPlan(
        number,
        "crew-" + time.phase().id().id(),
        "Crew: " + time.phase().title(),
        SheetPlan.Format.PAGE,
        panels);
  }

  private static List<String> steps(PhaseTime time, Plan plan, Facts facts) {
    List<String> lines = new ArrayList<>();
    String when =
        time.start().isPresent()
            ? TableFormat.date(time.start().get())
                + " to "
                + TableFormat.date(time.end().orElseThrow())
            : "working day " + time.firstDay();
    lines.add("When: " + when + ", " + time.days() + (time.days() == 1 ? " day" : " days") + ".");
    WorkSettings work = WorkSettings.of(plan);
    lines.add(
        "Crew of "
            + work.crew()
            + (time.hours() > 0
                ? ", likely " + Say.number(time.hours()) + " hours of one person in all."
                : ".")
            + (time.why().isEmpty() ? "" : " It " + time.why() + "."));
    lines.add(bring(time));
    int n = 1;
    String dig = facts.find(YardFacts.DIG_CALL).map(c -> " (" + c.call() + ")").orElse("");
    for (String step : texts(time.phase().steps(), plan.info().units())) {
      lines.add(n++ + ". " + step.replace("{dig call}", dig));
    }
    return lines;
  }

  private static List<String> texts(List<String> texts, UnitSystem units) {
    return texts.stream().map(t -> Say.inText(t, units)).toList();
  }

  private static String bring(PhaseTime time) {
    String tools = String.join(", ", time.phase().tools());
    return "Bring " + tools + "; gloves, water, first aid, this page.";
  }

  /** What of each stack is laid in this phase, from the ground up; narrow enough for the page. */
  private static Table layers(PhaseTime time, Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("crew-" + time.phase().id().id() + "-layers", "Lay, by surface")
            .column(Column.text("surface", "Surface"))
            .column(Column.of("sheets", "Sheets", Measure.COUNT))
            .column(Column.text("layer", "Layer"))
            .column(Column.of("depth", "Deep", Measure.DEPTH))
            .column(Column.text("amount", "Amount"));
    for (Surface s : facts.all(YardFacts.SURFACES)) {
      List<Course> laid = s.courses().stream().filter(c -> c.phase() == time.phase().id()).toList();
      // Sheets stand in the row of what covers them, or the page would not hold all.
      Cell sheets =
          laid.stream().anyMatch(c -> c.material() == Material.CARDBOARD)
              ? s.sheets().map(Cell::of).orElse(Cell.BLANK)
              : Cell.BLANK;
      for (Course course : laid) {
        if (course.material() != Material.CARDBOARD || laid.size() == 1) {
          table.row(
              Cell.text(s.of().name()),
              sheets,
              Cell.text(course.material().title()),
              course.depth().map(Cell::of).orElse(Cell.BLANK),
              course.material() == Material.CARDBOARD
                  ? Cell.BLANK
                  : Amounts.cell(plan, course.amount()));
          sheets = Cell.BLANK;
        }
      }
    }
    return table.build();
  }

  private static Table needed(PhaseTime time, Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("crew-" + time.phase().id().id() + "-needs", "Order and have on site")
            .column(Column.text("item", "Item"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("by", "Order by"))
            .column(Column.text("there", "There"));
    for (BillLine line : BillSums.byItem(PhaseOrders.neededIn(time, facts.all(YardFacts.BILL)))) {
      int lead = PhaseOrders.leadDays(line.item(), facts);
      table.row(
          Cell.text(line.item()),
          Amounts.cell(plan, line.order()),
          PhaseOrders.orderBy(line, time, facts)
              .map(Cell::of)
              .orElseGet(() -> Cell.text(lead + " days ahead")),
          Cell.text("[  ]"));
    }
    return table.build();
  }

  private static Table tasks(PhaseTime time, Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("crew-" + time.phase().id().id() + "-tasks", "Tasks, hours of one person")
            .column(Column.text("task", "Task"))
            .column(Column.text("amount", "Amount"))
            .column(Column.of("hours", "Likely", Measure.HOURS));
    for (TaskLoad task : facts.all(TaskLoad.FACT)) {
      if (task.phase() == time.phase().id()) {
        table.row(
            Cell.text(task.title()), Amounts.cell(plan, task.amount()), Cell.of(task.likely()));
      }
    }
    return table.build();
  }
}
