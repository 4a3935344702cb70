package yardloom.work.client;

import java.util.List;
import yardloom.facts.Harvest;
import yardloom.facts.LawnWater;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchTotals;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Area;
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTime;

/**
 * The figures that say at one look how large the work is; each stands in a table of its own too.
 */
final class KeyFigures {
  private final Plan plan;
  private final Facts facts;
  private final TableFormat format;
  private final Table.Builder table;

  private KeyFigures(String id, Plan plan, Facts facts) {
    this.table =
        Table.titled(id, "Key figures")
            .column(Column.text("what", "What"))
            .column(Column.text("amount", "Amount"));
    this.plan = plan;
    this.facts = facts;
    this.format = TableFormat.of(plan.info());
  }

  static Table of(Plan plan, Facts facts) {
    return new KeyFigures("key-figures", plan, facts).make();
  }

  /** What the client's page tells at one look; the stuff of the work stands in its text. */
  static Table forClient(Plan plan, Facts facts) {
    return new KeyFigures("client-figures", plan, facts).household();
  }

  private Table make() {
    lotAndPlants();
    facts.find(YardFacts.MULCH_TOTALS).ifPresent(this::mulch);
    yearly();
    hours();
    dates();
    return table.build();
  }

  private Table household() {
    lotAndPlants();
    yearly();
    dates();
    return table.build();
  }

  private void lotAndPlants() {
    plan.lot().ifPresent(lot -> row("Lot", area(lot.shape().area())));
    List<Element.Bed> beds = plan.all(Element.Bed.class);
    if (!beds.isEmpty()) {
      Area all = beds.stream().map(b -> b.shape().area()).reduce(Area.ZERO, Area::plus);
      row(beds.size() == 1 ? "1 bed" : beds.size() + " beds", area(all));
    }
    long trees = plan.all(Element.Tree.class).stream().filter(t -> !t.stands()).count();
    if (trees > 0) {
      row("New trees", String.valueOf(trees));
    }
  }

  private void yearly() {
    facts.find(YardFacts.HARVEST).ifPresent(this::harvest);
    facts
        .find(YardFacts.LAWN_WATER)
        .map(LawnWater::yearlySaving)
        .filter(w -> w.litres() > 0)
        .ifPresent(
            w ->
                row(
                    "Tap water saved a year",
                    "about " + format.withUnit(Measure.WATER, YieldInWords.twoDigits(plan, w))));
  }

  private void mulch(MulchTotals totals) {
    row("Ground mulched", area(totals.ground().value()));
    row("Wood chips", Say.volume(totals.chips().value(), plan.info().units()));
    row("Compost", Say.volume(totals.compost().value(), plan.info().units()));
  }

  private void harvest(Harvest harvest) {
    row("Harvest a year, grown", YieldInWords.range(plan, harvest));
  }

  private void hours() {
    double hours = TaskLoad.sum(facts.all(TaskLoad.FACT)).likely().hours();
    if (hours > 0) {
      row("Work of one person", Say.number(Math.rint(hours)) + " h");
    }
  }

  private void dates() {
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    if (!phases.isEmpty() && phases.get(0).start().isPresent()) {
      int stages = facts.all(PartOfPlan.FACT).size();
      if (stages > 1) {
        row("Stages of the work", String.valueOf(stages));
      }
      row("Work begins", TableFormat.date(phases.get(0).start().get()));
      row("Work ends", TableFormat.date(PhaseTime.lastOfWork(phases).end().orElseThrow()));
    }
  }

  private String area(Area area) {
    return format.withUnit(Measure.AREA, area);
  }

  private void row(String what, String amount) {
    table.row(Cell.text(what), Cell.text(amount));
  }
}
