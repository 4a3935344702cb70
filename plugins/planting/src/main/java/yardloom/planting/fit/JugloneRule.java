package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.suit.rule.JugloneNearRule;

/** Flags plantings in beds, standing ones too, that suffer from juglone of a tree near them. */
final class JugloneRule {
  private JugloneRule() {}

  static List<Finding> findings(String id, Plan plan, PlantPlaces layout) {
    List<Finding> found = new ArrayList<>();
    List<JugloneNearRule.Poison> trees =
        layout.specimens().stream()
            .filter(s -> s.plant().juglone().makes())
            .map(s -> new JugloneNearRule.Poison(s.plant().name(), s.tree().at()))
            .toList();
    for (Planting p : layout.plantings()) {
      JugloneNearRule.judge(plan, p.plant(), p.at(), trees)
          .map(r -> Reasons.finding(id, Severity.WARNING, p.plant().name(), r))
          .ifPresent(f -> found.add(f.about(p.bed().id(), p.place())));
    }
    return found;
  }
}
