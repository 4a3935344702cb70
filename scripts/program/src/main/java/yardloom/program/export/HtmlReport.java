package yardloom.program.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.PaperWords;
import yardloom.sheet.svg.SvgWriter;

/**
 * Writes all results of a plan as one page for a browser: the cover, cautions, findings, then
 * sheets, tables and sources; sheets and tables open at a touch. The page needs no other file and
 * no network, works without scripts, and can be printed.
 */
public final class HtmlReport {
  private final Outcome outcome;
  private final List<ComposedSheet> sheets;
  private final TableFormat format;
  private final PaperWords words;
  private final Html html = new Html();

  private HtmlReport(Outcome outcome, List<ComposedSheet> sheets) {
    this.outcome = outcome;
    this.sheets = sheets;
    PlanInfo info = outcome.plan().info();
    this.format = new TableFormat(info.units(), info.currency());
    this.words = new PaperWords(info.units());
  }

  /**
   * @throws yardloom.kernel.problem.PlanException (FILE) if it cannot be written
   */
  public static void write(Outcome outcome, List<ComposedSheet> sheets, Path file) {
    byte[] page = page(outcome, sheets).getBytes(StandardCharsets.UTF_8);
    WholeFile.write(file, out -> out.write(page));
  }

  /** The page as text. */
  public static String page(Outcome outcome, List<ComposedSheet> sheets) {
    return new HtmlReport(outcome, sheets).build();
  }

  private String build() {
    PlanInfo info = outcome.plan().info();
    html.raw("<!DOCTYPE html>\n").open("html", "lang", "en").open("head");
    html.raw("<meta charset=\"utf-8\">\n");
    html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.element("title", info.title());
    html.open("style").raw(styleSheet()).close("style").close("head").open("body");
    header(info);
    html.open("main");
    cover();
    cautions();
    findings();
    sheets();
    tables();
    sources();
    html.close("main").close("body").close("html");
    return html.toString();
  }

  private static String styleSheet() {
    try (InputStream in = HtmlReport.class.getResourceAsStream("report.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet inside the program cannot be read", e);
    }
  }

  private void header(PlanInfo info) {
    html.open("header").element("h1", info.title()).open("dl", "class", "facts");
    fact("Client", info.client());
    fact("Drawn by", info.author());
    fact("Date", info.date());
    fact("Revision", info.revision());
    fact("Plan", info.id());
    html.close("dl").open("nav", "aria-label", "Parts of this report").open("ul");
    if (!outcome.cautions().isEmpty()) {
      link("cautions", "Cautions");
    }
    link("findings", "Findings");
    link("sheets", "Sheets");
    if (!outcome.tables().isEmpty()) {
      link("tables", "Tables");
    }
    link("sources", "Sources");
    html.close("ul").close("nav").close("header");
  }

  private void fact(String name, String value) {
    if (!value.isBlank()) {
      html.open("div").element("dt", name).element("dd", value).close("div");
    }
  }

  private void link(String id, String text) {
    html.open("li").element("a", text, "href", "#" + id).close("li");
  }

  private void cautions() {
    if (outcome.cautions().isEmpty()) {
      return;
    }
    html.open("section", "id", "cautions", "class", "cautions").element("h2", "Cautions");
    html.open("ul");
    for (Caution caution : outcome.cautions()) {
      html.open("li").text(caution.text() + " ");
      html.element("span", caution.source().cite(), "class", "muted").close("li");
    }
    html.close("ul").close("section");
  }

  private void findings() {
    html.open("section", "id", "findings").element("h2", "Findings");
    if (outcome.findings().isEmpty()) {
      html.element("p", "Nothing to report.").close("section");
      return;
    }
    html.open("ol");
    for (Finding finding : outcome.findings()) {
      String severity = finding.severity().name().toLowerCase(Locale.ROOT);
      html.open("li").element("span", severity, "class", "severity " + severity);
      html.text(finding.element().map(id -> " " + id + ": ").orElse(" ") + finding.text());
      if (!finding.advice().isBlank()) {
        html.raw("<br>").text(finding.advice());
      }
      String place = finding.place().line() == 0 ? "" : ", " + finding.place();
      html.raw("<br>")
          .element(
              "span", finding.rule() + place + ". " + finding.source().cite(), "class", "muted");
      html.close("li");
    }
    html.close("ol").close("section");
  }

  /** The first sheet is what a reader wants to see first. */
  private void cover() {
    if (!sheets.isEmpty()) {
      html.open("section", "id", "cover").element("h2", sheets.get(0).title());
      figure(sheets.get(0));
      html.close("section");
    }
  }

  /** The others open at a touch, so that a phone shows the story and not a mile of drawings. */
  private void sheets() {
    html.open("section", "id", "sheets").element("h2", "Sheets");
    for (ComposedSheet sheet : sheets.subList(Math.min(1, sheets.size()), sheets.size())) {
      html.open("details").element("summary", "Sheet " + sheet.number() + ": " + sheet.title());
      figure(sheet);
      html.close("details");
    }
    html.close("section");
  }

  private void figure(ComposedSheet sheet) {
    // A region that scrolls has to be reached by keyboard too.
    String name = "Sheet " + sheet.number() + ", drawing";
    html.open("figure")
        .open("div", "class", "drawing", "tabindex", "0", "role", "region", "aria-label", name)
        .raw(SvgWriter.element(sheet))
        .close("div");
    String scale =
        sheet.scale().isEmpty()
            ? ""
            : ". Scale "
                + sheet.scale()
                + " when printed from the PDF or SVG file on "
                + sheet.paper().name()
                + "; here the graphic scale counts";
    html.element("figcaption", "Sheet " + sheet.number() + ": " + sheet.title() + scale + ".");
    html.close("figure");
  }

  private void tables() {
    if (outcome.tables().isEmpty()) {
      return;
    }
    html.open("section", "id", "tables").element("h2", "Tables");
    for (Table table : outcome.tables()) {
      html.open("details").element("summary", words.of(table.title()));
      html.open(
              "div",
              "class",
              "scroll",
              "tabindex",
              "0",
              "role",
              "region",
              "aria-label",
              words.of(table.title()))
          .open("table", "id", "table-" + table.id());
      html.element("caption", words.of(table.title())).open("thead").open("tr");
      for (Column column : table.columns()) {
        html.element("th", words.of(format.header(column)), "scope", "col", "class", align(column));
      }
      html.close("tr").close("thead");
      int totals = table.rows().size() - table.totals();
      rows("tbody", table, table.rows().subList(0, totals));
      if (table.totals() > 0) {
        rows("tfoot", table, table.rows().subList(totals, table.rows().size()));
      }
      html.close("table").close("div");
      for (String note : table.notes()) {
        html.element("p", words.of(note), "class", "muted");
      }
      html.close("details");
    }
    html.close("section");
  }

  private void rows(String part, Table table, List<List<Cell>> rows) {
    html.open(part);
    for (List<Cell> row : rows) {
      html.open("tr");
      for (int i = 0; i < row.size(); i++) {
        Column column = table.columns().get(i);
        String text = words.of(format.text(column, row.get(i)));
        if (i == 0) {
          html.element("th", text, "scope", "row", "class", align(column));
        } else {
          html.element("td", text, "class", align(column));
        }
      }
      html.close("tr");
    }
    html.close(part);
  }

  private static String align(Column column) {
    return column.measure().isNumber() ? "number" : "words";
  }

  private void sources() {
    html.open("section", "id", "sources").element("h2", "Sources").open("ul");
    CitedSources.of(outcome).forEach(cite -> html.element("li", cite));
    html.close("ul").close("section");
  }
}
