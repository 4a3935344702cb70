package yardloom.work.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.table.DataTable;

/** Soil checks E09 and E10; E01 to E08 are checked in the kernel. */
class LabourRatesTest {
  @ParameterizedTest
  @CsvSource({
    // E09 (cost-book page), E10 (man-hour sheet, weak): data within ±50 %.
    "fine grading by hand, sqft, 0.006", "hand backfill and tamp, yd3, 0.86",
    "base hand-graded 4 in, sqft, 0.014", "hand dig pier holes, yd3, 1.32",
    "hand excavation, m3, 4.0"
  })
  void labour_published_areTheShippedData(String task, String unit, double hours) {
    var row =
        DataTable.shipped(yardloom.work.labour.LabourData.class, "labour.csv").row("task", task);
    assertEquals(unit, row.text("unit"));
    assertEquals(hours, row.number("likely_h"), 1e-9);
    assertTrue(row.number("low_h") < hours && hours < row.number("high_h"));
  }

  @Test
  void fineGrading_hours_meanSquareFeetPerHour() {
    // E09: 165-170 ft²/h.
    double rate =
        1
            / DataTable.shipped(yardloom.work.labour.LabourData.class, "labour.csv")
                .row("task", "fine grading by hand")
                .number("likely_h");
    assertEquals(167.5, rate, 2.5);
  }
}
