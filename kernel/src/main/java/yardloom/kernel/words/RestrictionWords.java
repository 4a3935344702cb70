package yardloom.kernel.words;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.SightTriangle;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for rules about ground: sight triangles, easements, clearances, tree protection. */
public final class RestrictionWords {
  /** From where a code measures. */
  enum Datum {
    LOT_LINE,
    RIGHT_OF_WAY,
    CURB
  }

  /** What an easement leaves to the owner. */
  enum Allows {
    PLANTING,
    NOTHING
  }

  /** What keeps away. */
  enum KeptAway {
    BEDS,
    TREES,
    BUILDINGS,
    EVERYTHING
  }

  /**
   * How far digging and paving keep from trunks.
   *
   * @param factor radius over trunk diameter
   */
  public record TreeProtection(double factor, String rule) {
    public static final AttributeKey<TreeProtection> KEY =
        new AttributeKey<>("kernel.tree-protection", TreeProtection.class);
  }

  private RestrictionWords() {}

  @Verb(
      help = "A triangle at a street corner that must stay open between two heights.",
      example =
          "sightTriangle('south', 'east', legFirst: 25.ft, legSecond: 25.ft, clearFrom: 30.inch,"
              + " clearTo: 8.ft, rule: 'street code')")
  public static void sightTriangle(
      LotScope in,
      @Arg(name = "first", help = "a side of the lot at the corner") String first,
      @Arg(name = "second", help = "the other side") String second,
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
      @Opt(
              name = "outside",
              help = "how far these lines run outside of the lot",
              fallback = "0; required unless the datum is the lot line")
          Length outside,
      @Opt(name = "clearFrom", help = "lowest height that stays open", required = true)
          Length clearFrom,
      @Opt(name = "clearTo", help = "greatest height that stays open", required = true)
          Length clearTo,
      @Opt(name = "rule", help = "who says so", fallback = "none: verify locally") String rule) {
    Datum from = Choices.parse(Datum.class, datum, Datum.LOT_LINE);
    if ((from == Datum.LOT_LINE) == (outside != null)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`outside:` says how far the "
              + Choices.text(from)
              + " runs outside of the lot; it goes with a curb or right of way and is needed there");
    }
    if (clearTo.compareTo(clearFrom) <= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`clearTo:` at "
              + Limits.show(clearTo)
              + " must lie above `clearFrom:` at "
              + Limits.show(clearFrom));
    }
    Lot lot = in.draft().lot().orElseThrow();
    Shape triangle =
        SightTriangle.of(
            LotWords.edge(in, lot, first).line(),
            LotWords.edge(in, lot, second).line(),
            Limits.positive("a leg", legFirst, Limits.SETBACK),
            Limits.positive("a leg", legSecond, Limits.SETBACK),
            Limits.or(outside, Length.ZERO));
    in.draft()
        .attributes()
        .add(
            Restriction.KEY,
            new Restriction(
                "sight triangle " + first + "/" + second,
                triangle,
                EnumSet.allOf(Restriction.Subject.class),
                Optional.of(new Restriction.Band(clearFrom, clearTo)),
                Limits.or(rule, "")),
            in.place());
  }

  @Verb(
      help = "Ground on which somebody else holds a right; nothing may be built there.",
      example = "easement('drain', rect(0.ft, 110.ft, 60.ft, 10.ft), holder: 'the city')")
  public static void easement(
      PlanScope in,
      @Arg(name = "name", help = "what it is for") String name,
      @Arg(name = "shape", help = "the ground") Shape shape,
      @Opt(name = "holder", help = "who holds it", required = true) String holder,
      @Opt(
              name = "allows",
              help = "what the owner may still do there",
              fallback = "planting",
              choices = Allows.class)
          String allows) {
    Set<Restriction.Subject> bars =
        EnumSet.of(Restriction.Subject.BUILDINGS, Restriction.Subject.TREES);
    if (Choices.parse(Allows.class, allows, Allows.PLANTING) == Allows.NOTHING) {
      bars = EnumSet.allOf(Restriction.Subject.class);
    }
    add(in, "easement " + Making.name("easement", name), shape, bars, holder);
  }

  @Verb(
      help = "How far something keeps away from a thing, such as beds from a well.",
      example = "clearance('septic field', field.shape, distance: 10.ft, of: 'trees')")
  public static void clearance(
      PlanScope in,
      @Arg(name = "name", help = "what is kept clear of") String name,
      @Arg(name = "shape", help = "its ground") Shape shape,
      @Opt(name = "distance", help = "how far to keep away", required = true) Length distance,
      @Opt(name = "of", help = "what keeps away", required = true, choices = KeptAway.class)
          String of,
      @Opt(name = "rule", help = "who says so", fallback = "none: verify locally") String rule) {
    Length away = Limits.positive("a clearance", distance, Limits.CLEARANCE);
    Set<Restriction.Subject> bars =
        switch (Choices.parse(KeptAway.class, of)) {
          case BEDS -> EnumSet.of(Restriction.Subject.BEDS);
          case TREES -> EnumSet.of(Restriction.Subject.TREES);
          case BUILDINGS -> EnumSet.of(Restriction.Subject.BUILDINGS);
          case EVERYTHING -> EnumSet.allOf(Restriction.Subject.class);
        };
    add(
        in,
        "clearance of " + Making.name("clearance", name),
        shape.grown(away).minus(shape),
        bars,
        Limits.or(rule, ""));
  }

  private static void add(
      PlanScope in, String reason, Shape ground, Set<Restriction.Subject> bars, String rule) {
    in.draft()
        .attributes()
        .add(
            Restriction.KEY,
            new Restriction(reason, ground, bars, Optional.empty(), rule),
            in.place());
  }

  @Verb(
      help = "How wide the protected ground round a trunk is, as a multiple of its diameter.",
      example = "treeProtection(factor: 12, rule: 'tree ordinance')")
  public static void treeProtection(
      PlanScope in,
      @Opt(name = "factor", help = "radius over trunk diameter", required = true) Number factor,
      @Opt(name = "rule", help = "who says so", fallback = "none: verify locally") String rule) {
    double times = factor.doubleValue();
    if (!(times > 0 && times <= 60)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "the factor must lie between 0 and 60 trunk diameters, got " + factor);
    }
    if (in.draft().attributes().has(TreeProtection.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "`treeProtection` is already given");
    }
    in.draft()
        .attributes()
        .add(TreeProtection.KEY, new TreeProtection(times, Limits.or(rule, "")), in.place());
  }
}
