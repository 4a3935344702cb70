package yardloom.scripts.output;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.draw.FontWidths;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.paint.FindingMarks;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.sheet.ComposedSheet;
import yardloom.kernel.sheet.Paper;
import yardloom.kernel.sheet.SheetComposer;
import yardloom.kernel.sheet.SheetRequest;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.UnitSystem;

/**
 * The sheets of a plan: the site plan first, then what plugins offer, last the tables that stand on
 * no other sheet.
 */
public final class SheetSet {
  private static final int SITE_PLAN = 1;
  private static final int SCHEDULES = 90;

  /** Tables that stand beside the site plan if there is room for them. */
  private static final List<String> BESIDE_PLAN =
      List.of("findings", "beds", "plant-list", "materials-order");

  private SheetSet() {}

  /** All sheets, numbered through. */
  public static List<ComposedSheet> of(Outcome outcome, Paper paper) {
    try {
      return compose(outcome, paper);
    } catch (PlanException e) {
      // What does not fit on paper is as large as the lot.
      throw e.at(outcome.plan().lot().map(Lot::place).orElse(SourceRef.NONE));
    }
  }

  private static List<ComposedSheet> compose(Outcome outcome, Paper paper) {
    List<SheetRequest> requests = new ArrayList<>();
    SheetComposer composer = new SheetComposer(FontWidths.shipped());
    SheetRequest sitePlan = sitePlan(outcome, paper);
    requests.add(sitePlan);
    for (SheetPlan sheet : outcome.sheets()) {
      requests.add(request(outcome, sheet, paperOf(sheet, paper, outcome)));
    }
    List<Panel> rest = tablesOnNoSheet(outcome, composer.placed(sitePlan));
    if (!rest.isEmpty()) {
      requests.add(
          request(outcome, new SheetPlan(SCHEDULES, "schedules", "Schedules", rest), paper));
    }
    return composer.composeSet(requests);
  }

  private static Paper paperOf(SheetPlan sheet, Paper chosen, Outcome outcome) {
    if (sheet.format() == SheetPlan.Format.SHEET) {
      return chosen;
    }
    String page = outcome.plan().info().units() == UnitSystem.US ? "ANSI A" : "A4";
    return Paper.named(page).portrait();
  }

  private static SheetRequest sitePlan(Outcome outcome, Paper paper) {
    SheetPlan sheet =
        new SheetPlan(SITE_PLAN, "site-plan", "Site plan", List.of(new Panel.SitePlan(Set.of())));
    List<Table> beside = new ArrayList<>();
    for (String id : BESIDE_PLAN) {
      outcome.tables().stream().filter(t -> t.id().equals(id)).forEach(beside::add);
    }
    return request(outcome, sheet, paper).withCautions(outcome.cautions()).withOptional(beside);
  }

  private static SheetRequest request(Outcome outcome, SheetPlan sheet, Paper paper) {
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    Set<LegendEntry> legend = new LinkedHashSet<>();
    outcome
        .layers()
        .forEach(
            (layer, drawn) -> {
              if (isOn(layer, drawn, sheet)) {
                layers.put(layer, drawn.marks());
                legend.addAll(drawn.legend());
              }
            });
    List<Mark> marks = FindingMarks.of(outcome.findings());
    if (!marks.isEmpty() && named(sheet).isEmpty()) {
      layers.put(FindingMarks.LAYER, marks);
      legend.addAll(FindingMarks.legend(outcome.findings()));
    }
    return SheetRequest.of(sheet, paper, outcome.plan().info())
        .withDrawing(layers, List.copyOf(legend))
        .withSite(
            outcome.plan().lot().map(Lot::shape),
            outcome.plan().site().map(Site::north).orElse(Angle.ZERO));
  }

  /** A sheet that names layers shows just those, any other the ones that are on by default. */
  private static boolean isOn(Layer layer, DrawnLayer drawn, SheetPlan sheet) {
    Set<String> named = named(sheet);
    return named.isEmpty() ? drawn.shown() : named.contains(layer.id());
  }

  private static Set<String> named(SheetPlan sheet) {
    Set<String> named = new HashSet<>();
    for (Panel panel : sheet.panels()) {
      if (panel instanceof Panel.SitePlan site) {
        named.addAll(site.layers());
      }
    }
    return named;
  }

  private static List<Panel> tablesOnNoSheet(Outcome outcome, List<Table> besidePlan) {
    Set<String> shown = new HashSet<>();
    besidePlan.forEach(table -> shown.add(table.id()));
    for (SheetPlan sheet : outcome.sheets()) {
      for (Panel panel : sheet.panels()) {
        if (panel instanceof Panel.TableBlock block) {
          shown.add(block.table().id());
        }
      }
    }
    List<Panel> rest = new ArrayList<>();
    for (Table table : outcome.tables()) {
      if (!shown.contains(table.id())) {
        rest.add(new Panel.TableBlock(table));
      }
    }
    return rest;
  }
}
