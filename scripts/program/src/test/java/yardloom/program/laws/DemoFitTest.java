package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.program.cli.Samples;

/**
 * Every plant of the samples fits its place, on a condition that says what to do, or is overruled.
 */
class DemoFitTest {
  static Stream<String> plans() {
    return Samples.plans().stream();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void plantsOfSamples_fitTheirPlaces(String plan) {
    String file = "tables/plant-fit.csv";
    String text = Samples.drawn(plan).get(file);
    List<DataRow> rows = text == null ? List.of() : DataTable.parse(file, text).rows();
    for (DataRow row : rows) {
      String fit = row.text("fit");
      assertFalse(fit.equals("does not fit"), row.text("where") + ": " + row.text("why"));
      assertTrue(fit.equals("fits") || !row.text("do").isEmpty(), row.text("where"));
    }
  }
}
