package yardloom.soil.region;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * A check that a regional file states: elements of a kind for which all given conditions hold.
 *
 * @param rule the finding's rule, such as {@code region.basins-off-walls}
 * @param named text that the element's name must hold; empty for every name
 * @param nearer nearer than this to another element or a side of the lot
 * @param intakeBelow on soil that takes in less water than this in an hour
 */
public record LocalCheck(
    String name,
    String rule,
    ElementKind kind,
    String named,
    Optional<Nearer> nearer,
    Optional<Length> intakeBelow,
    String say,
    String advice,
    Source source,
    SourceRef place) {
  /** On the plan, any number: checks that hold where it lies. */
  public static final AttributeKey<LocalCheck> KEY =
      new AttributeKey<>("soil.local-check", LocalCheck.class);

  /**
   * A distance to keep.
   *
   * @param named text that the other's name must hold; empty for every name
   */
  public record Nearer(Length than, Target to, String named) {}

  /** Kinds that have a place of their own to measure from. */
  public enum Subject {
    BED,
    PATH,
    TREE,
    BUILDING,
    STRUCTURE,
    FENCE,
    PAVING,
    WATER_POINT,
    UTILITY,
    KEEP_OUT;

    public ElementKind kind() {
      return ElementKind.valueOf(name());
    }
  }

  /** What can be measured to: the same kinds, and the sides of the lot. */
  public enum Target {
    BED,
    PATH,
    TREE,
    BUILDING,
    STRUCTURE,
    FENCE,
    PAVING,
    WATER_POINT,
    UTILITY,
    KEEP_OUT,
    LOT_LINE
  }
}
