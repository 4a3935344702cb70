package yardloom.water.drip;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.ElementScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that lay dripline in a bed or round a tree. */
public final class DripWords {
  private DripWords() {}

  @Verb(
      help =
          "Lays dripline in the bed: in rows along its long side, round and curved beds along their"
              + " outline.",
      example = "drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 12.inch")
  public static void drip(
      BedScope in,
      @Opt(name = "emitter", help = "flow of one outlet", required = true) Flow emitter,
      @Opt(name = "spacing", help = "distance of outlets along the tube", required = true)
          Length spacing,
      @Opt(name = "rowSpacing", help = "distance of rows", fallback = "the same as the spacing")
          Length rowSpacing) {
    lay(in, emitter, spacing, rowSpacing);
  }

  @Verb(
      help =
          "Lays dripline in rings under the crown of the tree, from its drip line inward to 12 in"
              + " (30 cm) off the trunk.",
      example = "drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 18.inch")
  public static void drip(
      TreeScope in,
      @Opt(name = "emitter", help = "flow of one outlet", required = true) Flow emitter,
      @Opt(name = "spacing", help = "distance of outlets along the tube", required = true)
          Length spacing,
      @Opt(name = "rowSpacing", help = "distance of rings", fallback = "the same as the spacing")
          Length rowSpacing) {
    lay(in, emitter, spacing, rowSpacing);
  }

  private static void lay(ElementScope in, Flow emitter, Length spacing, Length rowSpacing) {
    Length rows = rowSpacing == null ? spacing : rowSpacing;
    if (emitter.litresPerHour() < 0.2 || emitter.gallonsPerHour() > 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a drip outlet gives between 0.05 gph (0.2 L/h) and 60 gph (227 L/h), got %.2f gph"
                  + " (%.2f L/h); check the unit",
              emitter.gallonsPerHour(),
              emitter.litresPerHour()));
    }
    checkSpacing("spacing", spacing);
    checkSpacing("rowSpacing", rows);
    if (in.element().attributes().has(DripChoice.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), in.element().id() + " already has dripline");
    }
    in.element()
        .attributes()
        .add(DripChoice.KEY, new DripChoice(emitter, spacing, rows), in.place());
  }

  private static void checkSpacing(String what, Length value) {
    if (value.inches() < 3 || value.feet() > 6) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "%s must be between 3 in (7.6 cm) and 6 ft (1.83 m), got %.2f ft (%.3f m); check the"
                  + " unit",
              what,
              value.feet(),
              value.metres()));
    }
  }
}
