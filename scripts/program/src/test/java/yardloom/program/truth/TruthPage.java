package yardloom.program.truth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The page of everything that tests hold against somebody else's figures: read from the CSVs of
 * checks in the test resources of all rooms, and from the list of published checks that were
 * collected, so that a check that is not made shows with its reason.
 */
final class TruthPage {
  private static final List<String> ROOMS = List.of("kernel", "plugins", "scripts");
  private static final Set<String> NAMED = Set.of("id", "source", "mark", "tolerance", "expected");
  private static final Pattern ID = Pattern.compile("\\b([A-Z][0-9]{2})[a-z]*\\b");

  private final Path root;
  private final Map<String, List<Map<String, String>>> checks = new TreeMap<>();
  private final Map<String, TreeSet<String>> namedBy = new TreeMap<>();

  TruthPage(Path root) throws IOException {
    this.root = root;
    for (String room : ROOMS) {
      try (Stream<Path> files = Files.walk(root.resolve(room))) {
        for (Path file : files.filter(TruthPage::isOfTests).sorted().toList()) {
          read(file);
        }
      }
    }
  }

  private static boolean isOfTests(Path file) {
    String name = file.toString().replace('\\', '/');
    return !name.contains("/target/")
        && !name.contains("/truth/")
        && (name.contains("/src/test/resources/yardloom/") && name.endsWith(".csv")
            || name.contains("/src/test/java/") && name.endsWith(".java"));
  }

  private void read(Path file) throws IOException {
    String name = root.relativize(file).toString().replace('\\', '/');
    String text = Files.readString(file);
    if (name.endsWith(".java")) {
      Matcher ids = ID.matcher(text);
      while (ids.find()) {
        namedBy
            .computeIfAbsent(ids.group(1), k -> new TreeSet<>())
            .add(file.getFileName().toString().replace(".java", ""));
      }
      return;
    }
    List<Map<String, String>> rows = rows(text);
    if (!rows.isEmpty() && rows.get(0).containsKey("source") && rows.get(0).containsKey("id")) {
      checks.put(name, rows);
      for (Map<String, String> row : rows) {
        Matcher id = ID.matcher(row.get("id"));
        if (id.matches()) {
          namedBy
              .computeIfAbsent(id.group(1), k -> new TreeSet<>())
              .add(file.getFileName().toString());
        }
      }
    }
  }

  private static List<Map<String, String>> rows(String text) {
    List<String> lines = text.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
    List<Map<String, String>> rows = new ArrayList<>();
    if (lines.isEmpty() || !lines.get(0).contains(",")) {
      return rows;
    }
    List<String> head = cells(lines.get(0));
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = cells(line);
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < head.size(); i++) {
        row.put(head.get(i).strip(), i < cells.size() ? cells.get(i).strip() : "");
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    Matcher found = Pattern.compile("\\G(?:\"((?:[^\"]|\"\")*)\"|([^,]*))(,|$)").matcher(line);
    while (found.find()) {
      String quoted = found.group(1);
      cells.add(quoted == null ? found.group(2) : quoted.replace("\"\"", "\""));
      if (found.group(3).isEmpty()) {
        break;
      }
    }
    return cells;
  }

  /** The collected checks that neither a CSV nor a test names and that no reason is given for. */
  List<String> unexplained() {
    return reference().stream()
        .filter(r -> !namedBy.containsKey(r.get("id")) && !reasons().containsKey(key(r)))
        .map(TruthPage::key)
        .toList();
  }

  /** The reasons that stand there although the check is made. */
  List<String> vain() {
    return reference().stream()
        .filter(r -> namedBy.containsKey(r.get("id")) && reasons().containsKey(key(r)))
        .map(TruthPage::key)
        .toList();
  }

  private static String key(Map<String, String> row) {
    return row.get("list") + " " + row.get("id");
  }

  private static List<Map<String, String>> reference() {
    return rows(resource("reference-rows.csv"));
  }

  private static Map<String, String> reasons() {
    Map<String, String> reasons = new TreeMap<>();
    rows(resource("reference-reasons.csv")).forEach(r -> reasons.put(key(r), r.get("reason")));
    return reasons;
  }

  private static String resource(String name) {
    try (var in = TruthPage.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String text() {
    StringBuilder page = new StringBuilder();
    int count = checks.values().stream().mapToInt(List::size).sum();
    page.append("# What the figures are held against\n\n")
        .append("Every row is a published or independently computed figure that a test holds the ")
        .append("program against: ")
        .append(count)
        .append(" rows in ")
        .append(checks.size())
        .append(" lists. A build passes only if each is met within its tolerance. ")
        .append("Made by `TruthPageTest`; run it with `-DupdateGolden=true` after a change.\n\n")
        .append("Rows that measure a library alone, or nothing that a plan reaches, say so under ")
        .append("*reached by a plan*; `UnreachedCodeTest` sees to it that all other code is.\n");
    checks.forEach((name, rows) -> list(page, name, rows));
    collected(page);
    return page.toString();
  }

  private static void list(StringBuilder page, String name, List<Map<String, String>> rows) {
    String shown = name.replaceFirst("src/test/resources/yardloom/", "").replace(".csv", "");
    page.append("\n## ").append(shown).append("\n\n");
    boolean through = rows.get(0).containsKey("through");
    page.append("| id | what is given | expected | within | source |")
        .append(through ? " reached by a plan |" : "")
        .append("\n| --- | --- | --- | --- | --- |")
        .append(through ? " --- |" : "")
        .append('\n');
    for (Map<String, String> row : rows) {
      List<String> given = new ArrayList<>();
      row.forEach(
          (column, cell) -> {
            boolean own = column.equals("kind") || column.equals("through");
            if (!NAMED.contains(column) && !own && !cell.isEmpty()) {
              given.add(column + " " + cell);
            }
          });
      String mark = row.getOrDefault("mark", "");
      page.append("| ")
          .append(cell(row.get("id")))
          .append(" | ")
          .append(cell(String.join("; ", given)))
          .append(" | ")
          .append(cell(row.getOrDefault("expected", "(among what is given)")))
          .append(" | ")
          .append(cell(row.getOrDefault("tolerance", "as the test says")))
          .append(" | ")
          .append(cell(row.get("source") + (mark.isEmpty() ? "" : " (" + mark + ")")))
          .append(" |");
      if (through) {
        boolean production = row.getOrDefault("kind", "").equals("production");
        page.append(production ? " yes: " : " no: ")
            .append(cell(row.getOrDefault("through", "")))
            .append(" |");
      }
      page.append('\n');
    }
  }

  private void collected(StringBuilder page) {
    page.append("\n## Published checks that were collected\n\n")
        .append("| list | id | what | where it is made, or why not |\n| --- | --- | --- | --- |\n");
    for (Map<String, String> row : reference()) {
      Set<String> where = namedBy.getOrDefault(row.get("id"), new TreeSet<>());
      page.append("| ")
          .append(row.get("list"))
          .append(" | ")
          .append(row.get("id"))
          .append(" | ")
          .append(cell(row.get("quantity")))
          .append(" | ")
          .append(
              where.isEmpty()
                  ? "not made: " + reasons().getOrDefault(key(row), "")
                  : cell(String.join(", ", where)))
          .append(" |\n");
    }
  }

  private static String cell(String text) {
    return text.replace("|", "\\|").replace("<", "&lt;");
  }
}
