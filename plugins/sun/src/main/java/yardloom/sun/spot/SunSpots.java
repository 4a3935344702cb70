package yardloom.sun.spot;

import java.util.List;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.sun.light.LightScheme.LightClass;

/**
 * The sunniest free ground for what the plan looks for.
 *
 * @param freeGround all that was searched
 */
public record SunSpots(List<Search> searches, Shape freeGround) {
  /** The plugin's own fact. */
  public static final FactKey<SunSpots> KEY =
      FactKey.one("sun.spots", SunSpots.class).called("sunniest free ground");

  public SunSpots {
    searches = List.copyOf(searches);
  }

  /**
   * One search and what it found, the sunniest first; nothing if no free ground is large enough.
   *
   * @param wantedHours mean direct sun a day in the season that it should have
   */
  public record Search(
      String crop, Area area, double wantedHours, SourceRef place, List<Found> found) {
    public Search {
      found = List.copyOf(found);
    }
  }

  /** One place. */
  public record Found(Shape ground, double leastHours, double meanHours, LightClass lightClass) {}
}
