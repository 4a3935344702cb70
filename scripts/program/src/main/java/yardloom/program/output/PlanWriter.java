package yardloom.program.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.CsvWriter;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.program.export.CalendarWriter;
import yardloom.program.export.PageWorkers;
import yardloom.program.export.PdfWriter;
import yardloom.program.export.PngWriter;
import yardloom.program.export.WorkbookWriter;
import yardloom.program.report.HtmlReport;
import yardloom.program.sitefile.GeoJsonWriter;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/** Writes the files of one plan into a folder. */
public final class PlanWriter {
  private final Outcome outcome;
  private final Set<OutputKind> kinds;
  private final TableFormat format;
  private final List<ComposedSheet> sheets;
  private final int dpi;
  private final Hands hands;

  /**
   * Composes the sheets, if any of the kinds shows them; nothing is written yet.
   *
   * @throws yardloom.kernel.problem.PlanException if the site plan does not fit on the paper
   */
  public PlanWriter(Outcome outcome, Paper paper, Set<OutputKind> kinds) {
    this(outcome, paper, kinds, List.of(), Hands.ONE);
  }

  /**
   * The same with only the sheets that are asked for, if some are, and by several at once.
   *
   * @throws yardloom.kernel.problem.PlanException if there is no such sheet, or the site plan does
   *     not fit on the paper
   */
  public PlanWriter(
      Outcome outcome, Paper paper, Set<OutputKind> kinds, List<String> asked, Hands hands) {
    this(
        outcome,
        kinds,
        // Sheets that are named are looked for, even where none is written.
        asked.isEmpty() && kinds.stream().noneMatch(OutputKind::hasSheets)
            ? List.of()
            : SheetSet.of(outcome, paper, asked, hands),
        PngWriter.USUAL_DPI,
        hands);
  }

  private PlanWriter(
      Outcome outcome, Set<OutputKind> kinds, List<ComposedSheet> sheets, int dpi, Hands hands) {
    this.hands = hands;
    this.outcome = outcome;
    this.kinds = Set.copyOf(kinds);
    this.format = TableFormat.of(outcome.plan().info());
    this.sheets = sheets;
    this.dpi = dpi;
  }

  /**
   * The same with pictures of so many dots per inch.
   *
   * @throws yardloom.kernel.problem.PlanException (LIMIT) if a picture of one of the sheets would
   *     be too large
   */
  public PlanWriter withDpi(int dots) {
    if (kinds.contains(OutputKind.PNG)) {
      sheets.forEach(sheet -> PngWriter.requireRoom(sheet.paper(), dots));
    }
    return new PlanWriter(outcome, kinds, sheets, dots, hands);
  }

  /** Loads what every writing needs, whatever the plan: the font's widths and the JSON writer. */
  public static void loadAhead() {
    FontWidths.shipped();
    ResultsJson.loadAhead();
  }

  /** What is written, in one line: sheets where there are any, and tables. */
  public String summary() {
    String tables = count(outcome.tables().size(), "table");
    if (sheets.isEmpty()) {
      return tables;
    }
    String scale =
        sheets.stream()
            .map(ComposedSheet::scale)
            .filter(s -> !s.isEmpty())
            .findFirst()
            .map(s -> " at " + s)
            .orElse("");
    return count(sheets.size(), "sheet")
        + scale
        + " on "
        + sheets.get(0).paper().name()
        + ", "
        + tables;
  }

  private static String count(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }

  /** Writes everything into {@code folder}, which must exist and be empty. */
  public void write(Path folder) throws IOException {
    List<SvgSheet> drawn =
        kinds.stream().anyMatch(OutputKind::hasSheets)
            ? hands.all(sheets.stream().<Supplier<SvgSheet>>map(s -> () -> SvgSheet.of(s)).toList())
            : List.of();
    if (kinds.contains(OutputKind.SVG)) {
      writeDrawings(drawn, Files.createDirectories(folder.resolve("sheets")));
    }
    if (kinds.contains(OutputKind.PNG)) {
      writePictures(drawn, dpi, Files.createDirectories(folder.resolve("sheets")));
    }
    if (kinds.contains(OutputKind.PDF)) {
      PdfWriter.write(
          drawn,
          outcome.plan().info().title(),
          outcome.plan().info().author(),
          folder.resolve(outcome.plan().info().id() + ".pdf"));
    }
    if (kinds.contains(OutputKind.HTML)) {
      HtmlReport.write(outcome, drawn, folder.resolve("report.html"));
    }
    if (kinds.contains(OutputKind.XLSX)) {
      WorkbookWriter.write(
          outcome.tables(), format, folder.resolve(outcome.plan().info().id() + ".xlsx"));
    }
    if (kinds.contains(OutputKind.GEOJSON)) {
      writeLayers(folder);
    }
    List<DiaryEntry> diary = outcome.results().all(DiaryEntry.FACT);
    if (kinds.contains(OutputKind.ICS) && !diary.isEmpty()) {
      Files.writeString(
          folder.resolve("calendar.ics"),
          CalendarWriter.text(outcome.plan().info(), diary),
          StandardCharsets.UTF_8);
    }
    atOnce(figures(folder));
  }

  /** Writes a file or some. */
  private interface Piece {
    void write() throws IOException;
  }

  private void atOnce(List<Piece> pieces) throws IOException {
    try {
      hands.all(
          pieces.stream()
              .<Supplier<Piece>>map(
                  piece ->
                      () -> {
                        try {
                          piece.write();
                        } catch (IOException e) {
                          throw new UncheckedIOException(e);
                        }
                        return piece;
                      })
              .toList());
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** The files of figures and words, the longest to make first. */
  private List<Piece> figures(Path folder) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        () ->
            Files.writeString(
                folder.resolve("calculations.txt"),
                CalculationsText.of(outcome, format),
                StandardCharsets.UTF_8));
    if (kinds.contains(OutputKind.JSON)) {
      pieces.add(() -> writeResults(folder));
    }
    if (kinds.contains(OutputKind.CSV)) {
      pieces.add(
          () -> {
            Path tableFolder = Files.createDirectories(folder.resolve("tables"));
            for (Table table : outcome.tables()) {
              writeTable(table, format, tableFolder);
            }
          });
    }
    pieces.add(
        () ->
            Files.writeString(
                folder.resolve("findings.txt"),
                FindingsText.of(outcome.findings(), outcome.plan().info().units()),
                StandardCharsets.UTF_8));
    return pieces;
  }

  private void writeResults(Path folder) throws IOException {
    try (OutputStream out = open(folder.resolve("results.json"))) {
      ResultsJson.write(outcome, format, out);
    }
    if (GeoJsonWriter.canWrite(outcome.plan())) {
      try (OutputStream out = open(folder.resolve("site.geojson"))) {
        GeoJsonWriter.write(outcome.plan(), out);
      }
    }
  }

  /** Without a site nothing lies anywhere on earth, and no folder is made. */
  private void writeLayers(Path folder) throws IOException {
    for (Map.Entry<Layer, DrawnLayer> e : outcome.layers().entrySet()) {
      List<Mark> marks = e.getValue().marks();
      if (GeoJsonWriter.canWrite(outcome.plan(), marks)) {
        Path layers = Files.createDirectories(folder.resolve("layers"));
        String name = e.getKey().id().replace('.', '-') + ".geojson";
        try (OutputStream out = open(layers.resolve(name))) {
          GeoJsonWriter.write(outcome.plan(), e.getKey(), marks, out);
        }
      }
    }
  }

  /** Writes each sheet as SVG into {@code folder}, which must exist. */
  public static void writeDrawings(List<SvgSheet> sheets, Path folder) throws IOException {
    for (SvgSheet sheet : sheets) {
      try (OutputStream out = open(folder.resolve(name(sheet.sheet()) + ".svg"))) {
        sheet.writeTo(out);
      }
    }
  }

  /** Writes each sheet as PNG into {@code folder}, which must exist. */
  public static void writePictures(List<SvgSheet> sheets, Path folder) throws IOException {
    writePictures(sheets, PngWriter.USUAL_DPI, folder);
  }

  private static void writePictures(List<SvgSheet> sheets, int dpi, Path folder)
      throws IOException {
    PageWorkers.each(
        sheets,
        sheet -> {
          Path file = folder.resolve(name(sheet.sheet()) + ".png");
          PngWriter.write(sheet, dpi, file);
          return file;
        });
  }

  /** Writes a table as CSV, named by its id, into {@code folder}, which must exist. */
  public static void writeTable(Table table, TableFormat format, Path folder) throws IOException {
    try (Writer out =
        Files.newBufferedWriter(folder.resolve(table.id() + ".csv"), StandardCharsets.UTF_8)) {
      CsvWriter.write(table, format, out);
    }
  }

  private static OutputStream open(Path file) throws IOException {
    return new BufferedOutputStream(Files.newOutputStream(file));
  }

  private static String name(ComposedSheet sheet) {
    return String.format(Locale.ROOT, "%02d-%s", sheet.number(), sheet.id());
  }
}
