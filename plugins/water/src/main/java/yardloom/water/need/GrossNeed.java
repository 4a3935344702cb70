package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.formula.WaterBudget;

/**
 * What the garden takes from tap or tank: the plants' net need over the efficiency of drip. The one
 * definition wherever need is set against a supply: tank, balance of the year, former lawn.
 */
public final class GrossNeed {
  /** How tables call it. */
  public static final String TITLE = "Irrigation need, gross";

  private GrossNeed() {}

  /** January to December. */
  public static List<Derived<Volume>> monthly(List<WaterDemand> demands) {
    List<Derived<Volume>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      Derived.Builder why =
          Derived.by("sum over beds and trees of need / efficiency", WaterBudget.EFFICIENCIES)
              .from("efficiency", WaterBudget.DRIP_EFFICIENCY);
      Volume net = WaterDemand.together(demands, m, why);
      months.add(why.gives(net.times(1 / WaterBudget.DRIP_EFFICIENCY)));
    }
    return months;
  }

  /** Of a whole year. */
  public static Volume yearly(List<WaterDemand> demands) {
    return monthly(demands).stream().map(Derived::value).reduce(Volume.ZERO, Volume::plus);
  }
}
