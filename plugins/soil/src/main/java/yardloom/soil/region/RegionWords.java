package yardloom.soil.region;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.facts.LocalRule;
import yardloom.facts.region.Region;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.soil.texture.LocalSoil;
import yardloom.soil.texture.SoilChoice;
import yardloom.soil.texture.SoilGiven;
import yardloom.soil.texture.formula.TextureRule;

/** The words of a regional file: what differs by place, each statement with its source. */
public final class RegionWords {
  private static final String SOURCE = "as `publication` names it";

  private RegionWords() {}

  @Verb(
      help = "Names a publication, for the `source:` of a regional statement.",
      example =
          "publication('Soil survey', by: 'survey', year: 1982, where: 'table 15',"
              + " seen: 'read')")
  public static Source publication(
      PlanScope plan,
      @Arg(name = "title", help = "title of the publication") String title,
      @Opt(name = "by", help = "who published it", required = true) String by,
      @Opt(name = "year", help = "year of it", fallback = "not known") Number year,
      @Opt(name = "where", help = "page, table or section", fallback = "none") String where,
      @Opt(
              name = "seen",
              help = "read there, or recalled from memory",
              required = true,
              choices = Cite.Seen.class)
          String seen) {
    return Cite.source(plan, title, by, year == null ? 0 : year, where == null ? "" : where, seen);
  }

  @Verb(
      help = "Names the region that this file speaks for; the plan's own statements go first.",
      example =
          "region('Blackland', about: 'Prairie soils.', source: publication('Soils', by: 'survey',"
              + " seen: 'read'))")
  public static void region(
      PlanScope plan,
      @Arg(name = "name", help = "its name on sheets") String name,
      @Opt(name = "about", help = "where it lies, in a sentence", required = true) String about,
      @Opt(name = "source", help = SOURCE, required = true) Source source) {
    if (plan.draft().attributes().has(RegionCalculator.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the region is already named; a yard has one");
    }
    Cite.say(plan, "a region needs a name and what it is about", name, about);
    plan.draft()
        .attributes()
        .add(RegionCalculator.KEY, new Region(name, about, source, plan.place()), plan.place());
  }

  @Verb(
      help = "Gives a named soil of the region, which `soilNamed` takes.",
      example =
          "localSoil('upland loam', sand: 30, clay: 20, organic: 3, intake: 12.mm,"
              + " source: publication('Soil survey', by: 'survey', seen: 'memory'))")
  public static void localSoil(
      PlanScope plan,
      @Arg(name = "name", help = "its name") String name,
      @Opt(name = "sand", help = "percent of the fine earth", required = true) Number sand,
      @Opt(name = "clay", help = "percent of the fine earth", required = true) Number clay,
      @Opt(name = "organic", help = "organic matter, percent", required = true) Number organic,
      @Opt(name = "intake", help = "water taken in an hour", fallback = "by its texture")
          Length intake,
      @Opt(name = "available", help = "share of volume, as 0.2", fallback = "by its texture")
          Number available,
      @Opt(name = "source", help = SOURCE, required = true) Source source) {
    Cite.say(plan, "a soil needs a name", name);
    try {
      TextureRule.classify(sand.doubleValue(), clay.doubleValue());
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
    double om = organic.doubleValue();
    double share = available == null ? 0.2 : available.doubleValue();
    double mmPerHour = intake == null ? 1 : intake.millimetres();
    if (!(om >= 0 && om <= 100)
        || !(share > 0 && share <= 0.6)
        || !(mmPerHour > 0 && mmPerHour <= 1000)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "organic is a percentage, available a share up to 0.6, intake more than 0 and at most"
              + " 40 in (1000 mm) an hour; got "
              + om
              + ", "
              + share
              + ", "
              + Say.both(Measure.RAIN, Length.millimetres(mmPerHour)));
    }
    plan.draft()
        .attributes()
        .add(
            LocalSoil.KEY,
            new LocalSoil(
                name,
                sand.doubleValue(),
                clay.doubleValue(),
                om,
                Optional.ofNullable(intake),
                available == null ? OptionalDouble.empty() : OptionalDouble.of(share),
                source,
                plan.place()),
            plan.place());
  }

  @Verb(
      help = "Says which named soil of the region the yard has.",
      example = "soilNamed('upland loam')")
  public static void soilNamed(
      PlanScope plan,
      @Arg(name = "name", help = "as a `localSoil` names it") String name,
      @Opt(name = "rock", help = "share of volume that is rock", fallback = "0") Number rock,
      @Opt(name = "depth", help = "depth that roots use", fallback = "24 in") Length depth) {
    double stones = rock == null ? 0 : rock.doubleValue();
    Length roots = depth == null ? Length.inches(24) : depth;
    if (!(stones >= 0 && stones < 1) || roots.metres() <= 0 || roots.metres() > 5) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "rock is a share below 1, depth up to 16 ft (5 m); got " + stones + ", " + roots);
    }
    if (plan.draft().attributes().has(SoilGiven.KEY)
        || plan.draft().attributes().has(SoilChoice.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the soil is already given; a yard has one");
    }
    plan.draft()
        .attributes()
        .add(SoilChoice.KEY, new SoilChoice(name, stones, roots, plan.place()), plan.place());
  }

  @Verb(
      help = "Gives a rule that holds where the yard lies; it goes before the generic one.",
      example =
          "localRule('septic', 'No beds within 10 ft of the field.', by: 'county code', year:"
              + " 2020)")
  public static void localRule(
      PlanScope plan,
      @Arg(name = "topic", help = "digging, lead, septic, wells, street, trees …") String topic,
      @Arg(name = "text", help = "the rule in a sentence or two") String text,
      @Opt(name = "by", help = "who says so", fallback = "the publisher of the source") String by,
      @Opt(name = "year", help = "year of the rule", fallback = "not known") Number year,
      @Opt(name = "source", help = SOURCE, fallback = "`by` and `year`, as the plan says")
          Source source) {
    if ((by == null) == (source == null)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "a local rule says who made it: either `by:` or `source: publication(…)`");
    }
    Cite.say(plan, "a local rule needs a topic and a text", topic, text);
    if (by != null) {
      Cite.say(plan, "a local rule needs who says so", by);
    }
    Source says =
        source != null
            ? source
            : new Source(
                topic, by, year == null ? 0 : Cite.year(plan, year), "", Source.Standing.PLAN);
    plan.draft()
        .attributes()
        .add(
            LocalRuleCalculator.KEY,
            new LocalRule(topic, "this yard", LocalRule.PLAN, text, says),
            plan.place());
  }
}
