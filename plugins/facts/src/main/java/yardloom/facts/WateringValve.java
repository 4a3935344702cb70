package yardloom.facts;

import java.util.List;
import yardloom.kernel.plan.ElementId;

/**
 * What is watered together.
 *
 * @param number from 1
 * @param beds what hangs on the valve
 */
public record WateringValve(int number, List<ElementId> beds) {
  public WateringValve {
    beds = List.copyOf(beds);
  }
}
