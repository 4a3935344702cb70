package yardloom.water.pipe.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;

/**
 * A network solved in another way than the program does, where the engine is not at hand: Newton's
 * method on the heads alone, the flow of a pipe found by halving an interval, a full matrix, and
 * steps cut until the imbalance shrinks. It shares the laws of friction and outlets with the
 * program; those are held against the engine elsewhere.
 */
final class DenseNewton {
  private static final int STEPS = 200;
  private static final double BALANCED_M3S = 1e-13;
  private static final double TINY_M = 1e-7;

  private final List<Joint> joints;
  private final List<Pipe> pipes;
  private final double sourceM;
  private final Map<String, Integer> places = new HashMap<>();

  DenseNewton(RandomNetwork network) {
    joints = network.joints;
    pipes = network.pipes;
    sourceM = network.headM;
    joints.forEach(j -> places.put(j.id(), places.size()));
  }

  /** The heads of the joints, in their order. */
  double[] headsM() {
    int n = joints.size();
    double[] heads = new double[n];
    java.util.Arrays.fill(heads, sourceM - 0.1);
    double[] off = imbalance(heads);
    for (int step = 0; step < STEPS && norm(off) > BALANCED_M3S; step++) {
      double[][] matrix = new double[n][n];
      for (int j = 0; j < n; j++) {
        double[] moved = heads.clone();
        moved[j] += TINY_M;
        double[] there = imbalance(moved);
        for (int i = 0; i < n; i++) {
          matrix[i][j] = (there[i] - off[i]) / TINY_M;
        }
      }
      double[] change = solve(matrix, off);
      double share = 1;
      double[] next = off;
      double[] tried = heads;
      for (int cut = 0; cut < 40; cut++) {
        tried = heads.clone();
        for (int i = 0; i < n; i++) {
          tried[i] -= share * change[i];
        }
        next = imbalance(tried);
        if (norm(next) < norm(off)) {
          break;
        }
        share /= 2;
      }
      if (norm(next) >= norm(off)) {
        break;
      }
      heads = tried;
      off = next;
    }
    return heads;
  }

  /** What flows into each joint less what leaves it. */
  private double[] imbalance(double[] heads) {
    double[] sum = new double[heads.length];
    for (Pipe pipe : pipes) {
      Integer from = places.get(pipe.from());
      int to = places.get(pipe.to());
      double flow = flow(pipe, (from == null ? sourceM : heads[from]) - heads[to]);
      sum[to] += flow;
      if (from != null) {
        sum[from] -= flow;
      }
    }
    for (int i = 0; i < heads.length; i++) {
      Emitter outlet = joints.get(i).emitter();
      sum[i] -= outlet == null ? 0 : outlet.flowM3s(heads[i] - joints.get(i).elevationM());
    }
    return sum;
  }

  private static double flow(Pipe pipe, double lossM) {
    double low = 0;
    double high = 0.01;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      double speed = PipeSpeed.metresPerSecond(middle, pipe.diameterM());
      double loss =
          pipe.friction().gradient(middle, pipe.diameterM()) * pipe.lengthM()
              + pipe.minorK() * speed * speed / (2 * DarcyWeisbach.ENGINE_GRAVITY);
      if (loss < Math.abs(lossM)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.signum(lossM) * low;
  }

  private static double norm(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }

  /** Gauss, with the largest of each column as its pivot. */
  private static double[] solve(double[][] a, double[] right) {
    int n = right.length;
    double[] b = right.clone();
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        pivot = Math.abs(a[i][k]) > Math.abs(a[pivot][k]) ? i : pivot;
      }
      double[] row = a[k];
      a[k] = a[pivot];
      a[pivot] = row;
      double value = b[k];
      b[k] = b[pivot];
      b[pivot] = value;
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / a[k][k];
        for (int j = k; factor != 0 && j < n; j++) {
          a[i][j] -= factor * a[k][j];
        }
        b[i] -= factor * b[k];
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int j = k + 1; j < n; j++) {
        b[k] -= a[k][j] * b[j];
      }
      b[k] /= a[k][k];
    }
    return b;
  }
}
