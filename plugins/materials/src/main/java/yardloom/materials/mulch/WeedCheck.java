package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;

/** Weeds that outlast sheet mulch. */
public final class WeedCheck implements Check {
  @Override
  public String id() {
    return "materials.weeds";
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (var entry : plan.attributes().all(Weed.KEY)) {
      findings.add(finding(entry.value(), "on the site", plan.info().units()).at(entry.place()));
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      for (var entry : bed.attributes().all(Weed.KEY)) {
        findings.add(
            finding(entry.value(), "in " + bed.id(), plan.info().units())
                .about(bed.id(), entry.place()));
      }
    }
    return findings;
  }

  private static Finding finding(Weed weed, String where, UnitSystem units) {
    return Finding.of(
        "materials.weed",
        Severity.WARNING,
        weed.name() + " grows " + where + " and outlasts a plain sheet mulch.",
        "Before laying: "
            + weed.advice()
            + ". The take-off counts "
            + weed.layers()
            + " layers of cardboard and "
            + Say.depth(weed.extraChips(), units)
            + " more chips there.",
        weed.source());
  }
}
