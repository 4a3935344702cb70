package yardloom.water.roof;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Volume;

/**
 * Water that one source yields.
 *
 * @param monthly January to December
 */
public record WaterSupply(ElementId of, List<Derived<Volume>> monthly) {
  /** Water a roof yields by month. */
  public static final FactKey<WaterSupply> KEY =
      FactKey.many("water.supply", WaterSupply.class).called("roof yield");

  public WaterSupply {
    monthly = List.copyOf(monthly);
  }
}
