package yardloom.water.need;

import java.util.Locale;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;

/** Amounts of water in words for messages and notes, where no table column formats them. */
public final class WaterText {
  private WaterText() {}

  /** In both systems, the plan's first: {@code 257 gal (973 L)}. */
  public static String both(Plan plan, Volume volume) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.0f gal", volume.gallons()),
            String.format(Locale.ROOT, "%.0f L", volume.litres()));
  }
}
