package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** Lays the kinds that follow others of their bed out on the ground of those. */
final class Followers {
  private Followers() {}

  /**
   * @param rows the plantings of the bed that have ground of their own, in the order of their lines
   */
  static List<Planting> of(Plan plan, Element.Bed bed, List<Planting> rows) {
    List<Planting> followed = new ArrayList<>();
    List<Planting> open = new ArrayList<>(rows);
    for (Entry<Next> line : bed.attributes().all(PlantingKeys.NEXT)) {
      Planting before = before(line, bed, open);
      Planting next =
          Planting.lay(plan, bed, line.place(), line.value().choice(), before.ground())
              .after(before, line.value());
      open.remove(before);
      open.add(next);
      followed.add(next);
    }
    return followed;
  }

  private static Planting before(Entry<Next> line, Element.Bed bed, List<Planting> open) {
    Optional<Planting> found =
        open.stream().filter(p -> p.plant().name().equals(line.value().after())).findFirst();
    return found.orElseThrow(
        () ->
            new PlanException(
                ProblemCode.UNKNOWN_WORD,
                line.place(),
                bed.id()
                    + " has no '"
                    + line.value().after()
                    + "' on ground of its own that nothing follows yet"
                    + (open.isEmpty()
                        ? ""
                        : "; it has "
                            + String.join(
                                ", ",
                                open.stream().map(p -> "'" + p.plant().name() + "'").toList()))
                    + ". Plant it first with plant or plantNext"));
  }
}
