package yardloom.facts.mulch;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * The heap on its spot.
 *
 * @param load what is tipped at once
 * @param ground what it covers
 * @param form {@code cone} or {@code windrow}
 * @param middle where barrows are loaded
 * @param fits whether it stays on the spot
 */
public record DropPile(
    DropZone spot,
    Derived<Volume> load,
    Shape ground,
    String form,
    Derived<Length> height,
    Length width,
    Length length,
    Point middle,
    boolean fits) {
  /**
   * The heap that all loads of {@code item} come to and are carried from: the first whose spot is
   * named for it, else the first of all; none without heaps.
   */
  public static Optional<DropPile> taking(String item, List<DropPile> piles) {
    return piles.stream()
        .filter(p -> p.isFor(item))
        .findFirst()
        .or(() -> piles.stream().findFirst());
  }

  /** Whether its spot is named for what the bill calls {@code item}. */
  public boolean isFor(String item) {
    return spot.material().title().equals(item);
  }
}
