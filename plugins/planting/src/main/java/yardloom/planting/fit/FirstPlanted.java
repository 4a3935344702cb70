package yardloom.planting.fit;

import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.check.Finding;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;

/**
 * Where a kind is first planted, so that a finding about the kind is said once.
 *
 * @param plant the kind
 * @param in the bed or tree
 * @param place the script line
 */
record FirstPlanted(Plant plant, ElementId in, SourceRef place) {
  /** By kind, sorted; trees that stand already are left out: they have shown what they bear. */
  static SortedMap<String, FirstPlanted> of(PlantPlaces layout) {
    SortedMap<String, FirstPlanted> kinds = new TreeMap<>();
    layout
        .plantings()
        .forEach(
            p ->
                kinds.putIfAbsent(
                    p.plant().name(), new FirstPlanted(p.plant(), p.bed().id(), p.place())));
    layout.specimens().stream()
        .filter(s -> !s.tree().stands())
        .forEach(
            s ->
                kinds.putIfAbsent(
                    s.plant().name(), new FirstPlanted(s.plant(), s.tree().id(), s.place())));
    return kinds;
  }

  Finding on(Finding finding) {
    return finding.about(in, place);
  }
}
