package yardloom.planting.fit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/**
 * Says which families of annuals take more ground than lets them move each year and return after
 * three: a third of all ground with annuals.
 *
 * <p>Perennials stay where they stand and are not counted.
 *
 * <p>References: [1] L. Woodruff, Rotating vegetables by family, Cornell Cooperative Extension,
 * 2021: usually three years, with two years of unrelated vegetables between related ones.
 */
public final class RotationCheck implements Check {
  private static final int YEARS = 3;
  private static final double SLACK = 0.01;
  private static final Source RULE =
      Source.read("Rotating vegetables by family", "Cornell Cooperative Extension", 2021, "");

  @Override
  public String id() {
    return "planting.rotation";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Map<String, Area> ground = new TreeMap<>();
    Map<String, Set<String>> kinds = new TreeMap<>();
    Area all = Area.ZERO;
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      if (p.plant().growth().season().isAnnual() && !p.at().isEmpty()) {
        Area area = p.ground().area();
        // Ground that carries two crops in a year is there once, and once for one family.
        all = p.follows().isPresent() ? all : all.plus(area);
        if (!isFamilyThereBefore(p)) {
          ground.merge(p.plant().family().name(), area, Area::plus);
        }
        kinds
            .computeIfAbsent(p.plant().family().name(), k -> new TreeSet<>())
            .add(p.plant().name());
      }
    }
    StringBuilder much = new StringBuilder();
    for (Map.Entry<String, Area> family : ground.entrySet()) {
      double share = family.getValue().ratioTo(all);
      if (share > 1.0 / YEARS + SLACK) {
        much.append(much.isEmpty() ? "" : "; ")
            .append(family.getKey())
            .append(" (")
            .append(String.join(", ", kinds.get(family.getKey())))
            .append(") takes ")
            .append(Math.round(share * 100))
            .append(" % of the ground with annuals");
      }
    }
    return much.isEmpty()
        ? List.of()
        : List.of(
            Finding.of(
                id(),
                Severity.NOTE,
                much + "; what takes more than a third cannot stay away for two years",
                "grow other families there every other year, or give it a third of the ground;"
                    + " write down each year what stood where",
                RULE));
  }

  private static boolean isFamilyThereBefore(Planting p) {
    for (Planting at = p; at.follows().isPresent(); ) {
      at = at.follows().get().before();
      if (at.plant().family().name().equals(p.plant().family().name())) {
        return true;
      }
    }
    return false;
  }
}
