package yardloom.materials.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
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
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.calc.PhaseSchedule;
import yardloom.materials.data.SourcingData;
import yardloom.materials.model.Material;
import yardloom.materials.model.PhaseTime;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TaskLoad;
import yardloom.materials.model.WorkSettings;
import yardloom.materials.work.BillSums;
import yardloom.materials.work.MaterialFacts;

/** One page for each phase: when, where, what to bring, what to order, what to do and mind. */
final class CrewSheets implements SheetMaker {
  private static final int FIRST = 60;

  /** Layers on top of the ways, by phase. */
  private static final Map<String, Set<String>> SHOWN =
      Map.of(
          "stake", Set.of("kernel.dimensions", "kernel.tape-points"),
          "head", Set.of("kernel.water-point"),
          "sheet", Set.of("materials.surfaces", "materials.depths"),
          "compost", Set.of("materials.surfaces", "materials.depths"),
          "finish", Set.of("materials.surfaces", "materials.depths"),
          "plant", Set.of("planting.plants"),
          "drip", Set.of("kernel.water-point", "water.dripline"));

  @Override
  public String id() {
    return "materials.crew";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        MaterialFacts.TASKS, MaterialFacts.PHASES, MaterialFacts.SURFACES, YardFacts.BILL);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts) {
    List<SheetPlan> sheets = new ArrayList<>();
    int number = FIRST;
    for (PhaseTime time : facts.all(MaterialFacts.PHASES)) {
      sheets.add(page(number, time, plan, facts));
      number++;
    }
    return sheets;
  }

  private static SheetPlan page(int number, PhaseTime time, Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    List<Panel> panels = new ArrayList<>();
    panels.add(new Panel.Notes(time.phase().title(), steps(time, plan, facts)));
    panels.add(Panel.SitePlan.yardWith(layers(time)));
    panels.add(new Panel.Notes("Mind", texts(time.phase().cautions(), units)));
    for (Table table : List.of(needed(time, plan, facts), tasks(time, plan, facts))) {
      if (!table.isEmpty()) {
        panels.add(new Panel.TableBlock(table));
      }
    }
    if (time.phase().id().equals("sheet") || time.phase().id().equals("compost")) {
      panels.add(new Panel.TableBlock(depths(time, facts)));
    }
    panels.add(
        new Panel.Notes(
            "Done", List.of("Date ____________  Hours ________  By ____________________")));
    return new SheetPlan(
        number,
        "crew-" + time.phase().id(),
        "Crew: " + time.phase().title(),
        SheetPlan.Format.PAGE,
        panels);
  }

  private static Set<String> layers(PhaseTime time) {
    return Stream.concat(
            MaterialSheets.WAYS.stream(), SHOWN.getOrDefault(time.phase().id(), Set.of()).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static List<String> steps(PhaseTime time, Plan plan, Facts facts) {
    List<String> lines = new ArrayList<>();
    String when =
        time.start().isPresent()
            ? time.start().get() + " to " + time.end().orElseThrow()
            : "working day " + time.firstDay();
    lines.add("When: " + when + ", " + time.days() + (time.days() == 1 ? " day" : " days") + ".");
    WorkSettings work = WorkSettings.of(plan);
    double hours = 0;
    for (TaskLoad task : facts.all(MaterialFacts.TASKS)) {
      hours += task.phase().equals(time.phase().id()) ? task.likely().value().hours() : 0;
    }
    lines.add(
        "Crew of "
            + work.crew()
            + (hours > 0 ? ", likely " + Say.number(hours) + " hours of one person in all." : ".")
            + (time.why().isEmpty() ? "" : " It " + time.why() + "."));
    lines.add(bring(time));
    int n = 1;
    for (String step : texts(time.phase().steps(), plan.info().units())) {
      lines.add(n++ + ". " + step);
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

  /** The take-off, narrow enough for the page. */
  private static Table depths(PhaseTime time, Facts facts) {
    boolean sheet = time.phase().id().equals("sheet");
    Material material = sheet ? Material.WOOD_CHIPS : Material.COMPOST;
    Table.Builder table =
        Table.titled("crew-" + time.phase().id() + "-depths", "Lay, by surface")
            .column(Column.text("surface", "Surface"))
            .column(Column.of("sheets", "Sheets", Measure.COUNT))
            .column(Column.of("depth", "Deep", Measure.DEPTH))
            .column(Column.of("volume", "Volume", Measure.VOLUME));
    for (Surface s : facts.all(MaterialFacts.SURFACES)) {
      s.course(material)
          .ifPresent(
              c ->
                  table.row(
                      Cell.text(s.of().toString()),
                      sheet ? s.sheets().map(Cell::of).orElse(Cell.BLANK) : Cell.BLANK,
                      Cell.of(c.depth()),
                      Cell.of(c.volume())));
    }
    return table.build();
  }

  private static Table needed(PhaseTime time, Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("crew-" + time.phase().id() + "-needs", "Order and have on site")
            .column(Column.text("item", "Item"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("by", "Order by"))
            .column(Column.text("there", "There"));
    for (BillLine line : BillSums.byItem(WorkTables.neededIn(time, facts.all(YardFacts.BILL)))) {
      int lead = SourcingData.leadDays(line.item());
      table.row(
          Cell.text(line.item()),
          Amounts.cell(plan, line.order()),
          Cell.text(
              PhaseSchedule.orderBy(time.start(), lead)
                  .map(LocalDate::toString)
                  .orElse(lead + " days ahead")),
          Cell.text("[  ]"));
    }
    return table.build();
  }

  private static Table tasks(PhaseTime time, Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("crew-" + time.phase().id() + "-tasks", "Tasks, hours of one person")
            .column(Column.text("task", "Task"))
            .column(Column.text("amount", "Amount"))
            .column(Column.of("hours", "Likely", Measure.HOURS));
    for (TaskLoad task : facts.all(MaterialFacts.TASKS)) {
      if (task.phase().equals(time.phase().id())) {
        table.row(
            Cell.text(task.task()), Amounts.cell(plan, task.amount()), Cell.of(task.likely()));
      }
    }
    return table.build();
  }
}
