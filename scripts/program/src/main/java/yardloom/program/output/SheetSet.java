package yardloom.program.output;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Logo;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.OwnPanel;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Panel.SitePlan.Base;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.draw.Theme;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.FindingMarks;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.ShownLayers;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.FirmLook;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetMemory;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;

/**
 * The sheets of a plan: those that plugins offer, or those of them that are asked for. What a table
 * is worth on paper its maker says: some always stand on a sheet, others fill the room that is
 * left, the rest is read in the report. Cautions and marks of findings stand once, on the first
 * plan that is built from.
 */
public final class SheetSet {
  private static final SheetPlan SITE =
      new SheetPlan(1, "site-plan", "Site plan", List.of(Panel.SitePlan.shown()));

  private final Outcome outcome;
  private final Paper paper;
  private final List<Mark> findings;
  private final SheetMemory memory;

  private SheetSet(Outcome outcome, Paper paper, SheetMemory memory) {
    this.memory = memory;
    this.outcome = outcome;
    this.paper = paper;
    this.findings = FindingMarks.of(outcome.findings());
  }

  /**
   * The sheets, numbered through.
   *
   * @param asked ids of the sheets that the command asks for; empty for what the plan says
   * @throws PlanException (UNKNOWN_WORD) if there is no such sheet, (OUT_OF_RANGE) if the lot does
   *     not fit on the paper
   */
  public static List<ComposedSheet> of(
      Outcome outcome, Paper paper, List<String> asked, Hands hands) {
    return of(outcome, paper, asked, new SheetMemory(), hands);
  }

  private static List<ComposedSheet> of(
      Outcome outcome, Paper paper, List<String> asked, SheetMemory memory, Hands hands) {
    List<SheetPlan> chosen = WantedSheets.of(outcome, asked);
    try {
      return new SheetSet(outcome, paper, memory).compose(chosen, hands);
    } catch (PlanException e) {
      throw atLot(outcome.plan(), e);
    }
  }

  /**
   * The sheets that the plan asks for; those that are as they were the last time are the very same.
   */
  public static List<ComposedSheet> of(Outcome outcome, Paper paper, SheetMemory memory) {
    return of(outcome, paper, List.of(), memory, Hands.ONE);
  }

  /**
   * One sheet of the set that was composed with {@code memory} before, as {@code outcome} has it.
   *
   * @return its pages; empty if there was no such sheet
   */
  public static List<ComposedSheet> ahead(
      Outcome outcome, Paper paper, String sheet, SheetMemory memory) {
    try {
      SheetSet set = new SheetSet(outcome, paper, memory);
      return set
          .requests(WantedSheets.of(outcome, List.of()), plan -> plan.id().equals(sheet))
          .stream()
          .findFirst()
          .map(r -> new SheetComposer(FontWidths.shipped(), memory).composeAhead(r))
          .orElse(List.of());
    } catch (PlanException e) {
      throw atLot(outcome.plan(), e);
    }
  }

  /** The id of the sheet that a page belongs to; as it is if there is no such sheet. */
  public static String sheetOf(String page, Outcome outcome) {
    return outcome.sheets().stream()
        .map(SheetPlan::id)
        .filter(id -> page.equals(id) || page.matches(Pattern.quote(id) + "-[0-9]+"))
        .max(Comparator.comparing(String::length))
        .orElse(page);
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

  private List<ComposedSheet> compose(List<SheetPlan> chosen, Hands hands) {
    return new SheetComposer(FontWidths.shipped(), memory)
        .composeSet(requests(chosen, plan -> true), hands);
  }

  /**
   * Of the set of {@code chosen} sheets, the requests of those that {@code wanted} lets through.
   */
  private List<SheetRequest> requests(List<SheetPlan> chosen, Predicate<SheetPlan> wanted) {
    List<SheetPlan> plans = new ArrayList<>(chosen);
    if (plans.stream().noneMatch(SheetSet::isWorkDrawing) && !isChosen(chosen)) {
      plans.add(0, SITE);
    }
    SheetPlan first =
        plans.stream().filter(SheetSet::isWorkDrawing).findFirst().orElse(plans.get(0));
    Set<String> pocket = tables(plans.stream().filter(p -> p.format().isPocket()));
    List<Table> homeless = tablesOnNoSheet();
    List<SheetRequest> requests = new ArrayList<>();
    for (SheetPlan plan : plans.stream().filter(wanted).toList()) {
      List<Table> optional = new ArrayList<>();
      SheetPlan filled = sorted(withOwn(plan, first, plans), pocket, optional);
      SheetRequest request = request(filled, plan == first);
      if (isWorkDrawing(plan)) {
        // After the sheet's own, so that none of another trade takes their room.
        optional.addAll(homeless);
      }
      requests.add(request.withCautions(cautions(plan, first, plans)).withOptional(optional));
    }
    return requests;
  }

  /** With the author's own details and notes; on the first also those whose sheet is not drawn. */
  private SheetPlan withOwn(SheetPlan plan, SheetPlan first, List<SheetPlan> plans) {
    Set<String> drawn = plans.stream().map(SheetPlan::id).collect(Collectors.toSet());
    List<Panel> panels = new ArrayList<>(plan.panels());
    panels.addAll(
        OwnPanel.of(outcome.plan(), id -> plan.id().equals(drawn.contains(id) ? id : first.id())));
    return plan.with(panels);
  }

  /** Those that speak of the sheet's work; on the first also those whose sheet is not drawn. */
  private List<Caution> cautions(SheetPlan plan, SheetPlan first, List<SheetPlan> plans) {
    Set<String> drawn = plans.stream().map(SheetPlan::id).collect(Collectors.toSet());
    return outcome.cautions().stream()
        .filter(
            c ->
                c.where()
                    .map(SheetUse::sheetId)
                    .filter(drawn::contains)
                    .orElse(first.id())
                    .equals(plan.id()))
        .toList();
  }

  /** Whether only some of the sheets are wanted; then no other is added. */
  private boolean isChosen(List<SheetPlan> chosen) {
    return !chosen.isEmpty()
        && chosen.size() < outcome.sheets().stream().filter(SheetPlan::usual).count();
  }

  /** Whether a large sheet shows the yard with more than a picture of it. */
  private static boolean isWorkDrawing(SheetPlan sheet) {
    return sheet.format() == SheetPlan.Format.SHEET
        && sitePlans(sheet).anyMatch(p -> p.base() != Base.NAMED);
  }

  /** Whether it shows a picture of the yard and no drawing to work by: the cover. */
  private static boolean isPicture(SheetPlan sheet) {
    return sitePlans(sheet).findAny().isPresent() && !isWorkDrawing(sheet);
  }

  /**
   * The sheet without tables that need not stand on it; those that may are optional.
   *
   * @param pocket tables on pages to carry: whoever works by a sheet has these too, not whoever
   *     reads the cover
   */
  private SheetPlan sorted(SheetPlan plan, Set<String> pocket, List<Table> optional) {
    List<Panel> panels = new ArrayList<>();
    for (Panel panel : plan.panels()) {
      if (!(panel instanceof Panel.TableBlock block)) {
        panels.add(panel);
        continue;
      }
      Table table = block.table();
      OnPaper worth =
          block.ifRoom() ? OnPaper.IF_ROOM : plan.usual() ? worth(table) : OnPaper.ALWAYS;
      boolean elsewhere =
          !plan.format().isPocket() && !isPicture(plan) && pocket.contains(table.id());
      if (worth == OnPaper.ALWAYS && !elsewhere) {
        panels.add(panel);
      } else if (worth != OnPaper.REPORT) {
        optional.add(table);
      }
    }
    return plan.with(panels);
  }

  private static Set<String> tables(Stream<SheetPlan> plans) {
    return plans
        .flatMap(p -> p.panels().stream())
        .filter(Panel.TableBlock.class::isInstance)
        .map(p -> ((Panel.TableBlock) p).table().id())
        .collect(Collectors.toSet());
  }

  /** Tables that a sheet maker makes for its own sheet alone always stand there. */
  private OnPaper worth(Table table) {
    return outcome.onPaper().getOrDefault(table.id(), OnPaper.ALWAYS);
  }

  private SheetRequest request(SheetPlan sheet, boolean marksFindings) {
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    SortedMap<Layer, List<Mark>> part = new TreeMap<>();
    Set<LegendEntry> legend = new LinkedHashSet<>();
    outcome
        .layers()
        .forEach(
            (layer, drawn) -> {
              if (isOn(layer, drawn, sheet)) {
                layers.put(layer, drawn.marks());
                legend.addAll(drawn.legend());
              }
              if (isEnlarged(layer, drawn, sheet)) {
                part.put(layer, drawn.marks());
                legend.addAll(drawn.legend());
              }
            });
    if (!findings.isEmpty() && marksFindings) {
      layers.put(FindingMarks.LAYER, findings);
      legend.addAll(FindingMarks.legend(outcome.findings()));
    }
    Set<String> drawnStyles = SeenStyles.of(layers.values());
    drawnStyles.addAll(SeenStyles.of(part.values()));
    legend.removeIf(e -> !drawnStyles.contains(e.style().name()));
    Paper on = sheet.format().isPocket() ? Paper.page(outcome.plan().info().units()) : paper;
    return SheetRequest.of(sheet, on, outcome.plan().info())
        .withDrawing(layers, List.copyOf(legend))
        .withPart(part)
        .withFirm(
            new FirmLook(
                outcome.plan().said(Logo.KEY).map(Attributes.Entry::value),
                Theme.of(outcome.plan())))
        .withNames(outcome.plan().elements().stream().map(e -> e.id().name()).toList())
        .withSite(
            outcome.plan().lot().map(Lot::shape),
            outcome.plan().site().map(Site::north).orElse(Angle.ZERO));
  }

  private static boolean isOn(Layer layer, DrawnLayer drawn, SheetPlan sheet) {
    if (sitePlans(sheet).findAny().isEmpty()) {
      return drawn.shown();
    }
    return sitePlans(sheet).anyMatch(site -> shows(site, layer, drawn));
  }

  private static boolean isEnlarged(Layer layer, DrawnLayer drawn, SheetPlan sheet) {
    return sheet.panels().stream()
        .filter(p -> !(p instanceof Panel.SitePlan))
        .anyMatch(p -> shows(p, layer, drawn));
  }

  private static boolean shows(Panel panel, Layer layer, DrawnLayer drawn) {
    return ShownLayers.isOn(panel, layer.id(), drawn.shown(), drawn.yard());
  }

  private static Stream<Panel.SitePlan> sitePlans(SheetPlan sheet) {
    return sheet.panels().stream()
        .filter(Panel.SitePlan.class::isInstance)
        .map(Panel.SitePlan.class::cast);
  }

  private List<Table> tablesOnNoSheet() {
    Set<String> shown = tables(outcome.sheets().stream());
    return outcome.tables().stream()
        .filter(t -> !shown.contains(t.id()) && worth(t) != OnPaper.REPORT)
        .toList();
  }
}
