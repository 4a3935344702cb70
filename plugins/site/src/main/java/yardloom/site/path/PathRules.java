package yardloom.site.path;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.built.Gate;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.site.element.Covering;
import yardloom.site.element.Show;

/** Whether paths are wide enough for who uses them, to walk, to pass each other and to turn. */
public final class PathRules {
  private static final Length SLACK = Length.millimetres(5);
  private static final Length STEP = Length.metres(0.25);
  private static final double EPSILON_M = 1e-9;

  /** Somebody backs a barrow out of a blind path this long; common practice, no source. */
  private static final Length BACKED_OUT = Length.feet(20);

  private static final Length BESIDE_GATE = Length.metres(1);

  private static final String GOOD_PRACTICE =
      "; accessibility rules bind public places and are good practice at home";

  /** Less is the width of a drawn line, not a way. */
  private static final Area TOUCHING = Area.squareMetres(0.05);

  private static final Source THROUGH = Source.commonPractice("ways run round buildings");

  private PathRules() {}

  /** Ways that run through a building: a slip of a coordinate, most likely. */
  public static List<Finding> throughBuilding(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      for (Element.Building b : plan.all(Element.Building.class)) {
        Shape inside = path.shape().and(b.shape());
        if (inside.area().compareTo(TOUCHING) > 0) {
          findings.add(
              Finding.of(
                      "site.path-building",
                      Severity.WARNING,
                      Show.area(plan, inside.area()) + " of it lie in " + b.id(),
                      "lead it round, or check the coordinates",
                      THROUGH)
                  .about(path.id(), path.place())
                  .marking(inside));
        }
      }
    }
    return findings;
  }

  public static List<Finding> width(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      PathStandard standard = PathStandard.of(plan, path.use());
      if (narrower(plan, path, standard.least().value())) {
        findings.add(narrow(plan, path, standard.least(), Severity.WARNING, "use needs at least "));
      } else if (standard.advised().filter(a -> narrower(plan, path, a.value())).isPresent()) {
        findings.add(
            narrow(
                plan, path, standard.advised().get(), Severity.NOTE, "use outdoors is advised "));
      }
    }
    return findings;
  }

  /** As printed: nobody can widen a path of 76 cm to the 76 cm that it needs. */
  private static boolean narrower(Plan plan, Element.Path path, Length than) {
    return path.width().metres() < than.metres() - EPSILON_M
        && !Show.small(plan, path.width()).equals(Show.small(plan, than));
  }

  private static Finding narrow(
      Plan plan, Element.Path path, Cited<Length> limit, Severity severity, String asks) {
    return Finding.of(
            "site.path-width",
            severity,
            Show.small(plan, path.width())
                + " wide; "
                + Choices.text(path.use())
                + " "
                + asks
                + Show.small(plan, limit.value()),
            path.use() == PathUse.ACCESSIBLE
                ? "widen it" + GOOD_PRACTICE
                : "widen it, or say that it is for walking only",
            limit.source())
        .about(path.id(), path.place());
  }

  public static List<Finding> passing(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      PathStandard standard = PathStandard.of(plan, path.use());
      if (standard.passing().isPresent()
          && standard.passingEvery().isPresent()
          && narrower(plan, path, standard.passing().get().value())
          && path.line().length().compareTo(standard.passingEvery().get().value()) > 0) {
        passing(plan, path, standard.passing().get(), standard.passingEvery().get().value())
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> passing(
      Plan plan, Element.Path path, Cited<Length> wide, Length every) {
    Shape room = firm(plan).shrunk(wide.value().div(2).minus(SLACK));
    Length gap = longestGap(path.line(), room, wide.value());
    if (gap.compareTo(every) <= 0) {
      return Optional.empty();
    }
    int needed = (int) Math.ceil(gap.ratioTo(every) - EPSILON_M) - 1;
    return Optional.of(
        Finding.of(
                "site.path-passing",
                Severity.WARNING,
                "runs "
                    + Show.length(plan, gap)
                    + " without room for two to pass; narrower than "
                    + Show.small(plan, wide.value())
                    + " it needs a place of "
                    + Show.small(plan, wide.value())
                    + " by "
                    + Show.small(plan, wide.value())
                    + " every "
                    + Show.length(plan, every)
                    + ", "
                    + needed
                    + " at least",
                "widen it there, or pave a place beside it" + GOOD_PRACTICE,
                wide.source())
            .about(path.id(), path.place()));
  }

  /** The longest way along a line between places from which {@code room} is at hand. */
  private static Length longestGap(Line line, Shape room, Length near) {
    Length longest = Length.ZERO;
    Length last = Length.ZERO;
    int steps = (int) Math.ceil(line.length().ratioTo(STEP));
    for (int i = 0; i <= steps; i++) {
      Length at = line.length().times((double) i / steps);
      boolean passes = !room.isEmpty() && room.distance(line.at(at)).compareTo(near) <= 0;
      if (passes || i == steps) {
        longest = longest.max(at.minus(last));
        last = at;
      }
    }
    return longest;
  }

  private static Shape firm(Plan plan) {
    List<Shape> ways = new ArrayList<>();
    plan.all(Element.Path.class).forEach(p -> ways.add(p.shape()));
    plan.all(Element.Paving.class).forEach(p -> ways.add(p.shape()));
    return Shape.union(ways);
  }

  public static List<Finding> turning(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    List<Element.Path> tight = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      Optional<Cited<Length>> turning = PathStandard.of(plan, path.use()).turning();
      if (turning.isEmpty() || path.line().isClosed()) {
        continue;
      }
      boolean barrow = path.use() != PathUse.ACCESSIBLE;
      for (Point end : List.of(path.line().start(), path.line().end())) {
        boolean backed = barrow && path.line().length().compareTo(BACKED_OUT) <= 0;
        if (!backed
            && isBlind(plan, path, end)
            && !(barrow && goesOn(plan, path, end))
            && !turns(plan, path, end, turning.get().value(), barrow)) {
          if (barrow) {
            tight.add(path);
          } else {
            findings.add(cannotTurn(plan, path, end, turning.get()));
          }
        }
      }
    }
    barrows(plan, tight).ifPresent(findings::add);
    return findings;
  }

  /** Whether a path leads nowhere at this end: to no other way and no gate. */
  private static boolean isBlind(Plan plan, Element.Path path, Point end) {
    Length touch = path.width().div(2).plus(SLACK);
    boolean gate =
        plan.attributes().all(Gate.KEY).stream()
            .map(Attributes.Entry::value)
            .anyMatch(g -> g.at().distance(end).compareTo(touch.plus(BESIDE_GATE)) <= 0);
    boolean way =
        plan.all(Element.Path.class).stream()
                .anyMatch(
                    p -> !p.id().equals(path.id()) && p.shape().distance(end).compareTo(touch) <= 0)
            || plan.all(Element.Paving.class).stream()
                .anyMatch(p -> p.shape().distance(end).compareTo(touch) <= 0);
    return !gate && !way;
  }

  /** Whether ground mulched whole leads on from this end, as wide as a barrow's path. */
  private static boolean goesOn(Plan plan, Element.Path path, Point end) {
    if (plan.all(Element.MulchedGround.class).isEmpty()) {
      return false;
    }
    Length wide = PathStandard.of(plan, path.use()).least().value();
    Length near = wide.plus(path.width().div(2));
    Shape mulched =
        Shape.union(plan.all(Element.MulchedGround.class).stream().map(Element::shape).toList());
    Shape bare = open(plan, Shape.circle(end, near.plus(wide))).and(mulched).minus(path.shape());
    Shape room = bare.shrunk(wide.div(2).minus(SLACK));
    return !room.isEmpty() && room.distance(end).compareTo(near) <= 0;
  }

  /** A wheelchair turns on firm ground; a barrow on any ground where nothing stands or grows. */
  private static boolean turns(
      Plan plan, Element.Path path, Point end, Length circle, boolean anyGround) {
    Shape near = Shape.circle(end, circle.times(2).plus(path.width()));
    Shape ground = anyGround ? open(plan, near) : firm(plan).and(near);
    Shape room = ground.shrunk(circle.div(2).minus(SLACK));
    return !room.isEmpty() && room.distance(end).compareTo(circle.plus(path.width().div(2))) <= 0;
  }

  private static Shape open(Plan plan, Shape near) {
    Shape ground = plan.lot().map(lot -> near.and(lot.shape())).orElse(near);
    List<Shape> taken = new ArrayList<>();
    for (Element element : Covering.elements(plan)) {
      boolean goes =
          element instanceof Element.Path
              || element instanceof Element.Paving
              || element instanceof Element.MulchedGround;
      if (!goes) {
        taken.add(element.shape());
      }
    }
    plan.all(Element.KeepOut.class).forEach(k -> taken.add(k.shape()));
    return taken.isEmpty() ? ground : ground.minus(Shape.union(taken));
  }

  private static Finding cannotTurn(
      Plan plan, Element.Path path, Point end, Cited<Length> turning) {
    return Finding.of(
            "site.path-turning",
            Severity.WARNING,
            "ends where no circle of "
                + Show.small(plan, turning.value())
                + " is paved to turn a wheelchair in",
            "widen its end, or lead it on to another way" + GOOD_PRACTICE,
            turning.source())
        .about(path.id(), path.place())
        .marking(Shape.circle(end, turning.value().div(2)));
  }

  /** One note for all barrow paths, for gardens have many rows. */
  private static Optional<Finding> barrows(Plan plan, List<Element.Path> tight) {
    if (tight.isEmpty()) {
      return Optional.empty();
    }
    Cited<Length> turning = PathStandard.of(plan, tight.get(0).use()).turning().orElseThrow();
    Source source = turning.source();
    List<String> names = tight.stream().map(p -> p.id().name()).distinct().toList();
    return Optional.of(
        Finding.of(
                "site.path-turning",
                Severity.NOTE,
                "a barrow cannot be turned in a circle of "
                    + Show.small(plan, turning.value())
                    + " at the end of "
                    + String.join(", ", names)
                    + ", longer than the "
                    + Show.length(plan, BACKED_OUT)
                    + " it is easily backed out",
                "leave open ground at the end, or join it to another path",
                source)
            .about(tight.get(0).id(), tight.get(0).place()));
  }
}
