package yardloom.site.element;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** A rule that reads the plan only. */
public record ShapeRule(String id, Body body) implements Check {
  /** Finds what is wrong with a plan. */
  public interface Body {
    List<Finding> find(Plan plan);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return body.find(plan).stream().sorted().toList();
  }
}
