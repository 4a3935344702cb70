package yardloom.planting.harvest;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.facts.Harvest;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.harvest.HarvestPlan.Line;
import yardloom.planting.harvest.HarvestPlan.Range;
import yardloom.planting.harvest.formula.AreaYield;

/** What each planting may bring in a year, and when it first does. */
public final class HarvestTable implements TableMaker {
  private static final Source BY_AREA = Source.commonPractice("harvest over the area it grew on");

  @Override
  public String id() {
    return "harvest";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(HarvestPlan.KEY, YardFacts.HARVEST);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    HarvestPlan harvest = facts.get(HarvestPlan.KEY);
    Table.Builder table =
        Table.titled(id(), "Harvest of a year at full bearing")
            .column(Column.text("bed", "Where"))
            .column(Column.text("plant", "Plant"))
            .column(Column.of("from", "From", Measure.MASS))
            .column(Column.of("to", "To", Measure.MASS))
            .column(Column.text("by-area", "By area, " + AreaYield.unit(units)))
            .column(Column.text("first", "First harvest"));
    harvest.lines().forEach(line -> table.row(row(line, units)));
    facts.find(YardFacts.HARVEST).ifPresent(all -> total(table, harvest, all, units));
    if (!harvest.lines().isEmpty()) {
      notes(table, harvest);
    }
    return table.build();
  }

  private static Cell[] row(Line line, UnitSystem units) {
    return new Cell[] {
      Cell.text(line.in().name()),
      Cell.text(line.title()),
      line.mass().map(m -> Cell.of(m.low())).orElse(Cell.BLANK),
      line.mass().map(m -> Cell.of(m.high())).orElse(Cell.BLANK),
      line.mass()
          .flatMap(m -> line.ground().map(area -> byArea(m, area, units)))
          .orElse(Cell.BLANK),
      PlantYields.first(line.plant())
          .map(f -> Cell.text(f.when() + recalled(f.source())))
          .orElse(Cell.BLANK)
    };
  }

  /** Both ends of a harvest by the area it grew on, in one cell. */
  private static Cell byArea(Range<Mass> mass, Area area, UnitSystem units) {
    String low = AreaYield.of(mass.low().value(), area).number(units);
    String high = AreaYield.of(mass.high().value(), area).number(units);
    String by = units == UnitSystem.US ? " in lb / area in sq ft" : " in kg / area in m²";
    return Cell.of(
        Derived.by("least" + by + " to most" + by, BY_AREA)
            .from("least", mass.low())
            .from("most", mass.high())
            .from("area", area)
            .gives(low.equals(high) ? low : low + "–" + high));
  }

  private static void total(
      Table.Builder table, HarvestPlan harvest, Harvest all, UnitSystem units) {
    table.total(
        Cell.text("All"),
        Cell.BLANK,
        Cell.of(all.low()),
        Cell.of(all.high()),
        harvest.ofBeds().map(m -> byArea(m, harvest.bedArea(), units)).orElse(Cell.BLANK),
        Cell.BLANK);
  }

  private static void notes(Table.Builder table, HarvestPlan harvest) {
    Map<String, String> sources = new TreeMap<>();
    for (Line line : harvest.lines()) {
      String name = line.plant().name();
      PlantYields.of(line.plant()).ifPresent(y -> sources.put(name, name + ": " + cite(y)));
    }
    if (!sources.isEmpty()) {
      table.note("Yields are from " + String.join("; ", sources.values()) + ".");
    }
    table.note(
        "Years, soil, variety and care change a harvest by half and more; rows closer than usual"
            + " count at their usual distance, trees at the share of a grown crown that the plan"
            + " draws. By area is of the beds, without trees and plants of"
            + " unknown yield. * is recalled and not verified.");
    if (!harvest.tooLate().isEmpty()) {
      table.note(
          "Not counted, as they come too late on the ground of another: "
              + String.join(", ", harvest.tooLate())
              + ".");
    }
    if (!harvest.bySprig().isEmpty()) {
      table.note(
          "Picked by the sprig, as the kitchen asks, and not weighed: "
              + String.join(", ", harvest.bySprig())
              + ".");
    }
    List<String> unknown =
        harvest.leftOut().stream().filter(n -> !harvest.bySprig().contains(n)).toList();
    if (!unknown.isEmpty()) {
      table.note(
          "Left out, as their yield by weight is not known: " + String.join(", ", unknown) + ".");
    }
  }

  private static String cite(Yield yield) {
    return yield.sources().stream().map(Source::cite).distinct().collect(Collectors.joining(", "));
  }

  private static String recalled(Source source) {
    return source.standing() == Standing.MEMORY ? " *" : "";
  }
}
