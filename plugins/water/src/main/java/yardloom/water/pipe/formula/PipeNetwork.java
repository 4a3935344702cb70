package yardloom.water.pipe.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Steady flow in a network of pipes with outlets, looped or branched.
 *
 * <p>Solves mass balance at the joints and energy along the pipes together, by the global gradient
 * method: Newton's method on flows, one sparse symmetric system in the heads at each step, which on
 * a tree is solved in one sweep from its leaves to the source and back. Outlets of joints without
 * head give nothing and take nothing in; check for negative pressure.
 *
 * <p>References: [1] E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe
 * networks, 1988. [2] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 12.
 */
public final class PipeNetwork {
  private static final int MOST_STEPS = 200;
  private static final double TOLERANCE = 1e-9;

  /** Slope of head over flow into an outlet, which keeps air from streaming in. */
  private static final double BACKFLOW_SLOPE = 1e16;

  /** Least slope of head loss over flow, which keeps pipes without flow solvable. */
  private static final double LEAST_SLOPE = 1e-2;

  private static final double LEAST_FLOW_M3S = 1e-9;
  private static final double FIRST_FLOW_M3S = 1e-5;

  /**
   * A joint.
   *
   * @param demandM3s fixed outflow, 0 for none
   * @param emitter outlet to the air, null for none
   */
  public record Joint(String id, double elevationM, double demandM3s, Emitter emitter) {}

  /** A source at constant head. */
  public record Reservoir(String id, double headM) {}

  /**
   * A pipe.
   *
   * @param minorK sum of the fittings' coefficients
   */
  public record Pipe(
      String id,
      String from,
      String to,
      double lengthM,
      double diameterM,
      Friction friction,
      double minorK) {}

  private final List<Joint> joints;
  private final List<Reservoir> reservoirs;
  private final List<Pipe> pipes;
  private final Map<String, Integer> nodes = new LinkedHashMap<>();
  private final Map<String, Integer> pipeIndex = new LinkedHashMap<>();
  private final int[] from;
  private final int[] to;

  /** Head lost in fittings over the square of flow. */
  private final double[] minor;

  /** The pipes between two joints, which couple them. */
  private final int[] coupling;

  private final Friction.Bore[] bores;
  private final double[] lengthM;
  private final double[] elevationM;

  /** Null where a joint gives nothing to the air. */
  private final Emitter[] emitters;

  private final SparseSystem system;

  /** The joints from a source outward, and the pipe by which each is reached. */
  private final int[] outward;

  private final int[] feed;

  /**
   * Takes the parts, at standard gravity.
   *
   * @throws IllegalArgumentException if there is no source, an id is used twice, a pipe ends
   *     nowhere, or a joint has no way to a source
   */
  public PipeNetwork(List<Joint> joints, List<Reservoir> reservoirs, List<Pipe> pipes) {
    this(joints, reservoirs, pipes, DarcyWeisbach.GRAVITY);
  }

  /**
   * The same with the gravity by which fittings lose head; friction brings its own.
   *
   * @param gravityMs2 metres per second squared
   */
  public PipeNetwork(
      List<Joint> joints, List<Reservoir> reservoirs, List<Pipe> pipes, double gravityMs2) {
    this.joints = List.copyOf(joints);
    this.reservoirs = List.copyOf(reservoirs);
    this.pipes = List.copyOf(pipes);
    if (reservoirs.isEmpty()) {
      throw new IllegalArgumentException("a network needs a source");
    }
    for (Joint joint : joints) {
      place(nodes, joint.id());
      if (joint.emitter() != null && !(joint.emitter().exponent() > 0)) {
        throw new IllegalArgumentException("the outlet at " + joint.id() + " has the exponent 0");
      }
    }
    reservoirs.forEach(r -> place(nodes, r.id()));
    from = new int[pipes.size()];
    to = new int[pipes.size()];
    minor = new double[pipes.size()];
    lengthM = pipes.stream().mapToDouble(Pipe::lengthM).toArray();
    bores = new Friction.Bore[pipes.size()];
    elevationM = joints.stream().mapToDouble(Joint::elevationM).toArray();
    emitters = new Emitter[joints.size()];
    Arrays.setAll(emitters, i -> joints.get(i).emitter());
    Map<Friction, Map<Double, Friction.Bore>> known = new HashMap<>();
    List<Integer> inner = new ArrayList<>();
    for (int p = 0; p < from.length; p++) {
      Pipe pipe = pipes.get(p);
      place(pipeIndex, pipe.id());
      bores[p] =
          known
              .computeIfAbsent(pipe.friction(), f -> new HashMap<>())
              .computeIfAbsent(pipe.diameterM(), d -> pipe.friction().in(d));
      from[p] = node(pipe, pipe.from());
      to[p] = node(pipe, pipe.to());
      minor[p] =
          Fitting.lossM(pipe.minorK(), PipeSpeed.metresPerSecond(1, pipe.diameterM()), gravityMs2);
      if (from[p] < joints.size() && to[p] < joints.size() && from[p] != to[p]) {
        inner.add(p);
      }
    }
    coupling = inner.stream().mapToInt(p -> p).toArray();
    system =
        new SparseSystem(
            joints.size(),
            Arrays.stream(coupling).map(p -> from[p]).toArray(),
            Arrays.stream(coupling).map(p -> to[p]).toArray());
    outward = new int[joints.size()];
    feed = new int[joints.size()];
    explore();
  }

  private static void place(Map<String, Integer> index, String id) {
    if (index.put(id, index.size()) != null) {
      throw new IllegalArgumentException("two nodes or two pipes are called " + id);
    }
  }

  private int node(Pipe pipe, String id) {
    Integer node = nodes.get(id);
    if (node == null) {
      throw new IllegalArgumentException("pipe " + pipe.id() + " ends nowhere");
    }
    return node;
  }

  private void explore() {
    List<List<Integer>> ends = new ArrayList<>();
    nodes.keySet().forEach(id -> ends.add(new ArrayList<>(2)));
    for (int p = 0; p < from.length; p++) {
      ends.get(from[p]).add(p);
      ends.get(to[p]).add(p);
    }
    Arrays.fill(feed, -1);
    Deque<Integer> open = new ArrayDeque<>();
    for (int i = joints.size(); i < nodes.size(); i++) {
      open.add(i);
    }
    int count = 0;
    while (!open.isEmpty()) {
      int node = open.remove();
      for (int p : ends.get(node)) {
        int next = from[p] == node ? to[p] : from[p];
        if (next < joints.size() && feed[next] < 0) {
          feed[next] = p;
          outward[count++] = next;
          open.add(next);
        }
      }
    }
    for (int i = 0; i < joints.size(); i++) {
      if (feed[i] < 0) {
        throw new IllegalArgumentException(
            "joint " + joints.get(i).id() + " has no way to a source");
      }
    }
  }

  /**
   * Heads and flows.
   *
   * @throws IllegalStateException if no balance is found
   */
  public Solution solve() {
    double[] outlet = firstOutlets();
    double[] flow = firstFlows(outlet);
    double[] loss = new double[flow.length];
    double[] slope = new double[flow.length];
    for (int step = 0; step < MOST_STEPS; step++) {
      losses(flow, loss, slope);
      double[] heads = heads(flow, loss, slope, outlet);
      if (update(flow, loss, slope, outlet, heads) < TOLERANCE) {
        return new Solution(this, heads, flow, outlet);
      }
    }
    throw new IllegalStateException("the network did not come to balance");
  }

  /** What the outlets would give if no pipe took head: Newton's first guess. */
  private double[] firstOutlets() {
    double headM = reservoirs.stream().mapToDouble(Reservoir::headM).max().orElseThrow();
    double[] outlet = new double[joints.size()];
    for (int i = 0; i < outlet.length; i++) {
      Joint joint = joints.get(i);
      outlet[i] = hasOutlet(i) ? joint.emitter().flowM3s(headM - joint.elevationM()) : 0;
    }
    return outlet;
  }

  /** The flows that feed those outlets along one tree of pipes. */
  private double[] firstFlows(double[] outlet) {
    double[] flow = new double[pipes.size()];
    Arrays.fill(flow, FIRST_FLOW_M3S);
    double[] carried = outlet.clone();
    for (int k = outward.length - 1; k >= 0; k--) {
      int joint = outward[k];
      int pipe = feed[joint];
      double down = carried[joint] + joints.get(joint).demandM3s();
      boolean isForward = to[pipe] == joint;
      flow[pipe] = isForward ? down : -down;
      int before = isForward ? from[pipe] : to[pipe];
      if (before < carried.length) {
        carried[before] += down;
      }
    }
    return flow;
  }

  private boolean hasOutlet(int joint) {
    return emitters[joint] != null && emitters[joint].coefficient() > 0;
  }

  /** Head lost along each pipe in its direction, and how it grows with the flow. */
  private void losses(double[] flow, double[] loss, double[] slope) {
    for (int p = 0; p < flow.length; p++) {
      double q = Math.max(Math.abs(flow[p]), LEAST_FLOW_M3S);
      double friction = bores[p].gradient(q) * lengthM[p];
      double fittings = minor[p] * q * q;
      double power = bores[p].power(q);
      loss[p] =
          flow[p] == 0 ? 0 : Math.copySign(friction + fittings, flow[p]) * Math.abs(flow[p]) / q;
      slope[p] = Math.max(LEAST_SLOPE, (power * friction + 2 * fittings) / q);
    }
  }

  private double[] heads(double[] flow, double[] loss, double[] slope, double[] outlet) {
    int n = joints.size();
    double[] diagonal = new double[n];
    double[] right = new double[n];
    for (int p = 0; p < flow.length; p++) {
      double inverse = 1 / slope[p];
      double known = flow[p] - inverse * loss[p];
      addEnd(diagonal, right, from[p], to[p], inverse, -known);
      addEnd(diagonal, right, to[p], from[p], inverse, known);
    }
    double[] coupled = new double[coupling.length];
    for (int k = 0; k < coupled.length; k++) {
      coupled[k] = -1 / slope[coupling[k]];
    }
    for (int i = 0; i < n; i++) {
      right[i] -= joints.get(i).demandM3s();
      if (hasOutlet(i)) {
        double inverse = 1 / outletSlope(emitters[i], outlet[i]);
        double known = outlet[i] - inverse * outletLoss(emitters[i], outlet[i]);
        diagonal[i] += inverse;
        right[i] += inverse * elevationM[i] - known;
      }
    }
    system.solve(diagonal, coupled, right);
    return right;
  }

  private void addEnd(
      double[] diagonal, double[] right, int here, int there, double inverse, double inflow) {
    if (here >= joints.size()) {
      return;
    }
    diagonal[here] += inverse;
    right[here] += inflow;
    if (there >= joints.size()) {
      right[here] += inverse * sourceHead(there);
    }
  }

  private double sourceHead(int node) {
    return reservoirs.get(node - joints.size()).headM();
  }

  private double head(int node, double[] heads) {
    return node < joints.size() ? heads[node] : sourceHead(node);
  }

  /** Newton's step on all flows; returns their relative change. */
  private double update(
      double[] flow, double[] loss, double[] slope, double[] outlet, double[] heads) {
    double changed = 0;
    double total = 0;
    for (int p = 0; p < flow.length; p++) {
      double drop = head(from[p], heads) - head(to[p], heads);
      double change = (loss[p] - drop) / slope[p];
      flow[p] -= change;
      changed += Math.abs(change);
      total += Math.abs(flow[p]);
    }
    for (int i = 0; i < outlet.length; i++) {
      if (hasOutlet(i)) {
        double pressure = heads[i] - elevationM[i];
        double change =
            (outletLoss(emitters[i], outlet[i]) - pressure) / outletSlope(emitters[i], outlet[i]);
        outlet[i] -= change;
        changed += Math.abs(change);
        total += Math.abs(outlet[i]);
      }
    }
    return total == 0 ? 0 : changed / total;
  }

  private static double outletLoss(Emitter emitter, double flowM3s) {
    return flowM3s < 0 ? BACKFLOW_SLOPE * flowM3s : emitter.headM(flowM3s);
  }

  private static double outletSlope(Emitter emitter, double flowM3s) {
    if (flowM3s < 0) {
      return BACKFLOW_SLOPE;
    }
    double q = Math.max(flowM3s, 1e-12);
    return Math.max(LEAST_SLOPE, emitter.headPower(q) * emitter.headM(q) / q);
  }

  /** Heads of joints above their datum, and flows from the first to the second end of pipes. */
  public static final class Solution {
    private final PipeNetwork of;
    private final double[] heads;
    private final double[] flows;
    private final double[] outlets;

    private Solution(PipeNetwork of, double[] heads, double[] flows, double[] outlets) {
      this.of = of;
      this.heads = heads;
      this.flows = flows;
      this.outlets = outlets;
    }

    /** The head at a joint. */
    public double headM(String joint) {
      return heads[of.nodes.get(joint)];
    }

    /** The head above a joint; negative where water would be sucked in. */
    public double pressureM(String joint) {
      int i = of.nodes.get(joint);
      return heads[i] - of.joints.get(i).elevationM();
    }

    /** The flow in a pipe, negative against its direction. */
    public double flowM3s(String pipe) {
      return flows[of.pipeIndex.get(pipe)];
    }

    /** What the outlet of a joint gives; 0 without one. */
    public double outletM3s(String joint) {
      return Math.max(0, outlets[of.nodes.get(joint)]);
    }

    /** The flows of all outlets, in the order of the joints; joints without one are left out. */
    public double[] outletsM3s() {
      return java.util.stream.IntStream.range(0, outlets.length)
          .filter(of::hasOutlet)
          .mapToDouble(i -> Math.max(0, outlets[i]))
          .toArray();
    }

    /** The least pressure at any joint. */
    public double leastPressureM() {
      return of.joints.stream().mapToDouble(j -> pressureM(j.id())).min().orElseThrow();
    }
  }
}
