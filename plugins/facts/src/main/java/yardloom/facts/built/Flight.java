package yardloom.facts.built;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * A flight of garden steps, on the paving that shows its ground.
 *
 * @param run from its foot to its head, level
 * @param rise from its foot to its head, upright
 * @param width of its treads, across the way
 * @param riser the most from tread to tread
 */
public record Flight(Length run, Length rise, Length width, Length riser) {
  /** On paving. */
  public static final AttributeKey<Flight> KEY = new AttributeKey<>("site.flight", Flight.class);

  /** Steps up, the last one onto the upper ground: rise / greatest riser, rounded up. */
  public int risers() {
    return (int) Math.max(1, Math.ceil(rise.ratioTo(riser) - 1e-9));
  }

  /** Height of each step. */
  public Length step() {
    return rise.div(risers());
  }

  /** Depth of each tread, of which there is one less than risers; the run where there is none. */
  public Length tread() {
    return run.div(Math.max(1, risers() - 1));
  }
}
