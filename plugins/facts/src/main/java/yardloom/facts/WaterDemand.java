package yardloom.facts;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Volume;

/**
 * Irrigation that one element needs.
 *
 * @param monthly net need after effective rain, January to December
 */
public record WaterDemand(ElementId of, List<Derived<Volume>> monthly) {
  public WaterDemand {
    monthly = List.copyOf(monthly);
  }
}
