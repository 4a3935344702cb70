package yardloom.planting.stand;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.LightNeed;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.stock.Spares;
import yardloom.planting.stock.StockForm;
import yardloom.planting.stock.StockPlan;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;

/**
 * Gives what stands where, with water use by month, the sun it asks for, and the bill of plants.
 */
public final class StandCalculator implements Calculator {
  private static final Source WHOLE = Source.commonPractice("trays are sold whole");

  @Override
  public String id() {
    return "planting.stands";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY, StockPlan.KEY, TurnPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.CLIMATE, YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.STANDS, YardFacts.BILL, YardFacts.JOBS, YardFacts.LIGHT_NEEDS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    WaterYear year = WaterYear.of(plan, in);
    StockPlan stock = in.get(StockPlan.KEY);
    UnitSystem units = plan.info().units();
    Spares spares = Spares.of(plan);
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      if (p.at().isEmpty()) {
        continue;
      }
      Optional<Turn> turn = in.get(TurnPlan.KEY).of(p);
      out.give(
          YardFacts.STANDS,
          new Stand(
              p.bed().id(),
              p.place(),
              new Stand.Kind(
                  p.plant().name(), p.plant().botanical(), p.plant().size().spread().middle()),
              new Stand.Placed(p.at(), p.ground().area(), drills(p).map(Derived::value)),
              new Stand.Thirst(
                  turn.map(year::months)
                      .orElseGet(() -> year.months(p.plant(), p.plant().draw().crop().kc())),
                  turn.map(year::source).orElseGet(() -> year.source(p.plant(), false)),
                  roots(p.plant())),
              new Stand.Planted(
                  p.choice().stands(),
                  p.plant().phase(),
                  p.follows().map(f -> ground(p.first())))));
      if (p.follows().isPresent()) {
        // The household sows it, months after the crew has gone: it is bought then, and no work.
        out.give(YardFacts.BILL, later(bill(p, stock.of(p), units, spares), turn));
      } else if (!p.choice().stands()) {
        toGet(p.plant(), bill(p, stock.of(p), units, spares), stock.of(p), units, out);
      }
      out.give(YardFacts.LIGHT_NEEDS, need(p.bed().id(), p.place(), p.plant()));
    }
    for (Planting.Specimen s : in.get(PlantPlaces.KEY).specimens()) {
      if (s.tree().stands() && s.tree().turn() == PartTurn.NOW) {
        // It found its water and light before there was a plan.
        continue;
      }
      out.give(YardFacts.STANDS, stand(year, s));
      if (s.tree().turn() == PartTurn.NOW) {
        toGet(s.plant(), bill(s, stock.of(s), units), stock.of(s), units, out);
      }
      out.give(YardFacts.LIGHT_NEEDS, need(s.tree().id(), s.place(), s.plant()));
    }
  }

  private static void toGet(
      Plant plant, BillLine line, StockForm stock, UnitSystem units, Sink out) {
    out.give(YardFacts.BILL, line);
    PlantingJobs.of(plant, stock, units, line.exact())
        .forEach(job -> out.give(YardFacts.JOBS, job));
  }

  private static Stand.Ground ground(Planting first) {
    return new Stand.Ground(first.place(), first.plant().name());
  }

  /** What is bought for its own day, not with the rest. */
  private static BillLine later(BillLine line, Optional<Turn> turn) {
    String when =
        turn.map(t -> "for about " + TableFormat.day(MonthDay.from(t.planted())) + ", bought then")
            .orElse("bought when the one before is over");
    return new BillLine(
        line.group(),
        WorkPhase.ESTABLISH,
        line.item(),
        line.element(),
        line.plant(),
        line.exact(),
        line.order(),
        when + "; " + line.allowance(),
        line.stock(),
        turn.map(t -> MonthDay.from(t.planted())));
  }

  private static LightNeed need(ElementId in, SourceRef place, Plant plant) {
    return new LightNeed(in, place, plant.name(), plant.light().amount(), plant.light().source());
  }

  private static Stand stand(WaterYear year, Planting.Specimen s) {
    return new Stand(
        s.tree().id(),
        s.place(),
        new Stand.Kind(s.plant().name(), s.plant().botanical(), s.crown()),
        new Stand.Placed(List.of(s.tree().at()), s.ground(), Optional.empty()),
        new Stand.Thirst(
            year.months(s.plant(), s.kc()), year.source(s.plant(), s.inGrass()), roots(s.plant())),
        new Stand.Planted(s.tree().stands(), s.plant().phase(), Optional.empty()));
  }

  /**
   * The lower depth, which FAO-56 asks for when irrigation is timed (footnote of Table 22, from
   * memory).
   */
  private static Optional<Stand.Roots> roots(Plant plant) {
    return plant
        .draw()
        .crop()
        .roots()
        .map(
            r ->
                new Stand.Roots(
                    r.low(),
                    r.easyShare(),
                    plant.draw().source(),
                    plant.growth().season().isAnnual()));
  }

  private static Optional<Derived<Length>> drills(Planting p) {
    if (!p.plant().growth().start().isInDrills()) {
      return Optional.empty();
    }
    return Optional.of(
        Derived.by("plants × spacing", Planting.LATTICE)
            .from("plants", p.at().size(), p.place())
            .from("spacing", p.spacing(), p.place())
            .gives(p.spacing().times(p.at().size())));
  }

  private static BillLine bill(Planting p, StockForm stock, UnitSystem units, Spares spares) {
    Optional<Derived<Length>> drills = drills(p);
    if (drills.isPresent()) {
      return new BillLine(
          BillGroup.PLANTS,
          WorkPhase.PLANT,
          p.plant().name() + " " + stock.name(units) + ", by row",
          Optional.of(p.bed().id()),
          Optional.of(p.plant().name()),
          drills.get(),
          drills.get(),
          "for this length of row; some do not come up",
          Optional.of(named(stock, units)),
          Optional.empty());
    }
    Optional<Derived<Integer>> more =
        spares.next(p.plant().name() + ", " + stock.name(units), p.count());
    return pieces(p.plant(), p.bed().id(), p.count(), more, stock, units);
  }

  private static BillLine bill(Planting.Specimen s, StockForm stock, UnitSystem units) {
    Derived<Integer> one = Derived.given(1, "tree of the plan", s.tree().place());
    return pieces(s.plant(), s.tree().id(), one, Optional.empty(), stock, units);
  }

  private static BillLine pieces(
      Plant plant,
      ElementId in,
      Derived<Integer> count,
      Optional<Derived<Integer>> withSpares,
      StockForm stock,
      UnitSystem units) {
    boolean single = stock.holds() == 1;
    Derived<Integer> wanted = withSpares.orElse(count);
    String spares =
        wanted.value() > count.value()
            ? "spares: " + (wanted.value() - count.value())
            : "no spares included";
    return new BillLine(
        PlantingJobs.group(plant),
        plant.phase(),
        plant.name() + " (" + plant.botanical() + "), " + stock.name(units),
        Optional.of(in),
        Optional.of(plant.name()),
        count,
        single ? wanted : pieces(wanted, stock.holds()),
        single ? spares : "sold by " + stock.holds() + ", whole ones; spares over",
        Optional.of(named(stock, units)),
        Optional.empty());
  }

  private static Derived<Integer> pieces(Derived<Integer> count, int holds) {
    return Derived.by("pieces = count / holds, rounded up", WHOLE)
        .from("count", count)
        .from("holds", holds)
        .gives((count.value() + holds - 1) / holds);
  }

  /** The form, as the plan's units call it first. */
  private static BillLine.Stock named(StockForm stock, UnitSystem units) {
    List<String> names = new ArrayList<>(List.of(stock.name(units)));
    names.addAll(stock.names());
    return new BillLine.Stock(names.stream().distinct().toList(), stock.price());
  }
}
