package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.drip.DripChoice;
import yardloom.water.drip.DripRun;

/**
 * What the lines and dripline of a whole plan take, counted from what is laid: tube by kind and
 * size, fittings at every fork, bend and end, and the parts at the tap.
 */
final class LineBill {
  /** Common practice. */
  private static final double CUTS = 1.05;

  /** Rows are cut on a grid of 0.1 µm: 140 ft of them on slanting ground are a hair more. */
  private static final double EPS = 1e-5;

  /** Common practice. */
  private static final Length BETWEEN_STAKES = Length.feet(3);

  private static final Source CUTTING = Source.commonPractice("5 % for cuts, rounded up");
  private static final Source ROLLS = Source.commonPractice("5 % for cuts, whole rolls");
  private static final Source SUM = Source.commonPractice("sum over the beds");
  private static final Source FITTINGS =
      Source.commonPractice(
          "a tee at every fork, an elbow at every bend and at the end of a header");
  static final String NO_SPARES = "no spares included";

  private final Plan plan;
  private final UnitSystem units;
  private final NeededNow now;
  private final List<Item> items = new ArrayList<>();

  /**
   * A line of the bill and what is done with it.
   *
   * @param task empty where it is set while something else is laid
   */
  record Item(BillLine line, Optional<WorkTask> task) {
    static Item of(
        WorkPhase phase,
        Optional<WorkTask> task,
        String item,
        Derived<?> exact,
        Derived<?> order,
        String allowance) {
      BillLine line =
          new BillLine(
              BillGroup.IRRIGATION,
              phase,
              item,
              Optional.empty(),
              Optional.empty(),
              exact,
              order,
              allowance);
      return new Item(line, task);
    }

    Optional<Job> job() {
      return task.map(t -> new Job(t, line.phase(), line.exact()));
    }
  }

  private LineBill(Plan plan, NeededNow now) {
    this.plan = plan;
    this.now = now;
    units = plan.info().units();
  }

  /**
   * The bill; nothing without dripline.
   *
   * @param beds the beds of each zone
   * @param now what of all is laid now
   * @param trenches those that are dug now
   */
  static List<Item> of(
      Plan plan,
      List<DripRun> all,
      List<ZoneLine> zones,
      List<List<ElementId>> beds,
      NeededNow now,
      Optional<Trenches> trenches) {
    LineBill bill = new LineBill(plan, now);
    List<DripRun> runs = now.of(all);
    if (!runs.isEmpty()) {
      List<ZoneLine> begun = new ArrayList<>();
      for (int i = 0; i < zones.size(); i++) {
        if (now.firstFor(beds.get(i))) {
          begun.add(zones.get(i));
        }
      }
      bill.dripline(runs);
      bill.pipe(zones);
      trenches.ifPresent(bill::sleeves);
      bill.fittings(runs, begun);
      boolean isFirst = now.firstFor(beds.stream().flatMap(List::stream).toList());
      bill.items.addAll(HeadBill.of(plan, isFirst, begun));
    }
    return List.copyOf(bill.items);
  }

  private void dripline(List<DripRun> runs) {
    Map<String, List<DripRun>> kinds = new TreeMap<>();
    runs.forEach(r -> kinds.computeIfAbsent(kind(r.choice()), k -> new ArrayList<>()).add(r));
    kinds.forEach((kind, of) -> tube(WorkPhase.DRIP, WorkTask.LAY_DRIPLINE, kind, sum(of, false)));
    Derived<Length> headers = sum(runs, true);
    if (headers.value().metres() > 0) {
      tube(WorkPhase.DRIP, WorkTask.LAY_DRIPLINE, "solid tube for headers in the beds", headers);
    }
  }

  private String kind(DripChoice choice) {
    if (choice.isSingle()) {
      return "tube without outlets";
    }
    String kind = choice.isCompensating() ? "dripline that compensates" : "dripline";
    return kind
        + ", "
        + Say.of(Measure.OUTLET_FLOW, choice.emitter(), units)
        + " every "
        + Say.of(Measure.WIDTH, choice.spacing(), units);
  }

  private static Derived<Length> sum(List<DripRun> runs, boolean headers) {
    Derived.Builder why = Derived.by("sum over the beds", SUM);
    Length sum = Length.ZERO;
    for (DripRun run : runs) {
      Derived<Length> its = headers ? run.totals().header() : run.totals().length();
      sum = sum.plus(its.value());
      why.from((headers ? "header in " : "") + run.bed().name(), its);
    }
    return why.gives(sum);
  }

  private void pipe(List<ZoneLine> zones) {
    for (PipeSize size : PipeSize.all(plan)) {
      Derived.Builder why = Derived.by("sum over zones of length", SUM);
      Length sum = Length.ZERO;
      for (ZoneLine zone : zones) {
        Length its =
            zone.runs().stream()
                .filter(r -> r.size().equals(size) && now.firstFor(r))
                .map(r -> r.way().length())
                .reduce(Length.ZERO, Length::plus);
        sum = sum.plus(its);
        why.from("length in zone " + zone.number(), its);
      }
      if (sum.metres() > 0) {
        rolls(size, why.gives(sum));
      }
    }
  }

  private void rolls(PipeSize size, Derived<Length> exact) {
    double rolls = Math.ceil(exact.value().ratioTo(size.roll()) * CUTS - EPS);
    Derived<Length> order =
        Derived.by("length × 1.05, up to the next roll", ROLLS)
            .from("length", exact)
            .from("roll", size.roll())
            .gives(size.roll().times(rolls));
    line(
        WorkPhase.EDGE,
        Optional.of(WorkTask.LAY_PIPE),
        size.name() + " " + size.tube(),
        exact,
        order,
        String.format(Locale.ROOT, rolls == 1 ? "%.0f roll; " : "%.0f rolls; ", rolls)
            + ROLLS.title());
  }

  private void sleeves(Trenches trenches) {
    if (trenches.paved().value().metres() > 0) {
      tube(WorkPhase.EDGE, WorkTask.LAY_PIPE, "sleeve pipe under paving", trenches.paved());
    }
  }

  private void tube(WorkPhase phase, WorkTask task, String item, Derived<Length> exact) {
    Length step = units == UnitSystem.US ? Length.feet(1) : Length.metres(0.5);
    double steps = Math.ceil(exact.value().ratioTo(step) * CUTS - EPS);
    line(
        phase,
        Optional.of(task),
        item,
        exact,
        Derived.by("length × 1.05, up to the next step", CUTTING)
            .from("length", exact)
            .from("step", step)
            .gives(step.times(steps)),
        CUTTING.title());
  }

  private void fittings(List<DripRun> runs, List<ZoneLine> zones) {
    List<LineFittings> its = zones.stream().map(zone -> LineFittings.of(zone, List.of())).toList();
    fittings("tees for tube", "forks of the lines", sum(its, LineFittings::tees));
    fittings("elbows for tube", "bends of the lines", sum(its, LineFittings::elbows));
    fittings("reducers for tube", "changes of size", sum(its, LineFittings::reducers));
    rowFittings(runs);
  }

  private void rowFittings(List<DripRun> runs) {
    Derived.Builder ends = Derived.by("sum over beds", SUM);
    int rows = 0;
    Length tube = Length.ZERO;
    List<LineFittings> its = new ArrayList<>();
    for (DripRun run : runs) {
      rows += run.rows().size();
      ends.from("rows in " + run.bed().name(), run.rows().size());
      tube = tube.plus(run.totals().length().value()).plus(run.totals().header().value());
      its.add(LineFittings.inBed(run));
    }
    // Fittings of rows, and stakes, are set while the tube is laid.
    inBeds("tees in the beds", runs, its, LineFittings::bedTees);
    inBeds("elbows in the beds", runs, its, LineFittings::bedElbows);
    inBeds("couplings from pipe to a single row", runs, its, LineFittings::couplings);
    single(runs);
    rowPieces(Optional.of(WorkTask.CLOSE_ENDS), "flush caps", ends.gives(rows));
    int stakes = (int) Math.ceil(tube.ratioTo(BETWEEN_STAKES) - EPS);
    rowPieces(
        Optional.empty(),
        "stakes for tube",
        Derived.by("up(length / distance)", FITTINGS)
            .from("length", tube)
            .from("distance", BETWEEN_STAKES)
            .gives(stakes));
  }

  private static int sum(List<LineFittings> of, ToIntFunction<LineFittings> kind) {
    return of.stream().mapToInt(kind).sum();
  }

  private void inBeds(
      String item, List<DripRun> beds, List<LineFittings> its, ToIntFunction<LineFittings> kind) {
    Derived.Builder why = Derived.by("sum over beds", FITTINGS);
    for (int i = 0; i < beds.size(); i++) {
      why.from(beds.get(i).bed().name(), kind.applyAsInt(its.get(i)));
    }
    int sum = sum(its, kind);
    if (sum > 0) {
      rowPieces(Optional.empty(), item, why.gives(sum));
    }
  }

  /** Emitters that are punched into plain tube, by their flow. */
  private void single(List<DripRun> runs) {
    Map<String, Derived.Builder> why = new TreeMap<>();
    Map<String, Integer> counts = new TreeMap<>();
    for (DripRun run : runs) {
      if (run.choice().isSingle()) {
        String item = emitter(run.choice());
        why.computeIfAbsent(item, k -> Derived.by("sum over beds and trees", SUM))
            .from("emitters in " + run.bed().name(), run.totals().outlets());
        counts.merge(item, run.totals().outlets().value(), Integer::sum);
      }
    }
    counts.forEach(
        (item, count) ->
            rowPieces(Optional.of(WorkTask.SET_FITTING), item, why.get(item).gives(count)));
  }

  private String emitter(DripChoice choice) {
    String kind = choice.isCompensating() ? "emitter that compensates" : "emitter";
    return kind + ", " + Say.of(Measure.OUTLET_FLOW, choice.emitter(), units);
  }

  private void fittings(String item, String what, int pieces) {
    if (pieces > 0) {
      Derived<Integer> count = counted(what, pieces);
      line(WorkPhase.EDGE, Optional.of(WorkTask.SET_FITTING), item, count, count, NO_SPARES);
    }
  }

  private void rowPieces(Optional<WorkTask> task, String item, Derived<Integer> count) {
    line(WorkPhase.DRIP, task, item, count, count, NO_SPARES);
  }

  private static Derived<Integer> counted(String what, int pieces) {
    return Derived.by(what, FITTINGS).from(what, pieces).gives(pieces);
  }

  private void line(
      WorkPhase phase,
      Optional<WorkTask> task,
      String item,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    items.add(Item.of(phase, task, item, exact, order, allowance));
  }
}
