package yardloom.site.setback;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
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

  @Verb(
      help = "Ground that must not be built or planted on.",
      example = "keepOut('septic field', rect(5.ft, 80.ft, 20.ft, 30.ft), reason: 'leach field')")
  public static Handle keepOut(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground") Shape shape,
      @Opt(name = "reason", help = "why", required = true) String reason) {
    ElementId id = Making.id(ElementKind.KEEP_OUT, name);
    Making.requireGround(id, shape);
    Making.add(in, id, c -> new Element.KeepOut(c, shape, reason));
    return new Handle(id, shape);
  }

  @Verb(
      help =
          "The drain field of a septic system: nothing stands on it, and trees and food keep off.",
      example = "drainField('drain field', rect(5.ft, 80.ft, 20.ft, 30.ft), beds: 10.ft)")
  public static Handle drainField(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground") Shape shape,
      @Opt(
              name = "beds",
              help = "how far beds of annuals keep away from it",
              fallback = "10 ft; the health department decides")
          Length beds) {
    ElementId id = Making.id(ElementKind.KEEP_OUT, name);
    Making.requireGround(id, shape);
    Length away =
        Limits.positive(
            "the distance of beds", Limits.or(beds, DrainField.USUAL), Limits.CLEARANCE);
    Making.add(in, id, c -> new Element.KeepOut(c, shape, "drain field"))
        .attributes()
        .add(DrainField.KEY, new DrainField(away), in.place());
    return new Handle(id, shape);
  }
}
