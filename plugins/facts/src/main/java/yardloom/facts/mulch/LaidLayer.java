package yardloom.facts.mulch;

import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * One layer of a stack over one surface, laid in one go: chips that come in two lifts are two.
 *
 * @param phase when it is laid
 * @param depth the depth as laid, away from tapered edges; empty for sheets and tube
 * @param amount exact, without allowance: a volume in place, pieces of cardboard, or a length of
 *     tube
 */
public record LaidLayer(
    Material material, WorkPhase phase, Optional<Derived<Length>> depth, Derived<?> amount) {

  /** A layer of compost or chips. */
  public static LaidLayer bulk(
      Material material, WorkPhase phase, Derived<Length> depth, Derived<Volume> volume) {
    return new LaidLayer(material, phase, Optional.of(depth), volume);
  }

  /** The volume in place, if it is a layer of bulk. */
  public Optional<Derived<Volume>> volume() {
    return amount.value() instanceof Volume volume
        ? Optional.of(amount.map(any -> volume))
        : Optional.empty();
  }
}
