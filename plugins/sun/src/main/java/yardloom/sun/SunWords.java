package yardloom.sun;

import java.util.Locale;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.YearDays;
import yardloom.kernel.words.BedScope;
import yardloom.kernel.words.Handle;
import yardloom.kernel.words.PlanScope;
import yardloom.kernel.words.TreeScope;
import yardloom.sun.light.LightSchemes;
import yardloom.sun.yard.SunKeys;

/** The words that the sun plugin adds to the plan, to beds and to trees. */
public final class SunWords {
  private static final Length SMALLEST_CELL = Length.millimetres(50);
  private static final Length LARGEST_CELL = Length.metres(5);
  private static final Length HIGHEST_BED = Length.metres(3);

  private SunWords() {}

  @Verb(help = "Sets the size of the cells in which sun is worked out.", example = "sunGrid 2.ft")
  public static void sunGrid(
      PlanScope in, @Arg(name = "cell", help = "side of a cell, 5 cm to 5 m") Length cell) {
    if (cell.compareTo(SMALLEST_CELL) < 0 || cell.compareTo(LARGEST_CELL) > 0) {
      throw problem(
          in.place(),
          "the cells of sunGrid must be 0.05 m (0.16 ft) to 5 m (16.4 ft) wide, got " + cell);
    }
    in.draft().attributes().add(SunKeys.CELL, cell, in.place());
  }

  @Verb(
      help = "Adds a point of the distant skyline: hills, woods, buildings beyond the plan.",
      example = "skyline 90.deg, 8.deg")
  public static void skyline(
      PlanScope in,
      @Arg(name = "bearing", help = "direction, clockwise from true north") Angle bearing,
      @Arg(name = "rise", help = "how high it stands above the level, -10° to 80°") Angle rise) {
    if (bearing.degrees() < 0 || bearing.degrees() >= 360) {
      throw problem(
          in.place(),
          "a bearing on the skyline must be from 0° to below 360°, got " + degrees(bearing));
    }
    if (rise.degrees() < -10 || rise.degrees() > 80) {
      throw problem(
          in.place(), "the skyline's rise must be from -10° to 80°, got " + degrees(rise));
    }
    in.draft().attributes().add(SunKeys.SKYLINE, new SunKeys.Skyline(bearing, rise), in.place());
  }

  @Verb(help = "Chooses the names and limits for amounts of sun.", example = "lightScheme 'hot'")
  public static void lightScheme(
      PlanScope in,
      @Arg(
              name = "name",
              help = "temperate, hot, six four, six three or four way; the sheet prints its limits")
          String name) {
    in.draft().attributes().add(SunKeys.SCHEME, LightSchemes.named(name).name(), in.place());
  }

  @Verb(
      help = "Sets the days over which the sun of beds is judged.",
      example = "sunSeason '04-15', '10-15'")
  public static void sunSeason(
      PlanScope in,
      @Arg(name = "from", help = "first day, month-day") String from,
      @Arg(name = "to", help = "last day, month-day; may lie after the turn of the year")
          String to) {
    in.draft().attributes().add(SunKeys.SEASON, dates(in.place(), from, to), in.place());
  }

  @Verb(
      help = "Says that the ground falls evenly over the whole plan.",
      example = "groundFall 1.ft, per: 20.ft, towards: 180.deg")
  public static void groundFall(
      PlanScope in,
      @Arg(name = "drop", help = "how much lower it lies") Length drop,
      @Opt(name = "per", help = "over what distance, level measure", required = true) Length per,
      @Opt(
              name = "towards",
              help = "bearing of the fall, clockwise from true north",
              required = true)
          Angle towards) {
    if (per.metres() <= 0 || drop.metres() < 0 || drop.ratioTo(per) > 1) {
      throw problem(
          in.place(),
          "groundFall takes a drop of 0 to 1 times its distance, got " + drop + " per " + per);
    }
    in.draft()
        .attributes()
        .add(SunKeys.FALL, new SunKeys.Fall(drop.ratioTo(per), towards), in.place());
  }

  @Verb(
      help = "Chooses how far the planned plants have grown when shade is worked out.",
      example = "shadeStage 'year 5'")
  public static void shadeStage(
      PlanScope in,
      @Arg(name = "stage", help = "state of growth", choices = Stage.class) String stage) {
    Stage known = Choices.parse(Stage.class, stage);
    in.draft().attributes().add(SunKeys.STAGE, Choices.text(known), in.place());
  }

  @Verb(
      help = "Looks for the sunniest free ground of some size.",
      example = "bestSpot 200.sqft, crop: 'tomato', hours: 8")
  public static void bestSpot(
      PlanScope in,
      @Arg(name = "area", help = "how much ground is wanted") Area area,
      @Opt(name = "crop", help = "what it is for, for the table", fallback = "any crop")
          String crop,
      @Opt(
              name = "hours",
              help = "mean direct sun a day that it should have in the season",
              fallback = "what the scheme calls full sun")
          Number hours) {
    if (area.squareMetres() <= 0) {
      throw problem(in.place(), "bestSpot looks for an area of more than zero, got " + area);
    }
    if (hours != null && !(hours.doubleValue() > 0 && hours.doubleValue() <= 24)) {
      throw problem(in.place(), "hours of sun must be above 0 and at most 24, got " + hours);
    }
    in.draft()
        .attributes()
        .add(
            SunKeys.BEST_SPOT,
            new SunKeys.BestSpot(
                area, crop == null ? "any crop" : crop, hours == null ? 0 : hours.doubleValue()),
            in.place());
  }

  @Verb(
      help = "Says that an element is new, so that its shade on neighbours is looked at.",
      example = "proposed shed")
  public static void proposed(
      PlanScope in,
      @Arg(name = "element", help = "what a word that made it returned") Handle made) {
    in.draft().attributes().add(SunKeys.PROPOSED, made.id(), in.place());
  }

  @Verb(
      help = "Chooses the point for which the sun-path diagram is drawn.",
      example = "sunPath point(20.ft, 30.ft)")
  public static void sunPath(
      PlanScope in, @Arg(name = "at", help = "a point of the plan") Point at) {
    in.draft().attributes().add(SunKeys.SUN_POINT, at, in.place());
  }

  @Verb(
      help = "Says how high the soil of a bed lies above the ground around it.",
      example = "soilTop 18.inch")
  public static void soilTop(
      BedScope in, @Arg(name = "height", help = "above the ground, 0 to 3 m") Length height) {
    if (height.metres() < 0 || height.compareTo(HIGHEST_BED) > 0) {
      throw problem(
          in.place(), "soilTop must be from 0 to 3 m (9.8 ft) above the ground, got " + height);
    }
    in.element().attributes().add(SunKeys.BED_HEIGHT, height, in.place());
  }

  @Verb(help = "Says when a tree bears leaves.", example = "leafOn '04-15', '11-01'")
  public static void leafOn(
      TreeScope in,
      @Arg(name = "from", help = "first day in leaf, month-day") String from,
      @Arg(name = "to", help = "last day in leaf, month-day") String to) {
    in.element().attributes().add(SunKeys.LEAVES, dates(in.place(), from, to), in.place());
  }

  @Verb(
      help = "Says how much direct light passes a tree's crown, and what form it has.",
      example = "crown inLeaf: 0.15, bare: 0.6, form: 'cylinder'")
  public static void crown(
      TreeScope in,
      @Opt(name = "inLeaf", help = "share that passes in leaf, 0 to 1", fallback = "0.2")
          Number inLeaf,
      @Opt(name = "bare", help = "share that passes without leaves, 0 to 1", fallback = "0.65")
          Number bare,
      @Opt(name = "form", help = "its form", fallback = "ellipsoid", choices = CrownForm.class)
          String form) {
    in.element()
        .attributes()
        .add(
            SunKeys.CROWN,
            new SunKeys.Crown(
                share(in.place(), "inLeaf", inLeaf, SunKeys.Crown.USUAL.inLeaf()),
                share(in.place(), "bare", bare, SunKeys.Crown.USUAL.bare()),
                Choices.parse(CrownForm.class, form, CrownForm.ELLIPSOID) == CrownForm.CYLINDER),
            in.place());
  }

  /** The forms of crowns. */
  public enum CrownForm {
    ELLIPSOID,
    CYLINDER
  }

  private static double share(SourceRef place, String what, Number value, double usual) {
    double share = value == null ? usual : value.doubleValue();
    if (!(share >= 0 && share <= 1)) {
      throw problem(place, what + " is a share from 0 (no light) to 1 (all), got " + value);
    }
    return share;
  }

  private static SunKeys.Dates dates(SourceRef place, String from, String to) {
    return new SunKeys.Dates(YearDays.read(place, from), YearDays.read(place, to));
  }

  private static PlanException problem(SourceRef place, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, place, message);
  }

  private static String degrees(Angle angle) {
    return String.format(Locale.ROOT, "%.1f°", angle.degrees());
  }
}
