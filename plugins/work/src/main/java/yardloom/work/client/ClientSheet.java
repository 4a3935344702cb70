package yardloom.work.client;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.Harvest;
import yardloom.facts.LawnWater;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.mulch.TopUp;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.UnitSystem;
import yardloom.work.cost.CostEstimate;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTable;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;
import yardloom.work.phase.ScheduleCalculator;

/**
 * What the client needs on a page: the yard before and grown, what it brings by month, what, when,
 * what it costs, and what stays to be done.
 */
public final class ClientSheet implements SheetMaker {
  private static final int NUMBER = 80;

  @Override
  public String id() {
    return "work.client";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.MULCH_TOTALS,
        YardFacts.TOP_UPS,
        TaskLoad.FACT,
        PhaseTime.FACT,
        PlantingVisit.FACT,
        KindHours.FACT,
        CostEstimate.FACT,
        YardFacts.BILL,
        YardFacts.FROST,
        YardFacts.HARVEST,
        YardFacts.LAWN_WATER,
        YardFacts.STANDS,
        YardFacts.CLIMATE,
        YardFacts.REFERENCE_ET,
        YardFacts.PILES);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    Optional<MulchTotals> totals = facts.find(YardFacts.MULCH_TOTALS);
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    if (totals.isEmpty() || phases.isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.only(offers.layers(SheetPage.COVER)));
    Set<String> before = offers.layers(SheetPage.BEFORE);
    if (!before.isEmpty()) {
      panels.add(new Panel.Before("As it stands", "As planned, when grown", before));
    }
    panels.add(new Panel.Notes("In short", summary(plan, facts, totals.get(), phases)));
    panels.add(new Panel.Notes("What we need from you", asks(facts.all(YardFacts.PILES))));
    TableFormat format = TableFormat.of(plan.info());
    // What it brings, else what it asks for, seen at one look; the tables stand in the report.
    Optional<Panel.Figure> chart = Optional.empty();
    // The rest fills what room is left: a client reads one page.
    List<Table> room =
        new ArrayList<>(List.of(KeyFigures.forClient(plan, facts), days(plan, facts, phases)));
    for (Table table : offers.tables(SheetPage.CLIENT)) {
      Optional<Panel.Figure> bars = MonthBars.of(table, format);
      if (bars.isPresent()) {
        chart = bars;
      } else {
        room.add(table);
      }
    }
    chart.ifPresent(panels::add);
    room.forEach(t -> panels.add(new Panel.TableBlock(t, true)));
    return List.of(new SheetPlan(NUMBER, "client", "Your yard", SheetPlan.Format.PAGE, panels));
  }

  private static List<String> summary(
      Plan plan, Facts facts, MulchTotals totals, List<PhaseTime> phases) {
    UnitSystem units = plan.info().units();
    List<String> lines = new ArrayList<>();
    lines.add(GroundInWords.text(plan, totals));
    PhaseTime first = phases.get(0);
    PhaseTime last = PhaseTime.lastOfWork(phases);
    int days =
        PartOfPlan.of(plan, facts).stream()
            .map(part -> part.facts().all(PhaseTime.FACT))
            .filter(its -> !its.isEmpty())
            .map(PhaseTime::lastOfWork)
            .mapToInt(its -> its.firstDay() + its.days() - 1)
            .sum();
    List<PartOfPlan> stages = facts.all(PartOfPlan.FACT);
    if (!stages.isEmpty() && first.start().isPresent()) {
      lines.add(stages(stages));
    } else {
      lines.add(days(phases.subList(0, phases.indexOf(last) + 1), days));
    }
    last.end()
        .flatMap(end -> laterVisits(end, facts.all(PlantingVisit.FACT)))
        .ifPresent(lines::add);
    topUp(units, facts.all(YardFacts.TOP_UPS)).ifPresent(lines::add);
    // Invented prices say nothing to a client.
    facts.find(CostEstimate.FACT).filter(c -> !c.demo()).ifPresent(c -> lines.add(cost(plan, c)));
    facts
        .find(YardFacts.LAWN_WATER)
        .filter(w -> w.yearlySaving().litres() > 0)
        .ifPresent(w -> lines.add(lessThanLawn(plan, w)));
    facts.find(YardFacts.HARVEST).ifPresent(h -> lines.add(harvest(plan, h)));
    lines.add(
        facts.all(YardFacts.STANDS).isEmpty()
            ? "Pull weeds while they are small."
            : NewPlantWater.of(ScheduleCalculator.months(facts)));
    return lines;
  }

  private static String stages(List<PartOfPlan> stages) {
    List<String> each = new ArrayList<>();
    for (PartOfPlan stage : stages) {
      List<PhaseTime> its = stage.facts().all(PhaseTime.FACT);
      if (!its.isEmpty() && its.get(0).start().isPresent()) {
        each.add(
            stage.name()
                + " "
                + TableFormat.date(its.get(0).start().get())
                + " to "
                + TableFormat.date(PhaseTime.lastOfWork(its).end().orElseThrow()));
      }
    }
    return "Work comes in stages: " + String.join("; ", each) + ".";
  }

  /** The days of the work; where it rests for more than a week, those of each part. */
  private static String days(List<PhaseTime> phases, int days) {
    if (phases.get(0).start().isEmpty()) {
      return "Work takes " + days + " working days; no date is set.";
    }
    List<String> parts = new ArrayList<>();
    LocalDate from = phases.get(0).start().get();
    LocalDate to = from;
    for (PhaseTime phase : phases) {
      LocalDate start = phase.start().orElseThrow();
      if (start.isAfter(to.plusWeeks(1))) {
        parts.add(span(from, to));
        from = start;
      }
      LocalDate end = phase.end().orElseThrow();
      to = end.isAfter(to) ? end : to;
    }
    parts.add(span(from, to));
    return "Work " + String.join(", then ", parts) + ".";
  }

  private static String span(LocalDate from, LocalDate to) {
    return from.equals(to)
        ? "on " + TableFormat.date(from)
        : "from " + TableFormat.date(from) + " to " + TableFormat.date(to);
  }

  /** What is in season only after the work is done is planted on days of its own. */
  private static Optional<String> laterVisits(LocalDate end, List<PlantingVisit> visits) {
    List<String> days =
        visits.stream()
            .map(PlantingVisit::date)
            .filter(day -> day.isAfter(end))
            .map(TableFormat::date)
            .toList();
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Then again, to plant what was not in season: " + String.join(", ", days) + ".");
  }

  /** The first two years; later ones add little. */
  private static Optional<String> topUp(UnitSystem units, List<TopUp> years) {
    return years.size() < 2
        ? Optional.empty()
        : Optional.of(
            "Chips settle: add "
                + Say.volume(years.get(0).add().value(), units)
                + " in year 1, "
                + Say.volume(years.get(1).add().value(), units)
                + " in year 2.");
  }

  /** More where a yield is not known; which ones stands below the harvest table. */
  private static String harvest(Plan plan, Harvest harvest) {
    return "Grown, it may bring "
        + YieldInWords.range(plan, harvest)
        + " of food a year"
        + (harvest.leftOut().isEmpty() ? "." : ", or more.");
  }

  private static String cost(Plan plan, CostEstimate cost) {
    return "It may cost "
        + money(plan, cost.total().p10().value())
        + " to "
        + money(plan, cost.total().p90().value())
        + ", in the middle "
        + money(plan, cost.total().p50().value())
        + (cost.unpriced().isEmpty()
            ? ""
            : ", and more for " + String.join(", ", cost.unpriced()) + ", which have no price")
        + ", without taxes, permits, disposal and hired machines.";
  }

  private static String lessThanLawn(Plan plan, LawnWater water) {
    return "Once grown it takes about "
        + TableFormat.of(plan.info())
            .withUnit(Measure.WATER, YieldInWords.twoDigits(plan, water.yearlySaving()))
        + " less from the tap in an average year than the watered lawn did.";
  }

  private static String money(Plan plan, Money money) {
    return TableFormat.of(plan.info()).withUnit(Measure.MONEY, money);
  }

  /** The phases, narrow enough for the page; what follows what stands on the work sheet. */
  private static Table days(Plan plan, Facts facts, List<PhaseTime> phases) {
    boolean dated = phases.stream().allMatch(p -> p.start().isPresent());
    Table.Builder table =
        Table.titled("client-phases", "What happens when").column(Column.text("phase", "Phase"));
    if (dated) {
      table.column(Column.text("from", "From")).column(Column.text("to", "To"));
    } else {
      table.column(Column.of("day", "Working day", Measure.COUNT));
    }
    table.column(Column.of("days", "Days", Measure.COUNT));
    for (PartOfPlan part : PartOfPlan.of(plan, facts)) {
      if (!part.name().isEmpty()) {
        table.heading(part.name());
      }
      days(plan, part.facts().all(PhaseTime.FACT), dated, table);
    }
    return table.build();
  }

  private static void days(Plan plan, List<PhaseTime> phases, boolean dated, Table.Builder table) {
    for (PhaseTime p : phases) {
      List<Cell> cells = new ArrayList<>(List.of(Cell.text(p.phase().title(plan))));
      if (dated) {
        cells.addAll(List.of(PhaseTable.date(p.start()), PhaseTable.date(p.end())));
      } else {
        cells.add(Cell.number(p.firstDay()));
      }
      cells.add(Cell.number(p.days()));
      table.row(cells);
    }
  }

  private static List<String> asks(List<DropPile> piles) {
    String spots =
        piles.stream().map(p -> p.spot().name()).distinct().collect(Collectors.joining(", "));
    return List.of(
        "Have buried lines marked; tell us of private ones.",
        "Ask what the town and the owners' association allow.",
        "Tell us of wells, tanks, septic fields and lead tests.",
        "Keep free for deliveries: " + (spots.isEmpty() ? "the way in" : spots) + ".",
        "Say which plants stay, and which weeds came back.");
  }
}
