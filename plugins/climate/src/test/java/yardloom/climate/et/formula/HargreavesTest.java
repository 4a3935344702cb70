package yardloom.climate.et.formula;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.climate.radiation.formula.SolarDay;
import yardloom.kernel.outside.OutsideRows;

class HargreavesTest {
  private static final OutsideRows ROWS = OutsideRows.of(HargreavesTest.class, "hargreaves.csv");

  @ParameterizedTest
  @CsvFileSource(resources = "hargreaves.csv", numLinesToSkip = 1)
  void hargreaves_ofPublishedCases(
      String id,
      double maxC,
      double minC,
      double meanC,
      Double latitude,
      Integer day,
      Double raMj,
      double expected,
      double tolerance) {
    double ra =
        raMj == null
            ? SolarDay.of(Math.toRadians(latitude), day).radiationMm()
            : raMj * SolarDay.MM_PER_MJ;
    ROWS.check(id, expected, Hargreaves.et0MmPerDay(meanC, maxC, minC, ra), tolerance);
  }
}
