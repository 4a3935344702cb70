package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
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
    Making.once(in, EffectiveRain.KEY, m -> true, "the method");
    in.draft()
        .attributes()
        .add(EffectiveRain.KEY, Choices.parse(EffectiveRain.class, method), in.place());
  }

  @Verb(
      help =
          "Gives what the bed takes beyond the rain by month, where you know better than tables.",
      example =
          "waterNeed([0.mm, 0.mm, 0.mm, 10.mm, 30.mm, 60.mm, 80.mm, 70.mm, 40.mm, 10.mm, 0.mm, 0.mm],"
              + " source: 'measured')")
  public static void waterNeed(
      BedScope in,
      @Arg(name = "months", help = "net depths of whole months, January to December")
          List<?> months,
      @Opt(name = "source", help = "who says so", required = true) String source) {
    List<Length> depths = new ArrayList<>();
    for (Object month : months) {
      if (!(month instanceof Length depth) || depth.metres() < 0 || depth.metres() > 1) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            in.place(),
            "`waterNeed` takes depths of 0 to 39 in (1 m) a month with their unit, got " + month);
      }
      depths.add(depth);
    }
    if (depths.size() != 12) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`waterNeed` takes 12 depths, January to December, got " + depths.size());
    }
    in.element()
        .attributes()
        .add(OwnNeed.KEY, new OwnNeed(depths, Source.plan(source)), in.place());
  }
}
