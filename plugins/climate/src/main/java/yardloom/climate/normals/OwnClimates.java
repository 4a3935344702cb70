package yardloom.climate.normals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.climate.et.formula.Air;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Unit;

/**
 * Climates of a user's own from a table that has a row for each quantity, the months in its
 * columns: rain, max and min or mean and range of the days, and where known wind, dew or humidity,
 * wet days.
 *
 * <p>Errors: PlanException at the cell or row.
 */
final class OwnClimates {
  private static final List<String> TEMPERATURES = List.of("max", "min", "mean", "dew");
  private static final Set<String> QUANTITIES =
      Set.of("rain", "max", "min", "mean", "range", "wind", "dew", "humidity", "wet days");
  private static final List<String> NEEDED = needed();

  private OwnClimates() {}

  /** A climate by the name that plans call it. */
  record Named(String name, ClimateNormals normals, SourceRef row) {
    static final AttributeKey<Named> KEY = new AttributeKey<>("climate.own", Named.class);
  }

  /** What one climate's rows say, in mm, degrees Celsius, m/s, percent and days. */
  private record Rows(SourceRef first, String place, Source source, Map<String, List<Double>> of) {}

  private static List<String> needed() {
    List<String> needed = new ArrayList<>(List.of("climate", "place", "quantity", "unit"));
    needed.addAll(List.of(ClimateCatalogue.MONTHS));
    return List.copyOf(needed);
  }

  /**
   * @param windHeightM how high wind was measured
   */
  static List<Named> read(String file, String csv, double windHeightM) {
    Map<String, Rows> climates = new LinkedHashMap<>();
    for (DataRow row : OwnColumns.rows(file, csv, NEEDED, List.of())) {
      Rows rows =
          climates.computeIfAbsent(
              row.text("climate"),
              k ->
                  new Rows(
                      row.placeOf("climate"),
                      row.text("place"),
                      row.sourceOr(Source.plan(file)),
                      new LinkedHashMap<>()));
      String quantity = row.text("quantity");
      if (rows.of.put(quantity, months(row, quantity)) != null) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            row.placeOf("quantity"),
            "'" + quantity + "' of this climate is given twice");
      }
    }
    List<Named> named = new ArrayList<>();
    climates.forEach(
        (name, rows) -> named.add(new Named(name, normals(rows, windHeightM), rows.first)));
    return named;
  }

  private static List<Double> months(DataRow row, String quantity) {
    if (!QUANTITIES.contains(quantity)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          row.placeOf("quantity"),
          "'"
              + quantity
              + "' is no quantity; there is rain, max and min or mean and range, wind,"
              + " dew or humidity, wet days");
    }
    double perUnit = 1;
    double zero = 0;
    String unit = row.text("unit");
    if (quantity.equals("rain")) {
      perUnit = unit(row, Dimension.LENGTH).toSi(1) * 1000;
    } else if (quantity.equals("range")) {
      Unit degrees = unit(row, Dimension.TEMPERATURE);
      perUnit = degrees.toSi(1) - degrees.toSi(0);
    } else if (TEMPERATURES.contains(quantity)) {
      Unit degrees = unit(row, Dimension.TEMPERATURE);
      perUnit = degrees.toSi(1) - degrees.toSi(0);
      zero = Unit.CELSIUS.fromSi(degrees.toSi(0));
    } else if (quantity.equals("wind")) {
      perUnit = plain(row, unit, "m/s", "mph").equals("mph") ? Air.MS_PER_MPH : 1;
    } else {
      plain(row, unit, quantity.equals("humidity") ? "percent" : "count", "");
    }
    List<Double> months = new ArrayList<>();
    for (String month : ClimateCatalogue.MONTHS) {
      months.add(zero + row.number(month) * perUnit);
    }
    return months;
  }

  private static Unit unit(DataRow row, Dimension dimension) {
    return Unit.byWord(row.text("unit"))
        .filter(u -> u.dimension() == dimension)
        .orElseThrow(() -> wrongUnit(row, Unit.words(dimension)));
  }

  private static String plain(DataRow row, String unit, String one, String other) {
    if (!unit.equals(one) && (other.isEmpty() || !unit.equals(other))) {
      throw wrongUnit(row, other.isEmpty() ? one : one + " or " + other);
    }
    return unit;
  }

  private static PlanException wrongUnit(DataRow row, String allowed) {
    return new PlanException(
        ProblemCode.UNKNOWN_WORD,
        row.placeOf("unit"),
        "'" + row.text("unit") + "' is no unit of " + row.text("quantity") + "; write " + allowed);
  }

  private static ClimateNormals normals(Rows rows, double windHeightM) {
    try {
      NormalsReader.Units units = NormalsReader.Units.MM_CELSIUS;
      ClimateNormals normals =
          NormalsReader.read(
              rows.place, needed(rows, "rain"), max(rows), min(rows), units, rows.source);
      return new AirReader(normals, units, windHeightM)
          .with(
              rows.of.get("wind"),
              rows.of.get("dew"),
              rows.of.get("humidity"),
              rows.of.get("wet days"));
    } catch (PlanException e) {
      throw e.at(rows.first);
    }
  }

  private static List<Double> max(Rows rows) {
    return rows.of.containsKey("max") ? rows.of.get("max") : fromMean(rows, 0.5);
  }

  private static List<Double> min(Rows rows) {
    return rows.of.containsKey("min") ? rows.of.get("min") : fromMean(rows, -0.5);
  }

  private static List<Double> fromMean(Rows rows, double share) {
    List<Double> mean = needed(rows, "mean");
    List<Double> range = needed(rows, "range");
    List<Double> months = new ArrayList<>();
    for (int m = 0; m < mean.size(); m++) {
      months.add(mean.get(m) + share * range.get(m));
    }
    return months;
  }

  private static List<Double> needed(Rows rows, String quantity) {
    List<Double> found = rows.of.get(quantity);
    if (found == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          "this climate has no row '"
              + quantity
              + "'; it needs rain, and max and min or mean and range");
    }
    return found;
  }
}
