package yardloom.program.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.study.Outcome;
import yardloom.program.export.WholeFile;
import yardloom.sheet.svg.SvgSheet;

/**
 * Writes all results of a plan as one page for a browser: the story on a few screens of a phone
 * (cover, key figures, findings, charts), then map, sheets, tables, calendar and sources, folded.
 * The page needs no other file and no network. Without scripts only sorting, zooming by buttons and
 * the switches of layers are missing; it can be printed.
 */
public final class HtmlReport {
  private HtmlReport() {}

  /**
   * @throws yardloom.kernel.problem.PlanException (FILE) if it cannot be written
   */
  public static void write(Outcome outcome, List<SvgSheet> sheets, Path file) {
    byte[] page = page(outcome, sheets).getBytes(StandardCharsets.UTF_8);
    WholeFile.write(file, out -> out.write(page));
  }

  /** The page as text. */
  public static String page(Outcome outcome, List<SvgSheet> sheets) {
    return Templates.page(new PageBuilder(outcome, sheets).build());
  }
}
