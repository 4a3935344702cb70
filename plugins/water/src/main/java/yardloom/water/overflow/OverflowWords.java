package yardloom.water.overflow;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
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
              fallback = "none: sized by the storm alone")
          Number sizeFactor) {
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
              "storm must be between 0.1 in (3 mm) and 20 in (508 mm), got %.2f in (%.0f mm); check"
                  + " the unit",
              held.inches(),
              held.millimetres()));
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
  }
}
