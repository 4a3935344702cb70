package yardloom.water.drip;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/** What is rarely said of a tube. */
record Tube(Boolean compensating, Pressure rated, Number exponent, Length bore) {
  DripChoice with(Flow emitter, Length spacing, Length rowSpacing, double share) {
    boolean compensates = compensating != null && compensating;
    double usual = compensates ? DripChoice.COMPENSATING : DripChoice.TURBULENT;
    double power = exponent == null ? usual : exponent.doubleValue();
    if (!(power >= 0.01 && power <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the exponent of an outlet lies between 0.01 and 1 (laminar), got " + exponent);
    }
    Pressure at = rated == null ? DripChoice.USUAL_RATING : rated;
    if (at.psi() < 1 || at.psi() > 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "outlets are rated between 1 psi (7 kPa) and 60 psi (414 kPa), got %s; check the"
                  + " unit",
              Say.both(Measure.PRESSURE, at)));
    }
    Length inside = bore == null ? DripChoice.USUAL_BORE : bore;
    if (inside.millimetres() < 3 || inside.millimetres() > 40) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "dripline is between 0.12 in (3 mm) and 1.57 in (40 mm) wide inside, got %s; check"
                  + " the unit",
              Say.both(Measure.BORE, inside)));
    }
    return new DripChoice(emitter, spacing, rowSpacing, at, power, compensates, inside, share);
  }
}
