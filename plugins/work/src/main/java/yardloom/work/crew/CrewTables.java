package yardloom.work.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yardloom.facts.BillLine;
import yardloom.facts.DigCall;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.work.cost.BillSums;
import yardloom.work.delivery.Delivery;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.OwnItem;
import yardloom.work.phase.CareVisit;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/** What is done, laid and ordered, under a heading for each phase. */
final class CrewTables {
  private static final String TICK = "[  ]";

  /** Phases in which the ground is opened deeper than a trowel goes. */
  private static final Set<WorkPhase> DIGGING =
      Set.of(WorkPhase.EARTH, WorkPhase.BUILD, WorkPhase.EDGE, WorkPhase.TREES);

  /**
   * Working days for which marks of buried lines are trusted; states and services differ (common
   * practice).
   */
  private static final int MARKS_LAST_DAYS = 10;

  /**
   * Such as {@code (Thymus vulgaris)}, which stands in the planting table; it may hold brackets.
   */
  private static final Pattern BOTANICAL = Pattern.compile(" \\(\\p{Lu}(?:[^()]|\\([^()]*\\))*\\)");

  private final Plan plan;
  private final Facts facts;

  CrewTables(Plan plan, Facts facts) {
    this.plan = plan;
    this.facts = facts;
  }

  /** The steps of all phases in working order, with boxes to tick. */
  Table steps(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-steps", "Steps, with hours of one person")
            .column(Column.text("done", "OK"))
            .column(Column.text("step", "Step"));
    String call = DigCall.inBrackets(facts.find(YardFacts.DIG_CALL));
    int number = 1;
    for (PhaseTime time : phases) {
      table.heading(number++ + ". " + time.phase().title(plan) + ": " + when(time));
      String first = beforeSteps(time);
      if (!first.isEmpty()) {
        table.row(Cell.BLANK, Cell.text(first));
      }
      if (isMarkedLongAgo(time, phases)) {
        table.row(
            Cell.text(TICK),
            Cell.text("Marks have faded: have the lines marked anew" + call + "."));
      }
      for (String step : texts(time.phase().steps(), plan)) {
        table.row(Cell.text(TICK), Cell.text(step.replace(DigCall.IN_TEXT, call)));
      }
      OwnItem.now(plan).stream()
          .filter(item -> item.phase() == time.phase().id() && item.hoursPerUnit() > 0)
          .forEach(item -> table.row(Cell.text(TICK), Cell.text(sentence(item.task()))));
      days(time).forEach(day -> table.row(Cell.text(TICK), Cell.text(day)));
      trucks(time).ifPresent(loads -> table.row(Cell.text(TICK), Cell.text(loads)));
    }
    return table.build();
  }

  /** Whether holes are dug in a phase so late that marks are no longer valid. */
  private static boolean isMarkedLongAgo(PhaseTime time, List<PhaseTime> phases) {
    return DIGGING.contains(time.phase().id())
        && phases.stream()
            .filter(p -> p.phase().id() == WorkPhase.MARK)
            .anyMatch(marks -> time.lastDay() - marks.lastDay() > MARKS_LAST_DAYS);
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  private static String beforeSteps(PhaseTime time) {
    String tools = String.join(", ", time.phase().tools());
    List<String> parts = new ArrayList<>();
    if (!tools.isEmpty()) {
      parts.add("Bring " + tools + ".");
    }
    if (!time.why().isEmpty()) {
      parts.add(
          time.phase().id() == WorkPhase.ESTABLISH
              ? "For the " + time.why() + "."
              : "It " + time.why() + ".");
    }
    return String.join(" ", parts);
  }

  /** The trucks of a phase, day by day; none where nothing is tipped. */
  private Optional<String> trucks(PhaseTime time) {
    Map<String, List<String>> byDay = new LinkedHashMap<>();
    for (Delivery d : facts.all(Delivery.FACT)) {
      if (d.phase() == time.phase().id()) {
        String day = d.date().map(DayList::brief).orElse("working day " + d.day());
        byDay
            .computeIfAbsent(day, x -> new ArrayList<>())
            .add(
                brief(d.item())
                    + " "
                    + Say.volume(d.load(), plan.info().units())
                    + (d.load().compareTo(BulkLoads.LEAST) < 0 ? ", fetched or in bags" : ""));
      }
    }
    return byDay.isEmpty()
        ? Optional.empty()
        : Optional.of(
            byDay.entrySet().stream()
                .map(e -> e.getKey() + " " + String.join(", then ", e.getValue()))
                .collect(Collectors.joining("; ", "Trucks: ", ".")));
  }

  private static String brief(String item) {
    return item.equals(Material.WOOD_CHIPS.title()) ? "chips" : item;
  }

  /** What is planted on the first day of a phase and on later ones; when the crew looks again. */
  private List<String> days(PhaseTime time) {
    if (time.phase().id() == WorkPhase.ESTABLISH) {
      List<LocalDate> dates = facts.all(CareVisit.FACT).stream().map(CareVisit::date).toList();
      return dates.isEmpty() ? List.of() : List.of("Come on " + DayList.of(dates) + ".");
    }
    Map<String, Double> byKind = KindHours.byKind(facts.all(KindHours.FACT));
    Set<String> own =
        PlantingVisit.windowsOf(time.phase().id(), facts.all(YardFacts.PLANTING_WINDOWS)).stream()
            .map(PlantingWindow::plant)
            .collect(Collectors.toSet());
    List<PlantingVisit> visits =
        facts.all(PlantingVisit.FACT).stream()
            .map(v -> v.only(own))
            .filter(v -> !v.kinds().isEmpty())
            .toList();
    SortedSet<String> later = new TreeSet<>();
    visits.stream().filter(v -> isLater(v, time)).forEach(v -> later.addAll(v.kinds().keySet()));
    return visits.stream().map(v -> visit(v, time, byKind, later)).toList();
  }

  private static boolean isLater(PlantingVisit visit, PhaseTime time) {
    return time.start().filter(visit.date()::isAfter).isPresent();
  }

  /** On the first day the fewer names: what is planted, or what is not yet. */
  private String visit(
      PlantingVisit visit, PhaseTime time, Map<String, Double> byKind, SortedSet<String> later) {
    String kinds = String.join(", ", visit.kinds().keySet()) + ".";
    if (!isLater(visit, time)) {
      boolean most = !later.isEmpty() && later.size() < visit.kinds().size();
      return most ? "Now all but " + String.join(", ", later) + "." : "Now: " + kinds;
    }
    double hours = visit.hours(byKind);
    String takes = hours > 0 ? ", " + Say.number(hours) + " h: " : ": ";
    String marks = time.phase().id() == WorkPhase.TREES ? " Have lines marked anew before." : "";
    String chips = isMulchedBefore(visit) ? " Part the chips, draw them back." : "";
    return "Come again on " + TableFormat.date(visit.date()) + takes + kinds + marks + chips;
  }

  /** Whether all chips lie before that visit. */
  private boolean isMulchedBefore(PlantingVisit visit) {
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    return phases.stream()
        .filter(t -> t.phase().id() == WorkPhase.LATER)
        .flatMap(t -> t.end().stream())
        .anyMatch(visit.date()::isAfter);
  }

  private static String when(PhaseTime time) {
    String hours = time.hours() > 0 ? ", " + Say.number(time.hours()) + " h" : "";
    if (time.start().isEmpty()) {
      return (time.days() == 1
              ? "working day " + time.firstDay()
              : "working days " + time.firstDay() + " to " + time.lastDay())
          + hours;
    }
    LocalDate from = time.start().get();
    LocalDate to = time.end().orElseThrow();
    if (time.days() == 1) {
      return TableFormat.date(from) + hours;
    }
    // The year once, so that the heading of a long phase keeps to one line.
    String first = from.getYear() == to.getYear() ? DayList.brief(from) : TableFormat.date(from);
    return first + " to " + TableFormat.date(to) + hours;
  }

  /** Texts with depths in the units of the plan. */
  static List<String> texts(List<String> texts, Plan plan) {
    return texts.stream().map(t -> Say.inText(t, plan.info().units())).toList();
  }

  /** What of each stack is laid in which phase; sheets stand in the row of what covers them. */
  Table layers(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-layers", "Lay, by phase and surface")
            .column(Column.text("surface", "Surface"))
            .column(Column.of("sheets", "Sheets", Measure.COUNT))
            .column(Column.text("layer", "Layer"))
            .column(Column.text("amount", "Amount"));
    for (PhaseTime time : phases) {
      List<List<Cell>> rows = new ArrayList<>();
      for (MulchSurface s : facts.all(YardFacts.SURFACES)) {
        rows.addAll(
            laid(
                s,
                s.courses().stream()
                    .filter(c -> c.phase() == time.phase().id())
                    // Its length stands with what is ordered, its place on the irrigation sheet.
                    .filter(c -> !c.material().equals(Material.DRIPLINE))
                    .toList()));
      }
      if (!rows.isEmpty()) {
        table.heading(time.phase().title(plan));
        alike(rows).forEach(table::row);
      }
    }
    return table.build();
  }

  /** Surfaces of one stack and amount share a row. */
  private static List<List<Cell>> alike(List<List<Cell>> rows) {
    Map<List<String>, List<List<Cell>>> same = new LinkedHashMap<>();
    for (List<Cell> row : rows) {
      List<String> key = row.subList(1, row.size()).stream().map(CrewTables::said).toList();
      same.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
    }
    List<List<Cell>> shared = new ArrayList<>();
    for (List<List<Cell>> group : same.values()) {
      List<Cell> row = new ArrayList<>(group.get(0));
      if (group.size() > 1) {
        List<String> names = group.stream().map(r -> said(r.get(0))).toList();
        row.set(0, Cell.text(NameRuns.text(names) + ", each"));
      }
      shared.add(row);
    }
    return shared;
  }

  private static String said(Cell cell) {
    return cell.value().map(Object::toString).orElse("");
  }

  private List<List<Cell>> laid(MulchSurface s, List<LaidLayer> courses) {
    List<List<Cell>> rows = new ArrayList<>();
    Cell sheets =
        courses.stream().anyMatch(c -> c.material().equals(Material.CARDBOARD))
            ? s.sheets().map(Cell::of).orElse(Cell.BLANK)
            : Cell.BLANK;
    for (LaidLayer course : courses) {
      boolean sheet = course.material().equals(Material.CARDBOARD);
      if (!sheet || courses.size() == 1) {
        String depth =
            course.depth().map(d -> Say.depth(d.value(), plan.info().units()) + " ").orElse("");
        rows.add(
            List.of(
                Cell.text(s.of().name()),
                sheets,
                Cell.text(depth + brief(course.material())),
                sheet ? Cell.BLANK : Amounts.cell(plan, course.amount())));
        sheets = Cell.BLANK;
      }
    }
    return rows;
  }

  /** Crews say chips; the long word would take a second line of every row. */
  private static String brief(Material material) {
    return brief(material.title());
  }

  /** What to order and have on site, with a box to tick. */
  Table needed(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-needs", "Order and have on site")
            .column(Column.text("item", "Item"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("by", "Order by"));
    for (PhaseTime time : phases) {
      List<BillLine> lines =
          BillSums.byItem(PhaseOrders.neededIn(time, phases, facts.all(YardFacts.BILL)));
      if (!lines.isEmpty()) {
        table.heading(time.phase().title(plan));
      }
      for (BillLine line : lines) {
        int lead = PhaseOrders.leadDays(line.item(), facts);
        table.row(
            Cell.text(TICK + " " + BOTANICAL.matcher(line.item()).replaceAll("")),
            Amounts.cell(plan, line.order()),
            PhaseOrders.orderBy(line, time, facts)
                .map(Cell::of)
                .orElseGet(() -> Cell.text(lead + " days ahead")));
      }
    }
    return table.build();
  }
}
