package yardloom.program.sitefile;

import java.util.Optional;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;

/** Words that make shapes of the text of files. */
public final class SiteFileWords {
  private SiteFileWords() {}

  /** What one step of a local outline is. */
  public enum Step {
    M(Length.metres(1)),
    FT(Length.feet(1));

    private final Length length;

    Step(Length length) {
      this.length = length;
    }
  }

  @Verb(
      help =
          "The shape of the one polygon of a GeoJSON text (RFC 7946: longitude, latitude);"
              + " a map's outline is no survey.",
      example = "geoOutline('{\"type\": \"Polygon\", \"coordinates\": []}')")
  public static Shape geoOutline(
      Scope in,
      @Arg(name = "text", help = "the GeoJSON text, as from fileText('lot.geojson')") String text,
      @Opt(
              name = "latitude",
              help = "where the plan's origin lies; goes with `longitude:`",
              fallback = "the south-west corner of the outline's bounds")
          Angle latitude,
      @Opt(
              name = "longitude",
              help = "where the plan's origin lies; goes with `latitude:`",
              fallback = "the south-west corner of the outline's bounds")
          Angle longitude,
      @Opt(
              name = "north",
              help = "bearing of true north on the plan, as given to `site`",
              fallback = "0 degrees: north is up")
          Angle north) {
    if ((latitude == null) != (longitude == null)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "`latitude:` and `longitude:` of the plan's origin go together; give both or neither");
    }
    try {
      Optional<LonLat> origin =
          latitude == null
              ? Optional.empty()
              : Optional.of(new LonLat(longitude.degrees(), latitude.degrees()));
      return GeoOutline.read(text, origin, north == null ? Angle.ZERO : north).shape();
    } catch (PlanException e) {
      throw e.at(in.place());
    }
  }

  @Verb(
      help = "The shape of a POLYGON in well-known text, in plan metres or feet.",
      example = "wktOutline('POLYGON ((0 0, 60 0, 60 120, 0 120, 0 0))', unit: 'ft')")
  public static Shape wktOutline(
      Scope in,
      @Arg(name = "text", help = "the well-known text, as from fileText('lot.wkt')") String text,
      @Opt(name = "unit", help = "what its numbers count", required = true, choices = Step.class)
          String unit) {
    try {
      return WktOutline.read(text, Choices.parse(Step.class, unit).length);
    } catch (PlanException e) {
      throw e.at(in.place());
    }
  }
}
