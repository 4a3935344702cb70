package yardloom.soil.texture;

import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Region;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** Gives the yard's soil as tested or as named, if the plan says either. */
public final class GivenSoilCalculator implements Calculator {
  @Override
  public String id() {
    return "soil.given-soil";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(SoilGiven.FACT);
  }

  /**
   * {@inheritDoc}
   *
   * @throws PlanException (UNKNOWN_WORD) for a name that no {@code localSoil} gives
   */
  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<LocalSoil> named =
        Region.ownFirst(in.find(YardFacts.REGION), plan.attributes().all(LocalSoil.KEY));
    plan.attributes()
        .get(SoilGiven.KEY)
        .or(() -> plan.attributes().get(SoilChoice.KEY).map(c -> named(c, named)))
        .ifPresent(soil -> out.give(SoilGiven.FACT, soil));
  }

  private static SoilGiven named(SoilChoice choice, List<LocalSoil> soils) {
    LocalSoil soil =
        soils.stream()
            .filter(s -> s.name().equals(choice.name()))
            .findFirst()
            .orElseThrow(() -> unknown(choice, soils.stream().map(LocalSoil::name).toList()));
    return new SoilGiven(
        soil.sand(),
        soil.clay(),
        soil.organic(),
        choice.rock(),
        choice.depth(),
        soil.available(),
        soil.intake(),
        soil.source(),
        choice.place());
  }

  private static PlanException unknown(SoilChoice choice, List<String> names) {
    String known =
        names.isEmpty()
            ? " No soil is named; include a regional file that gives the local soil."
            : " Named are: " + String.join(", ", names) + ".";
    return new PlanException(
        ProblemCode.UNKNOWN_WORD,
        choice.place(),
        "no soil is named '" + choice.name() + "'." + Nearest.hint(choice.name(), names) + known);
  }
}
