package yardloom.facts;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Volume;

/**
 * Water that one source yields.
 *
 * @param monthly January to December
 */
public record WaterSupply(ElementId of, List<Derived<Volume>> monthly) {
  public WaterSupply {
    monthly = List.copyOf(monthly);
  }
}
