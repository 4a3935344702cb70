package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.formula.NetNeed;

/** Gives the monthly irrigation need of beds and trees: as said, else that of their plants. */
public final class DemandCalculator implements Calculator {
  private static final Source CROP =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equation 58");

  @Override
  public String id() {
    return "water.demand";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MonthlyWeather.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.STANDS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(WaterDemand.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    MonthlyWeather weather = in.get(MonthlyWeather.KEY);
    Map<ElementId, List<Stand>> byElement = new TreeMap<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      bed.attributes()
          .get(OwnNeed.KEY)
          .ifPresent(own -> out.give(WaterDemand.KEY, new WaterDemand(bed.id(), own(bed, own))));
    }
    for (Stand stand : in.all(YardFacts.STANDS)) {
      boolean isOwn =
          plan.element(stand.in()).flatMap(e -> e.attributes().get(OwnNeed.KEY)).isPresent();
      if (isOwn) {
        continue;
      }
      byElement.computeIfAbsent(stand.in(), k -> new ArrayList<>()).add(stand);
    }
    byElement.forEach(
        (id, stands) -> {
          List<Derived<Volume>> months = new ArrayList<>();
          for (int m = 0; m < 12; m++) {
            months.add(need(stands, weather, m));
          }
          out.give(WaterDemand.KEY, new WaterDemand(id, months));
        });
  }

  private static List<Derived<Volume>> own(Element.Bed bed, OwnNeed own) {
    return own.months().stream()
        .map(
            depth ->
                Derived.by("bed area × depth of the month", own.source())
                    .from("bed area", bed.shape().area(), bed.place())
                    .from("depth of the month", depth, bed.place())
                    .gives(bed.shape().area().deep(depth)))
        .toList();
  }

  /** What stands on one ground in the year, each over its days, the first first. */
  private static List<Stand> ground(Stand first, List<Stand> stands) {
    Stand.Ground ground = new Stand.Ground(first.place(), first.plant());
    List<Stand> all = new ArrayList<>(List.of(first));
    stands.stream()
        .filter(s -> s.planted().ground().filter(ground::equals).isPresent())
        .forEach(all::add);
    return all;
  }

  private static Derived<Volume> need(List<Stand> stands, MonthlyWeather weather, int month) {
    Derived<Length> et = weather.referenceEt().get(month);
    Derived<Length> rain = weather.effectiveRain().get(month);
    Derived.Builder why =
        Derived.by("sum over plants of area × max(Kc × reference ET − effective rain, 0)", CROP)
            .from("reference ET", et)
            .from("effective rain", rain);
    Volume sum = Volume.ZERO;
    for (Stand stand : stands) {
      if (stand.follows()) {
        continue;
      }
      // Rain falls once on ground that carries two crops in a month.
      List<Stand> ground = ground(stand, stands);
      String plants = ground.stream().map(Stand::plant).collect(Collectors.joining(", then "));
      double kc = ground.stream().mapToDouble(s -> s.thirst().kc().get(month)).sum();
      sum = sum.plus(stand.placed().area().deep(NetNeed.of(kc, et.value(), rain.value())));
      why.from("Kc " + plants, kc, stand.place())
          .from("Kc source", stand.thirst().kcSource().cite())
          .from("area " + plants, stand.placed().area(), stand.place());
      ground.stream().skip(1).forEach(s -> why.from("Kc source", s.thirst().kcSource().cite()));
    }
    return why.gives(sum);
  }
}
