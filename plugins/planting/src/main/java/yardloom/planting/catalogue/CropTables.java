package yardloom.planting.catalogue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Crop.Coefficients;
import yardloom.planting.catalogue.Crop.Roots;
import yardloom.planting.catalogue.Crop.Stages;

/** The shipped rows of crops: FAO-56 Tables 12 and 22 (crops.csv) and 11 (stages.csv). */
final class CropTables {
  private CropTables() {}

  static Map<String, Crop> read() {
    Map<String, Stages> stages = new TreeMap<>();
    for (DataRow row : DataTable.shipped(CropTables.class, "stages.csv").rows()) {
      stages.put(row.text("crop"), stages(row));
    }
    Map<String, Crop> crops = new TreeMap<>();
    for (DataRow row : DataTable.shipped(CropTables.class, "crops.csv").rows()) {
      String name = row.text("crop");
      crops.put(
          name,
          new Crop(
              name,
              coefficients(row, "kc").orElseThrow(),
              coefficients(row, "grass"),
              number(row, "height_m").map(Length::metres),
              number(row, "root_low_m").map(low -> roots(row, low)),
              Optional.ofNullable(stages.remove(name)),
              row.text("source")));
    }
    if (!stages.isEmpty()) {
      throw new IllegalStateException("stages.csv names unknown crops " + stages.keySet());
    }
    return crops;
  }

  private static Stages stages(DataRow row) {
    return new Stages(
        (int) row.number("initial"),
        (int) row.number("development"),
        (int) row.number("middle"),
        (int) row.number("late"),
        row.text("planted"),
        row.text("region"));
  }

  private static Roots roots(DataRow row, double low) {
    return new Roots(
        Length.metres(low),
        Length.metres(number(row, "root_high_m").orElseThrow()),
        number(row, "easy_share").orElseThrow());
  }

  private static Optional<Coefficients> coefficients(DataRow row, String column) {
    return number(row, column + "_ini")
        .map(
            initial ->
                new Coefficients(
                    initial,
                    number(row, column + "_mid").orElseThrow(),
                    number(row, column + "_end").orElseThrow()));
  }

  private static Optional<Double> number(DataRow row, String column) {
    OptionalDouble number = row.maybe(column);
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }
}
