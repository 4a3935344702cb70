package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.materials.mulch.formula.MulchLimits;

/** Chips over roots on soil that drains slowly. */
public final class HeavySoilCheck implements Check {
  @Override
  public String id() {
    return "materials.heavy-soil";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL, YardFacts.SURFACES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    if (soil.isEmpty()) {
      return List.of();
    }
    MulchSettings settings = MulchSettings.of(plan);
    List<Finding> findings = new ArrayList<>();
    var ring = settings.length(LengthSetting.TREE_RING_MULCH).value();
    if (soil.get().heavy()
        && hasRings(facts)
        && MulchLimits.aroundTree(ring, true) == MulchLimits.Verdict.TOO_MUCH) {
      findings.add(
          Finding.of(
              "materials.heavy-soil-depth",
              Severity.WARNING,
              "Chips lie "
                  + Say.depthFor(ring, plan.info().units())
                  + " deep over tree roots in heavy soil.",
              "Use 2 to 3 in (5 to 8 cm) there: sheetMulch { chips treeRing: 3.inch } or 8.cm.",
              MulchLimits.TREES));
    }
    return findings;
  }

  /** Whether chips lie around any tree. */
  private static boolean hasRings(Facts facts) {
    return facts.all(YardFacts.SURFACES).stream().anyMatch(s -> s.kind() == SurfaceKind.TREE_RING);
  }
}
