package yardloom.site.survey;

import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.survey.Bearings;
import yardloom.kernel.survey.CallsTable;
import yardloom.kernel.survey.Curve;
import yardloom.kernel.survey.CurveGiven;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.survey.DeedReader;
import yardloom.kernel.survey.SurveyFoot;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for a lot described by bearings and distances. */
public final class DeedWords {
  private DeedWords() {}

  /** Which north the bearings are from. */
  enum North {
    TRUE,
    GRID,
    MAGNETIC
  }

  /** What is done with a misclosure. */
  enum Adjust {
    COMPASS,
    NONE
  }

  /** The hand to which a curve turns. */
  enum Turn {
    LEFT,
    RIGHT
  }

  @Verb(
      help = "The outline of a lot by the calls of its deed, for `lotFrom`.",
      example =
          "def parcel = deed('Lot 7', start: point(0.ft, 0.ft)) { course('N 26-10-00 E', 285.10.ft) ;"
              + " course('S 75-25-00 E', 610.45.ft) ; toStart() }")
  public static Deed deed(
      PlanScope in,
      @Arg(name = "name", help = "how tables call the description") String name,
      @Opt(name = "start", help = "the point of beginning on the plan", fallback = "the origin")
          Point start,
      @Opt(
              name = "north",
              help = "the north that the bearings are from",
              fallback = "true",
              choices = North.class)
          String north,
      @Opt(
              name = "declination",
              help = "of magnetic north from true north at the deed's date, east positive",
              fallback = "required with magnetic bearings")
          Angle declination,
      @Opt(
              name = "convergence",
              help = "of grid north from true north, east positive",
              fallback = "0")
          Angle convergence,
      @Opt(
              name = "planNorth",
              help = "bearing of true north on the plan, as given to `site`",
              fallback = "0 degrees: north is up")
          Angle planNorth,
      @Opt(
              name = "adjust",
              help = "how a misclosure is shared out",
              fallback = "compass",
              choices = Adjust.class)
          String adjust,
      Consumer<DeedScope> block) {
    Making.name("deed", name);
    North basis = Choices.parse(North.class, north, North.TRUE);
    Angle toTrue = toTrue(in, basis, declination, convergence);
    DeedReader reader = new DeedReader();
    if (block != null) {
      block.accept(new DeedScope(reader, in.place()));
    }
    boolean share = Choices.parse(Adjust.class, adjust, Adjust.COMPASS) == Adjust.COMPASS;
    Angle turn = toTrue.plus(Limits.or(planNorth, Angle.ZERO));
    Deed deed = reader.finish(Limits.or(start, Point.metres(0, 0)), turn, share);
    String text = Choices.text(basis) + " north, turned by " + Bearings.dms(turn);
    in.draft()
        .attributes()
        .add(SurveyNotes.DEEDS, new SurveyNotes.Described(name, deed, text), in.place());
    return deed;
  }

  private static Angle toTrue(PlanScope in, North basis, Angle declination, Angle convergence) {
    if (basis == North.MAGNETIC && declination == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "magnetic bearings need `declination:`, the declination at the deed's date, east positive");
    }
    if (basis != North.MAGNETIC && declination != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`declination:` goes with `north: 'magnetic'`; " + Choices.text(basis) + " was given");
    }
    if (basis != North.GRID && convergence != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`convergence:` goes with `north: 'grid'`; " + Choices.text(basis) + " was given");
    }
    return basis == North.MAGNETIC ? declination : Limits.or(convergence, Angle.ZERO);
  }

  @Verb(
      help = "A straight call: bearing and distance.",
      example = "course('N 26-10-00 E', 285.10.ft, name: 'west')")
  public static void course(
      DeedScope in,
      @Arg(name = "bearing", help = "quadrant bearing, cardinal word, or azimuth as az 306-54-00")
          String bearing,
      @Arg(name = "distance", help = "its length") Length distance,
      @Opt(name = "name", help = "how the lot calls this side", fallback = "side 1, side 2 …")
          String name) {
    in.reader().straight(name, in.place(), Bearings.parse(bearing), distance);
  }

  @Verb(
      help = "A curve, by any two of radius, delta, length and chord; further ones are checked.",
      example =
          "curve(radius: 475.ft, delta: '28-49-34', chordBearing: 'N 30-35-13 W', turn: 'left')")
  public static void curve(
      DeedScope in,
      @Opt(name = "radius", help = "radius", fallback = "worked out") Length radius,
      @Opt(
              name = "delta",
              help = "central angle, as degrees-minutes-seconds",
              fallback = "worked out")
          String delta,
      @Opt(name = "length", help = "length of the curve", fallback = "worked out") Length length,
      @Opt(name = "chord", help = "length of its long chord", fallback = "worked out") Length chord,
      @Opt(name = "chordBearing", help = "bearing of its long chord", fallback = "from the tangent")
          String chordBearing,
      @Opt(
              name = "tangent",
              help = "whether it starts in the direction of the call before",
              fallback = "false")
          Boolean tangent,
      @Opt(name = "turn", help = "the hand it turns to", required = true, choices = Turn.class)
          String turn,
      @Opt(
              name = "definition",
              help = "how its length counts: along the arc, or along 100 ft chords (railroads)",
              fallback = "arc",
              choices = Curve.Definition.class)
          String definition,
      @Opt(name = "name", help = "how the lot calls this side", fallback = "side 1, side 2 …")
          String name) {
    CurveGiven given =
        new CurveGiven(
            Optional.ofNullable(radius),
            Optional.ofNullable(delta).map(d -> Bearings.parse("az " + d)),
            Optional.ofNullable(length),
            Optional.ofNullable(chord),
            Choices.parse(Curve.Definition.class, definition, Curve.Definition.ARC));
    in.reader()
        .curve(
            name,
            in.place(),
            given,
            Choices.parse(Turn.class, turn) == Turn.LEFT,
            Optional.ofNullable(chordBearing).map(Bearings::parse),
            Limits.or(tangent, false));
  }

  @Verb(
      help =
          "The call back to the point of beginning, worked out from the others; it checks nothing.",
      example = "toStart(name: 'west')")
  public static void toStart(
      DeedScope in,
      @Opt(name = "name", help = "how the lot calls this side", fallback = "side 1, side 2 …")
          String name) {
    in.reader().toStart(name, in.place());
  }

  @Verb(
      help =
          "All calls as comma-separated text with the columns bearing, distance, radius, delta,"
              + " length, chord, chord bearing, turn, definition, tangent, name; from a file as"
              + " calls(fileText('lot-12.csv')). Messages name the line of the table.",
      example = "calls('''bearing,distance\nN 26-10-00 E,285.10 ft\nto start,''')")
  public static void calls(
      DeedScope in,
      @Arg(name = "table", help = "the text; its first row names the columns") String table,
      @Opt(
              name = "foot",
              help = "the foot that the text means",
              fallback = "international",
              choices = SurveyFoot.class)
          String foot) {
    CallsTable.read(
        table,
        Choices.parse(SurveyFoot.class, foot, SurveyFoot.INTERNATIONAL),
        in.place(),
        in.reader());
  }
}
