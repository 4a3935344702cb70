package yardloom.site.path;

import java.util.Optional;
import java.util.function.Consumer;
import yardloom.facts.built.Gate;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PathScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for paths, what is asked of them, and the gates where ways start. */
public final class PathWords {
  /** What is asked of paths of one use; what is empty stays as it is. */
  public record PathAsked(
      PathUse use,
      Optional<Length> least,
      Optional<Length> advised,
      Optional<Length> turning,
      Optional<Length> passing,
      Optional<Length> passingEvery,
      String rule) {
    public static final AttributeKey<PathAsked> KEY =
        new AttributeKey<>("site.path-standard", PathAsked.class);
  }

  /** A barrow of 27 in passes with elbows; common practice. */
  private static final Length GATE = Length.inches(48);

  private PathWords() {}

  @Verb(
      help = "A path along a line.",
      example = "path('main', line([point(30.ft, 70.ft), point(30.ft, 115.ft)]), use: 'barrow')")
  public static Handle path(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "its middle line; a line that ends where it starts is a loop")
          Line line,
      @Opt(
              name = "width",
              help = "its width",
              fallback = "24 in on foot, 36 in for a barrow, 48 in for a wheelchair")
          Length width,
      @Opt(name = "use", help = "who or what uses it", fallback = "foot", choices = PathUse.class)
          String use,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be laid",
              fallback = "false")
          Boolean standing,
      Consumer<PathScope> block) {
    ElementId id = Making.id(ElementKind.PATH, name);
    PathUse by = Choices.parse(PathUse.class, use, PathUse.FOOT);
    Length wide =
        Limits.positive(
            "the width of a path", Limits.or(width, PathWidths.usual(by)), Limits.PATH_WIDTH);
    Shape ground = PathStrip.centred(line, wide);
    ElementDraft element = Making.add(in, id, c -> new Element.Path(c, line, ground, wide, by));
    Making.standing(element, standing);
    Making.read(block, PathScope::new, in, element);
    return Handle.along(id, line, ground);
  }

  @Verb(
      help = "Where ways into the yard start; every bed is checked for a way from here.",
      example = "gate('side gate', point(5.ft, 30.ft), width: 4.ft)")
  public static Point gate(
      PlanScope in,
      @Arg(name = "name", help = "how tables call it") String name,
      @Arg(name = "at", help = "where it is, on or beside a path or hard surface") Point at,
      @Opt(name = "width", help = "width of its opening", fallback = "48 in (1.22 m)") Length width,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be hung",
              fallback = "as the fence that it is in")
          Boolean standing) {
    Length wide = Limits.positive("the width of a gate", Limits.or(width, GATE), Limits.PATH_WIDTH);
    Gate gate = new Gate(Making.name("gate", name), at, wide, Optional.ofNullable(standing));
    in.draft().attributes().add(Gate.KEY, gate, in.place());
    return at;
  }

  @Verb(
      help =
          "What a code or a regional file asks of paths of one use, in place of the usual values.",
      example =
          "pathRule('accessible', least: 48.inch, turning: 60.inch, passing: 60.inch,"
              + " passingEvery: 200.ft, rule: 'access code of the city')")
  public static void pathRule(
      PlanScope in,
      @Arg(name = "use", help = "whose paths", choices = PathUse.class) String use,
      @Opt(name = "least", help = "least width", fallback = "as usual") Length least,
      @Opt(name = "advised", help = "width below which a note is made", fallback = "as usual")
          Length advised,
      @Opt(
              name = "turning",
              help = "diameter of the circle to turn in at the end of a path",
              fallback = "as usual")
          Length turning,
      @Opt(name = "passing", help = "width at which two pass each other", fallback = "as usual")
          Length passing,
      @Opt(
              name = "passingEvery",
              help = "greatest way between two places to pass",
              fallback = "as usual")
          Length passingEvery,
      @Opt(name = "rule", help = "who says so", required = true) String rule) {
    PathUse by = Choices.parse(PathUse.class, use);
    Making.once(in, PathAsked.KEY, p -> p.use() == by, "the rule for " + use + " paths");
    in.draft()
        .attributes()
        .add(
            PathAsked.KEY,
            new PathAsked(
                by,
                width("least", least),
                width("advised", advised),
                width("turning", turning),
                width("passing", passing),
                Optional.ofNullable(passingEvery)
                    .map(l -> Limits.positive("`passingEvery:`", l, Limits.REACH)),
                rule),
            in.place());
  }

  private static Optional<Length> width(String name, Length value) {
    return Optional.ofNullable(value)
        .map(l -> Limits.positive("`" + name + ":`", l, Limits.PATH_WIDTH));
  }
}
