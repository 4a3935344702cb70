package yardloom.facts;

import java.util.Objects;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * The direct sun that one kind of plant asks for where it is planted.
 *
 * @param in the bed or tree it belongs to
 * @param place where the plan says so
 * @param plant the catalogue name
 * @param minHours least mean direct sun in hours a day over the growing season, 0 to 24
 * @param source who says so
 */
public record LightNeed(
    ElementId in, SourceRef place, String plant, double minHours, Source source) {
  public LightNeed {
    Objects.requireNonNull(in);
    Objects.requireNonNull(place);
    Objects.requireNonNull(source);
    if (!(minHours >= 0 && minHours <= 24)) {
      throw new IllegalArgumentException(
          plant + " needs 0 to 24 hours of sun a day, got " + minHours);
    }
  }
}
