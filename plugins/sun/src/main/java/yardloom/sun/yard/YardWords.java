package yardloom.sun.yard;

import java.util.Locale;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.sun.position.Dates;

/** The words that say how sun is worked out: cells, skyline, season, fall, growth, soil of beds. */
public final class YardWords {
  private static final Length SMALLEST_CELL = Length.millimetres(50);
  private static final Length LARGEST_CELL = Length.metres(5);
  private static final Length HIGHEST_BED = Length.metres(3);

  public static final AttributeKey<Length> CELL = new AttributeKey<>("sun.cell", Length.class);

  public static final AttributeKey<Skyline> SKYLINE =
      new AttributeKey<>("sun.skyline", Skyline.class);

  public static final AttributeKey<Dates> SEASON = new AttributeKey<>("sun.season", Dates.class);

  public static final AttributeKey<Fall> FALL = new AttributeKey<>("sun.fall", Fall.class);

  public static final AttributeKey<String> STAGE = new AttributeKey<>("sun.stage", String.class);

  public static final AttributeKey<Length> BED_HEIGHT =
      new AttributeKey<>("sun.bed-height", Length.class);

  private YardWords() {}

  /** One point of the distant horizon. */
  public record Skyline(Angle bearing, Angle rise) {}

  /** Falling ground: metres down per metre, and towards which bearing. */
  public record Fall(double slope, Angle towards) {}

  @Verb(help = "Sets the size of the cells in which sun is worked out.", example = "sunGrid 2.ft")
  public static void sunGrid(
      PlanScope in, @Arg(name = "cell", help = "side of a cell, 5 cm to 5 m") Length cell) {
    if (cell.compareTo(SMALLEST_CELL) < 0 || cell.compareTo(LARGEST_CELL) > 0) {
      throw problem(
          in.place(),
          "the cells of sunGrid must be 0.05 m (0.16 ft) to 5 m (16.4 ft) wide, got " + cell);
    }
    in.draft().attributes().add(CELL, cell, in.place());
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
    in.draft().attributes().add(SKYLINE, new Skyline(bearing, rise), in.place());
  }

  @Verb(
      help = "Sets the days over which the sun of beds is judged.",
      example = "sunSeason '04-15', '10-15'")
  public static void sunSeason(
      PlanScope in,
      @Arg(name = "from", help = "first day, month-day") String from,
      @Arg(name = "to", help = "last day, month-day; may lie after the turn of the year")
          String to) {
    in.draft().attributes().add(SEASON, Dates.read(in.place(), from, to), in.place());
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
    in.draft().attributes().add(FALL, new Fall(drop.ratioTo(per), towards), in.place());
  }

  @Verb(
      help = "Chooses how far the planned plants have grown when shade is worked out.",
      example = "shadeStage 'year 5'")
  public static void shadeStage(
      PlanScope in,
      @Arg(name = "stage", help = "state of growth", choices = Stage.class) String stage) {
    Stage known = Choices.parse(Stage.class, stage);
    in.draft().attributes().add(STAGE, Choices.text(known), in.place());
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
    in.element().attributes().add(BED_HEIGHT, height, in.place());
  }

  private static PlanException problem(SourceRef place, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, place, message);
  }

  private static String degrees(Angle angle) {
    return String.format(Locale.ROOT, "%.1f°", angle.degrees());
  }
}
