package yardloom.water.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.water.drip.DripRun;

/**
 * What of the lines is laid now, where the yard is made in parts: dripline with its bed, and all
 * that leads there with the first bed that drinks through it. Sizes are those of the whole yard.
 */
final class NeededNow {
  private final Map<ElementId, PartTurn> turns = new TreeMap<>();
  private final Map<String, ElementId> byFeed = new TreeMap<>();

  NeededNow(Plan plan, Collection<DripRun> runs) {
    for (DripRun run : runs) {
      turns.put(run.bed(), plan.element(run.bed()).map(Element::turn).orElse(PartTurn.NOW));
      run.feeds().keySet().forEach(feed -> byFeed.put(feed, run.bed()));
    }
  }

  /** Whether the whole yard is made now. */
  boolean isAll() {
    return turns.values().stream().allMatch(t -> t == PartTurn.NOW);
  }

  /** Those whose beds are made now. */
  List<DripRun> of(Collection<DripRun> runs) {
    return runs.stream().filter(r -> turns.get(r.bed()) == PartTurn.NOW).toList();
  }

  /** Whether one of these beds is made now and none before. */
  boolean firstFor(Collection<ElementId> beds) {
    if (isAll()) {
      return true;
    }
    Set<PartTurn> its = EnumSet.noneOf(PartTurn.class);
    beds.forEach(bed -> its.add(turns.getOrDefault(bed, PartTurn.NOW)));
    return its.contains(PartTurn.NOW) && !its.contains(PartTurn.DONE);
  }

  boolean firstFor(ZoneLine.PipeRun pipe) {
    return firstFor(beds(pipe));
  }

  /** The same for all pipes of a zone, or of a trench, together. */
  boolean firstForAny(Collection<ZoneLine.PipeRun> pipes) {
    List<ElementId> beds = new ArrayList<>();
    pipes.forEach(p -> beds.addAll(beds(p)));
    return firstFor(beds);
  }

  private List<ElementId> beds(ZoneLine.PipeRun pipe) {
    return pipe.to().stream().filter(byFeed::containsKey).map(byFeed::get).toList();
  }
}
