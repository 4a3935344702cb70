package yardloom.water.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.drip.DripRun;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.WaterBudget;

/**
 * When what a dripline waters is thirstiest.
 *
 * @param month 0 (January) to 11
 * @param monthly net need of all that it waters, January to December
 */
public record PeakNeed(int month, List<Derived<Volume>> monthly) {
  public PeakNeed {
    monthly = List.copyOf(monthly);
  }

  /** Empty if nothing it waters needs water, or nothing is known of it. */
  public static Optional<PeakNeed> of(DripRun run, List<WaterDemand> demands) {
    List<WaterDemand> its =
        demands.stream().filter(d -> run.on().waters().contains(d.of())).toList();
    if (its.isEmpty()) {
      return Optional.empty();
    }
    List<Derived<Volume>> months = its.size() == 1 ? its.get(0).monthly() : together(its);
    int peak = 0;
    for (int m = 1; m < 12; m++) {
      if (daily(months, m) > daily(months, peak)) {
        peak = m;
      }
    }
    return daily(months, peak) > 0 ? Optional.of(new PeakNeed(peak, months)) : Optional.empty();
  }

  private static List<Derived<Volume>> together(List<WaterDemand> demands) {
    List<Derived<Volume>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      Derived.Builder why =
          Derived.by("sum over what the dripline waters", WaterBudget.EFFICIENCIES);
      months.add(why.gives(WaterDemand.together(demands, m, why)));
    }
    return months;
  }

  private static double daily(List<Derived<Volume>> months, int month) {
    return months.get(month).value().cubicMetres() / Months.days(month);
  }

  /** Cubic metres a day in that month. */
  public double dailyM3() {
    return daily(monthly, month);
  }

  /** How long a dripline runs for a day of its thirstiest month at the flow it is rated for. */
  static double hours(DripRun run, List<WaterDemand> demands) {
    double flow = run.totals().rated().value().cubicMetresPerSecond();
    return of(run, demands).map(p -> p.dailyM3() / flow).orElse(0.0);
  }
}
