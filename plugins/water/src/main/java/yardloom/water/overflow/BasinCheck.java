package yardloom.water.overflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.WaterText;

/** Basins that are too small, too slow, too near to a house, off the lot, or for no roof. */
public final class BasinCheck implements Check {
  private static final Length FROM_HOUSE = Length.feet(10);
  private static final TimeSpan DAY = TimeSpan.hours(24);
  private static final Source SITING =
      Source.read(
          "Rain Gardens: a how-to manual for homeowners, GWQ037",
          "University of Wisconsin Extension and Wisconsin DNR",
          0,
          "10 ft and more from buildings; dry within a day");

  @Override
  public String id() {
    return "water.basin";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (Entry<Basin> entry : plan.attributes().all(Basin.KEY)) {
      Optional<Element.Roof> roof = entry.value().roof(plan);
      if (roof.isEmpty()) {
        found.add(
            finding(
                entry,
                "there is no roof '" + entry.value().drains() + "', so it is not sized",
                "name a roof of the plan"));
      } else {
        size(plan, facts, entry, roof.get()).ifPresent(found::add);
      }
      slow(facts, entry).ifPresent(found::add);
      near(plan, entry).ifPresent(found::add);
      plan.lot()
          .filter(lot -> !lot.shape().covers(entry.value().shape()))
          .ifPresent(
              lot -> found.add(finding(entry, "it lies beyond the lot", "keep all of it inside")));
    }
    return found;
  }

  private Optional<Finding> size(Plan plan, Facts facts, Entry<Basin> entry, Element.Roof roof) {
    Volume runoff =
        Storms.roofRunoff(roof, entry.value().storm(), entry.place(), BasinTable.intake(facts))
            .value();
    Volume holds = BasinTable.holds(entry).value();
    if (holds.litres() >= runoff.litres() * (1 - 1e-9)) {
      return Optional.empty();
    }
    return Optional.of(
        finding(
            entry,
            "it holds "
                + WaterText.both(plan, holds)
                + ", the storm off '"
                + roof.id().name()
                + "' brings "
                + WaterText.both(plan, runoff),
            "enlarge it, or lead a part of the roof elsewhere"));
  }

  private Optional<Finding> slow(Facts facts, Entry<Basin> entry) {
    Optional<Derived<Length>> intake = BasinTable.intake(facts);
    return intake
        .map(i -> BasinTable.dryAfter(entry, i).value())
        .filter(dry -> dry.compareTo(DAY) > 0)
        .map(
            dry ->
                finding(
                    entry,
                    String.format(
                        Locale.ROOT,
                        "it stands full for %.0f hours; a day is the most that roots and mosquitoes"
                            + " allow",
                        dry.hours()),
                    "make it shallower and wider, loosen the soil, or take another place"));
  }

  private Optional<Finding> near(Plan plan, Entry<Basin> entry) {
    return entry
        .value()
        .fromBuilding(plan)
        .filter(d -> d.compareTo(FROM_HOUSE) < 0)
        .map(
            d ->
                finding(
                    entry,
                    "it lies "
                        + Say.both(Measure.LENGTH, d, plan.info().units())
                        + " from a building",
                    "keep it 10 ft (3 m) and more from foundations"));
  }

  private Finding finding(Entry<Basin> entry, String what, String advice) {
    return Finding.of(
            id(), Severity.WARNING, "basin '" + entry.value().name() + "': " + what, advice, SITING)
        .at(entry.place())
        .marking(entry.value().shape());
  }
}
