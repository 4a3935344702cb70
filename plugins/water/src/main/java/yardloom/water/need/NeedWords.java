package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that say how much of the rain and fog counts, and what a bed takes. */
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
          "waterNeed([0.mm, 0.mm, 0.mm, 10.mm, 30.mm, 60.mm, 80.mm, 70.mm, 40.mm, 10.mm, 0.mm,"
              + " 0.mm], source: 'measured')")
  public static void waterNeed(
      BedScope in,
      @Arg(name = "months", help = "net depths of whole months, January to December")
          List<?> months,
      @Opt(name = "source", help = "who says so", required = true) String source) {
    List<Length> depths = depths("waterNeed", months, Length.metres(1), in.place());
    in.element()
        .attributes()
        .add(OwnNeed.KEY, new OwnNeed(depths, Source.plan(source)), in.place());
  }

  @Verb(
      help =
          "Gives what drips from leaves in fog by month, which counts as rain does; none if nothing"
              + " is said.",
      example =
          "fogDrip([0.mm, 0.mm, 0.mm, 0.mm, 4.mm, 9.mm, 12.mm, 12.mm, 8.mm, 2.mm, 0.mm, 0.mm],"
              + " source: 'a gauge under the trees')")
  public static void fogDrip(
      PlanScope in,
      @Arg(name = "months", help = "depths on the ground, January to December") List<?> months,
      @Opt(name = "source", help = "who measured it", required = true) String source) {
    List<Length> depths = depths("fogDrip", months, Length.metres(0.3), in.place());
    Making.once(in, Fog.KEY, f -> true, "`fogDrip`");
    in.draft().attributes().add(Fog.KEY, new Fog(depths, Source.plan(source)), in.place());
  }

  private static List<Length> depths(String word, List<?> months, Length most, SourceRef place) {
    List<Length> depths = new ArrayList<>();
    for (Object month : months) {
      if (!(month instanceof Length depth) || depth.metres() < 0 || depth.compareTo(most) > 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            place,
            String.format(
                Locale.ROOT,
                "`%s` takes depths of 0 to %s a month with their unit, got %s",
                word,
                Say.both(Measure.RAIN, most),
                month));
      }
      depths.add(depth);
    }
    if (depths.size() != 12) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          "`" + word + "` takes 12 depths, January to December, got " + depths.size());
    }
    return depths;
  }
}
