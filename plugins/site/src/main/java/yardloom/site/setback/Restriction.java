package yardloom.site.setback;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * Ground on which some things may not stand, by a rule that the plan or a regional file states.
 *
 * @param kind what sort of rule it is, which decides how it is drawn
 * @param reason what the rule is about, for tables
 * @param bars what may not stand there
 * @param band heights above ground between which nothing may stand; empty for all heights
 * @param rule who says so; empty means that it is to be verified
 */
public record Restriction(
    Kind kind, String reason, Shape ground, Set<Subject> bars, Optional<Band> band, String rule) {
  public static final AttributeKey<Restriction> KEY =
      new AttributeKey<>("site.restriction", Restriction.class);

  /** Sorts of rules. */
  public enum Kind {
    SIGHT_TRIANGLE,
    EASEMENT,
    CLEARANCE
  }

  /** What a rule may bar. */
  public enum Subject {
    BEDS,
    TREES,
    BUILDINGS,
    FENCES
  }

  /** A band of heights above ground. */
  public record Band(Length from, Length to) {}

  public Restriction {
    bars = Set.copyOf(bars);
  }
}
