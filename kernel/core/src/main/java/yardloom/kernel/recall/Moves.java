package yardloom.kernel.recall;

import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.problem.SourceRef;

/**
 * Where statements of a script stand now, by where they stood: each on the lines of the same file,
 * no two on one place, and in the same order, so that nothing that is sorted by place changes its
 * order.
 */
final class Moves {
  private final TreeMap<SourceRef, SourceRef> now = new TreeMap<>();
  private boolean none = true;

  /** Notes a pair; false if it contradicts an earlier one. */
  boolean pair(SourceRef was, SourceRef is) {
    SourceRef known = now.putIfAbsent(was, is);
    if (known != null) {
      return known.equals(is);
    }
    none &= was.equals(is);
    return was.file().equals(is.file())
        && (was.line() == 0) == (is.line() == 0)
        && follows(now.lowerEntry(was), is)
        && precedes(is, now.higherEntry(was));
  }

  private static boolean follows(Map.Entry<SourceRef, SourceRef> lower, SourceRef is) {
    return lower == null || lower.getValue().compareTo(is) < 0;
  }

  private static boolean precedes(SourceRef is, Map.Entry<SourceRef, SourceRef> higher) {
    return higher == null || is.compareTo(higher.getValue()) < 0;
  }

  /** Adds the pairs of others; false if any contradicts. */
  boolean add(Moves others) {
    for (Map.Entry<SourceRef, SourceRef> entry : others.now.entrySet()) {
      if (!pair(entry.getKey(), entry.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** Whether all stand where they stood. */
  boolean areNone() {
    return none;
  }

  /** Where that statement stands now; null if it is not known. */
  SourceRef of(SourceRef was) {
    return was.equals(SourceRef.NONE) ? was : now.get(was);
  }
}
