package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.plan.Site;
import yardloom.planting.catalogue.Plant;

/**
 * Whether a yard lies in the region that a plant is native to: roughly, by degrees of latitude and
 * longitude. The flora of the east ends near the hundredth meridian, that of the Pacific coast at
 * the Cascades and the Sierra Nevada.
 *
 * <p>References: common practice; the bounds are recalled.
 */
public final class NativeRegion {
  /** Degrees, north and east positive. */
  private record Box(double south, double north, double west, double east) {
    boolean holds(Site site) {
      double latitude = site.latitude().degrees();
      double longitude = site.longitude().degrees();
      return latitude >= south && latitude <= north && longitude >= west && longitude <= east;
    }
  }

  private static final Map<String, Box> BOXES =
      Map.of(
          "eastern North America", new Box(25, 52, -100, -52),
          "southeastern North America", new Box(25, 38, -98, -75),
          "central North America", new Box(28, 52, -106, -86),
          "western North America", new Box(28, 65, -170, -100),
          "southwestern North America", new Box(25, 38, -120, -100),
          "Pacific North America", new Box(34, 62, -170, -120.6),
          "northern North America", new Box(43, 75, -170, -52),
          "all North America", new Box(25, 75, -170, -52));

  private NativeRegion() {}

  /**
   * @param site where the yard lies; everywhere if it is not said
   * @return whether it is native there; a region of the plan's own words is that of its yard
   */
  public static boolean isHere(Plant plant, Optional<Site> site) {
    Optional<String> region = Growth.of(plant).nativeTo();
    if (region.isEmpty()) {
      return false;
    }
    Box box = BOXES.get(region.get());
    return site.isEmpty() || box == null || box.holds(site.get());
  }
}
