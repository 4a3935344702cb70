package yardloom.water.lawn;

import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.water.lawn.FormerLawn.Turf;

/** The word for the lawn that a garden takes the place of. */
public final class LawnWords {
  private LawnWords() {}

  @Verb(
      help =
          "Says that a watered lawn lay where beds and paths come, so that its water is set against"
              + " the garden's.",
      example = "formerLawn 'cool season'")
  public static void formerLawn(
      PlanScope in,
      @Arg(name = "turf", help = "when it grows", choices = Turf.class) String turf,
      @Opt(
              name = "efficiency",
              help = "share of the water drawn that reached the roots, over 0 up to 1",
              fallback = "0.75, what California's ordinance asks of spray heads at least")
          Number efficiency) {
    Optional<Double> share = Optional.ofNullable(efficiency).map(Number::doubleValue);
    if (share.filter(s -> !(s > 0 && s <= 1)).isPresent()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "efficiency is a share over 0 and up to 1, got "
              + efficiency
              + "; three quarters of the water reaching the roots is 0.75");
    }
    if (in.draft().attributes().has(FormerLawn.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the lawn is already given; a yard had one");
    }
    in.draft()
        .attributes()
        .add(FormerLawn.KEY, new FormerLawn(Choices.parse(Turf.class, turf), share), in.place());
  }
}
