package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.suit.rule.JugloneNearRule;

/**
 * Flags plants that suffer from juglone within 60 ft of a tree whose roots give it off.
 *
 * <p>The source asks for 50 to 60 ft; the wider figure is used.
 *
 * <p>References: [1] Iowa State University Extension, PM 814, Where to put your vegetable garden,
 * revised May 2005 (tomatoes, eggplant, peppers).
 */
final class JugloneRule {
  /** A tree that gives off juglone, and how far a plant stands from it. */
  private record Near(Planting.Specimen tree, Length distance) {}

  private JugloneRule() {}

  static List<Finding> findings(String id, Plan plan, PlantPlaces layout) {
    List<Finding> found = new ArrayList<>();
    List<Planting.Specimen> poisonous =
        layout.specimens().stream().filter(s -> s.plant().makesJuglone()).toList();
    for (Planting p : layout.plantings()) {
      Optional<Near> nearest =
          poisonous.stream()
              .flatMap(s -> p.at().stream().map(at -> new Near(s, s.tree().at().distance(at))))
              .min(Comparator.comparing(Near::distance));
      if (nearest.isPresent()
          && p.plant().juglone().isPresent()
          && nearest.get().distance().compareTo(JugloneNearRule.LIMIT) < 0) {
        found.add(
            Finding.of(
                    id,
                    Severity.WARNING,
                    p.plant().name()
                        + " stands "
                        + PlantingChecks.both(plan, nearest.get().distance())
                        + " from a "
                        + nearest.get().tree().plant().name()
                        + ", whose roots poison it",
                    "keep it at least "
                        + PlantingChecks.both(plan, JugloneNearRule.LIMIT)
                        + " away",
                    p.plant().juglone().get())
                .about(p.bed().id(), p.place()));
      }
    }
    return found;
  }
}
