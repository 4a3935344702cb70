package yardloom.site.ground;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Slope;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for the bank that is made of a swale's earth. */
public final class BermWords {
  /** Seen along the line of the swale. */
  public enum Side {
    LEFT,
    RIGHT
  }

  private static final double USUAL_SIDES = 2;
  private static final double FLATTEST = 10;

  private BermWords() {}

  @Verb(
      help =
          "Lays the earth of a swale beside it as a bank, as high as the earth makes it; its ground"
              + " is drawn and its hours are worked out.",
      example = "berm('upper bank', of: 'upper swale', side: 'right')")
  public static Handle berm(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Opt(name = "of", help = "the swale, by its name", required = true) String of,
      @Opt(
              name = "side",
              help = "of the swale, seen along its line",
              fallback = "the lower one, where `levels` say which",
              choices = Side.class)
          String side,
      @Opt(name = "top", help = "width of its flat top", fallback = "12 in (30 cm)") Length top,
      @Opt(name = "sides", help = "run over rise of its sides", fallback = "2, a side of 2:1")
          Number sides) {
    LevelWords.SwaleLine swale = swale(in, of);
    double run = Limits.or(sides, USUAL_SIDES).doubleValue();
    if (!(run >= 1 && run <= FLATTEST)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "the sides of a bank are 1 to 10, got " + sides);
    }
    Line left = side(in, swale.line(), side) == Side.LEFT ? swale.line() : swale.line().reversed();
    Berm berm =
        new Berm(
            new ElementId(ElementKind.STRUCTURE, of),
            swale.swale(),
            left,
            Limits.zeroOrMore(
                "the top of a bank", Limits.or(top, Length.inches(12)), Limits.PATH_WIDTH),
            run);
    Shape ground = PathStrip.leftOf(left, swale.swale().top().div(2), berm.width());
    ElementId id = Making.id(ElementKind.STRUCTURE, name);
    ElementDraft element = Making.add(in, id, c -> new Element.Structure(c, ground, Length.ZERO));
    element.attributes().add(Berm.KEY, berm, in.place());
    Making.standing(element, false);
    return Handle.along(id, left, ground);
  }

  /** Whether it is a bank of earth, not a thing that is put up. */
  public static boolean isBerm(Element.Structure element) {
    return element.attributes().get(Berm.KEY).isPresent();
  }

  private static LevelWords.SwaleLine swale(PlanScope in, String of) {
    return in.draft().element(new ElementId(ElementKind.STRUCTURE, of)).stream()
        .flatMap(e -> e.attributes().all(LevelWords.SwaleLine.KEY).stream())
        .map(Attributes.Entry::value)
        .findFirst()
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    in.place(),
                    "there is no swale '" + of + "' above this line; write the swale first"));
  }

  /** As said, or down the slope of the ground in the middle of the line. */
  private static Side side(PlanScope in, Line line, String said) {
    if (said != null) {
      return Choices.parse(Side.class, said);
    }
    List<Attributes.Entry<Surface>> levels = in.draft().attributes().all(Surface.KEY);
    Optional<Slope> slope =
        levels.stream().findFirst().flatMap(s -> s.value().slopeAt(line.middle()));
    if (slope.isEmpty() || slope.get().ratio() == 0) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "no levels above this line say which side of the swale is the lower one; write `side:"
              + " 'left'` or `'right'`, seen along its line");
    }
    Length step = line.length().div(100);
    double east = line.at(line.length().div(2).plus(step)).x().minus(line.middle().x()).metres();
    double north = line.at(line.length().div(2).plus(step)).y().minus(line.middle().y()).metres();
    double down = slope.get().downhill().radians();
    // Positive where the way down leaves the line to its left.
    double turn = east * StrictMath.cos(down) - north * StrictMath.sin(down);
    return turn > 0 ? Side.LEFT : Side.RIGHT;
  }
}
