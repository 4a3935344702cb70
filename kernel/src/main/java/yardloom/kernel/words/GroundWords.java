package yardloom.kernel.words;

import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for what lies in or on the ground and limits what may be done there. */
public final class GroundWords {
  /** Common practice for digging by hand beside a marked line; states differ (18 to 36 in). */
  private static final Length UTILITY_CLEARANCE = Length.inches(24);

  private GroundWords() {}

  @Verb(
      help = "A place where water can be taken.",
      example = "tap('back tap', point(45.ft, 70.ft), source: 'mains')")
  public static Handle tap(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "at", help = "where it is") Point at,
      @Opt(name = "source", help = "what feeds it", fallback = "mains") String source) {
    ElementId id = Making.id(ElementKind.WATER_POINT, name);
    Making.add(in, id, c -> new Element.WaterPoint(c, at, Limits.or(source, "mains")));
    return new Handle(id, Shape.EMPTY);
  }

  @Verb(
      help =
          "A buried or overhead line. Have buried lines marked (call 811 in the US) before digging.",
      example = "utility('gas', line([point(30.ft, 0.ft), point(30.ft, 40.ft)]), carries: 'gas')")
  public static Handle utility(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "where it runs as far as is known") Line line,
      @Opt(name = "carries", help = "what it carries", required = true) String carries,
      @Opt(
              name = "clearance",
              help = "how far digging keeps away from it, to each side",
              fallback = "24 in (610 mm), common practice; the local rule decides")
          Length clearance) {
    ElementId id = Making.id(ElementKind.UTILITY, name);
    Length away =
        Limits.positive("the clearance", Limits.or(clearance, UTILITY_CLEARANCE), Limits.CLEARANCE);
    Shape ground = PathStrip.centred(line, away.times(2));
    Making.add(in, id, c -> new Element.Utility(c, line, ground, carries, away));
    return Handle.along(id, line, ground);
  }

  @Verb(
      help = "Ground that must not be built or planted on.",
      example = "keepOut('septic field', rect(5.ft, 80.ft, 20.ft, 30.ft), reason: 'leach field')")
  public static Handle keepOut(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground") Shape shape,
      @Opt(name = "reason", help = "why", required = true) String reason) {
    ElementId id = Making.id(ElementKind.KEEP_OUT, name);
    BuiltWords.requireGround(id, shape);
    Making.add(in, id, c -> new Element.KeepOut(c, shape, reason));
    return new Handle(id, shape);
  }

  @Verb(
      help =
          "The drain field of a septic system: nothing stands on it, and trees and food keep off.",
      example = "drainField('drain field', rect(5.ft, 80.ft, 20.ft, 30.ft), beds: 10.ft)")
  public static Handle drainField(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground") Shape shape,
      @Opt(
              name = "beds",
              help = "how far beds of annuals keep away from it",
              fallback = "10 ft; the health department decides")
          Length beds) {
    ElementId id = Making.id(ElementKind.KEEP_OUT, name);
    BuiltWords.requireGround(id, shape);
    Length away =
        Limits.positive(
            "the distance of beds", Limits.or(beds, DrainField.USUAL), Limits.CLEARANCE);
    Making.add(in, id, c -> new Element.KeepOut(c, shape, "drain field"))
        .attributes()
        .add(DrainField.KEY, new DrainField(away), in.place());
    return new Handle(id, shape);
  }

  @Verb(
      help = "Where ways into the yard start; every bed is checked for a way from here.",
      example = "gate('side gate', point(5.ft, 30.ft))")
  public static Point gate(
      PlanScope in,
      @Arg(name = "name", help = "how tables call it") String name,
      @Arg(name = "at", help = "where it is, on or beside a path or hard surface") Point at) {
    in.draft().attributes().add(Gate.KEY, new Gate(Making.name("gate", name), at), in.place());
    return at;
  }
}
