package yardloom.kernel.check;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * What a check found.
 *
 * @param rule plugin and name of the rule, such as {@code kernel.bed-reach}
 * @param text what is so, with value, unit and limit
 * @param advice what to do about it
 * @param where ground to mark on the sheet
 */
public record Finding(
    String rule,
    Severity severity,
    Optional<ElementId> element,
    SourceRef place,
    String text,
    String advice,
    Source source,
    Optional<Shape> where)
    implements Comparable<Finding> {
  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::rule)
          .thenComparing(f -> f.element.map(ElementId::toString).orElse(""))
          .thenComparing(Finding::place)
          .thenComparing(Finding::text);

  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(source);
    if (!rule.matches("[a-z]+(\\.[a-z0-9-]+)+") || text.isBlank()) {
      throw new IllegalArgumentException("a finding needs a rule id and a text: " + rule);
    }
  }

  /** A finding about the plan as a whole. */
  public static Finding of(
      String rule, Severity severity, String text, String advice, Source source) {
    return new Finding(
        rule, severity, Optional.empty(), SourceRef.NONE, text, advice, source, Optional.empty());
  }

  /** The same finding about an element written at {@code at}. */
  public Finding about(ElementId id, SourceRef at) {
    return new Finding(rule, severity, Optional.of(id), at, text, advice, source, where);
  }

  /** The same finding about what is written at {@code at} and is no element. */
  public Finding at(SourceRef at) {
    return new Finding(rule, severity, element, at, text, advice, source, where);
  }

  /** The ground to mark, if there is any. */
  public Optional<Shape> ground() {
    return where.filter(shape -> !shape.isEmpty());
  }

  /** The same finding with ground to mark. */
  public Finding marking(Shape ground) {
    return new Finding(rule, severity, element, place, text, advice, source, Optional.of(ground));
  }

  /** The same finding, decided by the plan's author; its advice is the reason. */
  public Finding accepted(String why) {
    return new Finding(
        rule, Severity.ACCEPTED, element, place, text, "accepted: " + why, source, where);
  }

  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }
}
