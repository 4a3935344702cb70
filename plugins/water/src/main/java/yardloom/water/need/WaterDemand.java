package yardloom.water.need;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Volume;

/**
 * Irrigation that one element needs.
 *
 * @param monthly net need after effective rain, January to December
 */
public record WaterDemand(ElementId of, List<Derived<Volume>> monthly) {
  /** Water a bed or tree needs by month. */
  public static final FactKey<WaterDemand> KEY =
      FactKey.many("water.demand", WaterDemand.class).called("water need");

  public WaterDemand {
    monthly = List.copyOf(monthly);
  }

  /**
   * What several need together.
   *
   * @param month 0 (January) to 11
   * @param why takes each one's need as an input
   */
  public static Volume together(List<WaterDemand> demands, int month, Derived.Builder why) {
    Volume sum = Volume.ZERO;
    for (WaterDemand demand : demands) {
      Derived<Volume> need = demand.monthly().get(month);
      why.from("need of " + demand.of(), need);
      sum = sum.plus(need.value());
    }
    return sum;
  }
}
