package yardloom.site.built;

import java.util.function.Consumer;
import yardloom.facts.built.Pad;
import yardloom.facts.mulch.TruckLane;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.RoofForm;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BuildingScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/**
 * Words for what is built: houses, sheds, hard surfaces, roofs; lines that bar the way are {@link
 * BarrierWords}.
 */
public final class BuiltWords {
  /** Common practice for digging by hand beside a marked line; states differ (18 to 36 in). */
  private static final Length UTILITY_CLEARANCE = Length.inches(24);

  /** Common practice under sheds. */
  private static final Length BASE = Length.inches(4);

  private static final Length LANE_WIDTH = Length.feet(10);

  private BuiltWords() {}

  @Verb(
      help = "A house, on the lot or a neighbour's outside it.",
      example = "building('house', rect(15.ft, 30.ft, 30.ft, 40.ft), eaves: 10.ft, ridge: 18.ft)")
  public static Handle building(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the footprint of its walls") Shape shape,
      @Opt(name = "eaves", help = "height of the eaves above ground", required = true) Length eaves,
      @Opt(
              name = "ridge",
              help = "height of the highest part of the roof",
              fallback = "the height of the eaves: a flat roof")
          Length ridge,
      @Opt(name = "overhang", help = "how far the eaves stand out beyond the walls", fallback = "0")
          Length overhang,
      @Opt(
              name = "roof",
              help = "how the roof rises",
              fallback = "gable if the ridge is higher than the eaves, flat otherwise",
              choices = RoofForm.class)
          String roof,
      @Opt(name = "neighbour", help = "whether it stands outside the lot", fallback = "false")
          Boolean neighbour,
      Consumer<BuildingScope> block) {
    ElementId id = Making.id(ElementKind.BUILDING, name);
    Length low = Limits.positive("the height of the eaves", eaves, Limits.BUILT_HEIGHT);
    Length high =
        Limits.positive("the height of the ridge", Limits.or(ridge, low), Limits.BUILT_HEIGHT);
    RoofForm form =
        Choices.parse(
            RoofForm.class, roof, high.compareTo(low) > 0 ? RoofForm.GABLE : RoofForm.FLAT);
    requireRoof(id, low, high, form);
    Length out =
        Limits.zeroOrMore("the overhang", Limits.or(overhang, Length.ZERO), Limits.OVERHANG);
    Making.requireGround(id, shape);
    ElementDraft element =
        Making.add(
            in,
            id,
            c -> new Element.Building(c, shape, low, high, out, form, Limits.or(neighbour, false)));
    Making.read(block, BuildingScope::new, in, element);
    return new Handle(id, shape);
  }

  private static void requireRoof(ElementId id, Length eaves, Length ridge, RoofForm form) {
    if (ridge.compareTo(eaves) < 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          id
              + ": the ridge at "
              + Limits.show(ridge)
              + " is lower than the eaves at "
              + Limits.show(eaves)
              + "; both are heights above ground");
    }
    if ((form == RoofForm.FLAT) != ridge.equals(eaves)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          id
              + ": a "
              + Choices.text(form)
              + " roof "
              + (form == RoofForm.FLAT ? "has its ridge at" : "needs its ridge above")
              + " the height of the eaves, "
              + Limits.show(eaves));
    }
  }

  @Verb(
      help = "A shed, pergola, deck or other built thing.",
      example = "structure('shed', rect(2.ft, 100.ft, 8.ft, 10.ft), height: 8.ft)")
  public static Handle structure(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground it covers") Shape shape,
      @Opt(name = "height", help = "its height above ground", required = true) Length height,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be built",
              fallback = "true")
          Boolean standing,
      @Opt(
              name = "base",
              help = "depth of compacted gravel under what is to be built; 0 for none",
              fallback = "4 in (102 mm)")
          Length base) {
    ElementId id = Making.id(ElementKind.STRUCTURE, name);
    Length tall = Limits.zeroOrMore("the height", height, Limits.BUILT_HEIGHT);
    Length pad = Limits.zeroOrMore("the base", Limits.or(base, BASE), Limits.THICKNESS);
    Making.requireGround(id, shape);
    ElementDraft element = Making.add(in, id, c -> new Element.Structure(c, shape, tall));
    element.attributes().add(Pad.KEY, new Pad(pad), in.place());
    Making.standing(element, standing);
    return new Handle(id, shape);
  }

  @Verb(
      help = "A drive, terrace or other hard surface.",
      example = "paving('drive', rect(48.ft, 0.ft, 10.ft, 40.ft), surface: 'concrete')")
  public static Handle paving(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground it covers") Shape shape,
      @Opt(name = "surface", help = "what it is made of", fallback = "hard surface") String surface,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be laid",
              fallback = "true")
          Boolean standing) {
    ElementId id = Making.id(ElementKind.PAVING, name);
    Making.requireGround(id, shape);
    String hard = Limits.or(surface, "hard surface");
    Making.standing(Making.add(in, id, c -> new Element.Paving(c, shape, hard)), standing);
    return new Handle(id, shape);
  }

  @Verb(
      help =
          "A lane that trucks drive on, hard enough for them: a new one has a base as for cars. A drop"
              + " zone that it touches is reached by it, unless that says another `way`.",
      example =
          "truckLane('lane', line([point(70.ft, 0.ft), point(70.ft, 30.ft)]), width: 11.ft,"
              + " standing: false)")
  public static Handle truckLane(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "its middle, from the street inward") Line line,
      @Opt(name = "width", help = "how wide it is", fallback = "10 ft (3.05 m)") Length width,
      @Opt(name = "surface", help = "what it is made of", fallback = "gravel") String surface,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be laid",
              fallback = "true")
          Boolean standing) {
    ElementId id = Making.id(ElementKind.PAVING, name);
    Length wide =
        Limits.positive("the width of a lane", Limits.or(width, LANE_WIDTH), Limits.PATH_WIDTH);
    Shape ground = PathStrip.centred(line, wide);
    String hard = Limits.or(surface, "gravel");
    ElementDraft element = Making.add(in, id, c -> new Element.Paving(c, ground, hard));
    element.attributes().add(TruckLane.KEY, new TruckLane(line, wide), in.place());
    Making.standing(element, standing);
    return Handle.along(id, line, ground);
  }

  @Verb(
      help = "A roof surface that drains to one place; its size in plan, not along the slope.",
      example = "roof('south roof', house.shape, surface: 'asphalt shingle')")
  public static Handle roof(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the catchment seen from above") Shape shape,
      @Opt(name = "surface", help = "what it is covered with", required = true) String surface) {
    ElementId id = Making.id(ElementKind.ROOF, name);
    Making.requireGround(id, shape);
    Making.add(in, id, c -> new Element.Roof(c, shape, surface));
    return new Handle(id, shape);
  }

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
      help = "A buried or overhead line. Have buried lines marked before digging.",
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
}
