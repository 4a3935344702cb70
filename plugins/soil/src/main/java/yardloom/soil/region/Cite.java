package yardloom.soil.region;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Choices;

/** The sources that statements of a regional file name. */
final class Cite {
  /** How the value was come by. */
  enum Seen {
    READ,
    COMPUTED,
    MEMORY
  }

  private Cite() {}

  /**
   * A source from a word's options.
   *
   * @throws PlanException at the word's place, if title or publisher are blank or the year is none
   */
  static Source source(
      PlanScope plan, String title, String publisher, Number year, String where, String seen) {
    say(plan, "a regional statement names its source: title and publisher", title, publisher);
    return new Source(
        title, publisher, year(plan, year), where, Source.Standing.valueOf(standing(plan, seen)));
  }

  private static String standing(PlanScope plan, String seen) {
    try {
      return Choices.parse(Seen.class, seen).name();
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }

  static int year(PlanScope plan, Number year) {
    double value = year.doubleValue();
    if (value != Math.rint(value) || value != 0 && !(value >= 1500 && value <= 2200)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a year is written as 1998, or 0 if it is not known; got " + year);
    }
    return (int) value;
  }

  static void say(PlanScope plan, String needed, String... texts) {
    for (String text : texts) {
      if (text.isBlank()) {
        throw new PlanException(
            ProblemCode.MISSING_OPTION, plan.place(), needed + "; one of them is empty");
      }
    }
  }
}
