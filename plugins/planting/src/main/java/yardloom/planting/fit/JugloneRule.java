package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/**
 * Flags plants that suffer from juglone within 60 ft of a black walnut.
 *
 * <p>The source asks for 50 to 60 ft; the wider figure is used.
 *
 * <p>References: [1] Iowa State University Extension, PM 814, Where to put your vegetable garden,
 * revised May 2005 (tomatoes, eggplant, peppers).
 */
final class JugloneRule {
  /** The distance from which nothing is flagged. */
  static final Length LIMIT = Length.feet(60);

  private JugloneRule() {}

  static List<Finding> findings(String id, Plan plan, PlantPlaces layout) {
    List<Finding> found = new ArrayList<>();
    List<Point> walnuts =
        layout.specimens().stream()
            .filter(s -> s.plant().name().equals("black walnut"))
            .map(s -> s.tree().at())
            .toList();
    for (Planting p : layout.plantings()) {
      Optional<Length> nearest =
          walnuts.stream()
              .flatMap(w -> p.at().stream().map(w::distance))
              .min(Comparator.naturalOrder());
      if (nearest.isPresent()
          && p.plant().juglone().isPresent()
          && nearest.get().compareTo(LIMIT) < 0) {
        found.add(
            Finding.of(
                    id,
                    Severity.WARNING,
                    p.plant().name()
                        + " stands "
                        + PlantingChecks.both(plan, nearest.get())
                        + " from a black walnut, whose roots poison it",
                    "keep it at least " + PlantingChecks.both(plan, LIMIT) + " away",
                    p.plant().juglone().get())
                .about(p.bed().id(), p.place()));
      }
    }
    return found;
  }
}
