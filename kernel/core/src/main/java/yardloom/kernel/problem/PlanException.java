package yardloom.kernel.problem;

import java.util.List;
import java.util.stream.Collectors;

/** Carries problems out of a plan's reading or calculation; always at least one. */
public final class PlanException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public PlanException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("no problem, no exception");
    }
    this.problems = problems.stream().sorted().toList();
  }

  public PlanException(ProblemCode code, SourceRef place, String message) {
    this(List.of(new Problem(code, place, message)));
  }

  /** A problem whose place the caller will fill in. */
  public PlanException(ProblemCode code, String message) {
    this(code, SourceRef.NONE, message);
  }

  /** The problems, sorted by place. */
  public List<Problem> problems() {
    return problems;
  }

  /** The same problems, those without a place put at {@code where}. */
  public PlanException at(SourceRef where) {
    PlanException placed = new PlanException(problems.stream().map(p -> p.at(where)).toList());
    placed.initCause(this);
    return placed;
  }

  /**
   * The first problem at the word that was given a text, such as a price book: the word's place
   * leads to the text, the message says where in the text.
   */
  public PlanException inTextOf(SourceRef word) {
    Problem first = problems.get(0);
    String where = first.place().line() == 0 ? "" : first.place() + ": ";
    PlanException placed = new PlanException(first.code(), word, where + first.message());
    placed.initCause(this);
    return placed;
  }
}
