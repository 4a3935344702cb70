package yardloom.soil.texture;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.soil.texture.formula.FieldTexture;
import yardloom.soil.texture.formula.TextureClass;
import yardloom.soil.texture.formula.TextureRule;

/** The words about the texture of the soil, however it was found. */
public final class SoilWords {
  private static final double ORGANIC = 2.5;

  private SoilWords() {}

  @Verb(
      help = "Gives the soil's sand and clay in percent, as a laboratory prints them.",
      example = "soil(sand: 40, clay: 20, organic: 3)")
  public static void soil(
      PlanScope plan,
      @Opt(name = "sand", help = "percent of the fine earth", required = true) Number sand,
      @Opt(name = "clay", help = "percent of the fine earth", required = true) Number clay,
      @Opt(name = "organic", help = "organic matter, percent", fallback = "2.5") Number organic,
      @Opt(name = "rock", help = "share of volume that is rock", fallback = "0") Number rock,
      @Opt(name = "depth", help = "depth that roots use", fallback = "24 in") Length depth) {
    give(
        plan,
        sand.doubleValue(),
        clay.doubleValue(),
        organic,
        rock,
        depth,
        Source.plan("sand and clay as given"));
  }

  @Verb(
      help = "Gives the soil's texture class; sand and clay are taken from its middle.",
      example = "soilTexture('clay loam', organic: 3)")
  public static void soilTexture(
      PlanScope plan,
      @Arg(name = "texture", help = "the class", choices = TextureClass.class) String texture,
      @Opt(name = "organic", help = "organic matter, percent", fallback = "2.5") Number organic,
      @Opt(name = "rock", help = "share of volume that is rock", fallback = "0") Number rock,
      @Opt(name = "depth", help = "depth that roots use", fallback = "24 in") Length depth) {
    double[] parts = TextureRule.middle(Choices.parse(TextureClass.class, texture));
    give(
        plan,
        parts[0],
        parts[1],
        organic,
        rock,
        depth,
        Source.plan("texture class as given, middle of the class"));
  }

  @Verb(
      help = "Gives the heights of the layers that a shaken jar of soil settles into.",
      example = "jarTest(sand: 2.inch, silt: 2.inch, clay: 1.inch)")
  public static void jarTest(
      PlanScope plan,
      @Opt(name = "sand", help = "settled after a minute", required = true) Length sand,
      @Opt(name = "silt", help = "settled on it after hours", required = true) Length silt,
      @Opt(name = "clay", help = "settled on it after a day or more", required = true) Length clay,
      @Opt(name = "organic", help = "organic matter, percent", fallback = "2.5") Number organic,
      @Opt(name = "rock", help = "share of volume that is rock", fallback = "0") Number rock,
      @Opt(name = "depth", help = "depth that roots use", fallback = "24 in") Length depth) {
    double[] parts = FieldTexture.jar(sand, silt, clay);
    give(plan, parts[0], parts[1], organic, rock, depth, FieldTexture.JAR);
  }

  @Verb(
      help = "Gives the texture by feel: how long a pressed ribbon of moist soil grows.",
      example = "ribbonTest(ribbon: 1.5.inch, feel: 'gritty')")
  public static void ribbonTest(
      PlanScope plan,
      @Opt(name = "ribbon", help = "length at which it breaks; 0 for none", required = true)
          Length ribbon,
      @Opt(
              name = "feel",
              help = "how wet soil feels",
              fallback = "neither",
              choices = FieldTexture.Feel.class)
          String feel,
      @Opt(name = "ball", help = "whether moist soil holds together", fallback = "true")
          Boolean ball,
      @Opt(name = "organic", help = "organic matter, percent", fallback = "2.5") Number organic,
      @Opt(name = "rock", help = "share of volume that is rock", fallback = "0") Number rock,
      @Opt(name = "depth", help = "depth that roots use", fallback = "24 in") Length depth) {
    TextureClass texture =
        FieldTexture.ribbon(
            !Boolean.FALSE.equals(ball),
            ribbon,
            Choices.parse(FieldTexture.Feel.class, feel, FieldTexture.Feel.NEITHER));
    double[] parts = TextureRule.middle(texture);
    give(plan, parts[0], parts[1], organic, rock, depth, FieldTexture.RIBBON);
  }

  private static void give(
      PlanScope plan,
      double sand,
      double clay,
      Number organic,
      Number rock,
      Length depth,
      Source how) {
    TextureRule.classify(sand, clay);
    double om = organic == null ? ORGANIC : organic.doubleValue();
    double stones = rock == null ? 0 : rock.doubleValue();
    Length roots = depth == null ? Length.inches(24) : depth;
    boolean sound = om >= 0 && om <= 100 && stones >= 0 && stones < 1;
    if (!sound || roots.metres() <= 0 || roots.metres() > 5) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "organic is a percentage, rock a share below 1, depth up to 16 ft (5 m); got "
              + om
              + ", "
              + stones
              + ", "
              + roots);
    }
    if (plan.draft().attributes().has(SoilGiven.KEY)
        || plan.draft().attributes().has(SoilChoice.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the soil is already given; a yard has one");
    }
    plan.draft()
        .attributes()
        .add(
            SoilGiven.KEY,
            new SoilGiven(
                sand,
                clay,
                om,
                stones,
                roots,
                OptionalDouble.empty(),
                Optional.empty(),
                how,
                plan.place()),
            plan.place());
  }
}
