package yardloom.materials;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.calc.Fertilizer;
import yardloom.materials.calc.FieldTexture;
import yardloom.materials.calc.TextureRule;
import yardloom.materials.data.WeedData;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.model.SoilTest;
import yardloom.materials.model.TextureClass;

/** The words about soil, its tests, weeds and local rules. */
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
    if (plan.draft().attributes().has(MaterialKeys.SOIL)
        || plan.draft().attributes().has(MaterialKeys.SOIL_CHOICE)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the soil is already given; a yard has one");
    }
    plan.draft()
        .attributes()
        .add(
            MaterialKeys.SOIL,
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
            MaterialKeys.SOIL_TEST,
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

  @Verb(
      help = "Names a tough weed of the whole site: more cardboard and chips are laid.",
      example = "weed('bindweed')")
  public static void weed(
      PlanScope plan, @Arg(name = "name", help = "its common name") String name) {
    plan.draft().attributes().add(MaterialKeys.WEED, WeedData.of(name), plan.place());
  }

  @Verb(
      help = "Names a tough weed of this bed: more cardboard and chips are laid here.",
      example = "weed('bindweed')")
  public static void weed(BedScope bed, @Arg(name = "name", help = "its common name") String name) {
    bed.element().attributes().add(MaterialKeys.WEED, WeedData.of(name), bed.place());
  }
}
