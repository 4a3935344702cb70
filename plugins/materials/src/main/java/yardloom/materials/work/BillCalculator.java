package yardloom.materials.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.Ordering;
import yardloom.materials.calc.Totals;
import yardloom.materials.model.Material;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.MulchSettings;
import yardloom.materials.model.Say;
import yardloom.materials.model.Surface;

/** Gives the plan's lines for cardboard, compost and chips: one line each, over all surfaces. */
public final class BillCalculator implements Calculator {
  /** The group under which bills list these lines. */
  public static final String GROUP = "sheet mulch";

  @Override
  public String id() {
    return "materials.bill";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MaterialFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    MulchSettings settings =
        plan.attributes().get(MaterialKeys.MULCH).orElseGet(MulchSettings::defaults);
    List<Surface> surfaces = in.all(MaterialFacts.SURFACES);
    cardboard(surfaces, settings).ifPresent(line -> out.give(YardFacts.BILL, line));
    for (Material material : List.of(Material.COMPOST, Material.WOOD_CHIPS)) {
      bulk(plan, surfaces, settings, material).ifPresent(line -> out.give(YardFacts.BILL, line));
    }
  }

  private static Optional<BillLine> cardboard(List<Surface> surfaces, MulchSettings settings) {
    Derived<Integer> exact = Totals.sheets(surfaces);
    if (exact.value() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new BillLine(
            GROUP,
            Material.CARDBOARD.title() + ", sheets",
            Optional.empty(),
            exact,
            Ordering.pieces(exact, settings.allowance()),
            Say.percent(settings.allowance().value()) + " for torn and odd sheets"));
  }

  private static Optional<BillLine> bulk(
      Plan plan, List<Surface> surfaces, MulchSettings settings, Material material) {
    Derived<Volume> exact = Totals.volume(surfaces, material);
    if (exact.value().si() == 0) {
      return Optional.empty();
    }
    Derived<Volume> least =
        material == Material.WOOD_CHIPS
            ? settings.minimumLoad()
            : Derived.by("no minimum load", Ordering.SOURCE).gives(Volume.ZERO);
    return Optional.of(
        new BillLine(
            GROUP,
            material.title(),
            Optional.empty(),
            exact,
            Ordering.bulk(exact, settings.allowance(), least, plan.info().units()),
            Say.percent(settings.allowance().value())
                + " for packing and uneven ground, up to the next "
                + Say.volume(Ordering.step(plan.info().units()), plan.info().units())));
  }
}
