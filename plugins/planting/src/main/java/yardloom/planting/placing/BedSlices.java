package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.BedShares;
import yardloom.planting.placing.formula.TallKinds;

/**
 * The slices of a bed that its {@code plant} lines have, in the order of the lines along it. Where
 * that would put a tall kind on the sunny side of a low one, the taller ones go to the side of the
 * pole instead; not if the plan keeps the order, or any of them stands already.
 */
final class BedSlices {
  /** Of the bed's length, how much must lie along the meridian: 45°. */
  static final double MOSTLY = Math.sqrt(0.5);

  private BedSlices() {}

  /** The slice of each line. */
  static List<Shape> of(Plan plan, Element.Bed bed, Shape ground) {
    List<Entry<PlantChoice>> lines = bed.attributes().all(PlantingKeys.PLANTS);
    if (ground.isEmpty()) {
      return lines.stream().map(l -> Shape.EMPTY).toList();
    }
    List<Integer> order = order(plan, bed, ground);
    List<Optional<Double>> shares =
        order.stream().map(line -> lines.get(line).value().share()).toList();
    try {
      List<Shape> pieces = BedShares.cut(ground, shares);
      Shape[] slices = new Shape[lines.size()];
      IntStream.range(0, slices.length).forEach(i -> slices[order.get(i)] = pieces.get(i));
      return Arrays.asList(slices);
    } catch (PlanException e) {
      throw e.at(lines.get(0).place());
    }
  }

  /** The lines of a bed by number, as they follow along its ground. */
  static List<Integer> order(Plan plan, Element.Bed bed, Shape ground) {
    List<Entry<PlantChoice>> lines = bed.attributes().all(PlantingKeys.PLANTS);
    List<Integer> written = IntStream.range(0, lines.size()).boxed().toList();
    Optional<Poleward> pole = Poleward.of(plan);
    boolean kept =
        bed.attributes().get(PlantingKeys.KEPT_ORDER).isPresent()
            || lines.stream().anyMatch(l -> l.value().stands());
    if (kept || lines.size() < 2 || pole.isEmpty() || ground.isEmpty()) {
      return written;
    }
    double along =
        StrictMath.cos(LongAxis.of(ground).bearing().radians() - pole.get().bearing().radians());
    List<Length> heights =
        lines.stream()
            .map(l -> PlantCatalogue.of(plan).plant(l.value().plant()).size().height().middle())
            .toList();
    if (Math.abs(along) <= MOSTLY || !isShaded(along > 0 ? heights : reversed(heights))) {
      return written;
    }
    List<List<Integer>> tiers = TallKinds.tiers(heights);
    return (along > 0 ? reversed(tiers) : tiers).stream().flatMap(List::stream).toList();
  }

  /** Whether any kind overtops one that follows it towards the pole. */
  private static boolean isShaded(List<Length> heights) {
    return IntStream.range(0, heights.size())
        .anyMatch(
            i ->
                heights.subList(i + 1, heights.size()).stream()
                    .anyMatch(low -> TallKinds.overtops(heights.get(i), low)));
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> turned = new ArrayList<>(list);
    Collections.reverse(turned);
    return turned;
  }
}
