package yardloom.water.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.work.DrawnThing;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.DripRun;
import yardloom.water.head.Supply;
import yardloom.water.pipe.formula.PipeSpeed;
import yardloom.water.pipe.formula.Water;
import yardloom.water.route.LineTree;
import yardloom.water.route.LineWays;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/**
 * Leads pipe from the tap to the beds, chooses its widths, and solves every zone as one network.
 */
public final class LineCalculator implements Calculator {
  static final Source METHOD =
      Source.computed(
          "EPANET 2.2 User Manual",
          "US EPA",
          2020,
          "network of pipes by Darcy-Weisbach, fittings, and emitters; bores from memory");
  private static final Source SPEED =
      Source.memory("Pipes in gardens keep below 5 ft/s (1.5 m/s)", "drip handbooks", 0, "");
  private static final Source TRENCH =
      Source.commonPractice("pipe lies along the edges of paths and beds, zones share a trench");

  private static final double SAME_M = 1e-6;

  @Override
  public String id() {
    return "water.lines";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(DripRun.KEY, Zone.KEY, LineWays.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(
        ZoneLine.KEY,
        BedHydraulics.KEY,
        BedOutlets.KEY,
        TankZone.KEY,
        Trenches.KEY,
        YardFacts.BILL,
        YardFacts.JOBS,
        YardFacts.DRAWN);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Map<String, DripRun> beds = new LinkedHashMap<>();
    in.all(DripRun.KEY).forEach(run -> beds.put(run.bed().toString(), run));
    Optional<LineWays> ways = in.find(LineWays.KEY);
    Optional<LineTree> tree = ways.map(w -> w.tree(feeds(beds)));
    // A tank's head counts from the ground in its middle, where the stand is measured from.
    Optional<Point> tap = Supply.tank(plan).map(TankPlan::at).or(() -> ways.map(LineWays::start));
    List<ZoneLine> lines = new ArrayList<>();
    for (Zone zone : in.all(Zone.KEY)) {
      List<DripRun> its = zone.beds().stream().map(id -> beds.get(id.toString())).toList();
      lines.add(solve(plan, zone, its, tree, ways, tap, out));
    }
    lines.forEach(line -> out.give(ZoneLine.KEY, line));
    Optional<Trenches> trenches = tree.map(t -> trenches(t, ways.orElseThrow(), beds, lines));
    trenches.ifPresent(t -> out.give(Trenches.KEY, t));
    NeededNow now = new NeededNow(plan, in.all(DripRun.KEY));
    Optional<Trenches> dug = trenches.map(t -> dug(t, ways.orElseThrow(), lines, now));
    dug.filter(t -> t.length().value().metres() > 0)
        .map(t -> new Job(WorkTask.DIG_TRENCH, WorkPhase.EDGE, t.length()))
        .ifPresent(job -> out.give(YardFacts.JOBS, job));
    List<String> pipes = new ArrayList<>();
    List<List<ElementId>> inZones = in.all(Zone.KEY).stream().map(Zone::beds).toList();
    for (LineBill.Item item : LineBill.of(plan, in.all(DripRun.KEY), lines, inZones, now, dug)) {
      out.give(YardFacts.BILL, item.line());
      if (item.task().filter(WorkTask.LAY_PIPE::equals).isPresent()) {
        pipes.add(BillLine.stem(item.line().item()));
      }
      item.job().ifPresent(job -> out.give(YardFacts.JOBS, job));
    }
    drawn(pipes).ifPresent(thing -> out.give(YardFacts.DRAWN, thing));
  }

  /** The pipes in their trenches; none where no bed has a line. */
  private static Optional<DrawnThing> drawn(List<String> pipes) {
    return pipes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DrawnThing(
                "pipes from the source to the beds",
                "supply",
                pipes,
                List.of(WorkTask.DIG_TRENCH, WorkTask.LAY_PIPE, WorkTask.SET_FITTING),
                WorkPhase.EDGE));
  }

  private static List<LineWays.Feed> feeds(Map<String, DripRun> beds) {
    List<LineWays.Feed> feeds = new ArrayList<>();
    for (DripRun run : beds.values()) {
      run.feeds()
          .forEach(
              (name, row) ->
                  feeds.add(
                      new LineWays.Feed(
                          name, run.on().shape(), run.laid().joined().get(row).line().start())));
    }
    return feeds;
  }

  private static Trenches trenches(
      LineTree tree, LineWays ways, Map<String, DripRun> beds, List<ZoneLine> zones) {
    List<Trenches.Trench> all = new ArrayList<>();
    for (Line way : tree.trenches()) {
      all.add(new Trenches.Trench(way, pipesIn(way, zones), ways.ground().piecesUnderPaving(way)));
    }
    List<String> missed =
        feeds(beds).stream().map(LineWays.Feed::name).filter(f -> !tree.reaches(f)).toList();
    return trenches(all, ways, missed);
  }

  /** Those of {@code all} that are dug now; the rest were dug before or wait. */
  private static Trenches dug(Trenches all, LineWays ways, List<ZoneLine> zones, NeededNow now) {
    if (now.isAll()) {
      return all;
    }
    List<Trenches.Trench> dug =
        all.trenches().stream()
            .filter(t -> now.firstForAny(zones.stream().flatMap(z -> runsIn(t.way(), z)).toList()))
            .toList();
    return trenches(dug, ways, all.missed());
  }

  private static Trenches trenches(List<Trenches.Trench> of, LineWays ways, List<String> missed) {
    Derived.Builder length = Derived.by("sum over trenches of length", TRENCH);
    Derived.Builder paved = Derived.by("sum over trenches of what lies under paving", TRENCH);
    Length sum = Length.ZERO;
    Length under = Length.ZERO;
    int number = 0;
    for (Trenches.Trench trench : of) {
      number++;
      Length its = ways.ground().underPaving(trench.way());
      sum = sum.plus(trench.way().length());
      under = under.plus(its);
      length.from("length of trench " + number, trench.way().length());
      paved.from("what lies under paving of trench " + number, its);
    }
    return new Trenches(of, length.gives(sum), paved.gives(under), missed);
  }

  /** The pipe of each zone in a trench. */
  private static List<Trenches.Pipe> pipesIn(Line trench, List<ZoneLine> zones) {
    List<Trenches.Pipe> pipes = new ArrayList<>();
    for (ZoneLine zone : zones) {
      runsIn(trench, zone)
          .findFirst()
          .ifPresent(r -> pipes.add(new Trenches.Pipe(zone.number(), r.size())));
    }
    return pipes;
  }

  /** The runs of a zone that lie in a trench: those that pass its middle. */
  private static Stream<ZoneLine.PipeRun> runsIn(Line trench, ZoneLine zone) {
    Point middle = trench.middle();
    return zone.runs().stream()
        .filter(r -> r.way().nearest(middle).distance(middle).metres() < SAME_M);
  }

  private static ZoneLine solve(
      Plan plan,
      Zone zone,
      List<DripRun> beds,
      Optional<LineTree> tree,
      Optional<LineWays> ways,
      Optional<Point> tap,
      Sink out) {
    List<String> feeds = beds.stream().flatMap(b -> b.feeds().keySet().stream()).toList();
    List<LineTree.Run> runs = tree.map(t -> t.runs(feeds)).orElse(List.of());
    ZoneNetwork network = new ZoneNetwork(plan, beds, runs, tap);
    PipeSizing.Chosen chosen =
        new PipeSizing(network, runs.stream().map(LineTree.Run::way).toList(), PipeSize.all(plan))
            .choose();
    Supply.tank(plan)
        .map(tank -> new TankLevels(network, chosen.of(), zone, tank).solve())
        .ifPresent(levels -> out.give(TankZone.KEY, levels));
    BedResults results = new BedResults(network, chosen.solved());
    List<BedHydraulics> solved = beds.stream().map(b -> results.of(b, zone.number())).toList();
    solved.forEach(bed -> out.give(BedHydraulics.KEY, bed));
    beds.forEach(b -> out.give(BedOutlets.KEY, results.outlets(b, zone.number())));
    Derived.Builder sum = Derived.by("sum over beds of flow", METHOD);
    solved.forEach(bed -> sum.from("flow of " + bed.bed().name(), bed.outflow().flow()));
    return new ZoneLine(
        zone.number(),
        runs(runs, chosen, ways),
        why("pressure behind the zone valve in the network of the zone", zone)
            .gives(Water.pressure(Length.metres(chosen.solved().behindM()))),
        sum.gives(Flow.cubicMetresPerSecond(chosen.solved().flowM3s())),
        why("least pressure in the network of the zone", zone).gives(results.least(beds)),
        results.end(beds),
        results.most(beds),
        why("(largest − least outlet flow) / largest, in the whole zone", zone)
            .gives(network.variation(chosen.solved())),
        chosen.binding());
  }

  private static Derived.Builder why(String what, Zone zone) {
    return Derived.by(what, METHOD)
        .from("beds", zone.beds().size())
        .from("rated flow", zone.flow());
  }

  private static List<ZoneLine.PipeRun> runs(
      List<LineTree.Run> runs, PipeSizing.Chosen chosen, Optional<LineWays> ways) {
    List<ZoneLine.PipeRun> pipes = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      LineTree.Run run = runs.get(r);
      PipeSize size = chosen.of().get(r);
      Derived<Flow> flow =
          ofRun("flow of the run in the network of the zone", run, size)
              .gives(Flow.cubicMetresPerSecond(ZoneNetwork.flowM3s(chosen.solved(), r)));
      double speed =
          PipeSpeed.metresPerSecond(flow.value().cubicMetresPerSecond(), size.bore().metres());
      pipes.add(
          new ZoneLine.PipeRun(
              run.from(),
              run.way(),
              size,
              carried(runs, r),
              flow,
              Derived.by("flow × 1 s / (π / 4 × bore^2)", SPEED)
                  .from("flow", flow)
                  .from("bore", size.bore())
                  .gives(Length.metres(speed)),
              ofRun("pressure at the end of the run in the network of the zone", run, size)
                  .gives(Water.pressure(Length.metres(ZoneNetwork.endM(chosen.solved(), r)))),
              ways.map(w -> w.ground().underPaving(run.way())).orElse(Length.ZERO)));
    }
    return pipes;
  }

  private static Derived.Builder ofRun(String what, LineTree.Run run, PipeSize size) {
    return Derived.by(what, METHOD).from("length", run.way().length()).from("bore", size.bore());
  }

  private static List<String> carried(List<LineTree.Run> runs, int of) {
    List<String> feeds = new ArrayList<>();
    for (int r = of; r < runs.size(); r++) {
      int up = r;
      while (up > of) {
        up = runs.get(up).from();
      }
      if (up == of) {
        runs.get(r).feed().ifPresent(feeds::add);
      }
    }
    return feeds;
  }
}
