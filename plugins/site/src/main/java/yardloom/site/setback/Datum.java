package yardloom.site.setback;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Scope;

/** The line from which a code measures a distance. */
public enum Datum {
  LOT_LINE,
  RIGHT_OF_WAY,
  CURB,
  STREET_CENTRE;

  /**
   * How far this line runs outside of the lot line.
   *
   * @throws PlanException (CONTRADICTION) if it is given for the lot line, or missing for another
   */
  Length outside(Scope in, Length given) {
    if ((this == LOT_LINE) == (given != null)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`outside:` says how far the "
              + Choices.text(this)
              + " runs outside of the lot; it goes with a curb, right of way or street centre and"
              + " is needed there");
    }
    return given == null
        ? Length.ZERO
        : Limits.zeroOrMore("the distance of the datum", given, Limits.SETBACK);
  }
}
