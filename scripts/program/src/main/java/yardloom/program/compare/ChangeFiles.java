package yardloom.program.compare;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.program.output.PlanWriter;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/** A comparison as files: sheets, change order, all differences, and the text. */
public final class ChangeFiles {
  private static final List<String> SIGN =
      List.of(
          "Nothing on this list is built or bought before both have signed.",
          "Client: ______________________________   Date: ______________",
          "Contractor: __________________________   Date: ______________");

  private final Comparison comparison;
  private final TableFormat format;
  private final List<SvgSheet> sheets;

  /**
   * Composes the sheets; nothing is written yet.
   *
   * @throws yardloom.kernel.problem.PlanException if the lots do not fit on the paper
   */
  public ChangeFiles(Comparison comparison, Paper paper) {
    this.comparison = comparison;
    PlanInfo info = comparison.now().info();
    this.format = TableFormat.of(info);
    this.sheets = compose(paper).stream().map(SvgSheet::of).toList();
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
    Paper page = Paper.page(info.units());
    SheetPlan signed = new SheetPlan(2, "change-order", "Change order", panels);
    return composer.composeSet(List.of(site, SheetRequest.of(signed, page, info)));
  }

  /** Writes everything into {@code folder}, which must exist. */
  public void write(Path folder) throws IOException {
    PlanWriter.writeDrawings(sheets, folder);
    PlanWriter.writeTable(ChangeOrder.table(comparison, format), format, folder);
    PlanWriter.writeTable(ChangeOrder.figures(comparison), format, folder);
    Files.writeString(
        folder.resolve("changes.txt"), ChangeText.of(comparison, true), StandardCharsets.UTF_8);
  }

  /** Writes the sheets as pictures too. */
  public void writePictures(Path folder) throws IOException {
    PlanWriter.writePictures(sheets, folder);
  }
}
