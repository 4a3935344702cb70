package yardloom.work.crew;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/**
 * The crew's pages: one map with the tapes' points, the steps of all phases in working order, the
 * tapes, what is laid where and what must be there. A crew works from it without the sheets.
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
        YardFacts.SURFACES,
        YardFacts.BILL,
        YardFacts.SUPPLIES,
        YardFacts.DIG_CALL);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    if (phases.isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.WAYS, SheetPage.CREW)));
    panels.add(new Panel.Notes("Every day", everyDay(plan, phases)));
    for (int i = 0; i < phases.size(); i++) {
      panels.add(
          new Panel.Notes(
              (i + 1) + ". " + phases.get(i).phase().title(), steps(phases.get(i), plan, facts)));
    }
    CrewTables tables = new CrewTables(plan, facts);
    add(panels, tables.layers(phases));
    add(panels, tables.needed(phases));
    phases.forEach(p -> offers.tables(p.phase().id()).forEach(t -> add(panels, t)));
    panels.add(
        new Panel.Notes(
            "Done", List.of("Date ____________  Hours ________  By ____________________")));
    return List.of(new SheetPlan(NUMBER, "crew", "Crew booklet", SheetPlan.Format.BOOKLET, panels));
  }

  private static void add(List<Panel> panels, Table table) {
    if (!table.isEmpty()) {
      panels.add(new Panel.TableBlock(table));
    }
  }

  /** What is said for each phase elsewhere, once. */
  private static List<String> everyDay(Plan plan, List<PhaseTime> phases) {
    Set<String> cautions = new LinkedHashSet<>();
    phases.forEach(p -> cautions.addAll(texts(p.phase().cautions(), plan.info().units())));
    List<String> lines = new ArrayList<>();
    lines.add(
        "Crew of "
            + WorkSettings.of(plan).crew()
            + ". Bring gloves, water, first aid and this booklet.");
    lines.addAll(cautions);
    return lines;
  }

  private static List<String> steps(PhaseTime time, Plan plan, Facts facts) {
    List<String> lines = new ArrayList<>();
    lines.add(when(time) + (time.why().isEmpty() ? "" : " It " + time.why() + "."));
    String tools = String.join(", ", time.phase().tools());
    if (!tools.isEmpty()) {
      lines.add("Bring " + tools + ".");
    }
    String dig = facts.find(YardFacts.DIG_CALL).map(c -> " (" + c.call() + ")").orElse("");
    texts(time.phase().steps(), plan.info().units())
        .forEach(s -> lines.add("[  ] " + s.replace("{dig call}", dig)));
    return lines;
  }

  private static String when(PhaseTime time) {
    String days =
        time.start().isPresent()
            ? TableFormat.date(time.start().get())
                + (time.days() == 1 ? "" : " to " + TableFormat.date(time.end().orElseThrow()))
            : "Working day " + time.firstDay();
    return days
        + (time.hours() > 0 ? ", " + Say.number(time.hours()) + " hours of one person." : ".");
  }

  private static List<String> texts(List<String> texts, UnitSystem units) {
    return texts.stream().map(t -> Say.inText(t, units)).toList();
  }
}
