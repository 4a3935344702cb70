package yardloom.scripts.site;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.words.PlanScope;

/** Words for outlines on the globe. */
public final class SiteWords {
  private SiteWords() {}

  @Verb(
      help = "The corners of the one polygon in GeoJSON text, as points of the plan, for `lot`.",
      example =
          "lot(geoJson('''{\"type\": \"Polygon\", \"coordinates\": [[[-122.43, 37.75], [-122.4297,"
              + " 37.75], [-122.4297, 37.7503], [-122.43, 37.75]]]}''', latitude: 37.75.deg,"
              + " longitude: -122.43.deg))")
  public static List<Point> geoJson(
      PlanScope in,
      @Arg(name = "text", help = "the GeoJSON") String text,
      @Opt(name = "latitude", help = "of the plan's origin, as given to `site`", required = true)
          Angle latitude,
      @Opt(name = "longitude", help = "of the plan's origin, as given to `site`", required = true)
          Angle longitude,
      @Opt(
              name = "north",
              help = "bearing of true north on the plan, as given to `site`",
              fallback = "0 degrees: north is up")
          Angle north) {
    return GeoJsonOutline.read(
        text, new LocalPlane(latitude, longitude, north == null ? Angle.ZERO : north));
  }
}
