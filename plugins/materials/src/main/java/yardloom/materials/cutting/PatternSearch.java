package yardloom.materials.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import yardloom.materials.cutting.CuttingStock.Board;

/**
 * Branch and bound for the cheapest boards over cutting patterns.
 *
 * <p>Every node solves the linear programme min Σcost·x with Σ pattern·x ≥ demand and x ≥ floor,
 * rounds its solution down, fills the open pieces greedily for a better list, and branches on the
 * most fractional pattern. It ends when a list meets the ceiling of the root's bound, which nearly
 * always happens at once, when no node is left (both proven), or at the node limit (not proven).
 *
 * <p>References: as {@link CuttingStock}.
 */
final class PatternSearch {
  private static final int MOST_NODES = 400;
  private static final double EPS = 1e-6;

  private final List<Board> patterns;
  private final int[] demand;
  private List<Board> best;
  private int leastPossible;
  private int nodes;

  /**
   * What the search found.
   *
   * @param boards one pattern for each board
   * @param bound the linear programme's cost
   */
  record Outcome(List<Board> boards, double bound, boolean proven) {}

  private record Limits(int[] floor, int[] ceiling) {}

  PatternSearch(List<Board> patterns, int[] demand, List<Board> firstGuess) {
    this.patterns = patterns;
    this.demand = demand;
    this.best = firstGuess;
  }

  Outcome run() {
    int n = patterns.size();
    int[] none = new int[n];
    int[] all = new int[n];
    Arrays.fill(all, Integer.MAX_VALUE);
    double[] root = relax(new Limits(none, all));
    double bound = cost(root);
    leastPossible = (int) Math.ceil(bound - EPS);
    branch(new Limits(none, all), root);
    boolean proven = CuttingStock.cost(best) == leastPossible || nodes <= MOST_NODES;
    return new Outcome(best, bound, proven);
  }

  private void branch(Limits limits, double[] relaxed) {
    if (++nodes > MOST_NODES || CuttingStock.cost(best) == leastPossible || relaxed.length == 0) {
      return;
    }
    if ((int) Math.ceil(cost(relaxed) - EPS) >= CuttingStock.cost(best)) {
      return;
    }
    improve(relaxed);
    int at = mostFractional(relaxed);
    if (at < 0) {
      return;
    }
    int[] floor = limits.floor().clone();
    floor[at] = (int) Math.ceil(relaxed[at]);
    Limits up = new Limits(floor, limits.ceiling());
    branch(up, relax(up));
    int[] ceiling = limits.ceiling().clone();
    ceiling[at] = (int) Math.floor(relaxed[at]);
    Limits down = new Limits(limits.floor(), ceiling);
    branch(down, relax(down));
  }

  /** The linear programme at a node; an empty array if nothing fits the limits. */
  private double[] relax(Limits limits) {
    int n = patterns.size();
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int i = 0; i < demand.length; i++) {
      double[] row = new double[n];
      for (int p = 0; p < n; p++) {
        row[p] = patterns.get(p).pieces()[i];
      }
      if (demand[i] > 0) {
        constraints.add(new LinearConstraint(row, Relationship.GEQ, demand[i]));
      }
    }
    for (int p = 0; p < n; p++) {
      if (limits.floor()[p] > 0) {
        constraints.add(single(p, Relationship.GEQ, limits.floor()[p]));
      }
      if (limits.ceiling()[p] < Integer.MAX_VALUE) {
        constraints.add(single(p, Relationship.LEQ, limits.ceiling()[p]));
      }
    }
    double[] costs = patterns.stream().mapToDouble(Board::cost).toArray();
    try {
      PointValuePair solution =
          new SimplexSolver()
              .optimize(
                  new MaxIter(20_000),
                  new LinearObjectiveFunction(costs, 0),
                  new LinearConstraintSet(constraints),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(true),
                  PivotSelectionRule.BLAND);
      return solution.getPoint();
    } catch (MathIllegalStateException e) {
      if (e.getSpecifier() != LocalizedOptimFormats.NO_FEASIBLE_SOLUTION) {
        // Out of iterations: the rest of the search could prove nothing.
        nodes = MOST_NODES + 1;
      }
      return new double[0];
    }
  }

  private LinearConstraint single(int pattern, Relationship relation, double value) {
    double[] row = new double[patterns.size()];
    row[pattern] = 1;
    return new LinearConstraint(row, relation, value);
  }

  /** Rounds down, then takes again and again the pattern that serves most open pieces. */
  private void improve(double[] relaxed) {
    int[] open = demand.clone();
    List<Board> boards = new ArrayList<>();
    for (int p = 0; p < patterns.size(); p++) {
      for (int k = 0; k < (int) Math.floor(relaxed[p] + EPS); k++) {
        boards.add(patterns.get(p));
        take(patterns.get(p).pieces(), open);
      }
    }
    int least = CuttingStock.cost(best);
    while (anyOpen(open) && CuttingStock.cost(boards) < least) {
      Board next = mostServing(open);
      boards.add(next);
      take(next.pieces(), open);
    }
    if (!anyOpen(open) && CuttingStock.cost(boards) < least) {
      best = boards;
    }
  }

  /** The pattern that serves most open pieces for its cost. */
  private Board mostServing(int[] open) {
    Board next = patterns.get(0);
    double most = -1;
    for (Board pattern : patterns) {
      int served = 0;
      for (int i = 0; i < open.length; i++) {
        served += Math.min(pattern.pieces()[i], open[i]) * weight(i);
      }
      double each = (double) served / pattern.cost();
      if (each > most) {
        most = each;
        next = pattern;
      }
    }
    return next;
  }

  /** Rare pieces of a pattern are the long ones; they go first. */
  private int weight(int piece) {
    int most = 1;
    for (Board pattern : patterns) {
      most = Math.max(most, pattern.pieces()[piece]);
    }
    return 1000 / most;
  }

  private static void take(int[] pattern, int[] open) {
    for (int i = 0; i < open.length; i++) {
      open[i] = Math.max(0, open[i] - pattern[i]);
    }
  }

  private static boolean anyOpen(int[] open) {
    for (int o : open) {
      if (o > 0) {
        return true;
      }
    }
    return false;
  }

  private static int mostFractional(double[] x) {
    int at = -1;
    double best = EPS;
    for (int p = 0; p < x.length; p++) {
      double off = Math.abs(x[p] - Math.rint(x[p]));
      if (off > best) {
        best = off;
        at = p;
      }
    }
    return at;
  }

  private double cost(double[] x) {
    double sum = 0;
    for (int p = 0; p < x.length; p++) {
      sum += x[p] * patterns.get(p).cost();
    }
    return sum;
  }
}
