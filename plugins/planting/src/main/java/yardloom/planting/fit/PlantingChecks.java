package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinning;
import yardloom.planting.suit.rule.ReasonWords;

/**
 * The rules that need only plan and layout: room, harm, neighbours, and how sure the catalogue is.
 */
public final class PlantingChecks {
  private static final Source ROOM =
      Source.commonPractice("neighbours keep half the sum of their mature spreads apart");

  private PlantingChecks() {}

  public static List<Check> all() {
    return List.of(
        rule("planting.room", PlantingChecks::room),
        rule("planting.tree-room", PlantingChecks::treeRoom),
        rule("planting.spread", SpreadRule::findings),
        rule("planting.harm", PlantingChecks::harm),
        rule("planting.juglone", JugloneRule::findings),
        rule("planting.unverified", PlantingChecks::unverified));
  }

  private interface Rule {
    List<Finding> apply(String id, Plan plan, PlantPlaces layout);
  }

  private static Check rule(String id, Rule rule) {
    return new Check() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public Set<FactKey<?>> reads() {
        return Set.of(PlantPlaces.KEY);
      }

      @Override
      public List<Finding> run(Plan plan, Facts facts) {
        return rule.apply(id, plan, facts.get(PlantPlaces.KEY));
      }
    };
  }

  private static List<Finding> room(String id, Plan plan, PlantPlaces layout) {
    List<Finding> found = new ArrayList<>();
    for (Planting p : layout.plantings()) {
      Plant plant = p.plant();
      if (p.at().isEmpty()) {
        found.add(
            Finding.of(
                    id,
                    Severity.WARNING,
                    "no "
                        + plant.name()
                        + " fits: its part of the bed is narrower than "
                        + ReasonWords.both(plan, p.spacing())
                        + ", and all of the bed than the half of it that one row needs",
                    "widen the bed, give a smaller spacing, or plant nothing else in it",
                    plant.size().inRow().source())
                .about(p.bed().id(), p.place())
                .marking(p.ground()));
      } else if (apart(p).compareTo(plant.size().inRow().low().times(0.999)) < 0) {
        found.add(
            Finding.of(
                    id,
                    Severity.WARNING,
                    plant.name()
                        + " stands at "
                        + ReasonWords.both(plan, p.spacing())
                        + ", closer than the "
                        + ReasonWords.both(plan, plant.size().inRow().low())
                        + " of its source",
                    "space it wider, or thin it as it grows",
                    plant.size().inRow().source())
                .about(p.bed().id(), p.place()));
      }
    }
    return found;
  }

  /** How far they stand apart, once thinned if they are. */
  private static Length apart(Planting p) {
    return Thinning.of(p).map(t -> t.to()).orElse(p.spacing());
  }

  private static List<Finding> treeRoom(String id, Plan plan, PlantPlaces layout) {
    List<Finding> found = new ArrayList<>();
    List<Planting.Specimen> trees = layout.specimens();
    for (int i = 0; i < trees.size(); i++) {
      for (int j = i + 1; j < trees.size(); j++) {
        Planting.Specimen a = trees.get(i);
        Planting.Specimen b = trees.get(j);
        Length apart = a.tree().at().distance(b.tree().at());
        Length wanted = a.width().plus(b.width()).div(2);
        if (apart.compareTo(wanted) < 0) {
          found.add(
              Finding.of(
                      id,
                      Severity.WARNING,
                      a.title()
                          + " and "
                          + b.title()
                          + " at "
                          + b.tree().id()
                          + " stand "
                          + ReasonWords.both(plan, apart)
                          + " apart; grown, they take "
                          + ReasonWords.both(plan, wanted),
                      "move one of them, or choose a smaller tree",
                      ROOM)
                  .about(a.tree().id(), a.place()));
        }
      }
    }
    return found;
  }

  /** One finding for the plan, so that every harmful plant is read in one place. */
  private static List<Finding> harm(String id, Plan plan, PlantPlaces layout) {
    List<Plant> harmful =
        layout.kinds().values().stream().filter(p -> p.caution().harmful()).toList();
    if (harmful.isEmpty()) {
      return List.of();
    }
    // Each source once, behind all that it says.
    Map<Source, List<String>> bySource = new LinkedHashMap<>();
    for (Plant p : harmful) {
      bySource
          .computeIfAbsent(p.caution().source(), s -> new ArrayList<>())
          .add(p.name() + ": " + p.caution().text());
    }
    boolean one = bySource.size() == 1;
    String named =
        bySource.entrySet().stream()
            .map(e -> String.join("; ", e.getValue()) + (one ? "" : " [" + e.getKey().cite() + "]"))
            .collect(Collectors.joining("; "));
    return List.of(
        Finding.of(
            id,
            Severity.NOTE,
            named,
            "tell everyone who lives with the garden; keep children and animals in mind",
            one
                ? harmful.get(0).caution().source()
                : Source.commonPractice("harmful plants are named, each with its source")));
  }

  private static List<Finding> unverified(String id, Plan plan, PlantPlaces layout) {
    String named =
        layout.kinds().values().stream()
            .filter(p -> !p.unverified().isEmpty())
            .map(p -> p.name() + " (" + String.join(", ", p.unverified()) + ")")
            .collect(Collectors.joining("; "));
    return named.isEmpty()
        ? List.of()
        : List.of(
            Finding.of(
                id,
                Severity.NOTE,
                "recalled and not verified in the catalogue are, for " + named,
                "check these against a local source before planting",
                Source.commonPractice("unverified figures are said to be so")));
  }
}
