package yardloom.materials.sheet;

import java.util.ArrayList;
import java.util.List;
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
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.model.PhaseTime;
import yardloom.materials.model.Say;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TaskLoad;
import yardloom.materials.model.TipPile;
import yardloom.materials.work.MaterialFacts;

/** The sheets for client, driver and crew. */
public final class MaterialSheets {
  private static final int MATERIALS = 40;
  private static final int DELIVERY = 41;
  private static final int WORK = 42;
  private static final int CREW = 60;

  /** The layers that drivers need to find their way. */
  private static final Set<String> WAYS =
      Set.of(
          "kernel.bed",
          "kernel.building",
          "kernel.fence",
          "kernel.labels",
          "kernel.lot",
          "kernel.lot-line",
          "kernel.path",
          "kernel.paving",
          "kernel.structure",
          "kernel.tree",
          "kernel.utility",
          "materials.piles");

  /** The same with what is laid. */
  private static final Set<String> GROUND =
      Stream.concat(WAYS.stream(), Stream.of("materials.depths", "materials.surfaces"))
          .collect(Collectors.toUnmodifiableSet());

  private MaterialSheets() {}

  /** All of them. */
  public static List<SheetMaker> all() {
    return List.of(new Materials(), new Delivery(), new Work(), new Crew());
  }

  /** Surfaces, stacks, take-off and orders. */
  private static final class Materials implements SheetMaker {
    @Override
    public String id() {
      return "materials.materials";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.SURFACES, MaterialFacts.POCKETS, YardFacts.BILL);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      List<Surface> surfaces = facts.all(MaterialFacts.SURFACES);
      if (surfaces.isEmpty()) {
        return List.of();
      }
      List<Panel> panels = new ArrayList<>();
      panels.add(new Panel.SitePlan(GROUND));
      panels.add(SectionFigure.of(surfaces, plan.info().units()));
      for (TableMaker maker : List.of(new TakeOffTable(), new OrderTable())) {
        panels.add(new Panel.TableBlock(maker.make(plan, facts)));
      }
      panels.add(
          new Panel.Notes(
              "Laying the stack",
              List.of(
                  "Mow low, remove tough weeds, water. Do not till.",
                  "Cardboard without tape, staples or gloss, lapped, wetted, covered the same day.",
                  "Keep chips off trunks, stems and walls as drawn.",
                  "Plant perennials in pockets of compost through the cardboard.")));
      return List.of(new SheetPlan(MATERIALS, "materials", "Materials", panels));
    }
  }

  /** What the truck driver needs. */
  private static final class Delivery implements SheetMaker {
    @Override
    public String id() {
      return "materials.delivery";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.PILES, MaterialFacts.HAULS, YardFacts.BILL);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      List<TipPile> piles = facts.all(MaterialFacts.PILES);
      if (piles.isEmpty()) {
        return List.of();
      }
      List<String> notes = new ArrayList<>();
      for (TipPile pile : piles) {
        notes.add(describe(pile, plan.info().units()));
      }
      notes.add("Look up before the bed goes up: overhead lines and branches need 20 ft or more.");
      notes.add("Keep the walk, the gutter and the neighbour's drive free.");
      notes.add("Do not drive on soft ground or over the septic field.");
      return List.of(
          new SheetPlan(
              DELIVERY,
              "delivery",
              "Delivery",
              List.of(
                  new Panel.SitePlan(WAYS),
                  new Panel.Notes("For the driver", notes),
                  new Panel.TableBlock(new LoadTable().make(plan, facts)),
                  new Panel.TableBlock(new HaulTable().make(plan, facts)))));
    }

    private static String describe(TipPile pile, UnitSystem units) {
      return "Tip "
          + Say.volume(pile.load().value(), units)
          + " of "
          + pile.spot().material().title()
          + " on \""
          + pile.spot().name()
          + "\": a "
          + pile.form()
          + " about "
          + Say.distance(pile.width(), units)
          + " wide, "
          + Say.distance(pile.length(), units)
          + " long and "
          + Say.distance(pile.height().value(), units)
          + " high. The way in is "
          + Say.distance(pile.spot().access(), units)
          + " wide.";
    }
  }

  /** Phases, hours and cost, for client and builder. */
  private static final class Work implements SheetMaker {
    @Override
    public String id() {
      return "materials.work";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.TASKS, MaterialFacts.PHASES, MaterialFacts.COST, YardFacts.BILL);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      if (facts.all(MaterialFacts.PHASES).isEmpty()) {
        return List.of();
      }
      List<Panel> panels = new ArrayList<>();
      List<TableMaker> makers = new ArrayList<>(WorkTables.all());
      makers.addAll(CostTables.all());
      makers.add(new RegionTable());
      for (TableMaker maker : makers) {
        Table table = maker.make(plan, facts);
        if (!table.isEmpty()) {
          panels.add(new Panel.TableBlock(table));
        }
      }
      return List.of(new SheetPlan(WORK, "work", "Work, orders and cost", panels));
    }
  }

  /** One page for each phase. */
  private static final class Crew implements SheetMaker {
    @Override
    public String id() {
      return "materials.crew";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(
          MaterialFacts.TASKS,
          MaterialFacts.PHASES,
          MaterialFacts.SURFACES,
          MaterialFacts.POCKETS,
          YardFacts.BILL);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      List<SheetPlan> sheets = new ArrayList<>();
      int number = CREW;
      for (PhaseTime time : facts.all(MaterialFacts.PHASES)) {
        sheets.add(page(number++, time, plan, facts));
      }
      return sheets;
    }

    private static SheetPlan page(int number, PhaseTime time, Plan plan, Facts facts) {
      List<Panel> panels = new ArrayList<>();
      String when =
          time.start().isPresent()
              ? time.start().get() + " to " + time.end().orElseThrow()
              : "working day " + time.firstDay();
      List<String> steps = new ArrayList<>();
      steps.add("When: " + when + ", " + time.days() + (time.days() == 1 ? " day." : " days."));
      int n = 1;
      for (String step : time.phase().steps()) {
        steps.add(n++ + ". " + step);
      }
      panels.add(new Panel.Notes(time.phase().title(), steps));
      Table needed = needed(time, plan, facts);
      if (!needed.isEmpty()) {
        panels.add(new Panel.TableBlock(needed));
      }
      Table tasks = tasks(time, plan, facts);
      if (!tasks.isEmpty()) {
        panels.add(new Panel.TableBlock(tasks));
      }
      if (time.phase().id().equals("sheet") || time.phase().id().equals("compost")) {
        panels.add(new Panel.TableBlock(new TakeOffTable().make(plan, facts)));
      }
      return new SheetPlan(
          number,
          "crew-" + time.phase().id(),
          "Crew: " + time.phase().title(),
          SheetPlan.Format.PAGE,
          panels);
    }

    private static Table needed(PhaseTime time, Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled("crew-" + time.phase().id() + "-needs", "Have on site")
              .column(Column.text("item", "Item"))
              .column(Column.text("for", "For"))
              .column(Column.text("amount", "Amount"));
      for (BillLine line : WorkTables.neededIn(time, facts.all(YardFacts.BILL))) {
        table.row(
            Cell.text(line.item()),
            line.element().map(e -> Cell.text(e.toString())).orElse(Cell.text("all")),
            Amounts.cell(plan, line.order()));
      }
      return table.build();
    }

    private static Table tasks(PhaseTime time, Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled("crew-" + time.phase().id() + "-tasks", "Tasks, hours of one person")
              .column(Column.text("task", "Task"))
              .column(Column.text("amount", "Amount"))
              .column(Column.of("hours", "Hours", yardloom.kernel.table.Measure.HOURS));
      for (TaskLoad task : facts.all(MaterialFacts.TASKS)) {
        if (task.phase().equals(time.phase().id())) {
          table.row(
              Cell.text(task.task()), Amounts.cell(plan, task.amount()), Cell.of(task.likely()));
        }
      }
      return table.build();
    }
  }
}
