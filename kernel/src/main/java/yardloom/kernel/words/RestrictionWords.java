package yardloom.kernel.words;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for rights and clearances that bind ground. */
public final class RestrictionWords {
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

  private RestrictionWords() {}

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
    add(
        in,
        Restriction.Kind.EASEMENT,
        "easement " + Making.name("easement", name),
        shape,
        bars,
        holder);
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
        Restriction.Kind.CLEARANCE,
        "clearance of " + Making.name("clearance", name),
        shape.grown(away).minus(shape),
        bars,
        Limits.or(rule, ""));
  }

  private static void add(
      PlanScope in,
      Restriction.Kind kind,
      String reason,
      Shape ground,
      Set<Restriction.Subject> bars,
      String rule) {
    in.draft()
        .attributes()
        .add(
            Restriction.KEY,
            new Restriction(kind, reason, ground, bars, Optional.empty(), rule),
            in.place());
  }
}
