package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.materials.mulch.formula.MulchLimits;

/** Bare ground at trunks and walls, and depth over roots. */
public final class ClearanceCheck implements Check {
  @Override
  public String id() {
    return "materials.clearances";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    MulchSettings settings = MulchSettings.of(plan);
    List<Finding> findings = new ArrayList<>();
    Length trunk = settings.length(LengthSetting.TRUNK_GAP).value();
    if (!plan.all(Element.Tree.class).isEmpty() && !MulchLimits.trunkGapIsEnough(trunk)) {
      findings.add(
          Finding.of(
              "materials.trunk-gap",
              Severity.WARNING,
              "Chips come within " + Say.depthFor(trunk, plan.info().units()) + " of tree trunks.",
              "Keep chips at least "
                  + Say.depthFor(MulchLimits.TRUNK_GAP, plan.info().units())
                  + " off the bark.",
              MulchLimits.TREES));
    }
    Length ring = settings.length(LengthSetting.TREE_RING_MULCH).value();
    if (hasRings(facts) && MulchLimits.aroundTree(ring, false) == MulchLimits.Verdict.TOO_MUCH) {
      findings.add(
          Finding.of(
              "materials.tree-depth",
              Severity.WARNING,
              "Chips lie " + Say.depthFor(ring, plan.info().units()) + " deep over tree roots.",
              "Use 3 to 4 in (8 to 10 cm) on drained soil, 2 to 3 in (5 to 8 cm) on heavy soil.",
              MulchLimits.TREES));
    }
    Length wall = settings.length(LengthSetting.WALL_GAP).value();
    if (!plan.all(Element.Building.class).isEmpty() && !MulchLimits.wallGapIsEnough(wall)) {
      findings.add(
          Finding.of(
              "materials.wall-gap",
              Severity.WARNING,
              "Mulch comes within "
                  + Say.depthFor(wall, plan.info().units())
                  + " of the house wall.",
              "Keep "
                  + Say.depthFor(MulchLimits.WALL_GAP, plan.info().units())
                  + " bare along the foundation.",
              MulchLimits.HOUSES));
    }
    return findings;
  }

  /** Whether chips lie around any tree. */
  private static boolean hasRings(Facts facts) {
    return facts.all(YardFacts.SURFACES).stream().anyMatch(s -> s.kind() == SurfaceKind.TREE_RING);
  }
}
