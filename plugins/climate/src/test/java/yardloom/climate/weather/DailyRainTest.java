package yardloom.climate.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.DailyRain;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/** Reading rain by the day, and tanks stepped through it. */
class DailyRainTest {
  private static String year(String header, int days, String amount) {
    StringBuilder text = new StringBuilder(header + "\n");
    LocalDate day = LocalDate.of(2011, 1, 1);
    for (int i = 0; i < days; i++) {
      text.append(day.plusDays(i)).append(',').append(amount).append('\n');
    }
    return text.toString();
  }

  private static String refused(String text) {
    return assertThrows(PlanException.class, () -> DailyRainText.read(text)).getMessage();
  }

  @Test
  void read_bothUnits_giveTheSameRain() {
    double mm = DailyRainText.read(year("date,rain_mm", 365, "25.4")).get(0).rain().millimetres();
    double in = DailyRainText.read(year("date,rain_in", 365, "1")).get(0).rain().millimetres();
    assertEquals(25.4, mm, 1e-9);
    assertEquals(mm, in, 1e-9);
  }

  /** As weather services and spreadsheets write it. */
  @Test
  void read_quotedFieldsAfterAByteOrderMark_areTheSameRain() {
    String plain = year("date,rain_mm", 365, "3.2");
    String quoted =
        "\ufeff"
            + plain
                .lines()
                .map(l -> '"' + l.replace(",", "\",\"") + "\"\r\n")
                .reduce("", String::concat);
    assertEquals(DailyRainText.read(plain), DailyRainText.read(quoted));
  }

  @Test
  void read_badTables_nameTheLineAndWhatIsExpected() {
    assertTrue(refused("day,rain\n").contains("line 1"), "header");
    assertTrue(refused("date,rain_mm\n2011-01-01,x\n").contains("line 2"), "no number");
    assertTrue(refused("date,rain_mm\n01/02/2011,1\n").contains("2012-11-19,54.1"), "no date");
    assertTrue(refused("date,rain_mm\n2011-01-01,-1\n").contains("0 to 1825 mm"), "negative");
    assertTrue(refused("date,rain_mm\n2011-01-01,NaN\n").contains("line 2"), "NaN");
    assertTrue(
        refused("date,rain_mm\n2011-01-01,0\n2011-01-03,0\n")
            .contains("2011-01-02 should come next"));
    assertTrue(refused(year("date,rain_mm", 364, "0")).contains("the table has 364"));
  }

  /** K06: yearly sums of NOAA's daily rain of Seattle, as in vega-datasets 3.2.1 (BSD-3-Clause). */
  @ParameterizedTest
  @CsvSource({"2012, 1226.0", "2013, 828.0", "2014, 1232.8", "2015, 1139.2"})
  void rainOfSeattle_addsUpToTheYear(int year, double mm) throws IOException {
    String text;
    try (InputStream in = DailyRainTest.class.getResourceAsStream("seattle-rain.csv")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    double sum =
        DailyRainText.read(text).stream()
            .filter(d -> d.date().getYear() == year)
            .mapToDouble(d -> d.rain().millimetres())
            .sum();
    assertEquals(mm, sum, 0.1, "K06");
  }

  @Test
  void longestDrySpell_countsDaysWithoutAnyRain() {
    List<DailyRain.Day> days =
        List.of(1.0, 0.0, 0.0, 0.3, 0.0).stream()
            .map(mm -> new DailyRain.Day(LocalDate.of(2011, 1, 1), Length.millimetres(mm)))
            .toList();
    assertEquals(2, new DailyRain("s", Source.commonPractice("ours"), days).longestDrySpell());
  }
}
