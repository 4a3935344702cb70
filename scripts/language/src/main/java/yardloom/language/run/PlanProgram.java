package yardloom.language.run;

import yardloom.kernel.scope.PlanScope;

/** What a plan script becomes when it is compiled. */
public abstract class PlanProgram {
  public abstract void run(PlanScope plan);
}
