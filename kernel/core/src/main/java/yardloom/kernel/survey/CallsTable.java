package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.CsvReader;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;

/**
 * Calls of a description as comma-separated text.
 *
 * <p>The first row names the columns, in any order: {@code bearing} and {@code distance} for
 * straight calls; {@code radius}, {@code delta}, {@code length}, {@code chord}, {@code chord
 * bearing}, {@code turn} (left or right), {@code definition} (arc or chord) and {@code tangent}
 * (yes) for curves; {@code name} for either. A row whose bearing is {@code to start} returns to the
 * start. Distances carry their unit. Fields with commas, quotes or line ends stand in double
 * quotes, quotes inside doubled (RFC 4180).
 */
public final class CallsTable {
  private static final Set<String> COLUMNS =
      new TreeSet<>(
          List.of(
              "name",
              "bearing",
              "distance",
              "radius",
              "delta",
              "length",
              "chord",
              "chord bearing",
              "turn",
              "definition",
              "tangent"));

  private enum Turn {
    LEFT,
    RIGHT
  }

  private CallsTable() {}

  /**
   * Adds the calls of the table to a deed.
   *
   * @param place the word that reads it; messages add the line of the text, which may be a file's
   * @throws PlanException naming the line that cannot be read
   */
  public static void read(String text, SurveyFoot foot, SourceRef place, DeedReader into) {
    List<CsvReader.Row> rows = CsvReader.read(text, "the table of calls");
    if (rows.isEmpty()) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          place,
          "the table of calls is empty; its first line names the columns");
    }
    List<String> header = new ArrayList<>();
    for (CsvReader.Row row : rows) {
      try {
        if (header.isEmpty()) {
          header.addAll(header(row.texts()));
        } else {
          call(fields(header, row.texts()), foot, place, into);
        }
      } catch (PlanException e) {
        throw atLine(row.line(), e, place);
      }
    }
  }

  private static PlanException atLine(int line, PlanException e, SourceRef place) {
    return new PlanException(
        e.problems().stream()
            .map(
                p ->
                    new Problem(
                        p.code(), place, "line " + line + " of the table of calls: " + p.message()))
            .toList());
  }

  private static List<String> header(List<String> names) {
    List<String> header = names.stream().map(h -> h.toLowerCase(Locale.ROOT)).toList();
    for (String column : header) {
      if (!COLUMNS.contains(column)) {
        throw new PlanException(
            ProblemCode.UNKNOWN_WORD,
            "there is no column '"
                + column
                + "'; it may have "
                + String.join(", ", COLUMNS)
                + "."
                + Nearest.hint(column, COLUMNS));
      }
    }
    return header;
  }

  private static Map<String, String> fields(List<String> header, List<String> row) {
    if (row.size() > header.size()) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "the row has " + row.size() + " fields, the table " + header.size() + " columns");
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isBlank()) {
        fields.put(header.get(i), row.get(i));
      }
    }
    return fields;
  }

  private static void call(
      Map<String, String> row, SurveyFoot foot, SourceRef at, DeedReader into) {
    String name = row.get("name");
    String bearing = row.get("bearing");
    if ("to start".equals(bearing)) {
      into.toStart(name, at);
    } else if (bearing != null) {
      into.straight(name, at, Bearings.parse(bearing), foot.parse(need(row, "distance")));
    } else {
      CurveGiven given =
          new CurveGiven(
              length(row, "radius", foot),
              Optional.ofNullable(row.get("delta")).map(CallsTable::angle),
              length(row, "length", foot),
              length(row, "chord", foot),
              Choices.parse(Curve.Definition.class, row.get("definition"), Curve.Definition.ARC));
      into.curve(
          name,
          at,
          given,
          Choices.parse(Turn.class, need(row, "turn")) == Turn.LEFT,
          Optional.ofNullable(row.get("chord bearing")).map(Bearings::parse),
          "yes".equals(row.get("tangent")));
    }
  }

  private static Optional<Length> length(Map<String, String> row, String column, SurveyFoot foot) {
    return Optional.ofNullable(row.get(column)).map(foot::parse);
  }

  private static Angle angle(String text) {
    return Bearings.parse("az " + text);
  }

  private static String need(Map<String, String> row, String column) {
    String value = row.get(column);
    if (value == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          "the row needs a "
              + column
              + "; a straight call has bearing and distance, a curve a turn");
    }
    return value;
  }
}
