package yardloom.sheet.label;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;

/**
 * A place that one label may take, with what is known of it: what no other label changes is found
 * out once, when it is first asked, however often all labels are set anew.
 */
final class Place {
  private final Box box;
  private final Quad quad;
  private final boolean upright;
  private final double cost;
  private Boolean allowed;
  private Linework.Under under;
  private boolean whole;
  private double more = Double.NaN;

  /**
   * @param cost how bad it is without what it covers
   */
  Place(Box box, boolean upright, double cost) {
    this.box = box;
    this.quad = Quad.of(box);
    this.upright = upright;
    this.cost = cost;
  }

  Box box() {
    return box;
  }

  Quad quad() {
    return quad;
  }

  boolean upright() {
    return upright;
  }

  double cost() {
    return cost;
  }

  /** Whether it may be taken at all, if no other label has it. */
  boolean isAllowed(BooleanSupplier question) {
    if (allowed == null) {
      allowed = question.getAsBoolean();
    }
    return allowed;
  }

  /** As {@link Linework#under}, always at the same price. */
  Linework.Under under(Linework lines, Linework.Price price, double most) {
    if (under == null || !whole && under.isWhole(most)) {
      under = lines.under(box, price, most);
      whole = under.isWhole(most);
    }
    return under;
  }

  /** What it costs besides. */
  double more(DoubleSupplier question) {
    if (Double.isNaN(more)) {
      more = question.getAsDouble();
    }
    return more;
  }
}
