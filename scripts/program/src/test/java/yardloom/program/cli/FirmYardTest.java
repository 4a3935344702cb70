package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.InkAudit;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Xy;

/** A firm's file with logo, theme, detail and notes, from its lines to every sheet. */
class FirmYardTest {
  private static final String PLAN =
      """
      plan 'Own firm', units: 'us', date: '2026-03-09'
      include 'firm'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      building 'house', rect(30.ft, 4.ft, 20.ft, 20.ft), eaves: 10.ft
      path 'walk', line([point(5.ft, 2.ft), point(5.ft, 30.ft)]), width: 3.ft
      bed 'herbs', rect(10.ft, 5.ft, 14.ft, 4.ft), use: 'perennial'
      sheetMulch { chips perennial: 8.inch ; compost perennial: 1.inch }
      """;

  private static final String FIRM =
      """
      logo fileText('mark.svg')
      theme 'bed', fill: '#e8eefb', line: '#1f3f7a', weight: 0.5.mm
      theme 'path', fill: '#f6f1e6'
      themeText headings: '#1f4e79', capitals: 3.mm
      detail('Edge of a bed', scale: 10) {
        piece rect(0.ft, 0.ft, 2.inch, 15.inch), of: 'wood', says: 'Cedar'
        piece rect(2.inch, 0.ft, 20.inch, 12.inch), of: 'compost'
        dimension point(22.inch, 0.ft), point(22.inch, 12.inch), offset: -3.inch
      }
      note 'Keep the street clean.'
      note 'Shade the pots.', sheet: 'planting'
      """;

  private static final String MARK =
      "<svg viewBox=\"0 0 40 20\"><rect x=\"0\" y=\"0\" width=\"40\" height=\"20\""
          + " fill=\"#2f5d1e\"/></svg>";

  @TempDir private Path dir;

  private Map<String, String> drawn(String plan, String firm) throws IOException {
    write(plan, firm);
    Run run = Run.in(dir, "draw", "own.groovy", "--out", "out", "--as", "svg,html");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/own"));
  }

  private void write(String plan, String firm) throws IOException {
    Files.writeString(dir.resolve("own.groovy"), plan);
    Files.writeString(dir.resolve("firm.groovy"), firm);
    Files.writeString(dir.resolve("mark.svg"), MARK);
  }

  private static String sheet(Map<String, String> files, String part) {
    return files.entrySet().stream()
        .filter(e -> e.getKey().startsWith("sheets/") && e.getKey().contains(part))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void logo_standsInTheTitleBlockOfEverySheet() throws IOException {
    Map<String, String> files = drawn(PLAN, FIRM);
    for (Map.Entry<String, String> file : files.entrySet()) {
      if (file.getKey().startsWith("sheets/")) {
        assertEquals(1, count(file.getValue(), "class=\"logo\" fill=\"#2f5d1e\""), file.getKey());
      }
    }
    assertFalse(
        sheet(drawn(PLAN.replace("include 'firm'\n", ""), FIRM), "layout").contains("logo"));
  }

  @Test
  void theme_changesItsPartsOnAllDrawings_newAndInLegends_andNothingElse() throws IOException {
    Map<String, String> usual = drawn(PLAN.replace("include 'firm'\n", ""), FIRM);
    Map<String, String> files = drawn(PLAN, FIRM);
    String bed = "class=\"bed\" fill=\"#e8eefb\" stroke=\"#1f3f7a\" stroke-width=\"0.5\"";
    assertTrue(count(sheet(files, "layout"), bed) >= 2, "map and legend");
    assertFalse(sheet(files, "layout").contains("class=\"bed\" fill=\"#dfe9d2\""));
    assertTrue(sheet(usual, "layout").contains("class=\"bed\" fill=\"#dfe9d2\""));
    String wall = "class=\"building\" fill=\"#d9d5cd\"";
    assertEquals(count(sheet(usual, "layout"), wall), count(sheet(files, "layout"), wall));
    // The plan's own line goes before the firm's.
    String own = sheet(drawn(PLAN + "theme 'bed', line: '#000000'\n", FIRM), "layout");
    assertTrue(own.contains("class=\"bed\" fill=\"#dfe9d2\" stroke=\"#000000\""), "its line alone");
  }

  @Test
  void detailAndNotes_standOnTheirSheets_orOnTheFirstDrawing() throws IOException {
    Map<String, String> files = drawn(PLAN, FIRM);
    String materials = sheet(files, "materials");
    for (String said : List.of("Edge of a bed", "Scale 1:10", "Cedar", "1'-0\"")) {
      assertTrue(materials.contains(">" + said + "<"), said);
    }
    String layout = sheet(files, "layout");
    assertEquals(1, count(layout, ">Notes</text>"));
    assertTrue(layout.contains(">Keep the street clean.<"));
    assertTrue(layout.contains(">Shade the pots.<"), "there is no planting sheet");
    assertFalse(materials.contains(">Notes</text>"));
  }

  /** 20 in at 1:10 are 50.8 mm; a logo twice as wide as high is 28 by 14 mm in the title block. */
  @Test
  void detailAndLogo_haveTheirSize() throws IOException {
    List<ComposedSheet> sheets = composed();
    ComposedSheet materials =
        sheets.stream().filter(s -> s.id().equals("materials")).findFirst().orElseThrow();
    Xy compost = size(materials, "detail-compost");
    assertEquals(50.8, compost.x(), 1e-6);
    assertEquals(30.48, compost.y(), 1e-6);
    Xy logo = size(materials, "logo");
    assertEquals(2, logo.x() / logo.y(), 1e-9);
    assertTrue(logo.y() > 10 && logo.y() <= 14 + 1e-9, logo.toString());
  }

  private List<ComposedSheet> composed() throws IOException {
    write(PLAN, FIRM);
    Toolkit toolkit = Toolkit.load();
    Outcome outcome = toolkit.study(toolkit.read(dir.resolve("own.groovy"), Map.of()));
    return SheetSet.of(outcome, Paper.usual(outcome.plan().info().units()), List.of(), Hands.ONE);
  }

  /** Width and height of the largest path of that style: a legend's swatch is smaller. */
  private static Xy size(ComposedSheet sheet, String style) {
    List<Xy> sizes = new ArrayList<>();
    sheet.inks().forEach(ink -> sizes(ink, style, sizes));
    return sizes.stream().max(Comparator.comparingDouble(Xy::x)).orElseThrow();
  }

  private static void sizes(Ink ink, String style, List<Xy> sizes) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> sizes(i, style, sizes));
    } else if (ink instanceof Ink.Path path && path.style().name().equals(style)) {
      List<Xy> points = path.tracks().get(0).points();
      sizes.add(new Xy(range(points, Xy::x), range(points, Xy::y)));
    }
  }

  private static double range(List<Xy> points, ToDoubleFunction<Xy> of) {
    DoubleSummaryStatistics all = points.stream().mapToDouble(of).summaryStatistics();
    return all.getMax() - all.getMin();
  }

  /** Larger letters and a logo break no rule of the sheets. */
  @Test
  void themedSheets_areMeasuredAsOthersAre() throws IOException {
    for (ComposedSheet sheet : composed()) {
      assertEquals(List.of(), InkAudit.problems(sheet, FontWidths.shipped()), sheet.id());
      assertEquals(List.of(), InkAudit.textsOnMeasures(sheet, FontWidths.shipped()), sheet.id());
      boolean large = sheet.paper().widthMm() * sheet.paper().heightMm() > 300 * 300;
      List<Ink.Text> headings =
          InkAudit.texts(sheet).stream().filter(t -> t.content().equals("Legend")).toList();
      for (Ink.Text heading : headings) {
        assertEquals(large ? 3.0 : 2.5, heading.heightMm(), 1e-9, sheet.id());
        assertEquals("#1f4e79", heading.colour());
      }
    }
  }

  @Test
  void errors_nameFileLineAndColumn_andNothingOutsideIsRead() throws IOException {
    String[][] wrong = {
      {"theme 'bed', fill: '#556644'\n", "firm.groovy:1:1: `fill:` #556644 has a contrast of"},
      {"theme 'beds', fill: '#ffffff'\n", "firm.groovy:1:"},
      {"\nlogo fileText('../mark.svg')\n", "firm.groovy:2:6: "},
      {
        "\nlogo '<svg viewBox=\"0 0 9 9\"><script/></svg>'\n",
        "firm.groovy:2:1: the logo has <script>"
      },
      {"detail('X') { piece rect(0.ft, 0.ft, 1.ft, 1.ft), of: 'mud' }\n", "firm.groovy:1:"}
    };
    Files.writeString(dir.resolveSibling("mark.svg"), MARK);
    for (String[] one : wrong) {
      write(PLAN, one[0]);
      Run run = Run.in(dir, "check", "own.groovy");
      assertEquals(ExitCode.PLAN, run.code(), run.out() + run.err());
      assertTrue(run.err().contains(one[1]), run.err());
      assertFalse(run.err().contains("\tat "), run.err());
    }
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }
}
