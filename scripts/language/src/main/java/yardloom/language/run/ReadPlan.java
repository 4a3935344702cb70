package yardloom.language.run;

import java.util.List;
import yardloom.kernel.plan.Plan;
import yardloom.language.compile.SourceFile;

/**
 * A plan and all files that it was read from.
 *
 * @param sources the script, what it includes and the data it names; with the parameters and the
 *     words that are known, the plan depends on nothing else
 */
public record ReadPlan(Plan plan, List<SourceFile> sources) {
  public ReadPlan {
    sources = List.copyOf(sources);
  }
}
