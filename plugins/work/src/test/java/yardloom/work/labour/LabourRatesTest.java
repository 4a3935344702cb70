package yardloom.work.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.table.DataTable;

/** Soil checks E09 and E10; E01 to E08 are checked in the kernel. */
class LabourRatesTest {
  @ParameterizedTest
  @CsvSource({
    // E09 (cost-book page), E10 (man-hour sheet, weak): data within ±50 %.
    "fill and tamp by hand, yd3, 0.86",
    "grade and compact base, sqft, 0.014",
    "dig swales and cuts by hand, m3, 4.0"
  })
  void labour_published_areTheShippedData(String task, String unit, double hours) {
    var row =
        DataTable.shipped(yardloom.work.labour.LabourData.class, "labour.csv").row("task", task);
    assertEquals(unit, row.text("unit"));
    assertEquals(hours, row.number("likely_h"), 1e-9);
    assertTrue(row.number("low_h") < hours && hours < row.number("high_h"));
  }

  @Test
  void everyTaskButWalksAndOwn_hasItsRate() {
    for (WorkTask task : WorkTask.values()) {
      if (task != WorkTask.WALK && task != WorkTask.OWN) {
        assertTrue(LabourData.hours(task.title()).likely() > 0, task.title());
      }
    }
    assertEquals(
        WorkTask.values().length - 2,
        DataTable.shipped(LabourData.class, "labour.csv").rows().size());
  }
}
