package yardloom.program.output;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Panel.SitePlan.Base;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.FindingMarks;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;

/**
 * The sheets of a plan: the site plan first, then what plugins offer, last the tables that stand on
 * no other sheet and find no room beside the site plan.
 */
public final class SheetSet {
  private static final SheetPlan SITE =
      new SheetPlan(1, "site-plan", "Site plan", List.of(Panel.SitePlan.shown()));
  private static final int SCHEDULES = 90;

  /** Tables that are first to stand beside the site plan. */
  private static final List<String> BESIDE_PLAN =
      List.of("findings", "beds", "plant-list", "materials-order");

  private SheetSet() {}

  /** All sheets, numbered through. */
  public static List<ComposedSheet> of(Outcome outcome, Paper paper) {
    try {
      return compose(outcome, paper);
    } catch (PlanException e) {
      throw atLot(outcome.plan(), e);
    }
  }

  /**
   * Refuses a plan whose lot does not fit on the paper, before it is worked out.
   *
   * @throws PlanException (OUT_OF_RANGE) if it does not
   */
  public static void requireRoom(Plan plan, Paper paper) {
    SheetRequest bare =
        SheetRequest.of(SITE, paper, plan.info()).withSite(plan.lot().map(Lot::shape), Angle.ZERO);
    try {
      new SheetComposer(FontWidths.shipped()).requireRoom(bare);
    } catch (PlanException e) {
      throw atLot(plan, e);
    }
  }

  /** What does not fit on paper is as large as the lot. */
  private static PlanException atLot(Plan plan, PlanException e) {
    return e.at(plan.lot().map(Lot::place).orElse(SourceRef.NONE));
  }

  private static List<ComposedSheet> compose(Outcome outcome, Paper paper) {
    List<Table> rest = tablesOnNoSheet(outcome);
    List<Mark> findings = FindingMarks.of(outcome.findings());
    List<SheetRequest> requests = new ArrayList<>();
    requests.add(
        request(outcome, findings, SITE, paper)
            .withCautions(outcome.cautions())
            .withOptional(besidePlan(outcome, rest)));
    for (SheetPlan sheet : outcome.sheets()) {
      requests.add(request(outcome, findings, sheet, paperOf(sheet, paper, outcome)));
    }
    List<Panel> panels = rest.stream().<Panel>map(Panel.TableBlock::new).toList();
    SheetPlan schedules = new SheetPlan(SCHEDULES, "schedules", "Schedules", panels);
    return new SheetComposer(FontWidths.shipped())
        .composeSet(requests, request(outcome, findings, schedules, paper));
  }

  /** What is asked for most first, then what else would need a sheet of its own. */
  private static List<Table> besidePlan(Outcome outcome, List<Table> rest) {
    Set<Table> beside = new LinkedHashSet<>();
    for (String id : BESIDE_PLAN) {
      outcome.tables().stream().filter(t -> t.id().equals(id)).forEach(beside::add);
    }
    beside.addAll(rest);
    return List.copyOf(beside);
  }

  private static Paper paperOf(SheetPlan sheet, Paper chosen, Outcome outcome) {
    return sheet.format() == SheetPlan.Format.SHEET
        ? chosen
        : Paper.page(outcome.plan().info().units());
  }

  private static SheetRequest request(
      Outcome outcome, List<Mark> findings, SheetPlan sheet, Paper paper) {
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
    if (!findings.isEmpty() && marksFindings(sheet)) {
      layers.put(FindingMarks.LAYER, findings);
      legend.addAll(FindingMarks.legend(outcome.findings()));
    }
    return SheetRequest.of(sheet, paper, outcome.plan().info())
        .withDrawing(layers, List.copyOf(legend))
        .withSite(
            outcome.plan().lot().map(Lot::shape),
            outcome.plan().site().map(Site::north).orElse(Angle.ZERO));
  }

  private static boolean isOn(Layer layer, DrawnLayer drawn, SheetPlan sheet) {
    if (sitePlans(sheet).findAny().isEmpty()) {
      return drawn.shown();
    }
    return sitePlans(sheet)
        .anyMatch(
            site ->
                site.layers().contains(layer.id())
                    || (site.base() == Base.YARD ? drawn.yard() : drawn.shown()));
  }

  /** Whether findings are marked: on the plan that shows all that is on. */
  private static boolean marksFindings(SheetPlan sheet) {
    return sitePlans(sheet).allMatch(site -> site.base() == Base.SHOWN);
  }

  private static Stream<Panel.SitePlan> sitePlans(SheetPlan sheet) {
    return sheet.panels().stream()
        .filter(Panel.SitePlan.class::isInstance)
        .map(Panel.SitePlan.class::cast);
  }

  private static List<Table> tablesOnNoSheet(Outcome outcome) {
    Set<String> shown = new HashSet<>();
    for (SheetPlan sheet : outcome.sheets()) {
      for (Panel panel : sheet.panels()) {
        if (panel instanceof Panel.TableBlock block) {
          shown.add(block.table().id());
        }
      }
    }
    return outcome.tables().stream().filter(t -> !shown.contains(t.id())).toList();
  }
}
