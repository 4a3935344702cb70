package yardloom.water.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;
import yardloom.water.pipe.formula.PipeSpeed;

/**
 * The widths of a zone's runs: the narrowest in which water keeps below 1.5 m/s, then widened where
 * a step gives most evenness for its cost, until outlets of the zone differ by at most a tenth.
 *
 * <p>Where the rows themselves differ by more, pipes are widened until they add a hundredth at
 * most. One step at a time is not always the cheapest of all; the tests compare it with all
 * combinations.
 *
 * <p>References: limit of speed from memory, see {@link PipeSpeed}; ten percent see {@link
 * BedHydraulics#ALLOWED}.
 */
final class PipeSizing {
  /** Common practice, printed under the table of lines. */
  private static final double RUNS_MAY_ADD = 0.01;

  private static final String UNEVEN_ROWS = "rows too long for evenness";
  private static final String UNEVEN_BEDS = "beds of other heights or outlets";

  private final ZoneNetwork network;
  private final List<Line> ways;
  private final List<PipeSize> sizes;

  PipeSizing(ZoneNetwork network, List<Line> ways, List<PipeSize> sizes) {
    this.network = network;
    this.ways = List.copyOf(ways);
    this.sizes = sizes;
  }

  /**
   * The sizes chosen.
   *
   * @param binding what holds them, in words
   */
  record Chosen(List<PipeSize> of, ZoneNetwork.Solved solved, String binding) {}

  /** The most by which outlets may differ where the widest pipes leave so much. */
  static double goal(double widest) {
    return Math.max(BedHydraulics.ALLOWED, widest + RUNS_MAY_ADD);
  }

  Chosen choose() {
    List<Integer> chosen = new ArrayList<>(Collections.nCopies(ways.size(), 0));
    ZoneNetwork.Solved solved = solve(chosen);
    boolean isWidened = false;
    while (widenFast(chosen, solved)) {
      isWidened = true;
      solved = solve(chosen);
    }
    String binding = isWidened ? "speed of water" : "the least size";
    if (network.variation(solved) <= BedHydraulics.ALLOWED) {
      return new Chosen(sizes(chosen), solved, binding);
    }
    double widest = network.variation(solve(Collections.nCopies(ways.size(), sizes.size() - 1)));
    double goal = goal(widest);
    while (network.variation(solved) > goal) {
      int best = best(chosen, network.variation(solved));
      if (best < 0) {
        break;
      }
      chosen.set(best, chosen.get(best) + 1);
      solved = solve(chosen);
      binding = "evenness of outlets";
    }
    if (widest > BedHydraulics.ALLOWED) {
      binding = network.isUnevenInABed(solved) ? UNEVEN_ROWS : UNEVEN_BEDS;
    }
    return new Chosen(sizes(chosen), solved, binding);
  }

  private List<PipeSize> sizes(List<Integer> of) {
    return of.stream().map(sizes::get).toList();
  }

  private ZoneNetwork.Solved solve(List<Integer> chosen) {
    return network.solve(sizes(chosen));
  }

  private boolean widenFast(List<Integer> chosen, ZoneNetwork.Solved solved) {
    boolean any = false;
    for (int r = 0; r < ways.size(); r++) {
      double boreM = sizes.get(chosen.get(r)).bore().metres();
      double speed = PipeSpeed.metresPerSecond(ZoneNetwork.flowM3s(solved, r), boreM);
      if (speed > PipeSpeed.LIMIT_MS && chosen.get(r) + 1 < sizes.size()) {
        chosen.set(r, chosen.get(r) + 1);
        any = true;
      }
    }
    return any;
  }

  private int best(List<Integer> chosen, double now) {
    int best = -1;
    double most = 0;
    for (int r = 0; r < ways.size(); r++) {
      if (chosen.get(r) + 1 < sizes.size()) {
        List<Integer> wider = new ArrayList<>(chosen);
        wider.set(r, chosen.get(r) + 1);
        Length length = ways.get(r).length();
        double cost = sizes.get(wider.get(r)).cost(length) - sizes.get(chosen.get(r)).cost(length);
        double gain = (now - network.variation(solve(wider))) / cost;
        if (gain > most * (1 + 1e-9)) {
          most = gain;
          best = r;
        }
      }
    }
    return best;
  }
}
