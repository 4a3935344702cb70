package yardloom.kernel.fact;

import java.util.Set;

/** Facts for readers that are no calculators: checks, painters, table and sheet makers. */
public final class DeclaredReader {
  private DeclaredReader() {}

  /** {@code facts}, refusing keys outside {@code reads}. */
  public static Facts of(Facts facts, String reader, Set<FactKey<?>> reads) {
    return new DeclaredFacts(facts, reader, FactGraph.ids(reads));
  }
}
