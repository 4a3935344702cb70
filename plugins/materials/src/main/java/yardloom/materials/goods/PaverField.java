package yardloom.materials.goods;

import java.util.Optional;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * Ground paved with pieces.
 *
 * @param waste share for cuts and breakage
 * @param base compacted base under the bedding sand
 */
public record PaverField(
    String name,
    Shape shape,
    Length length,
    Length width,
    Length thickness,
    double waste,
    Length base,
    SourceRef place) {
  /** On the plan, any number. */
  public static final AttributeKey<PaverField> KEY =
      new AttributeKey<>("materials.pavers", PaverField.class);

  /** The one that counts a paving: of its name, or on half or more of its ground. */
  public static Optional<PaverField> on(Plan plan, Element.Paving paving) {
    return plan.attributes().all(KEY).stream()
        .map(Attributes.Entry::value)
        .filter(field -> field.counts(paving))
        .findFirst();
  }

  private boolean counts(Element.Paving paving) {
    return paving.id().isCalled(name)
        || paving.shape().and(shape).area().compareTo(paving.shape().area().div(2)) >= 0;
  }

  /** The paving that it counts. */
  Optional<ElementId> paving(Plan plan) {
    return plan.all(Element.Paving.class).stream()
        .filter(this::counts)
        .map(Element::id)
        .findFirst();
  }
}
