package yardloom.soil.region;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Region;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.soil.region.LocalCheck.Nearer;

/**
 * Runs the checks that regional files and plans state in words.
 *
 * <p>Distances are the least between the two, as {@link Measured} says; a thing at the limit is far
 * enough. Whatever a check finds is to be verified where the yard lies: rules change, and what a
 * file says of them is nobody's ruling. A check that asks for the soil's intake says so where the
 * plan does not give it.
 */
public final class LocalChecks implements Check {
  private static final String VERIFY = " Verify locally.";

  @Override
  public String id() {
    return "soil.local-checks";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL, YardFacts.REGION);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<Length> intake =
        facts.find(YardFacts.SOIL).flatMap(SoilProfile::intakePerHour).map(Derived::value);
    List<Finding> findings = new ArrayList<>();
    for (LocalCheck check :
        Region.ownFirst(facts.find(YardFacts.REGION), plan.attributes().all(LocalCheck.KEY))) {
      findings.addAll(run(check, plan, intake));
    }
    return findings;
  }

  private static List<Finding> run(LocalCheck check, Plan plan, Optional<Length> intake) {
    UnitSystem units = plan.info().units();
    List<Element> subjects = Measured.elements(plan, check.kind(), check.named());
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
    Measured own = Measured.of(e);
    return Measured.targets(plan, nearer).stream()
        .filter(o -> !o.id().equals(own.id()))
        .min(Comparator.comparing(own::distance))
        .filter(o -> own.distance(o).isShortOf(nearer.than()))
        .map(
            o ->
                finding(
                        check,
                        e,
                        " "
                            + e.id()
                            + " lies "
                            + Say.distance(own.distance(o), units)
                            + " from "
                            + o.title()
                            + "; the limit is "
                            + Say.distance(nearer.than(), units)
                            + "."
                            + soil)
                    .marking(e.shape().and(o.around().apply(nearer.than()))));
  }

  private static Finding finding(LocalCheck check, Element e, String why) {
    return Finding.of(
            check.rule(),
            Severity.WARNING,
            check.say() + why,
            check.advice() + VERIFY,
            check.source())
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
