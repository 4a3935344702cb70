package yardloom.water.overflow;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.overflow.formula.RainGarden;
import yardloom.water.roof.Roofs;

/** How large a rain garden is that takes a storm off a roof, and how soon it is dry again. */
public final class OverflowTable implements TableMaker {
  private static final String ID = "rain-gardens";
  private static final Source DEPTHS =
      Source.read(
          "Rain Gardens: A Design Guide for Homeowners",
          "University of Rhode Island Cooperative Extension",
          0,
          "depth by slope");
  private static final Source FACTORS =
      Source.read("Rain Garden Size Requirement Instructions", "Illinois DNR", 0, "size factor");
  private static final Source SINKS = Source.commonPractice("ponded depth over what soil takes");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Rain gardens for roof water")
            .column(Column.text("roof", "Roof"))
            .column(Column.of("drained", "Plan area", Measure.AREA))
            .column(Column.of("storm", "Storm", Measure.RAIN))
            .column(Column.of("runoff", "Runoff of the storm", Measure.WATER))
            .column(Column.of("depth", "Depth of the hollow", Measure.DEPTH))
            .column(Column.of("holds", "Area that holds it", Measure.AREA))
            .column(Column.of("by-factor", "Area by size factor", Measure.AREA))
            .column(Column.of("dry-after", "Sinks in within", Measure.HOURS));
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    boolean any = false;
    for (Entry<OverflowGarden> entry : plan.attributes().all(OverflowGarden.KEY)) {
      Optional<Element.Roof> roof = Roofs.called(plan, entry.value().roof());
      if (roof.isPresent()) {
        table.row(row(entry, roof.get(), soil));
        any = true;
      }
    }
    if (any) {
      table.note(
          "Runoff by curve number, every roof being tight; the hollow takes all of it at once, full"
              + " tank or none. Depth is the lesser of what the slope allows. 10 ft (3 m) and more"
              + " from buildings, off septic fields, the overflow away from neighbours; where it"
              + " sinks in slower than in a day, mosquitoes breed: choose another place or loosen"
              + " the soil.");
    }
    return table.build();
  }

  private static Cell[] row(
      Entry<OverflowGarden> entry, Element.Roof roof, Optional<SoilProfile> soil) {
    Optional<Derived<Length>> intake = soil.flatMap(SoilProfile::intakePerHour);
    OverflowGarden garden = entry.value();
    Area area = roof.shape().area();
    Derived<Volume> runoff = Storms.roofRunoff(roof, garden.storm(), entry.place(), intake);
    Derived<Length> depth =
        Derived.by("shallow end of the depths for the slope", DEPTHS)
            .from("slope in percent", garden.slopePercent(), entry.place())
            .gives(RainGarden.depth(garden.slopePercent()).orElseThrow().from());
    return new Cell[] {
      Cell.text(garden.roof()),
      Cell.of(area),
      Cell.of(garden.storm()),
      Cell.of(runoff),
      Cell.of(depth),
      Cell.of(
          Derived.by("runoff / depth", DEPTHS)
              .from("runoff", runoff)
              .from("depth", depth)
              .gives(RainGarden.holding(runoff.value(), depth.value()))),
      byFactor(entry, roof, soil),
      intake
          .map(
              i ->
                  Cell.of(
                      Derived.by("hours = depth / soil takes in an hour", SINKS)
                          .from("depth", depth)
                          .from("soil takes in an hour", i)
                          .gives(RainGarden.drawdown(depth.value(), i.value()))))
          .orElse(Cell.BLANK)
    };
  }

  /** By the plan's factor, else by that of the soil; blank without either. */
  private static Cell byFactor(
      Entry<OverflowGarden> entry, Element.Roof roof, Optional<SoilProfile> soil) {
    OverflowGarden garden = entry.value();
    Area area = roof.shape().area();
    Optional<Cited<Double>> factor =
        garden
            .sizeFactor()
            .map(f -> new Cited<>(f, FACTORS))
            .or(() -> soil.map(s -> GardenFactors.of(s, garden.slopePercent())));
    return factor
        .map(
            f ->
                Cell.of(
                    Derived.by("plan area × size factor", f.source())
                        .from("plan area", area, roof.place())
                        .from("size factor", f.value(), entry.place())
                        .gives(RainGarden.area(area, f.value()))))
        .orElse(Cell.BLANK);
  }
}
