package yardloom.water.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.LawnWater;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.WaterText;

/** Says when a garden takes more water than the lawn did, and which trees lose the lawn's water. */
public final class LawnCheck implements Check {
  private static final Source SUMS = Source.commonPractice("a year of one against the other");
  private static final Source TREES =
      Source.commonPractice("trees in a watered lawn live on its water");

  @Override
  public String id() {
    return "water.lawn";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.LAWN_WATER);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<LawnWater> lawn = facts.find(YardFacts.LAWN_WATER);
    SourceRef place =
        plan.attributes().all(FormerLawn.KEY).stream()
            .map(e -> e.place())
            .findFirst()
            .orElse(SourceRef.NONE);
    lawn.filter(l -> l.yearlySaving().compareTo(Volume.ZERO) < 0)
        .ifPresent(l -> found.add(thirstier(l.yearlySaving().times(-1), plan).at(place)));
    lawn.ifPresent(l -> trees(l, plan).ifPresent(found::add));
    return found;
  }

  private Finding thirstier(Volume more, Plan plan) {
    return Finding.of(
        id(),
        Severity.NOTE,
        "grown, the garden takes "
            + WaterText.both(plan, more)
            + " more from the tap in an average year than the lawn did",
        "choose plants that ask for less, plant less of the ground, or catch roof water",
        SUMS);
  }

  /** One finding for all of them, with the month in which they miss the lawn's water most. */
  private Optional<Finding> trees(LawnWater lawn, Plan plan) {
    int peak = 0;
    for (int m = 1; m < 12; m++) {
      if (lawn.trees().get(m).value().compareTo(lawn.trees().get(peak).value()) > 0) {
        peak = m;
      }
    }
    Volume most = lawn.trees().get(peak).value();
    if (most.compareTo(Volume.ZERO) <= 0) {
      return Optional.empty();
    }
    List<Element.Tree> trees = StandingTrees.of(plan).trees().stream().map(s -> s.tree()).toList();
    String names = NameRuns.text(trees.stream().map(t -> t.id().name()).toList());
    return Optional.of(
        Finding.of(
                id(),
                Severity.NOTE,
                "trees lose the water of the lawn under their crowns: "
                    + names
                    + ", in "
                    + Months.name(peak)
                    + " about "
                    + WaterText.both(plan, most),
                "soak the ground under the crown now and then in dry weather, less each year",
                TREES)
            .about(trees.get(0).id(), trees.get(0).place()));
  }
}
