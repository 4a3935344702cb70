package yardloom.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.TimeSpan;

/**
 * Mean direct sun a day, by month.
 *
 * @param byElement for each bed, and each tree whose kind asks for sun, January to December
 * @param open an unshaded level place at the same site, January to December
 * @param method how it was found, for notes
 */
public record SunHours(
    Map<ElementId, List<TimeSpan>> byElement, List<TimeSpan> open, String method) {
  public SunHours {
    byElement = Map.copyOf(byElement);
    open = List.copyOf(open);
  }

  public Optional<List<TimeSpan>> of(ElementId id) {
    return Optional.ofNullable(byElement.get(id));
  }
}
