package yardloom.program.report;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Months;
import yardloom.program.report.ReportPage.CautionView;
import yardloom.program.report.ReportPage.DayView;
import yardloom.program.report.ReportPage.Fact;
import yardloom.program.report.ReportPage.Group;
import yardloom.program.report.ReportPage.MonthView;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.PaperWords;
import yardloom.sheet.svg.SvgSheet;

/** Gathers what the page says from the results of a plan. */
final class PageBuilder {
  private final Outcome outcome;
  private final List<SvgSheet> sheets;
  private final TableFormat format;
  private final PaperWords words;

  PageBuilder(Outcome outcome, List<SvgSheet> sheets) {
    this.outcome = outcome;
    this.sheets = sheets;
    PlanInfo info = outcome.plan().info();
    this.format = TableFormat.of(info);
    this.words =
        new PaperWords(
            info.units(), outcome.plan().elements().stream().map(e -> e.id().name()).toList());
  }

  ReportPage build() {
    PlanInfo info = outcome.plan().info();
    Optional<LayerMap> map = LayerMap.of(outcome, words);
    return new ReportPage(
        info.title(),
        facts(info),
        sheets.stream().limit(1).map(SvgSheet::sheet).map(this::picture).toList(),
        keyFigures(),
        cautions(Caution.When.BEFORE_WORK),
        cautions(Caution.When.AT_WORK),
        new FindingViews(map, words).of(outcome.findings()),
        Charts.of(outcome, format, words),
        map.stream().toList(),
        sheets.stream().map(SheetView::of).toList(),
        groups(),
        calendar(),
        CitedSources.of(outcome),
        Templates.text("report.css"),
        Templates.text("report.js"));
  }

  private SheetView picture(ComposedSheet sheet) {
    return SheetView.picture(sheet, outcome.plan().lot().map(Lot::shape).map(Shape::bounds));
  }

  private static List<Fact> facts(PlanInfo info) {
    return Stream.of(
            new Fact("Client", info.client()),
            new Fact("Drawn by", info.author()),
            new Fact("Date", info.date()),
            new Fact("Revision", Say.revision(info)),
            new Fact("Plan", info.id()))
        .filter(f -> !f.value().isBlank())
        .toList();
  }

  /** The tables of the first sheet that stand nowhere else. */
  private List<TableView> keyFigures() {
    if (sheets.isEmpty()) {
      return List.of();
    }
    List<String> others = outcome.tables().stream().map(Table::id).toList();
    return outcome.sheets().stream()
        .filter(
            s -> s.id().equals(sheets.get(0).sheet().id()) && s.format() == SheetPlan.Format.SHEET)
        .limit(1)
        .flatMap(s -> s.panels().stream())
        .filter(Panel.TableBlock.class::isInstance)
        .map(p -> ((Panel.TableBlock) p).table())
        .filter(t -> !others.contains(t.id()) && !t.isEmpty())
        .map(t -> TableView.of(t, format, words))
        .toList();
  }

  private List<CautionView> cautions(Caution.When when) {
    return outcome.cautions().stream()
        .filter(c -> c.when() == when)
        .map(c -> new CautionView(words.of(c.text()), c.source().cite()))
        .toList();
  }

  private List<Group> groups() {
    List<Group> groups = new ArrayList<>();
    for (Audience audience : Audience.values()) {
      List<TableView> tables =
          outcome.tables().stream()
              .filter(t -> outcome.reading(t).audience() == audience)
              .map(t -> TableView.of(t, format, words))
              .toList();
      if (!tables.isEmpty()) {
        String id = "for-" + audience.name().toLowerCase(Locale.ROOT);
        groups.add(new Group(id, audience.title(), tables.size(), tables));
      }
    }
    return groups;
  }

  private List<MonthView> calendar() {
    Map<YearMonth, List<DayView>> months = new TreeMap<>();
    outcome.results().all(DiaryEntry.FACT).stream()
        .sorted()
        .forEach(
            e ->
                months
                    .computeIfAbsent(YearMonth.from(e.from()), m -> new ArrayList<>())
                    .add(new DayView(days(e), words.of(e.title()), words.of(e.text()))));
    List<MonthView> views = new ArrayList<>();
    months.forEach(
        (month, entries) ->
            views.add(
                new MonthView(
                    "month-" + month,
                    Months.fullName(month.getMonth()) + " " + month.getYear(),
                    entries)));
    return views;
  }

  private static String days(DiaryEntry entry) {
    String from = TableFormat.date(entry.from());
    String days =
        entry.until().equals(entry.from()) ? from : from + " to " + TableFormat.date(entry.until());
    return switch (entry.everyYears()) {
      case 0 -> days;
      case 1 -> days + ", every year";
      default -> days + ", every " + entry.everyYears() + " years";
    };
  }
}
