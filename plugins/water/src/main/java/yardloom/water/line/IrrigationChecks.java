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
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.DripChoice;
import yardloom.water.drip.DripRun;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.OwnPart;
import yardloom.water.head.Supply;
import yardloom.water.route.LineWays;
import yardloom.water.zone.Zone;

/** Holds dripline against what tube and supply can carry and the soil can take. */
public final class IrrigationChecks implements Check {
  private static final Source SOAKS =
      Source.commonPractice("water comes no faster than the soil takes it");
  private static final Source EVEN =
      Source.commonPractice("outlet flows along one row differ by at most 10 percent");

  private static final Source WAYS =
      Source.commonPractice("pipe lies on open ground and along edges, not under walls or in beds");
  private static final Source WATERED =
      Source.commonPractice("every bed is watered, or is meant to stay dry");

  /**
   * Below this share of the rated flow water is too little to speak of evenness (common practice).
   */
  private static final double WEAK = 0.5;

  @Override
  public String id() {
    return "water.irrigation";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        DripRun.KEY,
        BedHydraulics.KEY,
        Zone.KEY,
        ZoneLine.KEY,
        Trenches.KEY,
        LineWays.KEY,
        YardFacts.SOIL);
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
                        "outlets of the bed differ by %.0f percent; 10 percent is usual, which a"
                            + " row of up to %s keeps",
                        solved.evenness().variation().value() * 100,
                        length(plan, solved.rows().limit().value())),
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
    lowPressure(plan, facts, found);
    noWay(facts, found);
    noWater(plan, facts, found);
    ownParts(plan, facts, found);
    HighestOutlet.finding(plan, facts, id()).ifPresent(found::add);
    for (Zone zone : facts.all(Zone.KEY)) {
      if (zone.flow().value().compareTo(zone.limit().value().times(1 + 1e-9)) > 0) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    (zone.beds().size() == 1
                            ? "the dripline of this bed takes "
                            : "the dripline of zone " + zone.number() + " takes ")
                        + both(plan, zone.flow().value())
                        + ", the supply gives "
                        + both(plan, zone.limit().value()),
                    "use outlets of less flow, wider spacing, or split the "
                        + (zone.beds().size() == 1 ? "bed" : "zone"),
                    zone.limit().source())
                .about(zone.beds().get(0), placeOf(facts, zone.beds().get(0))));
      }
    }
    return found;
  }

  /** Outlets that get no water at all, or less than half of what they are rated for. */
  private void lowPressure(Plan plan, Facts facts, List<Finding> found) {
    for (DripRun run : facts.all(DripRun.KEY)) {
      BedHydraulics solved = BedHydraulics.of(run.bed(), facts);
      Pressure least = solved.pressures().least().value();
      boolean isDry = least.compareTo(Pressure.ZERO) <= 0;
      boolean isWeak =
          // Plain outlets below a tank give little by intent; its levels have a check of their own.
          !Supply.isTank(plan)
                  && solved
                          .outflow()
                          .flow()
                          .value()
                          .compareTo(run.totals().rated().value().times(WEAK))
                      < 0
              || run.choice().isTooLow(least);
      if (isDry || isWeak) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    isDry
                        ? "outlets of the bed get no water: the ground or the lines take all"
                            + " pressure"
                        : "outlets of the bed have "
                            + pressure(plan, least)
                            + " at least and give "
                            + both(plan, solved.outflow().flow().value())
                            + " of the rated "
                            + both(plan, run.totals().rated().value()),
                    "raise the tank, feed the bed from higher up, widen the pipe, or use outlets"
                        + " for low pressure",
                    EVEN)
                .about(run.bed(), run.place()));
      }
    }
  }

  /** A part that is said and stands nowhere. */
  private void ownParts(Plan plan, Facts facts, List<Finding> found) {
    if (facts.all(DripRun.KEY).isEmpty()) {
      return;
    }
    for (OwnPart own : HeadAssembly.of(plan).unused(Supply.isTank(plan))) {
      found.add(
          Finding.of(
                  id(),
                  Severity.WARNING,
                  "the part \""
                      + own.part().name()
                      + "\" belongs "
                      + (own.isAdded() ? "behind" : "in the place of")
                      + " the "
                      + own.at()
                      + ", which this head assembly has not",
                  "say so in `headAssembly`, or give the part another place",
                  own.part().source())
              .at(own.place()));
    }
  }

  private void noWay(Facts facts, List<Finding> found) {
    facts
        .find(Trenches.KEY)
        .filter(t -> !t.missed().isEmpty())
        .ifPresent(
            t ->
                found.add(
                    Finding.of(
                        id(),
                        Severity.WARNING,
                        "no way for pipe leads from the tap to " + String.join(", ", t.missed()),
                        "leave open ground or a path between the tap and the bed; its line is"
                            + " neither drawn nor bought",
                        WAYS)));
  }

  /** Where some beds have dripline, one without is an oversight unless the plan says otherwise. */
  private void noWater(Plan plan, Facts facts, List<Finding> found) {
    List<DripRun> runs = facts.all(DripRun.KEY);
    if (runs.isEmpty()) {
      return;
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      boolean isWatered = runs.stream().anyMatch(r -> r.on().waters().contains(bed.id()));
      if (!isWatered && bed.attributes().all(DripChoice.DRY).isEmpty()) {
        found.add(
            Finding.of(
                    id(),
                    Severity.NOTE,
                    "the bed has no dripline while others have",
                    "lay `drip` in it, or say `dry 'why'` in its block",
                    WATERED)
                .about(bed.id(), bed.place()));
      }
    }
  }

  private static String pressure(Plan plan, Pressure pressure) {
    return Say.both(Measure.PRESSURE, pressure, plan.info().units());
  }

  /**
   * One finding, on the fastest bed: water that the soil does not take runs off under the chips.
   */
  private void fasterThanSoil(Plan plan, Facts facts, Derived<Length> intake, List<Finding> found) {
    facts.all(BedHydraulics.KEY).stream()
        .filter(r -> r.outflow().rate().value().compareTo(intake.value()) > 0)
        .max(Comparator.comparing(r -> r.outflow().rate().value()))
        .ifPresent(
            fastest ->
                found.add(
                    Finding.of(
                            id(),
                            Severity.NOTE,
                            "the dripline gives "
                                + perHour(plan, fastest.outflow().rate().value())
                                + ", the soil takes "
                                + perHour(plan, intake.value()),
                            "water in the turns of the timetable, or use outlets of less flow",
                            SOAKS)
                        .about(fastest.bed(), placeOf(facts, fastest.bed()))));
  }

  private static String length(Plan plan, Length length) {
    return Say.both(Measure.LENGTH, length, plan.info().units());
  }

  private static String perHour(Plan plan, Length depth) {
    return Say.both(Measure.RAIN, depth, plan.info().units()) + " an hour";
  }

  private static SourceRef placeOf(Facts facts, ElementId bed) {
    return facts.all(DripRun.KEY).stream()
        .filter(r -> r.bed().equals(bed))
        .findFirst()
        .map(DripRun::place)
        .orElse(SourceRef.NONE);
  }

  private static String both(Plan plan, Flow flow) {
    return Say.both(Measure.FLOW, flow, plan.info().units());
  }
}
