package yardloom.materials.mulch;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.mulch.BorneDepth;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * How deep chips lie on a bed: as its own {@code mulch} says, else as deep as is usual in the plan,
 * but never deeper than the most delicate of its plants bears.
 */
public final class BorneDepths {
  private final Map<ElementId, BorneDepth> least = new TreeMap<>();

  public BorneDepths(List<BorneDepth> all) {
    Comparator<BorneDepth> order =
        Comparator.comparing(BorneDepth::most).thenComparing(BorneDepth::plant);
    all.forEach(d -> least.merge(d.in(), d, (a, b) -> order.compare(a, b) <= 0 ? a : b));
  }

  /** What the most delicate kind of a bed bears, if any kind grows there. */
  public Optional<BorneDepth> of(Element bed) {
    return Optional.ofNullable(least.get(bed.id()));
  }

  /** The usual depth, cut to what the bed's plants bear. */
  public Derived<Length> cut(Element bed, Derived<Length> usual) {
    return of(bed)
        .filter(d -> d.most().compareTo(usual.value()) < 0)
        .map(
            d ->
                Derived.by("min(usual depth, depth borne)", d.source())
                    .from("usual depth", usual)
                    .from("depth borne", d.most())
                    .from("by", d.plant())
                    .gives(d.most()))
        .orElse(usual);
  }
}
