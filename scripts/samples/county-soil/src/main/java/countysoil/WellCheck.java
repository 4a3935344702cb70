package countysoil;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;

/** Finds beds nearer to a well than the county allows. */
public final class WellCheck implements Check {
  private static final Source RULE = Source.plan("rule of the county, as the plan gives it");

  @Override
  public String id() {
    return "countysoil.well-distance";
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (var entry : plan.attributes().all(CountySoilWords.Well.KEY)) {
      CountySoilWords.Well well = entry.value();
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        Length is = bed.shape().distance(well.at());
        if (is.isShortOf(well.distance())) {
          findings.add(
              Finding.of(
                      id(),
                      Severity.WARNING,
                      "lies "
                          + Say.distance(is, plan.info().units())
                          + " from "
                          + well.name()
                          + "; the rule is "
                          + Say.distance(well.distance(), plan.info().units()),
                      "move the bed, or grow there what needs no compost",
                      RULE)
                  .about(bed.id(), bed.place()));
        }
      }
    }
    return findings;
  }
}
