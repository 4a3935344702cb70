package yardloom.water.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.Fog;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.roof.WaterSupply;

/** What the plants need and the rain and roofs give, month by month. */
public final class MonthTable implements TableMaker {
  private static final String ID = "water-by-month";
  private static final int BEHIND_RAIN = 3;

  private static final Source SUM = Source.commonPractice("sum");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  /** Need as delivered beside what the roofs give: the same two that the tank works with. */
  @Override
  public List<Chart> charts() {
    return List.of(
        Chart.of(
            "water",
            "Water: need and roof yield by month",
            Chart.Kind.BARS,
            "need-gross",
            "roof-yield"));
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.CLIMATE, MonthlyWeather.KEY, WaterDemand.KEY, WaterSupply.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Optional<Fog> fog = Fog.of(plan).map(Entry::value);
    Table.Builder table = columns(fog.isPresent());
    Optional<ClimateNormals> climate = facts.find(YardFacts.CLIMATE);
    if (climate.isEmpty()) {
      return table.build();
    }
    Optional<MonthlyWeather> weather = facts.find(MonthlyWeather.KEY);
    List<WaterDemand> demands = facts.all(WaterDemand.KEY);
    List<WaterSupply> supplies = facts.all(WaterSupply.KEY);
    Length[] depths = {Length.ZERO, Length.ZERO, Length.ZERO};
    Volume[] volumes = {Volume.ZERO, Volume.ZERO, Volume.ZERO};
    List<Derived<Volume>> gross = GrossNeed.monthly(demands);
    for (int m = 0; m < 12; m++) {
      int month = m;
      Optional<Derived<Length>> et = weather.map(w -> w.referenceEt().get(month));
      Optional<Derived<Length>> effective = weather.map(w -> w.effectiveRain().get(month));
      Length rain = climate.get().months().get(m).rain();
      Derived<Volume> need = sum(demands, d -> d.of().toString(), d -> d.monthly().get(month));
      Derived<Volume> roof = sum(supplies, s -> s.of().toString(), s -> s.monthly().get(month));
      depths[0] = depths[0].plus(et.map(Derived::value).orElse(Length.ZERO));
      depths[1] = depths[1].plus(rain);
      depths[2] = depths[2].plus(effective.map(Derived::value).orElse(Length.ZERO));
      volumes[0] = volumes[0].plus(need.value());
      volumes[1] = volumes[1].plus(gross.get(m).value());
      volumes[2] = volumes[2].plus(roof.value());
      table.row(
          cells(
              fog.map(f -> f.months().get(month)),
              Cell.text(Months.name(m)),
              et.map(Cell::of).orElse(Cell.BLANK),
              Cell.of(
                  Derived.by("normal rain of the month", climate.get().source())
                      .from("normal rain of the month", rain)
                      .gives(rain)),
              effective.map(Cell::of).orElse(Cell.BLANK),
              weather.isPresent() ? Cell.of(need) : Cell.BLANK,
              weather.isPresent() ? Cell.of(gross.get(m)) : Cell.BLANK,
              Cell.of(roof)));
    }
    table.total(
        cells(
                fog.map(f -> f.months().stream().reduce(Length.ZERO, Length::plus)),
                Cell.text("Year"),
                weather.isPresent() ? Cell.of(depths[0]) : Cell.BLANK,
                Cell.of(depths[1]),
                weather.isPresent() ? Cell.of(depths[2]) : Cell.BLANK,
                weather.isPresent() ? Cell.of(volumes[0]) : Cell.BLANK,
                weather.isPresent() ? Cell.of(volumes[1]) : Cell.BLANK,
                Cell.of(volumes[2]))
            .toArray(new Cell[0]));
    notes(table, plan, climate.get(), weather);
    return table.build();
  }

  /** With the fog of the month behind the rain, where the plan has any. */
  private static List<Cell> cells(Optional<Length> fog, Cell... cells) {
    List<Cell> all = new ArrayList<>(List.of(cells));
    fog.ifPresent(f -> all.add(BEHIND_RAIN, Cell.of(f)));
    return all;
  }

  private static Table.Builder columns(boolean hasFog) {
    Table.Builder table =
        Table.titled(ID, "Water by month")
            .column(Column.text("month", "Month"))
            .column(Column.of("reference-et", "Reference ET", Measure.RAIN))
            .column(Column.of("rain", "Rain", Measure.RAIN));
    if (hasFog) {
      table.column(Column.of("fog", "Fog drip", Measure.RAIN));
    }
    return table
        .column(
            Column.of(
                "effective-rain",
                hasFog ? "Effective rain and fog" : "Effective rain",
                Measure.RAIN))
        .column(Column.of("need", "Irrigation need, net", Measure.WATER))
        .column(Column.of("need-gross", GrossNeed.TITLE, Measure.WATER))
        .column(Column.of("roof-yield", "Roof yield", Measure.WATER));
  }

  private static <T> Derived<Volume> sum(
      List<T> parts, Function<T, String> name, Function<T, Derived<Volume>> value) {
    Derived.Builder why = Derived.by("sum over the plan", SUM);
    Volume sum = Volume.ZERO;
    for (T part : parts) {
      sum = sum.plus(value.apply(part).value());
      why.from(name.apply(part), value.apply(part));
    }
    return why.gives(sum);
  }

  private static void notes(
      Table.Builder table, Plan plan, ClimateNormals climate, Optional<MonthlyWeather> weather) {
    table.note("Climate of " + climate.place() + ": " + climate.source().cite() + ".");
    if (weather.isEmpty()) {
      table.note("Without a site there is no reference ET and no irrigation need.");
      return;
    }
    table.note(
        "Reference ET by "
            + weather.get().method()
            + "; range: "
            + climate.temperatureRangeSource().cite()
            + "."
            + (climate.temperatureRangeSource().standing() == Standing.MEMORY
                ? " A fifth more or less range changes it by about a tenth."
                : ""));
    table.note(
        "Effective rain by "
            + weather.get().rainBy().title()
            + Fog.of(plan)
                .map(f -> ", and fog that drips (" + f.value().source().cite() + ")")
                .orElse(", without fog or dew")
            + ". The net need is what grown plants"
            + " take beyond it, the gross need what drip at an efficiency of "
            + WaterBudget.DRIP_EFFICIENCY
            + " delivers for that: tank and lawn tables compare the gross one. An average year, not"
            + " a dry one. Crop coefficients of FAO-56 Table 12 are spread over the season by the"
            + " stages of its Table 11, or by recalled shares for crops it lacks.");
  }
}
