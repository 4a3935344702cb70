package yardloom.facts.region;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * The place that a regional file speaks for.
 *
 * @param about where it lies and what it has in common, in a sentence
 * @param place where the file says so; every statement of that file is the region's
 */
public record Region(String name, String about, Source source, SourceRef place) {
  /** Whether a statement is the region's, and not the plan's own. */
  public boolean says(SourceRef statement) {
    return place.file().equals(statement.file());
  }

  /** The plan's own statements, then those of the region, each in the order written. */
  public static <T> List<T> ownFirst(Optional<Region> region, List<Entry<T>> said) {
    return Stream.concat(
            said.stream().filter(e -> region.filter(r -> r.says(e.place())).isEmpty()),
            said.stream().filter(e -> region.filter(r -> r.says(e.place())).isPresent()))
        .map(Entry::value)
        .toList();
  }
}
