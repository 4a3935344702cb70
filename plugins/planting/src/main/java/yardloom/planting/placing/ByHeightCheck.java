package yardloom.planting.placing;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Says in which beds kinds follow by height and not as their lines are written. */
public final class ByHeightCheck implements Check {
  @Override
  public String id() {
    return "planting.by-height";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return plan.all(Element.Bed.class).stream()
        .filter(bed -> isByHeight(plan, bed))
        .map(this::said)
        .toList();
  }

  private static boolean isByHeight(Plan plan, Element.Bed bed) {
    List<Integer> order =
        bed.shape().isEmpty()
            ? List.of()
            : BedSlices.order(plan, bed, PlacedPlants.of(plan, bed).rest());
    return !order.equals(IntStream.range(0, order.size()).boxed().toList());
  }

  private Finding said(Element.Bed bed) {
    return Finding.of(
            id(),
            Severity.NOTE,
            "the kinds of "
                + bed.id()
                + " stand by height, the tall ones nearer the pole, so that they do not shade the"
                + " low ones; as written they would",
            "leave it so, or write keepOrder with the reason in its block",
            TallSideCheck.RULE)
        .about(bed.id(), bed.attributes().all(PlantingKeys.PLANTS).get(0).place());
  }
}
