package yardloom.water.need;

import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Volume;

/** Amounts of water in words for messages and notes, where no table column formats them. */
public final class WaterText {
  private WaterText() {}

  /** In both systems, the plan's first: {@code 257 gal (973 L)}. */
  public static String both(Plan plan, Volume volume) {
    return Say.both(Measure.WATER, volume, plan.info().units());
  }
}
