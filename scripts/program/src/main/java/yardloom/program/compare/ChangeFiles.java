package yardloom.program.compare;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.CsvWriter;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.export.PngWriter;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgWriter;

/** A comparison as files: sheets, change order, all differences, and the text. */
public final class ChangeFiles {
  private static final List<String> SIGN =
      List.of(
          "Nothing on this list is built or bought before both have signed.",
          "Client: ______________________________   Date: ______________",
          "Contractor: __________________________   Date: ______________");

  private final Comparison comparison;
  private final TableFormat format;
  private final List<ComposedSheet> sheets;

  /**
   * Composes the sheets; nothing is written yet.
   *
   * @throws yardloom.kernel.problem.PlanException if the lots do not fit on the paper
   */
  public ChangeFiles(Comparison comparison, Paper paper) {
    this.comparison = comparison;
    PlanInfo info = comparison.now().info();
    this.format = new TableFormat(info.units(), info.currency());
    this.sheets = compose(paper);
  }

  private List<ComposedSheet> compose(Paper paper) {
    PlanInfo info = comparison.now().info();
    SheetComposer composer = new SheetComposer(FontWidths.shipped());
    ChangeDrawing drawing = new ChangeDrawing(comparison);
    SheetPlan plan =
        new SheetPlan(1, "old-and-new", "Old and new", List.of(Panel.SitePlan.shown()));
    Table order = ChangeOrder.table(comparison, format);
    SheetRequest site =
        SheetRequest.of(plan, paper, info)
            .withDrawing(drawing.layers(), ChangeDrawing.legend())
            .withSite(drawing.extent(), Angle.ZERO);
    List<Panel> panels = List.of(new Panel.TableBlock(order), new Panel.Notes("Agreed", SIGN));
    // It is signed and carried: a page, not a drawing sheet.
    Paper page = Paper.named(info.units() == UnitSystem.US ? "ANSI A" : "A4").portrait();
    SheetPlan signed = new SheetPlan(2, "change-order", "Change order", panels);
    return composer.composeSet(List.of(site), SheetRequest.of(signed, page, info));
  }

  /** Writes everything into {@code folder}, which must exist. */
  public void write(Path folder) throws IOException {
    for (ComposedSheet sheet : sheets) {
      String name = String.format(Locale.ROOT, "%02d-%s", sheet.number(), sheet.id());
      try (OutputStream out =
          new BufferedOutputStream(Files.newOutputStream(folder.resolve(name + ".svg")))) {
        SvgWriter.write(sheet, out);
      }
    }
    csv(ChangeOrder.table(comparison, format), folder);
    csv(ChangeOrder.figures(comparison), folder);
    Files.writeString(
        folder.resolve("changes.txt"), ChangeText.of(comparison, true), StandardCharsets.UTF_8);
  }

  /** Writes the sheets as pictures too. */
  public void writePictures(Path folder) {
    for (ComposedSheet sheet : sheets) {
      String name = String.format(Locale.ROOT, "%02d-%s.png", sheet.number(), sheet.id());
      PngWriter.write(sheet, PngWriter.USUAL_DPI, folder.resolve(name));
    }
  }

  private void csv(Table table, Path folder) throws IOException {
    try (Writer out =
        Files.newBufferedWriter(folder.resolve(table.id() + ".csv"), StandardCharsets.UTF_8)) {
      CsvWriter.write(table, format, out);
    }
  }
}
