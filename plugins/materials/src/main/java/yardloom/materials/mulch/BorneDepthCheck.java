package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BorneDepth;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * Says where chips lie less deep than is usual in the plan, since the plants would be smothered,
 * and where the plan has them deeper all the same.
 */
public final class BorneDepthCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("chips lie no deeper than the most delicate plant of a bed bears");

  @Override
  public String id() {
    return "materials.borne-depth";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BORNE_DEPTHS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    BorneDepths borne = new BorneDepths(facts.all(YardFacts.BORNE_DEPTHS));
    MulchSettings settings = MulchSettings.of(plan);
    List<Finding> findings = new ArrayList<>();
    List<String> cut = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Optional<BorneDepth> least = borne.of(bed);
      if (least.isEmpty()) {
        continue;
      }
      Length most = least.get().most();
      String on = " (" + least.get().plant() + ", " + Say.depthFor(most, units) + ")";
      List<Entry<Length>> said = bed.attributes().all(GroundKeys.MULCH_DEPTH);
      Length usual = settings.length(LengthSetting.ofBed(bed)).value();
      if (said.isEmpty() && most.compareTo(usual) < 0) {
        cut.add(bed.id() + on);
      } else if (!said.isEmpty() && most.compareTo(last(said).value()) < 0) {
        findings.add(tooDeep(last(said), least.get(), units).about(bed.id(), last(said).place()));
      }
    }
    if (!cut.isEmpty()) {
      findings.add(
          Finding.of(
              id(),
              Severity.NOTE,
              "Chips lie less deep than usual in this plan on "
                  + String.join(", ", cut)
                  + ": more would smother what grows there.",
              "Say `mulch` in the bed to have another depth; keep crowns and stems free.",
              RULE));
    }
    return findings;
  }

  private Finding tooDeep(Entry<Length> said, BorneDepth least, UnitSystem units) {
    return Finding.of(
        id(),
        Severity.WARNING,
        "Chips lie "
            + Say.depthFor(said.value(), units)
            + " deep on "
            + least.plant()
            + ", which bears "
            + Say.depthFor(least.most(), units)
            + ".",
        "Lay less there, or move the plants to another bed.",
        least.source());
  }

  private static Entry<Length> last(List<Entry<Length>> said) {
    return said.get(said.size() - 1);
  }
}
