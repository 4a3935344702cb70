package yardloom.planting.catalogue;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Crop.Coefficients;
import yardloom.planting.catalogue.Crop.Roots;
import yardloom.planting.catalogue.Crop.Stages;
import yardloom.planting.data.CsvRows;

/** The shipped rows of FAO-56 Tables 12 and 22 (crops.csv) and 11 (stages.csv), by crop. */
final class CropTables {
  private CropTables() {}

  static Map<String, Crop> read() {
    Map<String, Stages> stages = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("stages.csv")) {
      stages.put(row.get("crop"), stages(row));
    }
    Map<String, Crop> crops = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("crops.csv")) {
      String name = row.get("crop");
      crops.put(
          name,
          new Crop(
              name,
              coefficients(row, "kc").orElseThrow(),
              coefficients(row, "grass"),
              number(row, "height_m").map(Length::metres),
              number(row, "root_low_m").map(low -> roots(row, low)),
              Optional.ofNullable(stages.remove(name))));
    }
    if (!stages.isEmpty()) {
      throw new IllegalStateException("stages.csv names unknown crops " + stages.keySet());
    }
    return crops;
  }

  private static Stages stages(Map<String, String> row) {
    return new Stages(
        Integer.parseInt(row.get("initial")),
        Integer.parseInt(row.get("development")),
        Integer.parseInt(row.get("middle")),
        Integer.parseInt(row.get("late")),
        row.get("planted"),
        row.get("region"));
  }

  private static Roots roots(Map<String, String> row, double low) {
    return new Roots(
        Length.metres(low),
        Length.metres(number(row, "root_high_m").orElseThrow()),
        number(row, "easy_share").orElseThrow());
  }

  private static Optional<Coefficients> coefficients(Map<String, String> row, String column) {
    return number(row, column + "_ini")
        .map(
            initial ->
                new Coefficients(
                    initial,
                    number(row, column + "_mid").orElseThrow(),
                    number(row, column + "_end").orElseThrow()));
  }

  private static Optional<Double> number(Map<String, String> row, String column) {
    return Optional.of(row.get(column)).filter(c -> !c.isEmpty()).map(Double::valueOf);
  }
}
