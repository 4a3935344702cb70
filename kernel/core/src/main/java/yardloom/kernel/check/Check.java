package yardloom.kernel.check;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** Holds one rule against plan and facts. Never feeds a calculator. */
public interface Check {
  /** Plugin and name of the rule. */
  String id();

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** The facts whose absence it speaks of itself, where it matters. */
  default Set<FactKey<?>> explains() {
    return Set.of();
  }

  List<Finding> run(Plan plan, Facts facts);
}
