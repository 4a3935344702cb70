package yardloom.soil.texture;

import java.util.List;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.soil.texture.formula.ProfileWater;

/** Cardboard on soil that takes in water slowly. */
public final class SlowSoilCheck implements Check {
  private static final Source CARDBOARD =
      Source.read(
          "Sheet mulching, aka lasagna composting",
          "Oregon State University Extension",
          0,
          "caution on cardboard");

  @Override
  public String id() {
    return "soil.slow-soil";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL, YardFacts.SURFACES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    boolean slow =
        facts
            .find(YardFacts.SOIL)
            .flatMap(SoilProfile::intakePerHour)
            .map(i -> ProfileWater.intakeClass(i.value().millimetres()))
            .filter(c -> c == ProfileWater.IntakeClass.SLOW)
            .isPresent();
    if (!slow || facts.all(YardFacts.SURFACES).stream().allMatch(s -> s.sheets().isEmpty())) {
      return List.of();
    }
    return List.of(
        Finding.of(
            "soil.slow-soil",
            Severity.NOTE,
            "Water enters this soil slowly, and cardboard slows it further.",
            "Loosen with a fork before laying, or use chips alone (sheetMulch { chipsOnly() }).",
            CARDBOARD));
  }
}
