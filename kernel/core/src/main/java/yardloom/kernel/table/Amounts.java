package yardloom.kernel.table;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Quantity;

/** Amounts of different kinds in one text column: each with its own unit and decimals. */
public final class Amounts {
  private static final double WEIGHED_FINELY = 10;

  private Amounts() {}

  /** The amount as text; the cell keeps the derivation. */
  public static Cell cell(Plan plan, Derived<?> amount) {
    return new Cell(Optional.of(text(plan, amount.value())), Optional.of(amount));
  }

  private static String text(Plan plan, Object value) {
    if (value instanceof Quantity<?> q) {
      TableFormat format = TableFormat.of(plan.info());
      return isSmallMass(plan, q) ? format.withUnit(q) : format.withUnit(measure(q), q);
    }
    if (value instanceof Double d) {
      return String.format(java.util.Locale.ROOT, "%.1f", d);
    }
    return value.toString();
  }

  /** A few pounds of fertilizer on a small bed are weighed to the ounce, loads are not. */
  private static boolean isSmallMass(Plan plan, Quantity<?> q) {
    return q.dimension() == Dimension.MASS
        && q.in(plan.info().units().unit(Dimension.MASS)) < WEIGHED_FINELY;
  }

  private static Measure measure(Quantity<?> q) {
    return switch (q.dimension()) {
      case LENGTH -> Measure.LENGTH;
      case AREA -> Measure.AREA;
      case VOLUME -> Measure.VOLUME;
      case MASS -> Measure.MASS;
      case DURATION -> Measure.HOURS;
      case MONEY -> Measure.MONEY;
      default -> Measure.TEXT;
    };
  }
}
