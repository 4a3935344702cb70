package yardloom.program.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.table.Table;
import yardloom.program.output.RowNames;

/** What a text asks for: a cell, a list of cells to choose from, or nothing that is printed. */
final class Question {
  private static final String SLASH = " / ";

  private final Directory directory;
  private final ToIntFunction<Askable> calculation;

  /**
   * What was found.
   *
   * @param cells one: that is it; several: the text may mean each of them; none: see hints
   * @param complete whether the text was a table or a row of it, so that the cells are an answer
   * @param hints what nearly fits
   */
  record Found(List<Askable> cells, boolean complete, List<String> hints) {
    static Found choice(List<Askable> cells) {
      return new Found(cells, false, List.of());
    }

    static Found missed(List<String> hints) {
      return new Found(List.of(), false, hints);
    }
  }

  /**
   * A reader of questions.
   *
   * @param calculation the number of a cell's calculation, 0 if it has none
   */
  Question(Directory directory, ToIntFunction<Askable> calculation) {
    this.directory = directory;
    this.calculation = calculation;
  }

  Found ask(String text) {
    Optional<Table> whole = directory.table(text);
    if (whole.isPresent()) {
      return new Found(figures(directory.cells(whole.get())), true, List.of());
    }
    int slash = text.indexOf(SLASH);
    Optional<Table> table =
        slash < 0 ? Optional.empty() : directory.table(text.substring(0, slash));
    return table.isPresent()
        ? inTable(table.get(), text.substring(slash + SLASH.length()))
        : byWords(text);
  }

  private Found inTable(Table table, String rest) {
    List<Askable> cells = directory.cells(table);
    List<Askable> row = inRow(cells, rest);
    if (!row.isEmpty()) {
      return new Found(figures(row), true, List.of());
    }
    int slash = rest.lastIndexOf(SLASH);
    String rowName = slash < 0 ? rest : rest.substring(0, slash);
    String column = slash < 0 ? "" : rest.substring(slash + SLASH.length());
    List<Askable> rowCells = inRow(cells, rowName);
    List<Askable> hit = Directory.inColumn(rowCells, column);
    if (!hit.isEmpty()) {
      return Found.choice(hit);
    }
    Set<String> known = new LinkedHashSet<>();
    (rowCells.isEmpty() ? cells : rowCells).forEach(c -> known.add(hint(c, rowCells.isEmpty())));
    String wrong = table.id() + SLASH + (rowCells.isEmpty() ? rowName : rest);
    return Found.missed(Nearest.to(wrong, known).map(List::of).orElse(List.copyOf(known)));
  }

  /** Without the names and notes that stand beside them. */
  private static List<Askable> figures(List<Askable> cells) {
    List<Askable> figures =
        cells.stream().filter(c -> c.why().isPresent() || c.column().measure().isNumber()).toList();
    return figures.isEmpty() ? cells : figures;
  }

  private static String hint(Askable cell, boolean rowOnly) {
    return rowOnly ? cell.table().id() + SLASH + cell.row() : cell.address();
  }

  private static List<Askable> inRow(List<Askable> cells, String name) {
    String key = RowNames.key(name);
    return cells.stream().filter(c -> c.key().equals(key)).toList();
  }

  /**
   * How well a cell fits: the less of its name nobody asked for, the better.
   *
   * @param named whether both its row and what stands there are asked for
   */
  private record Fit(Askable cell, int unasked, boolean named) {}

  private Found byWords(String text) {
    Set<String> asked = QuestionWords.asked(text);
    List<Askable> meant =
        asked.isEmpty()
            ? List.of()
            : directory.cells().stream().filter(c -> hits(c, asked) == asked.size()).toList();
    List<Fit> fits = figures(meant).stream().map(c -> fit(c, asked)).toList();
    if (fits.isEmpty()) {
      return Found.missed(nearly(asked));
    }
    int best = fits.stream().filter(Fit::named).mapToInt(Fit::unasked).min().orElse(-1);
    List<Askable> top =
        fits.stream().filter(f -> f.named() && f.unasked() == best).map(Fit::cell).toList();
    if (top.isEmpty()) {
      return Found.choice(
          fits.stream().sorted(Comparator.comparingInt(Fit::unasked)).map(Fit::cell).toList());
    }
    return Found.choice(meant(top));
  }

  /** Those with a reason, if any has one; a number that several tables print counts once. */
  private List<Askable> meant(List<Askable> cells) {
    List<Askable> derived = cells.stream().filter(c -> c.why().isPresent()).toList();
    if (derived.isEmpty()) {
      return cells;
    }
    boolean same = derived.stream().mapToInt(calculation).distinct().count() == 1;
    return same ? derived.subList(0, 1) : derived;
  }

  private static Set<String> said(Askable cell) {
    Set<String> said = QuestionWords.of(cell.table().title() + " " + cell.table().id());
    said.addAll(QuestionWords.of(cell.about()));
    said.addAll(named(cell));
    return said;
  }

  private static Set<String> named(Askable cell) {
    Set<String> named = QuestionWords.of(cell.row());
    named.addAll(column(cell));
    return named;
  }

  private static Set<String> column(Askable cell) {
    Set<String> column = QuestionWords.of(cell.column().title());
    column.addAll(QuestionWords.of(cell.column().id()));
    return column;
  }

  private static Fit fit(Askable cell, Set<String> asked) {
    int unasked = 0;
    for (String said : QuestionWords.of(cell.row() + " " + cell.column().title())) {
      unasked += asked.stream().noneMatch(w -> QuestionWords.means(w, said)) ? 1 : 0;
    }
    boolean row =
        asked.stream().anyMatch(w -> QuestionWords.means(w, QuestionWords.of(cell.row())));
    Set<String> what = column(cell);
    what.addAll(QuestionWords.of(cell.table().title()));
    return new Fit(
        cell, unasked, row && asked.stream().anyMatch(w -> QuestionWords.means(w, what)));
  }

  /** For each word that nothing is called by the nearest that something is; else the best cells. */
  private List<String> nearly(Set<String> asked) {
    Set<String> known = new TreeSet<>();
    directory.cells().forEach(c -> known.addAll(said(c)));
    List<String> hints = new ArrayList<>();
    for (String word : asked) {
      if (!QuestionWords.means(word, known)) {
        Nearest.to(word, known).ifPresent(near -> hints.add("\"" + near + "\" for " + word));
      }
    }
    if (!hints.isEmpty()) {
      return hints;
    }
    return directory.cells().stream()
        .map(c -> new Near(c, hits(c, asked), fit(c, asked).unasked()))
        .filter(n -> n.hits() > 0)
        .sorted(Comparator.comparingLong(Near::hits).reversed().thenComparingInt(Near::unasked))
        .limit(5)
        .map(n -> n.cell().address())
        .toList();
  }

  /**
   * A cell that some of the words fit.
   *
   * @param hits how many of the words asked for fit it
   */
  private record Near(Askable cell, long hits, int unasked) {}

  private static long hits(Askable cell, Set<String> asked) {
    Set<String> said = said(cell);
    return asked.stream().filter(w -> QuestionWords.means(w, said)).count();
  }
}
