package yardloom.water.roof;

import java.util.Locale;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.water.roof.formula.GutterFlow;

/** The words for what a roof sheds, and for the gutters and downspouts that carry it. */
public final class RoofWords {
  private static final Length LEAST = Length.inches(0.2);

  /** More has hardly been measured in an hour: 12 in (305 mm), Holt, Missouri, 1947 (memory). */
  private static final Length MOST = Length.inches(16);

  private static final double LEAST_FALL = 0.001;
  private static final double MOST_FALL = 0.05;

  private RoofWords() {}

  @Verb(
      help = "Gives the rain of an hour in the hardest cloudburst that downspouts must carry.",
      example = "cloudburst 4.inch, source: 'the state water survey, 5 minutes, 100 years'")
  public static void cloudburst(
      PlanScope in,
      @Arg(name = "perHour", help = "depth of rain in an hour of it") Length perHour,
      @Opt(name = "source", help = "who published it, for how rare a storm", required = true)
          String source) {
    if (perHour.compareTo(LEAST) < 0 || perHour.compareTo(MOST) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a cloudburst brings 0.2 in (5 mm) to 16 in (406 mm) in an hour, got %s; check the"
                  + " unit",
              Say.both(Measure.RAIN, perHour)));
    }
    Making.once(in, Cloudburst.KEY, c -> true, "the cloudburst");
    in.draft()
        .attributes()
        .add(Cloudburst.KEY, new Cloudburst(perHour, Source.plan(source)), in.place());
  }

  @Verb(
      help = "A downspout at its place; round, or flat with `width:` and `depth:`.",
      example = "downspout point(38.ft, 7.ft), roof: 'south slope', inside: 3.inch")
  public static void downspout(
      PlanScope in,
      @Arg(name = "at", help = "where it comes down") Point at,
      @Opt(name = "roof", help = "the roof that it drains, by its name", required = true)
          String roof,
      @Opt(name = "inside", help = "diameter of a round one", fallback = "width and depth")
          Length inside,
      @Opt(name = "width", help = "of a flat one", fallback = "a round one") Length width,
      @Opt(name = "depth", help = "of a flat one", fallback = "a round one") Length depth) {
    boolean isRound = inside != null && width == null && depth == null;
    boolean isFlat = inside == null && width != null && depth != null;
    if (!isRound && !isFlat) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "a downspout is round with `inside:`, or flat with `width:` and `depth:`; give one or the"
              + " other");
    }
    Area section =
        isRound
            ? Area.squareMetres(Math.PI / 4 * inside.metres() * inside.metres())
            : width.by(depth);
    if (section.squareFeet() * 144 < 0.5 || section.squareFeet() * 144 > 150) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a downspout has 0.5 to 150 sq in (3 to 970 cm²) inside, got %.1f sq in",
              section.squareFeet() * 144));
    }
    in.draft().attributes().add(Downspout.KEY, new Downspout(at, roof, section), in.place());
  }

  @Verb(
      help = "The half-round gutter along a roof, checked against a cloudburst.",
      example = "gutter 'south slope', width: 5.inch, fall: 0.01")
  public static void gutter(
      PlanScope in,
      @Arg(name = "roof", help = "the roof that it drains, by its name") String roof,
      @Opt(
              name = "width",
              help = "across the top, inside, 3 in (76 mm) to 10 in (254 mm)",
              required = true)
          Length width,
      @Opt(
              name = "fall",
              help = "towards the downspout, height over length, 0.001 to 0.05",
              fallback = "0.0052, 1/16 in a foot")
          Number fall) {
    if (width.compareTo(GutterFlow.NARROWEST) < 0 || width.compareTo(GutterFlow.WIDEST) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a gutter is 3 in (76 mm) to 10 in (254 mm) wide, got %s; check the" + " unit",
              Say.both(Measure.RAIN, width)));
    }
    double slope = fall == null ? GutterFlow.USUAL_FALL : fall.doubleValue();
    if (!(slope >= LEAST_FALL && slope <= MOST_FALL)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a gutter falls 0.001 to 0.05, height over length, got "
              + fall
              + "; 1/16 in a foot is 0.0052");
    }
    Making.once(in, Gutter.KEY, g -> g.roof().equals(roof), "the gutter of '" + roof + "'");
    in.draft().attributes().add(Gutter.KEY, new Gutter(roof, width, slope), in.place());
  }

  @Verb(
      help = "Gives the share of the rain that a roof sheds, where you know better than the table.",
      example = "roofShare 'south slope', 0.85, source: 'measured, 2024'")
  public static void roofShare(
      PlanScope in,
      @Arg(name = "roof", help = "the roof, by its name") String roof,
      @Arg(name = "share", help = "above 0 and up to 1") Number share,
      @Opt(name = "source", help = "who says so", required = true) String source) {
    double value = share.doubleValue();
    if (!(value > 0 && value <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a roof sheds a share above 0 and up to 1, got " + share);
    }
    if (in.draft().attributes().all(OwnShare.KEY).stream()
        .anyMatch(e -> e.value().roof().equals(roof))) {
      throw new PlanException(
          ProblemCode.DUPLICATE, "the share of the roof '" + roof + "' is already given");
    }
    in.draft()
        .attributes()
        .add(OwnShare.KEY, new OwnShare(roof, value, Source.plan(source)), in.place());
  }
}
