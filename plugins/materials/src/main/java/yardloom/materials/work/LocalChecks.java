package yardloom.materials.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.model.LocalCheck;
import yardloom.materials.model.LocalCheck.Nearer;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Say;

/**
 * Runs the checks that regional files and plans state in words.
 *
 * <p>Distances are the least between the outlines (a tree's is its crown), and a thing at the limit
 * is far enough. A check that asks for the soil's intake says so where the plan does not give it.
 */
public final class LocalChecks implements Check {
  @Override
  public String id() {
    return "materials.local-checks";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<Length> intake =
        facts.find(YardFacts.SOIL).flatMap(SoilProfile::intakePerHour).map(Derived::value);
    List<Finding> findings = new ArrayList<>();
    for (LocalCheck check : LocalData.of(plan).ranked(MaterialKeys.LOCAL_CHECK)) {
      findings.addAll(run(check, plan, intake));
    }
    return findings;
  }

  private static List<Finding> run(LocalCheck check, Plan plan, Optional<Length> intake) {
    UnitSystem units = plan.info().units();
    List<Element> subjects =
        plan.elements().stream()
            .filter(e -> e.id().kind() == check.kind() && e.id().name().contains(check.named()))
            .toList();
    if (subjects.isEmpty()) {
      return List.of();
    }
    String soil = "";
    if (check.intakeBelow().isPresent()) {
      Length limit = check.intakeBelow().get();
      if (intake.isEmpty()) {
        return List.of(unjudged(check));
      }
      if (intake.get().compareTo(limit) >= 0) {
        return List.of();
      }
      soil =
          " The soil takes in "
              + Say.fineDepth(intake.get(), units)
              + " an hour; the check asks for at least "
              + Say.fineDepth(limit, units)
              + ".";
    }
    List<Finding> findings = new ArrayList<>();
    for (Element e : subjects) {
      if (check.nearer().isEmpty()) {
        findings.add(finding(check, e, " It holds for " + e.id() + "." + soil));
      } else {
        near(check, e, check.nearer().get(), plan, soil).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> near(
      LocalCheck check, Element e, Nearer nearer, Plan plan, String soil) {
    UnitSystem units = plan.info().units();
    return plan.elements().stream()
        .filter(o -> o.id().kind() == nearer.to() && !o.id().equals(e.id()))
        .min(Comparator.comparing(o -> e.shape().distance(o.shape())))
        .filter(o -> e.shape().distance(o.shape()).compareTo(nearer.than()) < 0)
        .map(
            o ->
                finding(
                        check,
                        e,
                        " "
                            + e.id()
                            + " lies "
                            + Say.distance(e.shape().distance(o.shape()), units)
                            + " from "
                            + o.id()
                            + "; the limit is "
                            + Say.distance(nearer.than(), units)
                            + "."
                            + soil)
                    .marking(e.shape().and(o.shape().grown(nearer.than()))));
  }

  private static Finding finding(LocalCheck check, Element e, String why) {
    return Finding.of(
            check.rule(), Severity.WARNING, check.say() + why, check.advice(), check.source())
        .about(e.id(), e.place());
  }

  private static Finding unjudged(LocalCheck check) {
    return Finding.of(
            check.rule(),
            Severity.NOTE,
            "The check \"" + check.name() + "\" could not be made: the soil's intake is not known.",
            "Name the soil with `soilNamed`, or give its texture with `soil` or `jarTest`.",
            check.source())
        .at(check.place());
  }
}
