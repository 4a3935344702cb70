package yardloom.water;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.words.BedScope;
import yardloom.kernel.words.PlanScope;
import yardloom.water.model.DripChoice;
import yardloom.water.model.FormerLawn;
import yardloom.water.model.FormerLawn.Turf;
import yardloom.water.model.WaterKeys;

/** The words that water adds to the plan and to beds. */
public final class WaterWords {
  private WaterWords() {}

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
    if (in.draft().attributes().has(WaterKeys.FORMER_LAWN)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the lawn is already given; a yard had one");
    }
    in.draft()
        .attributes()
        .add(
            WaterKeys.FORMER_LAWN,
            new FormerLawn(Choices.parse(Turf.class, turf), share),
            in.place());
  }

  @Verb(
      help = "Lays dripline in the bed, in rows along its long side.",
      example = "drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 12.inch")
  public static void drip(
      BedScope in,
      @Opt(name = "emitter", help = "flow of one outlet", required = true) Flow emitter,
      @Opt(name = "spacing", help = "distance of outlets along the tube", required = true)
          Length spacing,
      @Opt(name = "rowSpacing", help = "distance of rows", fallback = "the same as the spacing")
          Length rowSpacing) {
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
    if (in.element().attributes().has(WaterKeys.DRIP)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), in.element().id() + " already has dripline");
    }
    in.element()
        .attributes()
        .add(WaterKeys.DRIP, new DripChoice(emitter, spacing, rows), in.place());
  }

  @Verb(
      help =
          "Says how much water the tap gives through the pressure regulator; zones keep below it.",
      example = "supply flow: 4.gpm")
  public static void supply(
      PlanScope in,
      @Opt(
              name = "flow",
              help = "measured with a bucket and a watch, regulator in place",
              required = true)
          Flow flow) {
    if (flow.gallonsPerMinute() < 0.1 || flow.gallonsPerMinute() > 100) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a garden supply gives between 0.1 gpm (23 L/h) and 100 gpm (22,700 L/h), got %.2f gpm"
                  + " (%.1f L/h); check the unit",
              flow.gallonsPerMinute(),
              flow.litresPerHour()));
    }
    if (in.draft().attributes().has(WaterKeys.SUPPLY)) {
      throw new PlanException(ProblemCode.DUPLICATE, in.place(), "the supply is already given");
    }
    in.draft().attributes().add(WaterKeys.SUPPLY, flow, in.place());
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
