package yardloom.water.line;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.timetable.formula.RunTime;
import yardloom.water.zone.PeakNeed;

/**
 * How long a bed's dripline runs in its thirstiest month.
 *
 * @param month 0 (January) to 11
 * @param weekly hours in a week
 */
public record PeakWatering(int month, Derived<TimeSpan> weekly) {
  /** Empty if the bed needs no water, nothing is known of it, or none comes out. */
  public static Optional<PeakWatering> of(
      DripRun run, BedHydraulics bed, List<WaterDemand> demands) {
    return bed.outflow().rate().value().metres() <= 0
        ? Optional.empty()
        : PeakNeed.of(run, demands).map(peak -> of(run, bed, peak));
  }

  private static PeakWatering of(DripRun run, BedHydraulics bed, PeakNeed peak) {
    Length weekDepth = Length.metres(peak.dailyM3() * 7 / run.on().area().squareMetres());
    Derived<TimeSpan> weekly =
        Derived.by(
                "7 × need / days / bed area / (application rate × efficiency) × 1 h",
                WaterBudget.EFFICIENCIES)
            .from("need of " + Months.name(peak.month()), peak.monthly().get(peak.month()))
            .from("days of " + Months.name(peak.month()), Months.days(peak.month()))
            .from("bed area", run.on().area())
            .from("application rate", bed.outflow().rate())
            .from("efficiency", WaterBudget.DRIP_EFFICIENCY)
            .gives(
                RunTime.of(weekDepth, bed.outflow().rate().value(), WaterBudget.DRIP_EFFICIENCY));
    return new PeakWatering(peak.month(), weekly);
  }
}
