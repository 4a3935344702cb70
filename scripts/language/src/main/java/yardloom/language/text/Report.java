package yardloom.language.text;

import java.util.List;
import java.util.TreeSet;
import org.codehaus.groovy.ast.ASTNode;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** Collects the problems of one script file; the same problem twice is kept once. */
public final class Report {
  private final String file;
  private final TreeSet<Problem> problems = new TreeSet<>();

  public Report(String file) {
    this.file = file;
  }

  public SourceRef place(ASTNode node) {
    return place(node.getLineNumber(), node.getColumnNumber());
  }

  public SourceRef place(int line, int column) {
    return line < 1 ? new SourceRef(file, 0, 0) : new SourceRef(file, line, Math.max(column, 0));
  }

  public void add(ProblemCode code, ASTNode node, String message) {
    problems.add(new Problem(code, place(node), message));
  }

  public void add(ProblemCode code, int line, int column, String message) {
    problems.add(new Problem(code, place(line, column), message));
  }

  public void addAll(List<Problem> others) {
    problems.addAll(others);
  }

  /** Whether a problem is already known at exactly this place. */
  public boolean knows(ASTNode node) {
    SourceRef place = place(node);
    return problems.stream().anyMatch(p -> p.place().equals(place));
  }

  public boolean isEmpty() {
    return problems.isEmpty();
  }

  public List<Problem> problems() {
    return List.copyOf(problems);
  }
}
