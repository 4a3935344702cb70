package yardloom.language.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.SourceRef;

/**
 * What went wrong inside blocks of a running script. The script goes on behind such a block, so
 * that the mistakes of several beds are told at once; the plan is refused at its end.
 */
final class Failures {
  /** More would not be read, and a loop may make any number. */
  private static final int MOST = 20;

  private final List<Problem> problems = new ArrayList<>();
  private final Set<SourceRef> owners = new HashSet<>();

  /**
   * Takes the problem of a block.
   *
   * @param owner the word that the block belongs to
   * @return whether the script may go on
   */
  boolean add(PlanException inBlock, SourceRef owner) {
    owners.add(owner);
    problems.addAll(inBlock.problems());
    return problems.size() < MOST;
  }

  /** Refuses the plan if a block failed. */
  void refuse() {
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
  }

  /**
   * All problems with {@code last}, which ended the script. What a word misses after its own block
   * failed is no news.
   */
  PlanException with(PlanException last) {
    if (problems.isEmpty()) {
      return last;
    }
    List<Problem> all = new ArrayList<>(problems);
    last.problems().stream()
        .filter(p -> !owners.contains(p.place()) && !all.contains(p))
        .forEach(all::add);
    PlanException joined = new PlanException(all);
    joined.initCause(last);
    return joined;
  }
}
