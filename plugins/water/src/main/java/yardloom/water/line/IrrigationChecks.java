package yardloom.water.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.DripRun;
import yardloom.water.zone.Zone;

/** Holds dripline against what tube and supply can carry and the soil can take. */
public final class IrrigationChecks implements Check {
  private static final Source SOAKS =
      Source.commonPractice("water comes no faster than the soil takes it");
  private static final Source EVEN =
      Source.commonPractice("outlet flows along one row differ by at most 10 percent");

  @Override
  public String id() {
    return "water.irrigation";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        DripRun.KEY, BedHydraulics.KEY, Zone.KEY, ZoneLine.KEY, Trenches.KEY, YardFacts.SOIL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      BedHydraulics solved = BedHydraulics.of(run.bed(), facts);
      if (solved.isUneven()) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    String.format(
                        Locale.ROOT,
                        "outlets of the bed differ by %.0f percent; 10 percent is usual, which a row"
                            + " of up to %s keeps",
                        solved.variation().value() * 100,
                        length(plan, solved.longestRun().value())),
                    "feed the rows from their middle, shorten them, or use outlets that compensate"
                        + " pressure",
                    EVEN)
                .about(run.bed(), run.place()));
      }
    }
    facts
        .find(YardFacts.SOIL)
        .flatMap(SoilProfile::intakePerHour)
        .ifPresent(intake -> fasterThanSoil(plan, facts, intake, found));
    for (Zone zone : facts.all(Zone.KEY)) {
      if (zone.flow().value().compareTo(zone.limit().value().times(1 + 1e-9)) > 0) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    "the dripline of this bed takes "
                        + both(plan, zone.flow().value())
                        + ", the supply gives "
                        + both(plan, zone.limit().value()),
                    "use outlets of less flow, wider spacing, or split the bed",
                    zone.limit().source())
                .about(zone.beds().get(0), placeOf(facts, zone.beds().get(0))));
      }
    }
    return found;
  }

  /**
   * One finding, on the fastest bed: water that the soil does not take runs off under the chips.
   */
  private void fasterThanSoil(Plan plan, Facts facts, Derived<Length> intake, List<Finding> found) {
    facts.all(BedHydraulics.KEY).stream()
        .filter(r -> r.rate().value().compareTo(intake.value()) > 0)
        .max(Comparator.comparing(r -> r.rate().value()))
        .ifPresent(
            fastest ->
                found.add(
                    Finding.of(
                            id(),
                            Severity.NOTE,
                            "the dripline gives "
                                + perHour(plan, fastest.rate().value())
                                + ", the soil takes "
                                + perHour(plan, intake.value()),
                            "water in short turns with an hour between, or use outlets of less flow",
                            SOAKS)
                        .about(fastest.bed(), placeOf(facts, fastest.bed()))));
  }

  private static String length(Plan plan, Length length) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.0f ft", length.feet()),
            String.format(Locale.ROOT, "%.1f m", length.metres()));
  }

  private static String perHour(Plan plan, Length depth) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.2f in an hour", depth.inches()),
            String.format(Locale.ROOT, "%.0f mm an hour", depth.millimetres()));
  }

  private static SourceRef placeOf(Facts facts, ElementId bed) {
    return facts.all(DripRun.KEY).stream()
        .filter(r -> r.bed().equals(bed))
        .findFirst()
        .map(DripRun::place)
        .orElse(SourceRef.NONE);
  }

  private static String both(Plan plan, Flow flow) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.2f gpm", flow.gallonsPerMinute()),
            String.format(Locale.ROOT, "%.0f L/h", flow.litresPerHour()));
  }
}
