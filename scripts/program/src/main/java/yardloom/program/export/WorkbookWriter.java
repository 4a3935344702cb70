package yardloom.program.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/**
 * Writes all tables as one workbook: a list of them first, then a sheet for each. Numbers are
 * numbers with the digits of the data files, dates are dates, and text is never a formula. The same
 * tables give the same bytes.
 *
 * <p>References: [1] ISO/IEC 29500-1, Office Open XML: a sheet's name has at most 31 characters and
 * none of {@code []*?/\:} (from memory, unverified).
 */
public final class WorkbookWriter {
  private static final int LONGEST_NAME = 31;
  private static final int WIDEST = 60;
  private static final int NARROWEST = 8;

  /** Where the library writes the moment of writing. */
  private static final String PROPERTIES = "docProps/core.xml";

  private static final String FIXED_TIME = "2000-01-01T00:00:00Z";

  private WorkbookWriter() {}

  /**
   * @throws yardloom.kernel.problem.PlanException (FILE) if it cannot be written
   */
  public static void write(List<Table> tables, TableFormat format, Path file) {
    WholeFile.write(file, out -> out.write(bytes(tables, format)));
  }

  /** The workbook as the bytes of its file. */
  public static byte[] bytes(List<Table> tables, TableFormat format) throws IOException {
    ByteArrayOutputStream raw = new ByteArrayOutputStream();
    Workbook book = new Workbook(raw, "Yardloom", "1.0");
    Worksheet contents = book.newWorksheet("Tables");
    List<String> names = names(tables);
    row(contents, 0, List.of("Sheet", "Table", "Rows"));
    contents.range(0, 0, 0, 2).style().bold().set();
    for (int i = 0; i < tables.size(); i++) {
      contents.value(i + 1, 0, names.get(i));
      contents.value(i + 1, 1, tables.get(i).title());
      contents.value(i + 1, 2, tables.get(i).rows().size());
    }
    contents.width(0, LONGEST_NAME + 1.0);
    contents.width(1, WIDEST);
    contents.freezePane(0, 1);
    for (int i = 0; i < tables.size(); i++) {
      fill(book.newWorksheet(names.get(i)), tables.get(i), format);
    }
    book.finish();
    return sameEveryTime(raw.toByteArray());
  }

  /** The ids, cut to what a sheet's name may be, each once. */
  private static List<String> names(List<Table> tables) {
    Set<String> taken = new HashSet<>(Set.of("tables"));
    List<String> names = new ArrayList<>();
    for (Table table : tables) {
      String id = table.id();
      String name = id.substring(0, Math.min(LONGEST_NAME, id.length()));
      for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
        String end = "-" + n;
        name = id.substring(0, Math.min(LONGEST_NAME - end.length(), id.length())) + end;
      }
      names.add(name);
    }
    return names;
  }

  private static void fill(Worksheet sheet, Table table, TableFormat format) {
    List<Column> columns = table.columns();
    int[] widest = new int[columns.size()];
    for (int c = 0; c < columns.size(); c++) {
      String head = format.header(columns.get(c));
      sheet.value(0, c, head);
      widest[c] = head.length();
    }
    sheet.range(0, 0, 0, columns.size() - 1).style().bold().wrapText(true).set();
    sheet.freezePane(0, 1);
    for (int r = 0; r < table.rows().size(); r++) {
      for (int c = 0; c < columns.size(); c++) {
        Cell cell = table.rows().get(r).get(c);
        value(sheet, r + 1, c, columns.get(c), cell, format);
        widest[c] = Math.max(widest[c], format.text(columns.get(c), cell).length());
      }
    }
    for (int c = 0; c < columns.size(); c++) {
      sheet.width(c, Math.min(WIDEST, Math.max(NARROWEST, widest[c] + 2)));
    }
    int below = table.rows().size() + 2;
    for (int n = 0; n < table.notes().size(); n++) {
      sheet.value(below + n, 0, table.notes().get(n));
    }
  }

  private static void value(
      Worksheet sheet, int row, int at, Column column, Cell cell, TableFormat format) {
    if (cell.value().isEmpty()) {
      return;
    }
    if (cell.value().get() instanceof LocalDate date) {
      sheet.value(row, at, date);
      sheet.style(row, at).format("yyyy-mm-dd").set();
    } else if (column.measure().isNumber() && !(cell.value().get() instanceof String)) {
      BigDecimal number = new BigDecimal(format.plain(column, cell));
      sheet.value(row, at, number);
      String decimals = number.scale() > 0 ? "." + "0".repeat(number.scale()) : "";
      sheet.style(row, at).format("#,##0" + decimals).set();
    } else {
      sheet.value(row, at, format.text(column, cell));
    }
  }

  private static void row(Worksheet sheet, int row, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      sheet.value(row, i, texts.get(i));
    }
  }

  /** The same archive with fixed times in place of the moment of writing. */
  private static byte[] sameEveryTime(byte[] archive) throws IOException {
    // The library's archive is read by its directory, which only a file has.
    Path file = Files.createTempFile("workbook", ".xlsx");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      Files.write(file, archive);
      try (ZipFile in = new ZipFile(file.toFile());
          ZipOutputStream zip = new ZipOutputStream(out)) {
        for (ZipEntry entry : in.stream().map(ZipEntry.class::cast).toList()) {
          byte[] content = in.getInputStream(entry).readAllBytes();
          put(
              zip,
              entry.getName(),
              entry.getName().equals(PROPERTIES) ? undated(content) : content);
        }
      }
    } finally {
      Files.deleteIfExists(file);
    }
    return out.toByteArray();
  }

  private static byte[] undated(byte[] properties) {
    return new String(properties, StandardCharsets.UTF_8)
        .replaceAll(">\\d{4}-\\d\\d-\\d\\dT[^<]*<", ">" + FIXED_TIME + "<")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    // In local time as it is kept in archives, so that no time zone shows.
    entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }
}
