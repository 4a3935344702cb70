package yardloom.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.TimeSpan;

/**
 * Mean direct sun a day.
 *
 * @param byElement for each bed, and each tree whose kind asks for sun
 * @param open an unshaded level place at the same site
 * @param season the days of the growing season in words
 * @param classes names of the classes of light, from the most sun to the least
 * @param scheme name and limits of the classes of light, in words
 * @param method how it was found, for notes
 */
public record SunHours(
    Map<ElementId, Place> byElement,
    Place open,
    String season,
    List<String> classes,
    String scheme,
    String method) {
  public SunHours {
    byElement = Map.copyOf(byElement);
    classes = List.copyOf(classes);
    if (classes.isEmpty()) {
      throw new IllegalArgumentException("a scheme of light needs classes");
    }
  }

  /**
   * The sun of one place.
   *
   * @param months on the mean day of each month, January to December
   * @param season mean a day over the growing season
   * @param lightClass what the scheme calls that
   */
  public record Place(List<TimeSpan> months, TimeSpan season, String lightClass) {
    public Place {
      months = List.copyOf(months);
    }
  }

  public Optional<Place> of(ElementId id) {
    return Optional.ofNullable(byElement.get(id));
  }
}
