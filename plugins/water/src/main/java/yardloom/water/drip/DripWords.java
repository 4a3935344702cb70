package yardloom.water.drip;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.ElementScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that lay dripline in a bed or round a tree. */
public final class DripWords {
  private DripWords() {}

  @Verb(
      help =
          "Lays dripline in the bed: in rows along its long side, or along the contour where the"
              + " ground falls along it; round and curved beds along their outline.",
      example = "drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 12.inch")
  public static void drip(
      BedScope in,
      @Opt(name = "emitter", help = "flow of one outlet", required = true) Flow emitter,
      @Opt(name = "spacing", help = "distance of outlets along the tube", required = true)
          Length spacing,
      @Opt(name = "rowSpacing", help = "distance of rows", fallback = "the same as the spacing")
          Length rowSpacing,
      @Opt(
              name = "compensating",
              help = "whether outlets hold their flow at any pressure from 8 psi (55 kPa) on",
              fallback = "false")
          Boolean compensating,
      @Opt(
              name = "rated",
              help = "pressure for which the outlet's flow is given",
              fallback = "20 psi (138 kPa)")
          Pressure rated,
      @Opt(
              name = "exponent",
              help = "power of pressure by which the flow grows, from the maker's curve",
              fallback = "0.5; 0.03 in outlets that compensate")
          Number exponent,
      @Opt(name = "bore", help = "inside diameter of the tube", fallback = "0.57 in (14.5 mm)")
          Length bore) {
    lay(in, emitter, spacing, rowSpacing, new Tube(compensating, rated, exponent, bore));
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
          Length rowSpacing,
      @Opt(
              name = "compensating",
              help = "whether outlets hold their flow at any pressure from 8 psi (55 kPa) on",
              fallback = "false")
          Boolean compensating,
      @Opt(
              name = "rated",
              help = "pressure for which the outlet's flow is given",
              fallback = "20 psi (138 kPa)")
          Pressure rated,
      @Opt(
              name = "exponent",
              help = "power of pressure by which the flow grows, from the maker's curve",
              fallback = "0.5; 0.03 in outlets that compensate")
          Number exponent,
      @Opt(name = "bore", help = "inside diameter of the tube", fallback = "0.57 in (14.5 mm)")
          Length bore) {
    lay(in, emitter, spacing, rowSpacing, new Tube(compensating, rated, exponent, bore));
  }

  @Verb(
      help =
          "Says from which fall along a bed, over its length, rows of dripline follow the contour;"
              + " where `levels` are given and such rows are 6 ft (1.8 m) and longer. 0.05 if"
              + " nothing is said.",
      example = "contourRows from: 0.08")
  public static void contourRows(
      PlanScope in,
      @Opt(name = "from", help = "fall over length, 0 to 1", required = true) Number from) {
    if (!(from.doubleValue() >= 0 && from.doubleValue() <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`from:` is a fall over length of 0 to 1, such as 0.05, got " + from);
    }
    if (in.draft().attributes().has(Contour.FROM)) {
      throw new PlanException(ProblemCode.DUPLICATE, in.place(), "`contourRows` is already said");
    }
    in.draft().attributes().add(Contour.FROM, from.doubleValue(), in.place());
  }

  @Verb(
      help = "Says that the bed gets no water but rain, so that nobody asks for dripline in it.",
      example = "dry 'sedums on the wall'")
  public static void dry(BedScope in, @Arg(name = "reason", help = "why") String reason) {
    if (in.element().attributes().has(DripChoice.KEY)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, in.place(), in.element().id() + " has dripline and is dry");
    }
    in.element().attributes().add(DripChoice.DRY, reason, in.place());
  }

  private static void lay(
      ElementScope in, Flow emitter, Length spacing, Length rowSpacing, Tube tube) {
    Length rows = rowSpacing == null ? spacing : rowSpacing;
    checkFlow(emitter);
    checkSpacing("spacing", spacing);
    checkSpacing("rowSpacing", rows);
    store(in, tube.with(emitter, spacing, rows, 0));
  }

  static void checkFlow(Flow emitter) {
    if (emitter.litresPerHour() < 0.2 || emitter.gallonsPerHour() > 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a drip outlet gives between 0.05 gph (0.2 L/h) and 60 gph (227 L/h), got %s; check"
                  + " the unit",
              Say.both(Measure.OUTLET_FLOW, emitter)));
    }
  }

  static void store(ElementScope in, DripChoice choice) {
    if (in.element().attributes().has(DripChoice.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), in.element().id() + " already has dripline");
    }
    if (in.element().attributes().has(DripChoice.DRY)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, in.place(), in.element().id() + " has dripline and is dry");
    }
    in.element().attributes().add(DripChoice.KEY, choice, in.place());
  }

  private static void checkSpacing(String what, Length value) {
    if (value.inches() < 3 || value.feet() > 6) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "%s must be between 3 in (7.6 cm) and 6 ft (1.83 m), got %s; check the" + " unit",
              what,
              Say.size(value)));
    }
  }
}
