package yardloom.sun.yard;

import java.util.List;
import java.util.Objects;
import yardloom.facts.Field;
import yardloom.kernel.fact.FactKey;

/**
 * Direct sun over the ground of the lot, in hours a day; cells inside buildings are left out.
 *
 * @param months for each month, January to December, on its mean day
 * @param season mean over the days of the growing season
 * @param morning the part of {@code season} before solar noon
 * @param seasonText the days of the season in words
 */
public record SunField(List<Field> months, Field season, Field morning, String seasonText) {
  /** The plugin's own fact; what other plugins need of it is in the shared facts. */
  public static final FactKey<SunField> KEY =
      FactKey.one("sun.field", SunField.class).called("sun over the lot");

  public SunField {
    months = List.copyOf(months);
    Objects.requireNonNull(season);
    Objects.requireNonNull(morning);
    if (months.size() != 12) {
      throw new IllegalArgumentException("a sun field needs 12 months, got " + months.size());
    }
  }
}
