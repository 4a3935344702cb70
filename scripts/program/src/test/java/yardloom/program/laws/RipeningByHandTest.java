package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/**
 * Fruit ripens when the state's calendar says, also where frost ends long before spring is warm: in
 * Seattle the mean passes 10 °C weeks after the last frost.
 */
class RipeningByHandTest {
  private static String yard(String climate, String frost) {
    return """
        plan 'Ripening', units: 'us', date: '2027-03-30'
        site 'There', latitude: 47.6.deg, longitude: -122.3.deg, zone: 'America/Los_Angeles'
        %s
        frost last: '%s', first: '11-17', source: 'by hand'
        lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
        bed('a', rect(4.ft, 4.ft, 60.ft, 5.ft), use: 'perennial') {
          for (kind in ['garden strawberry', 'red raspberry', 'red currant', 'gooseberry', 'highbush blueberry']) plant kind
        }
        bed('b', rect(4.ft, 14.ft, 12.ft, 4.ft), use: 'annual') { plant 'lettuce' }
        tree('cherry', point(20.ft, 40.ft), crown: 9.ft, height: 9.ft, standing: true, trunk: 5.inch) { species 'sweet cherry' }
        tree('fig', point(40.ft, 40.ft), crown: 9.ft, height: 9.ft, standing: true, trunk: 5.inch) { species 'fig' }
        tree('apple', point(60.ft, 40.ft), crown: 9.ft, height: 9.ft, standing: true, trunk: 5.inch) { species 'apple (dwarf)' }
        """
        .formatted(climate, frost);
  }

  private static final Drawn SEATTLE = Drawn.of(yard("climate 'seattle-wa'", "03-15"));

  private static MonthDay[] picked(Drawn yard, String kind) {
    List<Cell> row =
        yard.tables().get("care").rows().stream()
            .filter(r -> text(r, 0).equals("Pick") && text(r, 1).equals(kind))
            .findFirst()
            .orElseThrow();
    return new MonthDay[] {MonthDay.parse(text(row, 2)), MonthDay.parse(text(row, 3))};
  }

  private static String text(List<Cell> row, int column) {
    return row.get(column).value().map(Object::toString).orElse("");
  }

  static Stream<DataRow> published() {
    return DataTable.shipped(RipeningByHandTest.class, "washington-ripening.csv").rows().stream();
  }

  @ParameterizedTest
  @MethodSource("published")
  void fruitOfSeattle_ripensInThePublishedMonths(DataRow row) {
    MonthDay[] days = picked(SEATTLE, row.text("plant"));
    assertTrue(
        days[0].getMonthValue() >= row.number("from")
            && days[1].getMonthValue() <= row.number("until"),
        row.text("plant") + " " + days[0] + " to " + days[1]);
  }

  /**
   * Without temperatures raspberries are picked 60 to 90 days after 15 March, 14 May to 13 June.
   * With means of 8 °C in March and 11 °C in April the 10th degree falls two thirds of 31 days
   * after 15 March, 20.7: on 5 April, bloom ten days later, 15 April; both ends move by 31 days.
   * Summers warmer than Seattle's ripen them no later.
   */
  @Test
  void ripening_waitsForTheWarmDays() {
    assertEquals("[--05-14, --06-13]", days(Drawn.of(yard("", "03-15"))));
    String normals =
        "climateNormals 'x', units: 'mm celsius', rain: [90,80,70,60,50,40,20,20,40,80,90,95],"
            + " max: [8,10,13,16,21,25,28,28,22,16,11,8], min: [2,2,3,6,11,13,16,16,10,8,5,2],"
            + " source: 'by hand'";
    assertEquals("[--06-14, --07-14]", days(Drawn.of(yard(normals, "03-15"))));
    // Where the frost ends later than that, it is what counts: 20 April + 60 is 19 June.
    assertEquals("[--06-19, --07-19]", days(Drawn.of(yard(normals, "04-20"))));
  }

  private static String days(Drawn yard) {
    return java.util.Arrays.toString(picked(yard, "red raspberry"));
  }

  /** Lettuce is sown by the frost, not by bloom. */
  @Test
  void annuals_doNotWait() {
    String warm = java.util.Arrays.toString(picked(SEATTLE, "lettuce"));
    String bare = java.util.Arrays.toString(picked(Drawn.of(yard("", "03-15")), "lettuce"));
    assertEquals(bare.split(",")[0], warm.split(",")[0]);
  }
}
