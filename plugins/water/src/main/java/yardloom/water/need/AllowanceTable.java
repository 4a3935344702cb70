package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.ReferenceEt;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.AllowanceWords.Allowance;
import yardloom.water.need.formula.WaterBudget;

/** The yearly water allowance of the beds and their estimated use, where the plan asks for it. */
public final class AllowanceTable implements TableMaker {
  private static final String ID = "water-allowance";
  private static final Source ORDINANCE =
      Source.read(
          "Model Water Efficient Landscape Ordinance worksheet",
          "California Department of Water Resources, as in Ventura County code App. L3",
          0,
          "");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.REFERENCE_ET, YardFacts.CLIMATE);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Water allowance and estimated use in a year")
            .column(Column.text("bed", "Bed"))
            .column(Column.text("kind", "Kind"))
            .column(Column.of("plant-factor", "Plant factor", Measure.RATIO))
            .column(Column.of("efficiency", "Efficiency", Measure.RATIO))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("factor-area", "Plant factor × area", Measure.AREA))
            .column(Column.of("use", "Estimated use", Measure.WATER));
    Optional<Entry<Allowance>> asked = plan.said(AllowanceWords.ALLOWANCE);
    Optional<Derived<Length>> et = asked.flatMap(a -> yearlyEt(a, facts));
    if (asked.isEmpty() || et.isEmpty() || plan.all(Element.Bed.class).isEmpty()) {
      return table.build();
    }
    Allowance allowance = asked.get().value();
    Area all = Area.ZERO;
    Area special = Area.ZERO;
    Volume use = Volume.ZERO;
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Row row = row(bed, allowance, et.get());
      table.row(row.cells());
      all = all.plus(bed.shape().area());
      special = special.plus(row.isFood() ? bed.shape().area() : Area.ZERO);
      use = use.plus(row.use());
    }
    Derived<Volume> most =
        Derived.by(
                "0.62 gal × ETo / 1 in × (factor × landscape area + (1 − factor) × special area) /"
                    + " 1 sq ft",
                ORDINANCE)
            .from("ETo", et.get())
            .from("factor", allowance.factor(), asked.get().place())
            .from("landscape area", all)
            .from("special area", special)
            .gives(WaterBudget.allowance(et.get().value(), allowance.factor(), all, special));
    table.total(total("Estimated use", all, Cell.of(use)));
    table.total(total("Allowance", all, Cell.of(most)));
    table.note(
        (use.compareTo(most.value()) <= 0
                ? "The estimated use is within the allowance."
                : "The estimated use is above the allowance: take thriftier plants, or less of the"
                    + " bed.")
            + " Food beds are special landscape area and have the full allowance; the most that codes"
            + " grant other areas is "
            + WaterBudget.HOME_FACTOR
            + " at homes and "
            + WaterBudget.OTHER_FACTOR
            + " elsewhere, the least efficiency "
            + WaterBudget.DRIP_EFFICIENCY
            + " for drip and "
            + WaterBudget.SPRAY_EFFICIENCY
            + " for spray. Only the beds of the plan; add lawn and other plantings that stay.");
    return table.build();
  }

  private record Row(List<Cell> cells, boolean isFood, Volume use) {}

  private static Row row(Element.Bed bed, Allowance allowance, Derived<Length> et) {
    Optional<Double> factor = bed.attributes().get(AllowanceWords.PLANT_FACTOR);
    boolean isFood = factor.isEmpty();
    // A special area's allowance and use are both ETo × 0.62 × area.
    double plantFactor = factor.orElse(1.0);
    double efficiency = isFood ? 1 : allowance.efficiency();
    Area area = bed.shape().area();
    Derived<Volume> use =
        Derived.by("0.62 gal × ETo / 1 in × plant factor / efficiency × area / 1 sq ft", ORDINANCE)
            .from("ETo", et)
            .from("plant factor", plantFactor, bed.place())
            .from("efficiency", efficiency)
            .from("area", area, bed.place())
            .gives(WaterBudget.use(et.value(), plantFactor, efficiency, area));
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(bed.id().name()));
    cells.add(Cell.text(isFood ? "food, special area" : "ornamental"));
    cells.add(Cell.number(plantFactor));
    cells.add(Cell.number(efficiency));
    cells.add(Cell.of(area));
    cells.add(Cell.of(area.times(plantFactor)));
    cells.add(Cell.of(use));
    return new Row(cells, isFood, use.value());
  }

  private static Cell[] total(String name, Area area, Cell water) {
    return new Cell[] {
      Cell.text(name), Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.of(area), Cell.BLANK, water
    };
  }

  private static Optional<Derived<Length>> yearlyEt(Entry<Allowance> asked, Facts facts) {
    Length said = asked.value().yearlyEt();
    Optional<Length> gross =
        said != null
            ? Optional.of(said)
            : facts.find(YardFacts.REFERENCE_ET).map(AllowanceTable::sum);
    Optional<ClimateNormals> climate = facts.find(YardFacts.CLIMATE);
    if (!asked.value().hasRainCredit() || climate.isEmpty()) {
      return gross.map(et -> Derived.given(et, "reference ET of a year", asked.place()));
    }
    Length rain =
        climate.get().months().stream()
            .map(ClimateNormals.Month::rain)
            .reduce(Length.ZERO, Length::plus);
    return gross.map(
        et ->
            Derived.by("max(reference ET − rain / 4, 0 in)", ORDINANCE)
                .from("reference ET", et)
                .from("rain", rain)
                .gives(WaterBudget.lessRain(et, rain)));
  }

  private static Length sum(ReferenceEt et) {
    return et.months().stream().map(Derived::value).reduce(Length.ZERO, Length::plus);
  }
}
