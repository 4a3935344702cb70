package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.suit.rule.ChillRule;
import yardloom.planting.suit.rule.Suits;
import yardloom.planting.traits.ChillNeeds;

/**
 * Says which fruit lacks winter chill: trees by what the plan says of them, kinds by the catalogue.
 *
 * <p>A kind is found as a warning where the winter has fewer hours than the variety that asks for
 * least needs, as a note where it depends on the variety. Each kind is named once.
 */
public final class ChillCheck implements Check {
  private static final Source CULTIVARS =
      Source.commonPractice("fruit trees with too little chill leaf out late and bear little");

  @Override
  public String id() {
    return "planting.chill";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.WINTER_CHILL, PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<Double> hours = facts.find(YardFacts.WINTER_CHILL).map(c -> c.hours().value());
    if (hours.isEmpty()) {
      return found;
    }
    Set<ElementId> said = new HashSet<>();
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      for (Entry<Double> need : tree.attributes().all(ChillWords.CHILL)) {
        said.add(tree.id());
        if (hours.get() < need.value()) {
          found.add(lacking(hours.get(), need).about(tree.id(), need.place()));
        }
      }
    }
    FirstPlanted.of(facts.get(PlantPlaces.KEY))
        .forEach(
            (plant, first) ->
                ChillNeeds.of(first.plant())
                    .filter(need -> !said.contains(first.in()))
                    .flatMap(need -> judge(plant, need, hours.get()))
                    .ifPresent(f -> found.add(first.on(f))));
    return found;
  }

  private Optional<Finding> judge(String plant, ChillNeeds.Need need, double hours) {
    return ChillRule.judge(need, hours)
        .map(
            reason ->
                Reasons.finding(
                    id(),
                    reason.suits() == Suits.DOES_NOT_FIT ? Severity.WARNING : Severity.NOTE,
                    plant,
                    reason));
  }

  private Finding lacking(double hours, Entry<Double> need) {
    return Finding.of(
        id(),
        Severity.WARNING,
        String.format(Locale.ROOT, "it asks for %.0f h of winter chill", need.value())
            + ChillRule.here(hours),
        "choose a variety that needs less chill",
        CULTIVARS);
  }
}
