package yardloom.water.pipe.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Steady flow in a small network of pipes with outlets, looped or branched.
 *
 * <p>Solves mass balance at the joints and energy along the pipes together, by the global gradient
 * method: Newton's method on flows, one sparse symmetric system in the heads at each step. Outlets
 * of joints without head give nothing and take nothing in; check for negative pressure.
 *
 * <p>References: [1] E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe
 * networks, 1988. [2] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 12.
 */
public final class PipeNetwork {
  private static final int MOST_STEPS = 200;
  private static final double TOLERANCE = 1e-9;

  /** Slope of head over flow into an outlet, which keeps air from streaming in. */
  private static final double BACKFLOW_SLOPE = 1e12;

  /** Least slope of head loss over flow, which keeps pipes without flow solvable. */
  private static final double LEAST_SLOPE = 1e-2;

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
      double minorK) {
    double lossM(double flowM3s) {
      double q = Math.abs(flowM3s);
      double loss =
          friction.gradient(q, diameterM) * lengthM
              + Fitting.lossM(minorK, PipeSpeed.metresPerSecond(q, diameterM));
      return Math.copySign(loss, flowM3s);
    }
  }

  /** Heads of joints above their datum, and flows from the first to the second end of pipes. */
  public record Solution(
      Map<String, Double> headM,
      Map<String, Double> pressureM,
      Map<String, Double> flowM3s,
      Map<String, Double> emitterM3s) {}

  private final List<Joint> joints;
  private final List<Reservoir> reservoirs;
  private final List<Pipe> pipes;
  private final Map<String, Integer> index = new LinkedHashMap<>();

  /**
   * Takes the parts.
   *
   * @throws IllegalArgumentException if there is no source, an id is used twice, or a pipe ends
   *     nowhere
   */
  public PipeNetwork(List<Joint> joints, List<Reservoir> reservoirs, List<Pipe> pipes) {
    this.joints = List.copyOf(joints);
    this.reservoirs = List.copyOf(reservoirs);
    this.pipes = List.copyOf(pipes);
    if (reservoirs.isEmpty()) {
      throw new IllegalArgumentException("a network needs a source");
    }
    joints.forEach(j -> place(j.id()));
    reservoirs.forEach(r -> place(r.id()));
    for (Pipe pipe : pipes) {
      if (!index.containsKey(pipe.from()) || !index.containsKey(pipe.to())) {
        throw new IllegalArgumentException("pipe " + pipe.id() + " ends nowhere");
      }
    }
  }

  private void place(String id) {
    if (index.put(id, index.size()) != null) {
      throw new IllegalArgumentException("two nodes are called " + id);
    }
  }

  /**
   * Heads and flows.
   *
   * @throws IllegalStateException if no balance is found or a joint has no way to a source
   */
  public Solution solve() {
    double[] flow = new double[pipes.size()];
    java.util.Arrays.fill(flow, 1e-5);
    double[] outlet = new double[joints.size()];
    for (int i = 0; i < outlet.length; i++) {
      outlet[i] = hasOutlet(i) ? joints.get(i).emitter().flowM3s(1) : 0;
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] heads = heads(flow, outlet);
      if (update(flow, outlet, heads) < TOLERANCE) {
        return solution(flow, outlet, heads);
      }
    }
    throw new IllegalStateException("the network did not come to balance");
  }

  private boolean hasOutlet(int joint) {
    Emitter emitter = joints.get(joint).emitter();
    return emitter != null && emitter.coefficient() > 0 && emitter.exponent() > 0;
  }

  private double[] heads(double[] flow, double[] outlet) {
    int n = joints.size();
    SparseSystem system = new SparseSystem(n);
    double[] right = new double[n];
    for (int p = 0; p < pipes.size(); p++) {
      Pipe pipe = pipes.get(p);
      double inverse = 1 / slope(pipe, flow[p]);
      double known = flow[p] - inverse * pipe.lossM(flow[p]);
      int from = index.get(pipe.from());
      int to = index.get(pipe.to());
      addEnd(system, right, from, to, inverse, -known);
      addEnd(system, right, to, from, inverse, known);
      if (from < n && to < n) {
        system.couple(from, to, -inverse);
      }
    }
    for (int i = 0; i < n; i++) {
      Joint joint = joints.get(i);
      right[i] -= joint.demandM3s();
      if (hasOutlet(i)) {
        double inverse = 1 / outletSlope(joint.emitter(), outlet[i]);
        double known = outlet[i] - inverse * outletLoss(joint.emitter(), outlet[i]);
        system.add(i, inverse);
        right[i] += inverse * joint.elevationM() - known;
      }
    }
    return system.solve(right);
  }

  private void addEnd(
      SparseSystem system, double[] right, int here, int there, double inverse, double inflow) {
    if (here >= joints.size()) {
      return;
    }
    system.add(here, inverse);
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
  private double update(double[] flow, double[] outlet, double[] heads) {
    double changed = 0;
    double total = 0;
    for (int p = 0; p < pipes.size(); p++) {
      Pipe pipe = pipes.get(p);
      double drop = head(index.get(pipe.from()), heads) - head(index.get(pipe.to()), heads);
      double change = (pipe.lossM(flow[p]) - drop) / slope(pipe, flow[p]);
      flow[p] -= change;
      changed += Math.abs(change);
      total += Math.abs(flow[p]);
    }
    for (int i = 0; i < outlet.length; i++) {
      if (hasOutlet(i)) {
        Emitter emitter = joints.get(i).emitter();
        double pressure = heads[i] - joints.get(i).elevationM();
        double change =
            (outletLoss(emitter, outlet[i]) - pressure) / outletSlope(emitter, outlet[i]);
        outlet[i] -= change;
        changed += Math.abs(change);
        total += Math.abs(outlet[i]);
      }
    }
    return total == 0 ? 0 : changed / total;
  }

  private static double slope(Pipe pipe, double flowM3s) {
    double q = Math.max(Math.abs(flowM3s), 1e-9);
    double rise = (pipe.lossM(q * 1.0001) - pipe.lossM(q * 0.9999)) / (q * 0.0002);
    return Math.max(LEAST_SLOPE, rise);
  }

  private static double outletLoss(Emitter emitter, double flowM3s) {
    return flowM3s < 0
        ? BACKFLOW_SLOPE * flowM3s
        : StrictMath.pow(flowM3s / emitter.coefficient(), 1 / emitter.exponent());
  }

  private static double outletSlope(Emitter emitter, double flowM3s) {
    if (flowM3s < 0) {
      return BACKFLOW_SLOPE;
    }
    double power = 1 / emitter.exponent();
    double q = Math.max(flowM3s, 1e-12);
    return Math.max(
        LEAST_SLOPE,
        power / emitter.coefficient() * StrictMath.pow(q / emitter.coefficient(), power - 1));
  }

  private Solution solution(double[] flow, double[] outlet, double[] heads) {
    Map<String, Double> headM = new LinkedHashMap<>();
    Map<String, Double> pressureM = new LinkedHashMap<>();
    Map<String, Double> emitterM3s = new LinkedHashMap<>();
    for (int i = 0; i < joints.size(); i++) {
      headM.put(joints.get(i).id(), heads[i]);
      pressureM.put(joints.get(i).id(), heads[i] - joints.get(i).elevationM());
      emitterM3s.put(joints.get(i).id(), Math.max(0, outlet[i]));
    }
    Map<String, Double> flowM3s = new LinkedHashMap<>();
    for (int p = 0; p < pipes.size(); p++) {
      flowM3s.put(pipes.get(p).id(), flow[p]);
    }
    return new Solution(headM, pressureM, flowM3s, emitterM3s);
  }
}
