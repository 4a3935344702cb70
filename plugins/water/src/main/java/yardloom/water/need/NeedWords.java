package yardloom.water.need;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Verb;

/** The word that says how much of the rain counts. */
public final class NeedWords {
  private NeedWords() {}

  @Verb(
      help = "Says by which method the part of the rain is found that plants can use.",
      example = "effectiveRain 'usbr'")
  public static void effectiveRain(
      PlanScope in,
      @Arg(name = "method", help = "whose method", choices = EffectiveRain.class) String method) {
    if (in.draft().attributes().saidInFile(EffectiveRain.KEY, in.place(), m -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the method is already given; a yard has one");
    }
    in.draft()
        .attributes()
        .add(EffectiveRain.KEY, Choices.parse(EffectiveRain.class, method), in.place());
  }
}
