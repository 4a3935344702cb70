package yardloom.work.delivery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yardloom.work.phase.CrewDays;

/**
 * When loads of one phase are tipped, so that no two heaps lie on one spot.
 *
 * <p>The crew spreads all loads of the phase one after the other, at an even pace from its
 * beginning to its end. A load is tipped once the one before it on the same spot is spread, the
 * first of each spot when the phase begins: at {@code t = begins + spread before / all × (ends −
 * begins)}, in days since the morning of its first. What would come in the last quarter of a day
 * comes first thing on the next, unless that was the last day. Loads hold something; without loads
 * there are no times.
 *
 * <p>References: arithmetic; the quarter is common practice, since nobody wants a truck at the end
 * of the day.
 */
public final class DeliveryDays {
  private static final double NOON = 0.5;

  /** A truck that is a few minutes early finds the heap all but gone. */
  private static final double EARLY = 1.0 / 16;

  private DeliveryDays() {}

  /**
   * One load.
   *
   * @param spot where it is tipped, by any name
   * @param volume in any unit, above zero
   */
  public record Load(String spot, double volume) {}

  /**
   * When it is tipped.
   *
   * @param day of the phase, from 0
   * @param isAfterOther whether another heap lay there in the phase
   */
  public record Time(int day, Delivery.When when, boolean isAfterOther) {}

  /**
   * In the order of the loads.
   *
   * @param begins when the phase begins on its first day, from 0 in the morning to below 1
   * @param ends when it ends, in days since that morning
   */
  public static List<Time> of(List<Load> loads, double begins, double ends) {
    double all = loads.stream().mapToDouble(Load::volume).sum();
    Map<String, Double> free = new HashMap<>();
    List<Time> times = new ArrayList<>();
    double spread = 0;
    for (Load load : loads) {
      double done = free.getOrDefault(load.spot(), 0.0) / all;
      times.add(time(begins + done * (ends - begins), ends, free.containsKey(load.spot())));
      spread += load.volume();
      free.put(load.spot(), spread);
    }
    return List.copyOf(times);
  }

  private static Time time(double at, double ends, boolean isAfterOther) {
    int last = Math.max(0, (int) Math.ceil(ends - EARLY) - 1);
    int day = Math.min((int) Math.floor(at + EARLY), last);
    double part = at - day;
    if (part > CrewDays.LATE && day < last) {
      return new Time(day + 1, Delivery.When.FIRST_THING, isAfterOther);
    }
    if (part <= EARLY) {
      return new Time(day, Delivery.When.FIRST_THING, isAfterOther);
    }
    return new Time(
        day, part < NOON ? Delivery.When.BEFORE_NOON : Delivery.When.AFTER_NOON, isAfterOther);
  }
}
