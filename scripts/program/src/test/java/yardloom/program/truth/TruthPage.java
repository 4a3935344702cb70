package yardloom.program.truth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
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
  private static final Pattern ID =
      Pattern.compile("\\b(water |drawing )?([A-Z]{1,3}-[0-9]{1,3}|[A-Z][0-9]{2}|E[0-9])[a-z]*\\b");

  /** Such as {@code D-18 to D-20}. */
  private static final Pattern RANGE =
      Pattern.compile("\\b([A-Z]{1,2})-([0-9]{2}) to \\1-([0-9]{2})\\b");

  /** Tests of water; two lists of collected checks use the same ids. */
  private static final Pattern OF_WATER =
      Pattern.compile("plugins/water/|/[^/]*(?:[Ww]ater|Tank|Emitters)[^/]*$");

  private final Path root;
  private final Map<String, List<Map<String, String>>> checks = new TreeMap<>();
  private final GotFigures got = new GotFigures();
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
        // Its picture's path data read like ids.
        && !name.endsWith("/SvgLogoTest.java")
        && (name.contains("/src/test/resources/yardloom/") && name.endsWith(".csv")
            || name.contains("/src/test/java/") && name.endsWith(".java"));
  }

  private void read(Path file) throws IOException {
    String name = root.relativize(file).toString().replace('\\', '/');
    String text = Files.readString(file);
    if (name.endsWith(".java")) {
      name(text, name);
      return;
    }
    // Ids of one letter and two figures mean a check only where a column says so.
    name(text.replaceAll("\\b[A-Z][0-9]{2}", ""), name);
    List<Map<String, String>> rows = rows(text);
    if (!rows.isEmpty() && rows.get(0).containsKey("source") && rows.get(0).containsKey("id")) {
      checks.put(name, rows);
      Path kept = file.resolveSibling(file.getFileName().toString().replace(".csv", ".got"));
      if (Files.exists(kept)) {
        got.read(name, kept);
      }
      rows.forEach(row -> name(row.get("id"), name));
    }
  }

  /** Notes what checks a text names, each for the lists that its file may mean. */
  private void name(String text, String file) {
    boolean ofWater = OF_WATER.matcher(file).find();
    Matcher ids = ID.matcher(text);
    while (ids.find()) {
      String said = ids.group(1);
      named(ids.group(2), said == null ? ofWater : said.startsWith("water"), file);
    }
    Matcher ranges = RANGE.matcher(text);
    while (ranges.find()) {
      for (int i = Integer.parseInt(ranges.group(2)); i <= Integer.parseInt(ranges.group(3)); i++) {
        named(String.format(Locale.ROOT, "%s-%02d", ranges.group(1), i), ofWater, file);
      }
    }
  }

  private void named(String id, boolean ofWater, String file) {
    String key =
        id.startsWith("ECO-")
            ? "plants " + id
            : id.contains("-") ? (ofWater ? "water-checks " : "drawing-checks ") + id : id;
    namedBy
        .computeIfAbsent(key, k -> new TreeSet<>())
        .add(file.replaceFirst(".*/", "").replace(".java", ""));
  }

  private Set<String> where(Map<String, String> row) {
    String id = row.get("id");
    return namedBy.getOrDefault(id.contains("-") ? key(row) : id, new TreeSet<>());
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

  /** Rows whose test keeps what was given, but not of them, and what is kept of rows that went. */
  List<String> apart() {
    return got.apart(checks);
  }

  /** The collected checks that neither a CSV nor a test names and that no reason is given for. */
  List<String> unexplained() {
    return reference().stream()
        .filter(r -> where(r).isEmpty() && !reasons().containsKey(key(r)))
        .map(TruthPage::key)
        .toList();
  }

  /** The reasons that stand there although the check is made. */
  List<String> vain() {
    return reference().stream()
        .filter(r -> !where(r).isEmpty() && reasons().containsKey(key(r)))
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
        .append("Of ")
        .append(shown())
        .append(" rows the page shows what the program gives, which their tests hold too. ")
        .append("Made by `TruthPageTest`; run it with `-DupdateGolden=true` after a change.\n\n")
        .append(
            "Three groups: from the text of a plan to its printed tables; code that plans reach, ")
        .append("which `UnreachedCodeTest` sees to; libraries alone.\n");
    group(page, "From plan text to printed table", TruthPage::isOfPlans, true);
    group(page, "Code that plans reach", name -> !isOfPlans(name), true);
    group(page, "Libraries alone, and what no plan reaches", name -> !isOfPlans(name), false);
    collected(page);
    return page.toString();
  }

  private static boolean isOfPlans(String name) {
    return name.startsWith("scripts/");
  }

  private void group(StringBuilder page, String title, Predicate<String> lists, boolean isReached) {
    StringBuilder all = new StringBuilder();
    int count = 0;
    for (var entry : checks.entrySet()) {
      List<Map<String, String>> rows =
          entry.getValue().stream().filter(r -> isReached(r) == isReached).toList();
      if (lists.test(entry.getKey()) && !rows.isEmpty()) {
        list(all, entry.getKey(), rows);
        count += rows.size();
      }
    }
    page.append("\n## ").append(title).append(": ").append(count).append(" rows\n").append(all);
  }

  /** Rows of lists that say through what they go may measure a library alone. */
  private static boolean isReached(Map<String, String> row) {
    return !row.containsKey("through")
        || row.getOrDefault("kind", "production").equals("production");
  }

  private long shown() {
    return checks.entrySet().stream()
        .flatMap(
            list ->
                list.getValue().stream()
                    .filter(r -> !got.got(list.getKey(), r, list.getValue()).isEmpty()))
        .count();
  }

  private void list(StringBuilder page, String name, List<Map<String, String>> rows) {
    List<Map<String, String>> all = checks.get(name);
    String shown = name.replaceFirst("src/test/resources/yardloom/", "").replace(".csv", "");
    page.append("\n### ").append(shown).append("\n\n");
    boolean through = rows.get(0).containsKey("through");
    page.append("| id | what is given | expected | got | within | source |")
        .append(through ? " reached by a plan |" : "")
        .append("\n| --- | --- | --- | --- | --- | --- |")
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
          .append(cell(or(got.got(name, row, all), "met, in its test")))
          .append(" | ")
          .append(cell(row.getOrDefault("tolerance", within(name, row))))
          .append(" | ")
          .append(cell(row.get("source") + (mark.isEmpty() ? "" : " (" + mark + ")")))
          .append(" |");
      if (through) {
        String by = row.getOrDefault("through", "");
        boolean reached = row.getOrDefault("kind", "").equals("production") || by.equals("plan");
        page.append(reached ? " yes: " : " no: ").append(cell(by)).append(" |");
      }
      page.append('\n');
    }
  }

  private String within(String name, Map<String, String> row) {
    return or(got.within(name, row, checks.get(name)), "as the test says");
  }

  private static String or(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }

  private void collected(StringBuilder page) {
    page.append("\n## Published checks that were collected\n\n")
        .append("| list | id | what | where it is made, or why not |\n| --- | --- | --- | --- |\n");
    for (Map<String, String> row : reference()) {
      Set<String> where = where(row);
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
