package yardloom.climate.normals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.CsvReader;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.Unit;

/** Monthly normals that plans may name. */
public final class ClimateCatalogue {
  static final String[] MONTHS = {
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
  };
  private static final ClimateCatalogue SHIPPED = read();

  private final Map<String, ClimateNormals> byName;

  private ClimateCatalogue(Map<String, ClimateNormals> byName) {
    this.byName = byName;
  }

  /** The catalogue that comes with the plugin. */
  public static ClimateCatalogue shipped() {
    return SHIPPED;
  }

  public Set<String> names() {
    return java.util.Collections.unmodifiableSet(byName.keySet());
  }

  /**
   * The climate called {@code name}.
   *
   * @throws PlanException (UNKNOWN_WORD) without a place
   */
  public ClimateNormals climate(String name) {
    return climate(name, Map.of());
  }

  /**
   * The same among climates of the plan's own too, which go before the shipped.
   *
   * @throws PlanException (UNKNOWN_WORD) without a place
   */
  ClimateNormals climate(String name, Map<String, ClimateNormals> own) {
    ClimateNormals found = own.getOrDefault(name, byName.get(name));
    if (found == null) {
      Set<String> known = new TreeSet<>(byName.keySet());
      known.addAll(own.keySet());
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "there is no climate '"
              + name
              + "'; known are "
              + String.join(", ", known)
              + "; give another place's figures by `climateNormals`, or"
              + " a table of them by `climateBook` above this line."
              + Nearest.hint(name, known));
    }
    return found;
  }

  private static ClimateCatalogue read() {
    Map<String, Map<String, Map<String, String>>> tables = new TreeMap<>();
    for (Map<String, String> row : CsvReader.shipped(ClimateCatalogue.class, "climates.csv")) {
      tables
          .computeIfAbsent(row.get("climate"), k -> new TreeMap<>())
          .put(row.get("quantity"), row);
    }
    Map<String, Source> sources = sources();
    Map<String, ClimateNormals> climates = new TreeMap<>();
    tables.forEach((name, rows) -> climates.put(name, normals(rows, sources)));
    return new ClimateCatalogue(climates);
  }

  private static ClimateNormals normals(
      Map<String, Map<String, String>> rows, Map<String, Source> sources) {
    Map<String, String> rain = rows.get("rain");
    Map<String, String> mean = rows.get("mean");
    Map<String, String> range = rows.get("range");
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (String month : MONTHS) {
      double meanK = unit(mean).toSi(number(mean, month));
      double halfRangeK = (unit(range).toSi(number(range, month)) - unit(range).toSi(0)) / 2;
      months.add(
          new ClimateNormals.Month(
              Length.metres(unit(rain).toSi(number(rain, month))),
              Temperature.kelvins(meanK),
              Optional.of(Temperature.kelvins(meanK + halfRangeK)),
              Optional.of(Temperature.kelvins(meanK - halfRangeK))));
    }
    return new ClimateNormals(
        mean.get("place"),
        months,
        both(sources, rain, mean),
        sources.get(range.get("source")),
        air(rows, sources));
  }

  private static ClimateNormals.Air air(
      Map<String, Map<String, String>> rows, Map<String, Source> sources) {
    Map<String, String> wet = rows.get("wet days");
    if (wet == null) {
      return ClimateNormals.Air.UNKNOWN;
    }
    List<Double> days = new ArrayList<>();
    for (String month : MONTHS) {
      days.add(number(wet, month));
    }
    return new ClimateNormals.Air(List.of(), List.of(), days, sources.get(wet.get("source")));
  }

  /** Rain and means may come from two places; the weaker standing then holds for both. */
  private static Source both(
      Map<String, Source> sources, Map<String, String> rain, Map<String, String> mean) {
    Source first = sources.get(rain.get("source"));
    Source second = sources.get(mean.get("source"));
    if (first.equals(second)) {
      return first;
    }
    boolean firstIsWeaker = first.standing().compareTo(second.standing()) > 0;
    Source weak = firstIsWeaker ? first : second;
    return new Source(
        "rain: " + first.title() + "; means: " + second.title(),
        first.publisher(),
        0,
        "",
        weak.standing());
  }

  private static Unit unit(Map<String, String> row) {
    return Unit.byWord(row.get("unit")).orElseThrow();
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** Sources by the code that the table uses. */
  private static Map<String, Source> sources() {
    return CsvReader.shipped(ClimateCatalogue.class, "sources.csv").stream()
        .collect(Collectors.toUnmodifiableMap(r -> r.get("code"), ClimateCatalogue::source));
  }

  private static Source source(Map<String, String> row) {
    return new Source(
        row.get("title"),
        row.get("publisher"),
        Integer.parseInt(row.get("year")),
        row.get("locator"),
        Source.Standing.valueOf(row.get("standing").toUpperCase(Locale.ROOT)));
  }
}
