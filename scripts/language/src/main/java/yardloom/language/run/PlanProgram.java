package yardloom.language.run;

import yardloom.kernel.words.PlanScope;

/** What a plan script becomes when it is compiled. */
public abstract class PlanProgram {
  public abstract void run(PlanScope plan);
}
