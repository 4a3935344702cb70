package yardloom.sun.bed;

import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.sun.yard.YardSun;

/** Says why a plan with beds gets no sun hours. */
public final class SiteCheck implements Check {
  @Override
  public String id() {
    return "sun.site";
  }

  @Override
  public Set<FactKey<?>> explains() {
    return Set.of(YardSun.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    if (plan.site().isPresent() || plan.all(Element.Bed.class).isEmpty()) {
      return List.of();
    }
    return List.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "sun hours were not worked out: the plan does not say where on earth it lies",
            "give the site with latitude, longitude and time zone",
            Source.plan("the plan gives no site")));
  }
}
