package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.placing.PlantPlaces;

/**
 * Says which plants the winter of the site's hardiness zone kills, and which miss their winter
 * there. Each kind is named once, where it is first planted.
 */
public final class HardinessCheck implements Check {
  @Override
  public String id() {
    return "planting.hardiness";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.HARDINESS, PlantPlaces.KEY);
  }

  private record First(ElementId in, SourceRef place) {}

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<Hardiness> site = facts.find(YardFacts.HARDINESS);
    if (site.isEmpty()) {
      return found;
    }
    TreeMap<String, First> kinds = new TreeMap<>();
    PlantPlaces layout = facts.get(PlantPlaces.KEY);
    layout
        .plantings()
        .forEach(p -> kinds.putIfAbsent(p.plant().name(), new First(p.bed().id(), p.place())));
    layout
        .specimens()
        .forEach(s -> kinds.putIfAbsent(s.plant().name(), new First(s.tree().id(), s.place())));
    kinds.forEach(
        (plant, first) ->
            PlantZones.of(plant)
                .flatMap(z -> judge(plant, z, site.get()))
                .ifPresent(f -> found.add(f.about(first.in(), first.place()))));
    return found;
  }

  private Optional<Finding> judge(String plant, PlantZones.Zones zones, Hardiness site) {
    boolean cold = site.zone() < zones.coldest();
    if (!cold && site.zone() <= zones.warmest()) {
      return Optional.empty();
    }
    String text =
        plant
            + " is hardy in zones "
            + zones.coldest()
            + " to "
            + zones.warmest()
            + "; this yard lies in zone "
            + site.text()
            + " ("
            + site.source().cite()
            + ")";
    return Optional.of(
        Finding.of(
            id(),
            cold ? Severity.WARNING : Severity.NOTE,
            text,
            cold
                ? "choose a hardier kind or variety, or grow it in a pot that winters indoors"
                : "ask a local nursery for a variety that bears in warm winters",
            zones.source()));
  }
}
