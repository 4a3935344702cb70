package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.drip.DripRun;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.timetable.formula.RunTime;

/**
 * How long a bed's dripline runs in its thirstiest month.
 *
 * @param month 0 (January) to 11
 * @param weekly hours in a week
 */
public record PeakWatering(int month, Derived<TimeSpan> weekly) {
  /** Share of drip water that reaches the roots: what the model ordinance asks of drip at least. */
  public static final double EFFICIENCY = WaterBudget.DRIP_EFFICIENCY;

  /** Empty if the bed needs no water. */
  static Optional<PeakWatering> of(DripRun run, WaterDemand demand) {
    int peak = 0;
    for (int m = 1; m < 12; m++) {
      if (daily(demand, m) > daily(demand, peak)) {
        peak = m;
      }
    }
    if (daily(demand, peak) <= 0) {
      return Optional.empty();
    }
    Length weekDepth = Length.metres(daily(demand, peak) * 7 / run.area().squareMetres());
    Derived<TimeSpan> weekly =
        Derived.by(
                "7 × need / days / bed area / (application rate × efficiency) × 1 h",
                WaterBudget.EFFICIENCIES)
            .from("need of " + Months.name(peak), demand.monthly().get(peak))
            .from("days of " + Months.name(peak), Months.days(peak))
            .from("bed area", run.area())
            .from("application rate", run.rate())
            .from("efficiency", EFFICIENCY)
            .gives(RunTime.of(weekDepth, run.rate().value(), EFFICIENCY));
    return Optional.of(new PeakWatering(peak, weekly));
  }

  /** The same from among all demands; empty if there is none for what it waters. */
  public static Optional<PeakWatering> of(DripRun run, List<WaterDemand> demands) {
    List<WaterDemand> its = demands.stream().filter(d -> run.waters().contains(d.of())).toList();
    return its.isEmpty() ? Optional.empty() : of(run, together(run, its));
  }

  /** What a bed and the trees in it need from one dripline. */
  private static WaterDemand together(DripRun run, List<WaterDemand> demands) {
    if (demands.size() == 1) {
      return demands.get(0);
    }
    List<Derived<Volume>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      Derived.Builder why =
          Derived.by("sum over what the dripline waters", WaterBudget.EFFICIENCIES);
      months.add(why.gives(WaterDemand.together(demands, m, why)));
    }
    return new WaterDemand(run.bed(), months);
  }

  private static double daily(WaterDemand demand, int month) {
    return demand.monthly().get(month).value().cubicMetres() / Months.days(month);
  }
}
