package yardloom.planting.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** Rotates the annuals of the plan over the parts of its beds that they stand on, if asked. */
public final class RotationCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.rotation-plan";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(RotationPlan.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<Integer> years = plan.attributes().get(RotationWords.YEARS);
    if (years.isEmpty()) {
      return;
    }
    // What follows another in the year goes round with it, on one plot.
    List<List<Planting>> crops =
        in.get(PlantPlaces.KEY).byGround().stream()
            .filter(c -> c.get(0).plant().growth().season().isAnnual())
            .toList();
    List<Planting> annuals = crops.stream().map(c -> c.get(0)).toList();
    List<Set<String>> families = crops.stream().map(RotationCalculator::families).toList();
    List<int[]> moved = YearsApart.of(families, years.get());
    List<String> names = names(annuals);
    List<RotationPlan.Plot> plots = new ArrayList<>();
    for (int plot = 0; plot < annuals.size(); plot++) {
      List<String> kinds = new ArrayList<>();
      List<Integer> early = new ArrayList<>();
      for (int year = 0; year < years.get(); year++) {
        int kind = moved.get(year)[plot];
        kinds.add(named(crops.get(kind)));
        if (YearsApart.isEarly(families, moved, year, plot, kind)) {
          early.add(year + 1);
        }
      }
      plots.add(new RotationPlan.Plot(names.get(plot), kinds, early));
    }
    out.give(RotationPlan.KEY, new RotationPlan(years.get(), plots));
  }

  private static Set<String> families(List<Planting> crops) {
    return crops.stream()
        .map(p -> p.plant().family().name())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String named(List<Planting> crops) {
    return crops.stream()
        .map(p -> p.plant().name() + " (" + p.plant().family().name() + ")")
        .collect(Collectors.joining(", then "));
  }

  /** The bed, with a number where several kinds share it. */
  private static List<String> names(List<Planting> annuals) {
    Map<String, Integer> parts = new TreeMap<>();
    annuals.forEach(p -> parts.merge(p.bed().id().name(), 1, Integer::sum));
    Map<String, Integer> seen = new TreeMap<>();
    List<String> names = new ArrayList<>();
    for (Planting p : annuals) {
      String bed = p.bed().id().name();
      int part = seen.merge(bed, 1, Integer::sum);
      names.add(parts.get(bed) == 1 ? bed : bed + ", part " + part);
    }
    return names;
  }
}
