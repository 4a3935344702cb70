package yardloom.site.setback;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.SightTriangle;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;

/** Words for the ground at street corners over which drivers must see. */
public final class SightWords {
  /** What a code asks at every street corner; a triangle may differ from it. */
  public record SightRule(
      Length legFirst, Length legSecond, Datum datum, Restriction.Band clear, String rule) {
    public static final AttributeKey<SightRule> KEY =
        new AttributeKey<>("site.sight-rule", SightRule.class);
  }

  /**
   * The legs of a sight triangle, for drawing.
   *
   * @param corner where the lines that the code measures along meet
   * @param clear heights between which nothing may stand
   */
  public record Legs(Point corner, Point first, Point second, Restriction.Band clear) {
    public static final AttributeKey<Legs> KEY = new AttributeKey<>("site.sight-legs", Legs.class);
  }

  private SightWords() {}

  @Verb(
      help =
          "What a code asks at street corners, for every `sightTriangle` that does not say"
              + " otherwise. A regional file states it; stand it before the lot.",
      example =
          "sightRule(legFirst: 30.ft, legSecond: 30.ft, clearFrom: 30.inch, clearTo: 8.ft, rule:"
              + " 'street code')")
  public static void sightRule(
      PlanScope in,
      @Opt(name = "legFirst", help = "its length along the first side", required = true)
          Length legFirst,
      @Opt(name = "legSecond", help = "its length along the second side", required = true)
          Length legSecond,
      @Opt(
              name = "datum",
              help = "the lines that the code measures along",
              fallback = "lot line",
              choices = Datum.class)
          String datum,
      @Opt(name = "clearFrom", help = "lowest height that stays open", required = true)
          Length clearFrom,
      @Opt(name = "clearTo", help = "greatest height that stays open", required = true)
          Length clearTo,
      @Opt(name = "rule", help = "who says so", required = true) String rule) {
    Making.once(in, SightRule.KEY, r -> true, "the rule for sight triangles");
    in.draft()
        .attributes()
        .add(
            SightRule.KEY,
            new SightRule(
                Limits.positive("a leg", legFirst, Limits.SETBACK),
                Limits.positive("a leg", legSecond, Limits.SETBACK),
                Choices.parse(Datum.class, datum, Datum.LOT_LINE),
                clear(in, clearFrom, clearTo),
                rule),
            in.place());
  }

  @Verb(
      help = "A triangle at a street corner that must stay open between two heights.",
      example =
          "sightTriangle('south', 'east', legFirst: 25.ft, legSecond: 25.ft, clearFrom: 30.inch,"
              + " clearTo: 8.ft, rule: 'street code')")
  public static void sightTriangle(
      LotScope in,
      @Arg(name = "first", help = "a side of the lot at the corner") String first,
      @Arg(name = "second", help = "the other side") String second,
      @Opt(
              name = "legFirst",
              help = "its length along the first side",
              fallback = "from `sightRule`")
          Length legFirst,
      @Opt(
              name = "legSecond",
              help = "its length along the second side",
              fallback = "from `sightRule`")
          Length legSecond,
      @Opt(
              name = "datum",
              help = "the lines that the code measures along",
              fallback = "from `sightRule`, or lot line",
              choices = Datum.class)
          String datum,
      @Opt(
              name = "outside",
              help = "how far these lines run outside of the lot",
              fallback = "0; required unless the datum is the lot line")
          Length outside,
      @Opt(
              name = "clearFrom",
              help = "lowest height that stays open",
              fallback = "from `sightRule`")
          Length clearFrom,
      @Opt(
              name = "clearTo",
              help = "greatest height that stays open",
              fallback = "from `sightRule`")
          Length clearTo,
      @Opt(
              name = "rule",
              help = "who says so",
              fallback = "from `sightRule`, or none: verify locally")
          String rule) {
    List<Attributes.Entry<SightRule>> all = in.draft().attributes().all(SightRule.KEY);
    Optional<SightRule> asked =
        all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1).value());
    Datum from =
        Choices.parse(Datum.class, datum, asked.map(SightRule::datum).orElse(Datum.LOT_LINE));
    Length out = from.outside(in, outside);
    Restriction.Band clear =
        clear(
            in,
            need(in, "clearFrom", clearFrom, asked.map(r -> r.clear().from())),
            need(in, "clearTo", clearTo, asked.map(r -> r.clear().to())));
    Length along = need(in, "legFirst", legFirst, asked.map(SightRule::legFirst));
    Length beside = need(in, "legSecond", legSecond, asked.map(SightRule::legSecond));
    Lot lot = in.draft().lot().orElseThrow();
    List<Point> corners =
        SightTriangle.corners(
            SideWords.edge(in, lot, first).line(),
            SideWords.edge(in, lot, second).line(),
            Limits.positive("a leg", along, Limits.SETBACK),
            Limits.positive("a leg", beside, Limits.SETBACK),
            out);
    in.draft()
        .attributes()
        .add(
            Restriction.KEY,
            new Restriction(
                Restriction.Kind.SIGHT_TRIANGLE,
                "sight triangle " + first + "/" + second,
                Shape.polygon(corners),
                EnumSet.allOf(Restriction.Subject.class),
                Optional.of(clear),
                Limits.or(rule, asked.map(SightRule::rule).orElse(""))),
            in.place())
        .add(Legs.KEY, new Legs(corners.get(0), corners.get(1), corners.get(2), clear), in.place());
  }

  private static Length need(Scope in, String name, Length given, Optional<Length> asked) {
    if (given == null && asked.isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "the sight triangle needs `"
              + name
              + ":`, as the street code of the place gives it; or state the code once with"
              + " `sightRule` before the lot");
    }
    return given == null ? asked.get() : given;
  }

  private static Restriction.Band clear(Scope in, Length from, Length to) {
    if (to.compareTo(from) <= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`clearTo:` at "
              + Limits.show(to)
              + " must lie above `clearFrom:` at "
              + Limits.show(from));
    }
    return new Restriction.Band(from, to);
  }
}
