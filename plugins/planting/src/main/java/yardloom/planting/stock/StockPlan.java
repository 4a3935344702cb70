package yardloom.planting.stock;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.placing.Planting;

/**
 * As what every planting and tree of a plan is bought.
 *
 * @param open the kinds of which neither the plan nor the season of its work says as what
 */
public record StockPlan(Map<Line, StockForm> forms, Set<String> open) {
  /** The plugin's own fact. */
  public static final FactKey<StockPlan> KEY =
      FactKey.one("planting.stock", StockPlan.class).called("stock forms");

  /** One line of the plan, in one bed or of one tree. */
  public record Line(ElementId in, SourceRef place, String plant) {
    public static Line of(Planting p) {
      return new Line(p.bed().id(), p.place(), p.plant().name());
    }

    public static Line of(Planting.Specimen s) {
      return new Line(s.tree().id(), s.place(), s.plant().name());
    }
  }

  public StockPlan {
    // In the order of the plan: a copy without one would lie otherwise wherever lines move, and be
    // taken for another.
    forms = Collections.unmodifiableMap(new LinkedHashMap<>(forms));
    open = Set.copyOf(open);
  }

  public StockForm of(Planting planting) {
    return forms.get(Line.of(planting));
  }

  public StockForm of(Planting.Specimen specimen) {
    return forms.get(Line.of(specimen));
  }

  /** The forms in which a kind is bought. */
  private Set<StockForm> ofKind(String plant) {
    Collection<Map.Entry<Line, StockForm>> all = forms.entrySet();
    return all.stream()
        .filter(e -> e.getKey().plant().equals(plant))
        .map(Map.Entry::getValue)
        .collect(Collectors.toSet());
  }

  /** Whether a period of planting is one of the forms in which a kind is bought. */
  public boolean goesInto(String plant, String how) {
    return open.contains(plant) || ofKind(plant).stream().anyMatch(f -> f.goesInto(how));
  }
}
