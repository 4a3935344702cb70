package yardloom.work.client;

import java.math.BigDecimal;
import java.math.MathContext;
import yardloom.facts.Harvest;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

/** A year's harvest in words, to two digits: no harvest is known better. */
final class YieldInWords {
  private YieldInWords() {}

  /** Such as {@code 120 to 310 lb}. */
  static String range(Plan plan, Harvest harvest) {
    TableFormat format = TableFormat.of(plan.info());
    Cell low = Cell.of(twoDigits(plan, harvest.low().value()));
    return format.text(Column.of("low", "Low", Measure.MASS), low)
        + " to "
        + format.withUnit(Measure.MASS, twoDigits(plan, harvest.high().value()));
  }

  private static Mass twoDigits(Plan plan, Mass mass) {
    return mass.times(share(mass.in(plan.info().units().unit(mass.dimension()))));
  }

  /** Water in two digits: it depends on the year's weather. */
  static Volume twoDigits(Plan plan, Volume water) {
    return water.times(share(water.in(Measure.WATER.unit(plan.info().units()).orElseThrow())));
  }

  private static double share(double shown) {
    return shown == 0
        ? 1
        : BigDecimal.valueOf(shown).round(new MathContext(2)).doubleValue() / shown;
  }
}
