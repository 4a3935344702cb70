package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Flags rings and drifts of which not all plants found room, and kinds thinned but not planted. */
public final class PlacedCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("plants stand in their bed, half a spacing from its edge");

  @Override
  public String id() {
    return "planting.placed";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      asked(p)
          .filter(asked -> asked > p.at().size())
          .ifPresent(asked -> found.add(lacking(p, asked)));
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      for (Entry<Thinned> e : bed.attributes().all(PlantingKeys.THINNED)) {
        boolean planted =
            bed.attributes().all(PlantingKeys.PLANTS).stream()
                .anyMatch(p -> p.value().plant().equals(e.value().plant()));
        if (!planted) {
          found.add(
              Finding.of(
                      id(),
                      Severity.WARNING,
                      "plantThinned names "
                          + e.value().plant()
                          + ", which no `plant` line of this bed plants",
                      "name a plant that stands in rows here, or take the line out",
                      Source.plan("the plan itself"))
                  .about(bed.id(), e.place()));
        }
      }
    }
    return found;
  }

  private Finding lacking(Planting p, int asked) {
    return Finding.of(
            id(),
            Severity.WARNING,
            "of "
                + asked
                + " "
                + p.plant().name()
                + " only "
                + p.at().size()
                + " find room: the others would stand outside the bed or too close to its edge or"
                + " to what is placed before",
            "widen the bed, or ask for fewer or nearer ones",
            RULE)
        .about(p.bed().id(), p.place());
  }

  /** How many the line of a planting asks for, if it says so. */
  private static Optional<Integer> asked(Planting p) {
    return p.bed().attributes().all(PlantingKeys.PLACED).stream()
        .filter(e -> e.place().equals(p.place()) && e.value().choice().equals(p.choice()))
        .map(e -> e.value().where())
        .flatMap(where -> count(where).stream())
        .findFirst();
  }

  private static Optional<Integer> count(Placement where) {
    if (where instanceof Placement.Points points) {
      return Optional.of(points.at().size());
    } else if (where instanceof Placement.Ring ring) {
      return Optional.of(ring.count());
    }
    return where instanceof Placement.Drift drift ? Optional.of(drift.count()) : Optional.empty();
  }
}
