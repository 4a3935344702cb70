package yardloom.water.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.drip.formula.HeaderLayout.Joined;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.Supply;
import yardloom.water.pipe.formula.DarcyWeisbach;
import yardloom.water.pipe.formula.Emitter;
import yardloom.water.pipe.formula.Fitting;
import yardloom.water.pipe.formula.Friction;
import yardloom.water.pipe.formula.PipeNetwork;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.Water;
import yardloom.water.route.LineTree;

/**
 * The network of one zone: from behind its valve through runs of pipe and headers to every outlet,
 * each at the height of its ground. Water passes a tee sideways where a run or a row leaves, and
 * elbows where a run bends.
 */
final class ZoneNetwork {
  static final Friction FRICTION = new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S);

  private static final String VALVE = "valve";
  private static final int MOST_STEPS = 60;
  private static final double SAME_HEAD_M = 1e-7;

  private final Plan plan;
  private final Optional<Surface> surface;
  private final List<DripRun> beds;
  private final List<LineTree.Run> runs;
  private final double tapM;

  /** Ends of runs, of headers, and outlets. */
  private final List<Joint> joints = new ArrayList<>();

  /** Headers and rows, whose width is that of the dripline. */
  private final List<Pipe> tubes = new ArrayList<>();

  /** The joint at which each feed takes its water. */
  private final Map<String, String> feeds = new LinkedHashMap<>();

  /** The joints with outlets of each bed. */
  private final Map<String, List<String>> outlets = new LinkedHashMap<>();

  /**
   * @param runs of pipe from the tap; without any, every feed stands behind the valve
   */
  ZoneNetwork(Plan plan, List<DripRun> beds, List<LineTree.Run> runs, Optional<Point> tap) {
    this.plan = plan;
    this.beds = List.copyOf(beds);
    this.runs = List.copyOf(runs);
    surface = plan.attributes().get(Surface.KEY);
    Point reference = tap.orElseGet(() -> beds.get(0).rows().get(0).start());
    tapM = levelM(reference, 0);
    for (int r = 0; r < runs.size(); r++) {
      joints.add(new Joint(run(r), levelM(runs.get(r).way().end(), tapM), 0, null));
      String end = run(r);
      runs.get(r).feed().ifPresent(feed -> feeds.put(feed, end));
    }
    beds.forEach(this::rows);
  }

  private double levelM(Point at, double otherwise) {
    return surface.flatMap(s -> s.levelAt(at)).map(Length::metres).orElse(otherwise);
  }

  /**
   * The network in balance.
   *
   * @param behind the pressure behind the valve, as a height of water
   */
  record Solved(PipeNetwork.Solution solution, double behindM, double flowM3s) {}

  /** Solves it with a size for each run; what tap and head give depends on the flow. */
  Solved solve(List<PipeSize> sizes) {
    return solve(sizes, flow -> Supply.pressure(plan, flow));
  }

  /** The same for a tap, or a level in a tank, that gives such a pressure at such a flow. */
  Solved solve(List<PipeSize> sizes, Function<Flow, Optional<Pressure>> tap) {
    List<Pipe> pipes = pipes(sizes);
    double low = 0;
    double high = behindM(tap, 0);
    double tryM = high;
    Solved solved = null;
    for (int step = 0; step < MOST_STEPS; step++) {
      solved = solve(pipes, tryM);
      double givenM = behindM(tap, solved.flowM3s());
      if (Math.abs(givenM - tryM) < SAME_HEAD_M) {
        break;
      }
      // More head, more flow, less left behind the assembly: the answer lies between both.
      if (givenM < tryM) {
        high = Math.min(high, tryM);
        low = Math.max(low, givenM);
      } else {
        low = Math.max(low, tryM);
        high = Math.min(high, givenM);
      }
      tryM = step < 4 && givenM > low && givenM < high ? givenM : (low + high) / 2;
    }
    return solved;
  }

  private double behindM(Function<Flow, Optional<Pressure>> tap, double flowM3s) {
    Flow flow = Flow.cubicMetresPerSecond(flowM3s);
    Pressure left = HeadAssembly.of(plan).behind(tap.apply(flow), flow, Supply.isTank(plan));
    return Math.max(0, Water.head(left).metres());
  }

  private List<Pipe> pipes(List<PipeSize> sizes) {
    List<Pipe> pipes = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      LineTree.Run run = runs.get(r);
      pipes.add(
          new Pipe(
              run(r),
              run.from() < 0 ? VALVE : run(run.from()),
              run(r),
              run.way().length().metres(),
              sizes.get(r).bore().metres(),
              FRICTION,
              fittings(run)));
    }
    pipes.addAll(tubes);
    return pipes;
  }

  private Solved solve(List<Pipe> pipes, double behindM) {
    PipeNetwork network =
        new PipeNetwork(joints, List.of(new Reservoir(VALVE, tapM + behindM)), pipes);
    PipeNetwork.Solution solution = network.solve();
    return new Solved(solution, behindM, Arrays.stream(solution.outletsM3s()).sum());
  }

  private static double fittings(LineTree.Run run) {
    double branch = run.from() < 0 ? 0 : Fitting.TEE_BRANCH.k();
    return branch + LineTree.bends(run.way()) * Fitting.SHORT_ELBOW.k();
  }

  private static String run(int r) {
    return "run " + r;
  }

  private void rows(DripRun bed) {
    String name = bed.bed().toString();
    double bore = bed.choice().bore().metres();
    Map<Integer, String> feedOfRow = new LinkedHashMap<>();
    bed.feeds().forEach((feed, row) -> feedOfRow.put(row, feeds.getOrDefault(feed, VALVE)));
    List<String> starts = new ArrayList<>();
    List<String> its = new ArrayList<>();
    for (int r = 0; r < bed.laid().joined().size(); r++) {
      Joined row = bed.laid().joined().get(r);
      String start = row.from() < 0 ? feedOfRow.get(r) : starts.get(row.from());
      if (row.header().isPresent()) {
        String next = name + " header " + r;
        joints.add(new Joint(next, levelM(row.line().start(), tapM), 0, null));
        double lengthM = row.headerLength().metres();
        tubes.add(pipe(start, next, lengthM, bore, Fitting.TEE_RUN.k()));
        start = next;
      }
      starts.add(start);
      its.addAll(row(name + " row " + r, bed, row.line(), start));
    }
    outlets.put(name, its);
  }

  private List<String> row(String name, DripRun bed, Line line, String start) {
    Emitter outlet = bed.choice().outlet();
    Length spacing = bed.choice().spacing();
    int count = DripLayout.outlets(line.length(), spacing);
    List<String> its = new ArrayList<>();
    String before = start;
    for (int i = 0; i < count; i++) {
      String next = name + " outlet " + i;
      // The first outlet stands half a spacing from the start of its row.
      Length at = spacing.times(i + 0.5).min(line.length());
      joints.add(new Joint(next, levelM(line.at(at), tapM), 0, outlet));
      double lengthM = spacing.metres() * (i == 0 ? 0.5 : 1);
      double k = i == 0 && bed.laid().joined().size() > 1 ? Fitting.TEE_BRANCH.k() : 0;
      tubes.add(pipe(before, next, lengthM, bed.choice().bore().metres(), k));
      its.add(next);
      before = next;
    }
    return its;
  }

  private static Pipe pipe(String from, String to, double lengthM, double boreM, double k) {
    return new Pipe(from + " to " + to, from, to, lengthM, boreM, FRICTION, k);
  }

  /** The flow in a run of pipe. */
  static double flowM3s(Solved solved, int run) {
    return solved.solution().flowM3s(run(run));
  }

  /** The pressure at the end of a run, as a height of water. */
  static double endM(Solved solved, int run) {
    return solved.solution().pressureM(run(run));
  }

  /** The pressure where a bed's first feed takes its water, as a height of water. */
  double inletM(Solved solved, DripRun bed) {
    String feed = feeds.get(bed.bed().toString());
    return feed == null
        ? solved.behindM() + tapM - levelM(bed.rows().get(0).start(), tapM)
        : solved.solution().pressureM(feed);
  }

  /** The flows of a bed's outlets, dry ones too. */
  double[] outletsM3s(Solved solved, DripRun bed) {
    return outlets.get(bed.bed().toString()).stream()
        .mapToDouble(solved.solution()::outletM3s)
        .toArray();
  }

  /** The pressures at a bed's outlets, as heights of water. */
  double[] pressuresM(Solved solved, DripRun bed) {
    return outlets.get(bed.bed().toString()).stream()
        .mapToDouble(solved.solution()::pressureM)
        .toArray();
  }

  /** Largest less least outlet flow over the largest, in the whole zone; 1 where some are dry. */
  double variation(Solved solved) {
    return variation(
        beds.stream().flatMapToDouble(bed -> Arrays.stream(ratios(solved, bed))).toArray());
  }

  /** Whether the outlets of one bed alone differ by more than is allowed. */
  boolean isUnevenInABed(Solved solved) {
    return beds.stream().anyMatch(bed -> variation(ratios(solved, bed)) > BedHydraulics.ALLOWED);
  }

  private static double variation(double[] flows) {
    double most = Arrays.stream(flows).max().orElse(0);
    return most == 0 ? 1 : 1 - Arrays.stream(flows).min().orElse(0) / most;
  }

  /** Outlet flows over the rated one, since beds of one zone may have different outlets. */
  private double[] ratios(Solved solved, DripRun bed) {
    double rated = bed.choice().emitter().cubicMetresPerSecond();
    return Arrays.stream(outletsM3s(solved, bed)).map(q -> q / rated).toArray();
  }
}
