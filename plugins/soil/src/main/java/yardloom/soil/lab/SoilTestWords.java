package yardloom.soil.lab;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.soil.amendment.formula.Fertilizer;

/** The word about soil tests. */
public final class SoilTestWords {
  private SoilTestWords() {}

  @Verb(
      help = "Gives what a soil test found and what is wanted of the soil.",
      example = "soilTest(ph: 6.5, wantedPh: 5.5, lead: 60, nitrogen: 2.lb, grade: '5-10-10')")
  public static void soilTest(
      PlanScope plan,
      @Opt(name = "ph", help = "pH found", fallback = "not tested") Number ph,
      @Opt(name = "wantedPh", help = "pH wanted", fallback = "as it is") Number wantedPh,
      @Opt(name = "bufferPh", help = "buffer pH, Mehlich method", fallback = "not tested")
          Number bufferPh,
      @Opt(
              name = "limePurity",
              help = "calcium carbonate equivalent of the lime, percent",
              fallback = "100")
          Number limePurity,
      @Opt(name = "lead", help = "lead found, ppm", fallback = "not tested") Number lead,
      @Opt(name = "otherLead", help = "other sources of lead about", fallback = "false")
          Boolean otherLead,
      @Opt(name = "nitrogen", help = "nitrogen wanted over an area", fallback = "none")
          Mass nitrogen,
      @Opt(name = "nitrogenOver", help = "the area of that rate", fallback = "1000 sq ft")
          Area nitrogenOver,
      @Opt(
              name = "nitrogenByCrop",
              help = "nitrogen by the crops of annual beds",
              fallback = "false")
          Boolean nitrogenByCrop,
      @Opt(name = "grade", help = "product that brings it, N-P-K", fallback = "none") String grade,
      @Opt(name = "wantedOrganic", help = "organic matter wanted, percent", fallback = "as it is")
          Number wantedOrganic,
      @Opt(name = "mixDepth", help = "depth to mix compost in", fallback = "6 in")
          Length mixDepth) {
    requireBetween(plan, "ph", ph, 3, 10);
    requireBetween(plan, "wantedPh", wantedPh, 4, 8.5);
    requireBetween(plan, "bufferPh", bufferPh, 4, 6.6);
    requireBetween(plan, "limePurity", limePurity, 1, 180);
    requireBetween(plan, "lead", lead, 0, 1e6);
    requireBetween(plan, "wantedOrganic", wantedOrganic, 0, 20);
    if (bufferPh != null && (ph == null || wantedPh == null || wantedPh.doubleValue() >= 6.6)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "with `bufferPh:` go `ph:` and a `wantedPh:` below 6.6");
    }
    if (nitrogen != null && Boolean.TRUE.equals(nitrogenByCrop)) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          plan.place(),
          "nitrogen goes by a rate (`nitrogen:`) or by crop (`nitrogenByCrop: true`), not both");
    }
    if (grade != null) {
      gradeOf(grade, plan);
    }
    plan.draft()
        .attributes()
        .add(
            SoilTest.KEY,
            new SoilTest(
                maybe(ph),
                maybe(wantedPh),
                maybe(bufferPh),
                limePurity == null ? 100 : limePurity.doubleValue(),
                maybe(lead),
                Boolean.TRUE.equals(otherLead),
                Optional.ofNullable(nitrogen),
                nitrogenOver == null ? Area.squareFeet(1000) : nitrogenOver,
                Boolean.TRUE.equals(nitrogenByCrop),
                Optional.ofNullable(grade),
                maybe(wantedOrganic),
                mixDepth == null ? Length.inches(6) : mixDepth,
                plan.place()),
            plan.place());
  }

  private static OptionalDouble maybe(Number number) {
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number.doubleValue());
  }

  private static void requireBetween(
      PlanScope plan, String what, Number value, double least, double most) {
    if (value != null && !(value.doubleValue() >= least && value.doubleValue() <= most)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          what + " must lie between " + least + " and " + most + ", got " + value);
    }
  }

  /** Reads {@code 5-10-10}. */
  private static void gradeOf(String grade, PlanScope plan) {
    try {
      Fertilizer.Grade.parse(grade);
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }
}
