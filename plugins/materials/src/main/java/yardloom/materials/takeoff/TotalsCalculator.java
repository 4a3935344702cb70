package yardloom.materials.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.mulch.MulchTotals.Lift;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;

/** Gives what all surfaces take together. */
public final class TotalsCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.totals";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.MULCH_TOTALS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<MulchSurface> all = in.all(YardFacts.SURFACES);
    out.give(
        YardFacts.MULCH_TOTALS,
        new MulchTotals(
            Totals.area(all),
            Totals.area(all.stream().filter(s -> s.of().kind() == ElementKind.BED).toList()),
            Totals.area(all.stream().filter(s -> s.sheets().isPresent()).toList()),
            Totals.sheets(all),
            Totals.volume(all, Material.COMPOST),
            Totals.volume(all, Material.WOOD_CHIPS),
            bulk(all)
                .flatMap(m -> Totals.lifts(all, m).stream())
                .sorted(Comparator.comparing(Lift::phase).thenComparing(Lift::material))
                .toList()));
  }

  private static Stream<Material> bulk(List<MulchSurface> surfaces) {
    return surfaces.stream()
        .flatMap(s -> s.courses().stream())
        .filter(c -> c.volume().isPresent())
        .map(LaidLayer::material)
        .distinct();
  }
}
