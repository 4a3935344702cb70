package yardloom.planting.bay;

import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for the place where weeds and prunings of the yard rot down. */
public final class BayWords {
  /** That a structure is a bay for compost. */
  public static final AttributeKey<Boolean> BAY = new AttributeKey<>("planting.bay", Boolean.class);

  /** A heap warms in 3 ft each way at least; its height is that of its bay: common practice. */
  private static final double LEAST_SQFT = 9;

  static final Length HEIGHT = Length.feet(4);

  private BayWords() {}

  @Verb(
      help = "A bay for compost, 4 ft (1.2 m) high: weeds and prunings of the yard stay on site.",
      example = "compostBay('bay', rect(50.ft, 112.ft, 8.ft, 4.ft))")
  public static Handle compostBay(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground it covers, at least 9 sq ft (0.84 m²)") Shape shape,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be built",
              fallback = "false")
          Boolean standing) {
    ElementId id = Making.id(ElementKind.STRUCTURE, name);
    Making.requireGround(id, shape);
    if (shape.area().squareFeet() < LEAST_SQFT - 1e-6) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          String.format(
              java.util.Locale.ROOT,
              "%s covers %s; a heap rots from 9 sq ft (0.84 m²) on, 3 ft (0.9 m)" + " each way",
              id,
              Say.both(Measure.FINE_AREA, shape.area())));
    }
    ElementDraft bay = Making.add(in, id, c -> new Element.Structure(c, shape, HEIGHT));
    Making.standing(bay, Boolean.TRUE.equals(standing));
    bay.attributes().add(BAY, true, in.place());
    return new Handle(id, shape);
  }
}
