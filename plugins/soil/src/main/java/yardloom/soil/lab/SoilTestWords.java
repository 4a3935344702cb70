package yardloom.soil.lab;

import java.util.function.Consumer;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.soil.amendment.formula.Fertilizer;

/** The words about soil tests. */
public final class SoilTestWords {
  private SoilTestWords() {}

  @Verb(
      help = "Gives what a soil test found and what is wanted of the soil.",
      example =
          "soilTest { acidity ph: 6.5, wanted: 5.5 ; lead 60 ; nitrogen rate: 2.lb, grade: '5-10-10' }")
  public static void soilTest(PlanScope plan, Consumer<SoilTestScope> block) {
    SoilTestScope.Given given = new SoilTestScope.Given();
    if (block != null) {
      block.accept(new SoilTestScope(given, plan.place()));
    }
    plan.draft().attributes().add(SoilTest.KEY, given.test(plan.place()), plan.place());
  }

  @Verb(
      help = "Gives the pH found and wanted.",
      example = "acidity ph: 5.5, wanted: 6.5, buffer: 6.3, limePurity: 90")
  public static void acidity(
      SoilTestScope test,
      @Opt(name = "ph", help = "pH found", required = true) Number ph,
      @Opt(name = "wanted", help = "pH wanted", fallback = "as it is") Number wanted,
      @Opt(name = "buffer", help = "buffer pH, Mehlich method", fallback = "not tested")
          Number buffer,
      @Opt(
              name = "limePurity",
              help = "calcium carbonate equivalent of the lime, percent",
              fallback = "100")
          Number limePurity) {
    requireBetween(test, "ph", ph, 3, 10);
    requireBetween(test, "wanted", wanted, 4, 8.5);
    requireBetween(test, "buffer", buffer, 4, 6.6);
    requireBetween(test, "limePurity", limePurity, 1, 180);
    if (buffer != null && (wanted == null || wanted.doubleValue() >= 6.6)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, test.place(), "with `buffer:` goes a `wanted:` below 6.6");
    }
    test.acidity(ph, wanted, buffer, limePurity);
  }

  @Verb(help = "Gives the lead found.", example = "lead 60, otherSources: true")
  public static void lead(
      SoilTestScope test,
      @Arg(name = "ppm", help = "lead found, ppm") Number ppm,
      @Opt(name = "otherSources", help = "other sources of lead about", fallback = "false")
          Boolean otherSources) {
    requireBetween(test, "lead", ppm, 0, 1e6);
    test.lead(ppm, Boolean.TRUE.equals(otherSources));
  }

  @Verb(
      help = "Says how much nitrogen is wanted, by a rate or by the crops, and what brings it.",
      example = "nitrogen rate: 2.lb, over: 1000.sqft, grade: '5-10-10'")
  public static void nitrogen(
      SoilTestScope test,
      @Opt(name = "rate", help = "nitrogen wanted over an area", fallback = "none") Mass rate,
      @Opt(name = "over", help = "the area of that rate", fallback = "1000 sq ft") Area over,
      @Opt(name = "byCrop", help = "by the crops of annual beds", fallback = "false")
          Boolean byCrop,
      @Opt(name = "grade", help = "product that brings it, N-P-K", fallback = "none")
          String grade) {
    if (rate != null && Boolean.TRUE.equals(byCrop)) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          test.place(),
          "nitrogen goes by a rate (`rate:`) or by crop (`byCrop: true`), not both");
    }
    if (grade != null) {
      gradeOf(grade, test);
    }
    test.nitrogen(rate, over, Boolean.TRUE.equals(byCrop), grade);
  }

  @Verb(
      help = "Says how much organic matter is wanted.",
      example = "organic wanted: 4, mixDepth: 6.inch")
  public static void organic(
      SoilTestScope test,
      @Opt(name = "wanted", help = "organic matter wanted, percent", required = true) Number wanted,
      @Opt(name = "mixDepth", help = "depth to mix compost in", fallback = "6 in")
          Length mixDepth) {
    requireBetween(test, "wanted", wanted, 0, 20);
    test.organic(wanted, mixDepth);
  }

  private static void requireBetween(
      SoilTestScope test, String what, Number value, double least, double most) {
    if (value != null && !(value.doubleValue() >= least && value.doubleValue() <= most)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          test.place(),
          what + " must lie between " + least + " and " + most + ", got " + value);
    }
  }

  /** Reads {@code 5-10-10}. */
  private static void gradeOf(String grade, SoilTestScope test) {
    try {
      Fertilizer.Grade.parse(grade);
    } catch (PlanException e) {
      throw e.at(test.place());
    }
  }
}
