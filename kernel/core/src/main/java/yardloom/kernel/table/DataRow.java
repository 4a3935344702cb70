package yardloom.kernel.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * One row of a data table, by column name.
 *
 * @param place file and line, for messages
 * @param places file, line and column of its cells, where they are known
 */
public record DataRow(Map<String, String> cells, SourceRef place, Map<String, SourceRef> places) {
  public DataRow {
    cells = Map.copyOf(cells);
    places = Map.copyOf(places);
  }

  /** The place of a cell, or of the row. */
  public SourceRef placeOf(String column) {
    return places.getOrDefault(column, place);
  }

  /** The text of a column; empty if the cell is. */
  public String text(String column) {
    String text = cells.get(column);
    if (text == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, place, "the column `" + column + "` is missing");
    }
    return text.strip();
  }

  /**
   * The number of a column.
   *
   * @throws PlanException (WRONG_TYPE) if it is empty or no number
   */
  public double number(String column) {
    return maybe(column)
        .orElseThrow(() -> wrong(column, "needs a number such as 2.5; it is empty"));
  }

  /** The number of a column, if the cell has one. */
  public OptionalDouble maybe(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return OptionalDouble.of(value);
      }
    } catch (NumberFormatException e) {
      // Reported below, together with infinities.
    }
    throw wrong(column, "needs a number such as 2.5, got \"" + text + "\"");
  }

  private PlanException wrong(String column, String what) {
    return new PlanException(
        ProblemCode.WRONG_TYPE, placeOf(column), "the column `" + column + "` " + what);
  }

  /** The source that the row names, or {@code otherwise} where the table has no column for it. */
  public Source sourceOr(Source otherwise) {
    return cells.containsKey("title") && !text("title").isEmpty() ? source() : otherwise;
  }

  /**
   * The source that the row names in its columns title, publisher, year, locator, standing; its
   * standing in small or capital letters.
   */
  public Source source() {
    Source.Standing standing = standing();
    try {
      return new Source(
          text("title"), text("publisher"), (int) number("year"), text("locator"), standing);
    } catch (IllegalArgumentException e) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, place, "the row does not name its source: " + e.getMessage());
    }
  }

  private Source.Standing standing() {
    String given = text("standing");
    for (Source.Standing standing : Source.Standing.values()) {
      if (standing.name().equalsIgnoreCase(given.replace(' ', '_'))) {
        return standing;
      }
    }
    String allowed =
        Arrays.stream(Source.Standing.values())
            .map(s -> s.name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .collect(Collectors.joining(", "));
    throw wrong("standing", "says how the source is known: " + allowed + "; got \"" + given + "\"");
  }
}
