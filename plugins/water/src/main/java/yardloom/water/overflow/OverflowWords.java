package yardloom.water.overflow;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.water.overflow.formula.RainGarden;

/** The word for ground that takes the overflow of a roof. */
public final class OverflowWords {
  private static final Length USUAL_STORM = Length.inches(1);

  private OverflowWords() {}

  @Verb(
      help = "Sizes a planted hollow that takes what a roof sheds in a storm, or its tank lets go.",
      example = "rainGarden 'rear slope', slope: 3, storm: 1.inch")
  public static void rainGarden(
      PlanScope in,
      @Arg(name = "roof", help = "the roof that drains into it, by its name") String roof,
      @Opt(name = "slope", help = "fall of the ground there, in percent, 0 to 12", required = true)
          Number slope,
      @Opt(name = "storm", help = "rain that it holds at once", fallback = "1 in (25 mm)")
          Length storm,
      @Opt(
              name = "sizeFactor",
              help = "share of the roof's area that your extension service asks for",
              fallback = "that of the soil, if one is given")
          Number sizeFactor,
      @Opt(
              name = "shape",
              help = "its outline on the plan, where it is drawn and checked as a basin",
              fallback = "its size alone is said")
          Shape shape) {
    double percent = slope.doubleValue();
    if (!(percent >= 0) || RainGarden.depth(percent).isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a rain garden lies on ground of 0 to 12 percent, got "
              + slope
              + "; on steeper ground take another place");
    }
    Length held = storm == null ? USUAL_STORM : storm;
    if (held.inches() < 0.1 || held.inches() > 20) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "storm must be between 0.1 in (3 mm) and 20 in (508 mm), got %s; check" + " the unit",
              Say.both(Measure.RAIN, held)));
    }
    Optional<Double> factor = Optional.ofNullable(sizeFactor).map(Number::doubleValue);
    if (factor.filter(f -> !(f > 0 && f <= 1)).isPresent()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "sizeFactor is a share over 0 and up to 1, got "
              + sizeFactor
              + "; a quarter of the roof is 0.25");
    }
    in.draft()
        .attributes()
        .add(OverflowGarden.KEY, new OverflowGarden(roof, percent, held, factor), in.place());
    if (shape != null) {
      Length depth = RainGarden.depth(percent).orElseThrow().from();
      add(in, new Basin("rain garden of " + roof, shape, roof, depth, held));
    }
  }

  private static void add(PlanScope in, Basin basin) {
    if (in.draft().attributes().all(Basin.KEY).stream()
        .anyMatch(e -> e.value().name().equals(basin.name()))) {
      throw new PlanException(
          ProblemCode.DUPLICATE, "there is a basin '" + basin.name() + "' already");
    }
    in.draft().attributes().add(Basin.KEY, basin, in.place());
  }

  @Verb(
      help =
          "A hollow at its place, planted or under chips, that takes what a roof or its full tank"
              + " lets go; checked against a storm, the soil and the house.",
      example =
          "basin('rear basin', rect(60.ft, 40.ft, 10.ft, 12.ft), drains: 'south slope', depth:"
              + " 6.inch, storm: 1.5.inch)")
  public static void basin(
      PlanScope in,
      @Arg(name = "name", help = "what tables call it") String name,
      @Arg(name = "shape", help = "its outline on the plan") Shape shape,
      @Opt(name = "drains", help = "the roof whose water it takes, by its name", required = true)
          String drains,
      @Opt(name = "depth", help = "of water when it is full", required = true) Length depth,
      @Opt(name = "storm", help = "rain that it holds at once", fallback = "1 in (25 mm)")
          Length storm,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built) {
    if (depth.inches() < 2 || depth.inches() > 24) {
      throw outOfRange("a basin is 2 in (5 cm) to 24 in (61 cm) deep", depth);
    }
    Length held = storm == null ? USUAL_STORM : storm;
    if (held.inches() < 0.1 || held.inches() > 20) {
      throw outOfRange("storm must be between 0.1 in (3 mm) and 20 in (508 mm)", held);
    }
    Basin made = new Basin(name, shape, drains, depth, held);
    Making.add(in, built, () -> add(in, made));
  }

  @Verb(
      help = "The pipe or channel that leads away what a full tank lets go.",
      example =
          "overflow(line([point(12.ft, 30.ft), point(60.ft, 42.ft)]), from: 'barrels', inside:"
              + " 3.inch)")
  public static void overflow(
      PlanScope in,
      @Arg(name = "line", help = "from the tank to where the water may sink in") Line line,
      @Opt(name = "from", help = "the tank, by its name", required = true) String from,
      @Opt(name = "inside", help = "diameter of the pipe", required = true) Length inside) {
    if (inside.inches() < 0.5 || inside.inches() > 12) {
      throw outOfRange("an overflow is 0.5 in (13 mm) to 12 in (305 mm) wide inside", inside);
    }
    in.draft().attributes().add(OverflowPipe.KEY, new OverflowPipe(line, from, inside), in.place());
  }

  private static PlanException outOfRange(String allowed, Length got) {
    return new PlanException(
        ProblemCode.OUT_OF_RANGE,
        String.format(Locale.ROOT, "%s, got %s", allowed, Say.both(Measure.RAIN, got)));
  }
}
