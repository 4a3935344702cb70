package yardloom.site.bed;

import yardloom.kernel.geom.StripSearch;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;

/**
 * What a search for the best strips found, kept with the plan so that a note can say it.
 *
 * @param area of all strips as laid
 * @param plain of strips along the longest edge
 */
public record StripGain(ElementId group, Angle bearing, Area area, Area plain) {
  public static final AttributeKey<StripGain> KEY =
      new AttributeKey<>("site.strip-gain", StripGain.class);

  static StripGain of(ElementId group, StripSearch.Found found) {
    return new StripGain(group, found.layout().bearing(), found.area(), found.plain());
  }
}
