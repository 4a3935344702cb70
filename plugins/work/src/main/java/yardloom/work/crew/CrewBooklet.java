package yardloom.work.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.work.delivery.Delivery;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;
import yardloom.work.phase.CareVisit;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/**
 * The crew's pages: a map, the steps of all phases in working order, what is laid where, an
 * enlarged plan of the points to set out with the tapes to each, and, where there is room, what
 * must be there. A crew works from it without the sheets.
 */
public final class CrewBooklet implements SheetMaker {
  private static final int NUMBER = 60;

  @Override
  public String id() {
    return "work.crew";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        TaskLoad.FACT,
        PhaseTime.FACT,
        PlantingVisit.FACT,
        CareVisit.FACT,
        Delivery.FACT,
        YardFacts.PLANTING_WINDOWS,
        KindHours.FACT,
        YardFacts.SURFACES,
        YardFacts.BILL,
        YardFacts.SUPPLIES,
        YardFacts.DIG_CALL);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    List<SheetPlan> booklets = new ArrayList<>();
    for (PartOfPlan part : PartOfPlan.of(plan, facts)) {
      if (!part.facts().all(PhaseTime.FACT).isEmpty()) {
        booklets.add(booklet(part, booklets.size(), offers));
      }
    }
    return booklets;
  }

  private static SheetPlan booklet(PartOfPlan part, int before, Offers offers) {
    Plan plan = part.plan();
    Facts facts = part.facts();
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.WAYS, SheetPage.CREW)));
    panels.add(new Panel.Notes("Every day, and in each phase", everyDay(plan, phases)));
    offers.tables(SheetPage.CREW).forEach(t -> add(panels, t));
    CrewTables tables = new CrewTables(plan, facts);
    add(panels, tables.steps(phases));
    add(panels, tables.layers(phases));
    panels.add(new Panel.Enlarged("Points to set out", offers.layers(SheetPage.POINTS)));
    phases.forEach(p -> offers.tables(p.phase().id()).forEach(t -> add(panels, t)));
    Table needed = tables.needed(phases);
    if (!needed.isEmpty()) {
      // The sheets of each trade have it too.
      panels.add(new Panel.TableBlock(needed, true));
    }
    return new SheetPlan(
        NUMBER + before,
        before == 0 ? "crew" : "crew-stage-" + (before + 1),
        part.name().isEmpty() ? "Crew booklet" : "Crew booklet, " + part.name(),
        SheetPlan.Format.BOOKLET,
        panels);
  }

  private static void add(List<Panel> panels, Table table) {
    if (!table.isEmpty()) {
      panels.add(new Panel.TableBlock(table));
    }
  }

  /**
   * The crew's kit, then what to mind, each sentence once behind the names of all phases in which
   * it holds: a crew that joins late reads those of its own.
   */
  private static List<String> everyDay(Plan plan, List<PhaseTime> phases) {
    Map<String, List<String>> phasesOf = new LinkedHashMap<>();
    for (PhaseTime time : phases) {
      CrewTables.texts(time.phase().cautions(), plan)
          .forEach(
              caution ->
                  phasesOf
                      .computeIfAbsent(caution, c -> new ArrayList<>())
                      .add(time.phase().title(plan)));
    }
    Map<List<String>, List<String>> together = new LinkedHashMap<>();
    phasesOf.forEach(
        (caution, in) -> together.computeIfAbsent(in, p -> new ArrayList<>()).add(caution));
    List<String> lines = new ArrayList<>();
    lines.add(
        "Crew of "
            + WorkSettings.of(plan).crew()
            + ". Bring gloves, water, first aid and this booklet.");
    together.forEach(
        (in, cautions) -> lines.add(String.join(", ", in) + ": " + String.join(" ", cautions)));
    return lines;
  }
}
