package yardloom.water.zone.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.kernel.plan.NaturalOrder;

/**
 * Puts beds together that can be watered at once: their flows stay within the limit, and none runs
 * less than seven tenths of the time of the thirstiest, so that none is much overwatered; and all
 * have the same class of light, since shade dries later than sun.
 *
 * <p>First fit in order of falling run time, then falling flow, then name; the same beds give the
 * same zones in whatever order they come. A bed whose own flow is above the limit is a zone of its
 * own. Not always the fewest zones.
 *
 * <p>References: first fit decreasing, D. S. Johnson, Near-optimal bin packing algorithms, 1973;
 * that beds of like need share a valve is common practice.
 */
public final class Zoning {
  /** The least share of the longest run time that a bed of the same zone asks for. */
  public static final double LIKE = 0.7;

  /** A bed to water. */
  public record Load(String name, double flow, double hours, String light) {
    /** A bed of whose light nothing is known. */
    public Load(String name, double flow, double hours) {
      this(name, flow, hours, "");
    }
  }

  private Zoning() {}

  /** The zones, each in the order in which its beds were put in. */
  public static List<List<Load>> zones(List<Load> beds, double flowLimit) {
    if (!(flowLimit > 0)) {
      throw new IllegalArgumentException("flow limit " + flowLimit);
    }
    List<Load> order = new ArrayList<>(beds);
    order.sort(
        Comparator.comparingLong((Load l) -> steps(l.hours()))
            .thenComparingLong(l -> steps(l.flow()))
            .reversed()
            .thenComparing(Load::name, new NaturalOrder()));
    List<List<Load>> zones = new ArrayList<>();
    for (Load bed : order) {
      zones.stream()
          .filter(z -> fits(z, bed, flowLimit))
          .findFirst()
          .orElseGet(
              () -> {
                zones.add(new ArrayList<>());
                return zones.get(zones.size() - 1);
              })
          .add(bed);
    }
    return zones.stream().map(List::copyOf).toList();
  }

  /** Beds of one size differ in the last digits; those must not decide the order. */
  private static long steps(double value) {
    return Math.round(value * 1e6);
  }

  private static boolean fits(List<Load> zone, Load bed, double flowLimit) {
    double flow = zone.stream().mapToDouble(Load::flow).sum();
    return flow + bed.flow() <= flowLimit * (1 + 1e-9)
        && bed.light().equals(zone.get(0).light())
        && bed.hours() >= LIKE * zone.get(0).hours() * (1 - 1e-9);
  }
}
