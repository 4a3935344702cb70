package yardloom.program.truth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** What production code gave for the rows of the lists, as their tests have kept it. */
final class GotFigures {
  /** One figure of a row: which of several it is, what was given, and within what it is held. */
  private record Got(String what, String got, String within) {}

  private final Map<String, Map<String, List<Got>>> byList = new TreeMap<>();

  /** Takes the file that lies beside a list. */
  void read(String list, Path file) throws IOException {
    Map<String, List<Got>> ids = new TreeMap<>();
    List<String> lines = Files.readAllLines(file);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      ids.computeIfAbsent(cells[0], k -> new ArrayList<>())
          .add(new Got(cells[1], cells[2], cells[3]));
    }
    byList.put(list, ids);
  }

  /**
   * Rows of lists with a file that has nothing of them, and figures of rows that are no more. A
   * list that says through what its rows are held has some of them in other lists of its room.
   */
  List<String> apart(Map<String, List<Map<String, String>>> lists) {
    List<String> apart = new ArrayList<>();
    byList.forEach(
        (list, ids) -> {
          TreeSet<String> rows = new TreeSet<>();
          lists.getOrDefault(list, List.of()).forEach(r -> rows.add(r.get("id")));
          boolean partly =
              lists.getOrDefault(list, List.of()).stream().anyMatch(r -> r.containsKey("through"));
          rows.stream()
              .filter(id -> !partly && !ids.containsKey(id))
              .forEach(id -> apart.add(list + " " + id));
          ids.keySet().stream()
              .filter(id -> !rows.contains(id))
              .forEach(id -> apart.add(list + " " + id));
        });
    return apart;
  }

  /** All that was given for a row, in one text; empty if its test does not keep it. */
  String got(String list, Map<String, String> row, List<Map<String, String>> rows) {
    StringBuilder text = new StringBuilder();
    for (Got got : of(list, row, rows)) {
      String label = label(got.what, row);
      text.append(text.length() == 0 ? "" : "; ")
          .append(label)
          .append(label.isEmpty() ? "" : " ")
          .append(got.got);
    }
    return text.toString();
  }

  /** Within what the test holds the row. */
  String within(String list, Map<String, String> row, List<Map<String, String>> rows) {
    TreeSet<String> all = new TreeSet<>();
    of(list, row, rows).forEach(g -> all.add(g.within));
    return String.join("; ", all);
  }

  private List<Got> of(String list, Map<String, String> row, List<Map<String, String>> rows) {
    String id = row.get("id");
    List<Got> own = byList.getOrDefault(list, Map.of()).get(id);
    List<Got> all = own == null ? elsewhere(list, id) : own;
    List<Map<String, String>> named = rows.stream().filter(r -> r.get("id").equals(id)).toList();
    if (all == null || named.size() < 2) {
      return all == null ? List.of() : all;
    }
    // Of rows that share an id each has the figures that name more of its cells than of others'.
    int most = named.stream().mapToInt(r -> said(all, r)).max().orElse(0);
    return most == 0
        ? all
        : all.stream()
            .filter(
                g ->
                    known(g.what, row)
                        == named.stream().mapToInt(r -> known(g.what, r)).max().orElse(0))
            .toList();
  }

  private static int said(List<Got> all, Map<String, String> row) {
    return all.stream().mapToInt(g -> known(g.what, row)).sum();
  }

  /** A list that only says where its rows are held has them in others of its room. */
  private List<Got> elsewhere(String list, String id) {
    String room = list.substring(0, list.indexOf("/src/"));
    return byList.entrySet().stream()
        .filter(e -> e.getKey().startsWith(room + "/src/") && e.getValue().containsKey(id))
        .map(e -> e.getValue().get(id))
        .findFirst()
        .orElse(null);
  }

  private static int known(String what, Map<String, String> row) {
    return (int) List.of(what.split(" ")).stream().filter(w -> isCell(w, row)).count();
  }

  private static String label(String what, Map<String, String> row) {
    return String.join(
        " ", List.of(what.split(" ")).stream().filter(w -> !isCell(w, row)).toList());
  }

  private static boolean isCell(String word, Map<String, String> row) {
    return row.values().stream().anyMatch(c -> c.equals(word) || (c + ".0").equals(word));
  }
}
