package yardloom.materials.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.mulch.MulchTotals.Lift;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.MulchSettings;

/**
 * Gives the plan's lines for cardboard, compost and chips over all surfaces, chips by the phase in
 * which they are laid.
 */
public final class BillCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.bill";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.MULCH_TOTALS, YardFacts.STANDS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL, Pockets.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    MulchSettings settings = MulchSettings.of(plan);
    MulchTotals totals = in.get(YardFacts.MULCH_TOTALS);
    cardboard(totals.sheets(), settings).ifPresent(line -> out.give(YardFacts.BILL, line));
    Optional<Pockets> pockets = pockets(plan, in.all(YardFacts.STANDS), settings);
    pockets.ifPresent(p -> out.give(Pockets.FACT, p));
    Derived<Volume> compost = totals.compost();
    if (pockets.isPresent()) {
      compost = withPockets(compost, pockets.get());
    }
    if (compost.value().si() > 0) {
      boolean shrubs = pockets.filter(p -> p.withShrubs().value().si() > 0).isPresent();
      WorkPhase phase =
          shrubs
              ? WorkPhase.TREES
              : laid(totals, Material.COMPOST).map(Lift::phase).orElse(WorkPhase.PLANT);
      out.give(YardFacts.BILL, bulk(plan, compost, settings, Material.COMPOST, phase));
    }
    totals.lifts().stream()
        .filter(l -> l.material().isOwn())
        .map(l -> bulk(plan, l.volume(), settings, l.material(), l.phase()))
        .forEach(line -> out.give(YardFacts.BILL, line));
    chips(plan, totals, settings).forEach(line -> out.give(YardFacts.BILL, line));
  }

  private static Optional<Lift> laid(MulchTotals totals, Material material) {
    return totals.lifts().stream().filter(l -> l.material().equals(material)).findFirst();
  }

  /**
   * One order for each phase, so that no heap lies for weeks; one for all of them where a lift
   * would be less than the least load.
   */
  private static List<BillLine> chips(Plan plan, MulchTotals totals, MulchSettings settings) {
    List<Lift> lifts =
        totals.lifts().stream().filter(l -> l.material().equals(Material.WOOD_CHIPS)).toList();
    Volume least = settings.minimumLoad().value();
    double more = 1 + settings.allowance().value();
    boolean apart =
        lifts.stream().allMatch(l -> l.volume().value().times(more).compareTo(least) >= 0);
    if (apart) {
      return lifts.stream()
          .map(l -> bulk(plan, l.volume(), settings, Material.WOOD_CHIPS, l.phase()))
          .toList();
    }
    return List.of(bulk(plan, totals.chips(), settings, Material.WOOD_CHIPS, lifts.get(0).phase()));
  }

  private static Optional<BillLine> cardboard(Derived<Integer> exact, MulchSettings settings) {
    if (exact.value() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new BillLine(
            BillGroup.SHEET_MULCH,
            WorkPhase.SHEET,
            Material.CARDBOARD.title() + ", sheets",
            Optional.empty(),
            Optional.empty(),
            exact,
            Ordering.pieces(exact, settings.allowance()),
            Say.percent(settings.allowance().value()) + " for torn and odd sheets"));
  }

  private static BillLine bulk(
      Plan plan,
      Derived<Volume> exact,
      MulchSettings settings,
      Material material,
      WorkPhase phase) {
    Derived<Volume> least =
        material.equals(Material.WOOD_CHIPS) ? settings.minimumLoad() : Ordering.NO_MINIMUM;
    return new BillLine(
        BillGroup.SHEET_MULCH,
        phase,
        material.title(),
        Optional.empty(),
        Optional.empty(),
        exact,
        Ordering.bulk(exact, settings.allowance(), least, plan.info().units()),
        Say.percent(settings.allowance().value())
            + " for packing and uneven ground, up to the next "
            + Say.volume(Ordering.step(plan.info().units()), plan.info().units()));
  }

  /** Plants of perennial beds, each in its pocket. */
  private static Optional<Pockets> pockets(Plan plan, List<Stand> stands, MulchSettings settings) {
    Derived.Builder why = Derived.by("plants of perennial beds", Source.plan("planting"));
    Derived.Builder whyShrubs =
        Derived.by("plants that go in before the cardboard", Source.plan("planting"));
    int plants = 0;
    int shrubs = 0;
    for (Stand stand : stands) {
      boolean perennial =
          plan.element(stand.in())
              .filter(e -> e instanceof Element.Bed bed && bed.use() == BedUse.PERENNIAL)
              .isPresent();
      if (perennial
          && stand.placed().drills().isEmpty()
          && !stand.planted().stands()
          && !stand.follows()) {
        why.from(stand.plant() + " in " + stand.in(), stand.placed().at().size(), stand.place());
        plants += stand.placed().at().size();
        if (stand.planted().phase() == WorkPhase.TREES) {
          whyShrubs.from(
              stand.plant() + " in " + stand.in(), stand.placed().at().size(), stand.place());
          shrubs += stand.placed().at().size();
        }
      }
    }
    if (plants == 0 || settings.pocket().value().si() == 0) {
      return Optional.empty();
    }
    Derived<Integer> count = why.gives(plants);
    return Optional.of(
        new Pockets(count, filled(count, settings), filled(whyShrubs.gives(shrubs), settings)));
  }

  private static Derived<Volume> filled(Derived<Integer> plants, MulchSettings settings) {
    return Derived.by("compost = plants × pocket", Source.plan("planting pockets"))
        .from("plants", plants)
        .from("pocket", settings.pocket())
        .gives(settings.pocket().value().times(plants.value()));
  }

  private static Derived<Volume> withPockets(Derived<Volume> layers, Pockets pockets) {
    return Derived.by("layers + planting pockets", Source.plan("sum"))
        .from("layers", layers)
        .from("planting pockets", pockets.compost())
        .gives(layers.value().plus(pockets.compost().value()));
  }
}
