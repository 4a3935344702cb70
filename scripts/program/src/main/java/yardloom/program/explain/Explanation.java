package yardloom.program.explain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.fact.Appendix;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.program.output.Calculations;

/** Answers why a printed number is what it is. Not thread-safe. */
public final class Explanation {
  private static final Pattern NUMBER = Pattern.compile("\\[?([0-9]{1,9})]?");
  private static final int MOST_CHOICES = 25;

  private final TableFormat format;
  private final ScriptLines lines;
  private final Calculations calculations;
  private final Directory directory;

  /**
   * What there is to say.
   *
   * @param found whether it is what was asked for
   */
  public record Answer(boolean found, String text) {
    private static Answer of(String text) {
      return new Answer(true, text);
    }

    private static Answer none(String text) {
      return new Answer(false, text);
    }
  }

  /**
   * @param lines where the lines of the plan's script are read
   */
  public Explanation(Outcome outcome, ScriptLines lines) {
    this.format = TableFormat.of(outcome.plan().info());
    this.lines = lines;
    this.calculations = Calculations.of(outcome, format);
    this.directory = new Directory(outcome.tables(), format);
  }

  /** All tables with the rows and columns that can be asked for. */
  public String contents() {
    StringBuilder text = new StringBuilder();
    for (Table table : directory.tables()) {
      List<Askable> derived =
          directory.cells(table).stream().filter(c -> c.why().isPresent()).toList();
      if (derived.isEmpty()) {
        continue;
      }
      Set<String> rows = new LinkedHashSet<>();
      Set<String> columns = new LinkedHashSet<>();
      derived.forEach(c -> rows.add(c.row()));
      derived.forEach(c -> columns.add(c.column().id()));
      text.append(table.id()).append(": ").append(table.title()).append('\n');
      text.append("  rows     ").append(String.join(" | ", rows)).append('\n');
      text.append("  columns  ").append(String.join(" | ", columns)).append('\n');
    }
    return text.toString();
  }

  /** The why of what {@code what} names, or what is near it, or the choices if it names several. */
  public Answer of(String what) {
    Matcher number = NUMBER.matcher(what.strip());
    if (number.matches()) {
      return byNumber(Integer.parseInt(number.group(1)));
    }
    Question.Found found = new Question(directory, this::calculation).ask(what.strip());
    if (found.cells().isEmpty()) {
      return Answer.none(
          "nothing that is printed is called \""
              + what
              + "\""
              + (found.hints().isEmpty() ? "" : "; nearest: " + String.join("; ", found.hints()))
              + ". Without WHAT all tables, rows and columns are listed."
              + " [UNKNOWN_WORD]");
    }
    if (found.complete()) {
      return Answer.of(list(found.cells()));
    }
    if (found.cells().size() > 1 && !isOneFigure(found.cells())) {
      return Answer.none(
          "\""
              + what
              + "\" may be one of these; type the one that is meant: [UNKNOWN_WORD]\n"
              + list(found.cells()));
    }
    return tell(found.cells().get(0));
  }

  /** Whether tables say the same of the same: then any of them answers, the first. */
  private static boolean isOneFigure(List<Askable> cells) {
    Askable first = cells.get(0);
    return cells.stream()
        .allMatch(
            c ->
                c.row().equalsIgnoreCase(first.row())
                    && c.column().id().equals(first.column().id())
                    && isSame(first.cell().value(), c.cell().value()));
  }

  private static boolean isSame(Optional<?> one, Optional<?> other) {
    return one.isPresent()
        && other.isPresent()
        && (one.get() instanceof Quantity<?> a && other.get() instanceof Quantity<?> b
            ? a.dimension() == b.dimension() && Math.abs(a.si() - b.si()) <= 1e-9 * Math.abs(a.si())
            : one.get().equals(other.get()));
  }

  private int calculation(Askable cell) {
    return cell.why().map(calculations::number).orElse(0);
  }

  private Answer byNumber(int number) {
    Optional<Derived<?>> derived = calculations.derived(number);
    if (derived.isEmpty()) {
      return Answer.none(
          "there is no calculation ["
              + number
              + "]; the plan has 1 to "
              + calculations.entries().size()
              + ". [UNKNOWN_WORD]");
    }
    Appendix.Entry entry = calculations.entries().get(number - 1);
    return Answer.of(
        new WhyText(calculations, lines).of(entry.name(), entry.value(), derived.get()));
  }

  /** One line for each cell: the text to type, and what the table shows. */
  private String list(List<Askable> cells) {
    StringBuilder text = new StringBuilder();
    cells.stream()
        .limit(
            cells.stream().map(Askable::table).distinct().count() == 1
                ? cells.size()
                : MOST_CHOICES)
        .forEach(
            c ->
                text.append("  \"")
                    .append(c.address())
                    .append("\"  ")
                    .append(shown(c))
                    .append('\n'));
    if (text.toString().lines().count() < cells.size()) {
      text.append("  … and ").append(cells.size() - MOST_CHOICES).append(" more; say more words\n");
    }
    return text.toString();
  }

  private String shown(Askable cell) {
    String unit = cell.column().measure().isNumber() ? format.unit(cell.column()) : "";
    return format.text(cell.column(), cell.cell()) + (unit.isEmpty() ? "" : " " + unit);
  }

  private Answer tell(Askable cell) {
    String head = cell.table().title() + "  (" + cell.address() + ")\n";
    String name = cell.row() + ", " + TableFormat.title(cell.column());
    if (cell.why().isEmpty()) {
      StringBuilder text = new StringBuilder(head);
      text.append(name).append(" = ").append(shown(cell)).append('\n');
      text.append("    stands as it was given or counted; no calculation is behind it\n");
      cell.table().notes().forEach(n -> text.append("    note: ").append(n).append('\n'));
      return Answer.of(text.toString());
    }
    Derived<?> why = cell.why().get();
    String value = calculations.values().inTable(cell.column(), cell.cell(), why.value());
    return Answer.of(head + new WhyText(calculations, lines).of(name, value, why));
  }
}
