package yardloom.planting.stand;

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
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/**
 * Gives what stands where, with water use by month, the sun it asks for, and the bill of plants.
 */
public final class StandCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.stands";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
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
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      if (p.at().isEmpty()) {
        continue;
      }
      out.give(
          YardFacts.STANDS,
          new Stand(
              p.bed().id(),
              p.place(),
              p.plant().name(),
              p.plant().botanical(),
              p.at(),
              p.ground().area(),
              p.plant().spread().middle(),
              year.months(p.plant(), p.plant().crop().kc()),
              year.source(p.plant(), false),
              drills(p).map(Derived::value),
              roots(p.plant()),
              p.choice().stands()));
      if (!p.choice().stands()) {
        toGet(p.plant(), bill(p), out);
      }
      out.give(YardFacts.LIGHT_NEEDS, need(p.bed().id(), p.place(), p.plant()));
    }
    for (Planting.Specimen s : in.get(PlantPlaces.KEY).specimens()) {
      if (s.tree().stands()) {
        // It found its water and light before there was a plan.
        continue;
      }
      out.give(YardFacts.STANDS, stand(year, s));
      toGet(s.plant(), bill(s), out);
      out.give(YardFacts.LIGHT_NEEDS, need(s.tree().id(), s.place(), s.plant()));
    }
  }

  private static void toGet(Plant plant, BillLine line, Sink out) {
    out.give(YardFacts.BILL, line);
    PlantingJobs.of(plant, line.exact()).forEach(job -> out.give(YardFacts.JOBS, job));
  }

  private static LightNeed need(ElementId in, SourceRef place, Plant plant) {
    return new LightNeed(in, place, plant.name(), plant.light(), plant.lightSource());
  }

  private static Stand stand(WaterYear year, Planting.Specimen s) {
    return new Stand(
        s.tree().id(),
        s.place(),
        s.plant().name(),
        s.plant().botanical(),
        List.of(s.tree().at()),
        s.ground(),
        s.crown(),
        year.months(s.plant(), s.kc()),
        year.source(s.plant(), s.inGrass()),
        Optional.empty(),
        roots(s.plant()),
        s.tree().stands());
  }

  /**
   * The lower depth, which FAO-56 asks for when irrigation is timed (footnote of Table 22, from
   * memory).
   */
  private static Optional<Stand.Roots> roots(Plant plant) {
    return plant
        .crop()
        .roots()
        .map(
            r ->
                new Stand.Roots(
                    r.low(), r.easyShare(), plant.cropSource(), plant.season().isAnnual()));
  }

  private static Optional<Derived<Length>> drills(Planting p) {
    if (!p.plant().start().isInDrills()) {
      return Optional.empty();
    }
    return Optional.of(
        Derived.by("plants × spacing", Planting.LATTICE)
            .from("plants", p.at().size(), p.place())
            .from("spacing", p.spacing(), p.place())
            .gives(p.spacing().times(p.at().size())));
  }

  private static BillLine bill(Planting p) {
    Optional<Derived<Length>> drills = drills(p);
    if (drills.isPresent()) {
      return new BillLine(
          BillGroup.PLANTS,
          WorkPhase.PLANT,
          p.plant().name() + " " + Choices.text(p.plant().start()) + ", by row",
          Optional.of(p.bed().id()),
          Optional.of(p.plant().name()),
          drills.get(),
          drills.get(),
          "for this length of row; some do not come up");
    }
    Derived<Integer> count = p.count();
    return new BillLine(
        PlantingJobs.group(p.plant()),
        p.plant().phase(),
        p.plant().name() + " (" + p.plant().botanical() + ")",
        Optional.of(p.bed().id()),
        Optional.of(p.plant().name()),
        count,
        count,
        "no spares included");
  }

  private static BillLine bill(Planting.Specimen s) {
    Derived<Integer> one = Derived.given(1, "tree of the plan", s.tree().place());
    return new BillLine(
        PlantingJobs.group(s.plant()),
        s.plant().phase(),
        s.plant().name() + " (" + s.plant().botanical() + "), tree",
        Optional.of(s.tree().id()),
        Optional.of(s.plant().name()),
        one,
        one,
        "no spares included");
  }
}
