package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;

/** A climate of a plan's own from a table, to the printed months. */
class OwnClimateByHandTest {
  private static final String YARD =
      """
      plan 'Own climate', units: 'metric'
      site 'Hill farm', latitude: 52.2.deg, longitude: -3.1.deg, zone: 'Europe/London'
      %s
      lot([point(0.m, 0.m), point(17.m, 0.m), point(17.m, 11.m), point(0.m, 11.m)])
      bed('bed', rect(6.m, 4.m, 2.m, 3.m), use: 'annual') { plant 'lettuce' }
      """;

  /** Rain in inches, degrees Fahrenheit, miles an hour. */
  private static final String BOOK =
      """
      climate,place,quantity,unit,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec,title,publisher,year,locator,standing
      hill,Hill farm,rain,inch,2.4016,2.0472,2.2441,1.6929,1.4961,1.2205,0.8661,1.063,1.7323,2.2835,2.5984,2.874,Own station,the farm,2021,log book,READ
      hill,Hill farm,mean,degF,40.1,40.55,45.5,50,56.3,61.7,65.3,66.2,59.9,52.7,45.5,40.1,Own station,the farm,2021,log book,READ
      hill,Hill farm,range,degF,10.8,13.5,14.4,16.2,18,18,18,18,18,14.4,10.8,9,Own station,the farm,2021,log book,READ
      hill,Hill farm,wind,mph,8.9477,8.7241,8.2767,7.6056,6.9345,6.4871,6.0397,6.2634,6.7108,7.3819,8.5004,9.1714,Own station,the farm,2021,log book,READ
      hill,Hill farm,humidity,percent,86,84,80,76,74,72,71,73,77,82,85,87,Own station,the farm,2021,log book,READ
      hill,Hill farm,wet days,count,15,13,14,12,10,9,7,8,10,13,15,16,Own station,the farm,2021,log book,READ
      """;

  private static final String WORD =
      "climateNormals('Hill farm', rain: %s, max: %s, min: %s, units: 'mm celsius', source: 'farm',"
          + " wind: %s, windHeight: 10.m, humidity: %s, wetDays: %s)";

  private static Drawn byTable(String csv) {
    return Drawn.beside(
        YARD.formatted("climateBook fileText('hill.csv'), windHeight: 10.m\nclimate 'hill'"),
        "hill.csv",
        csv);
  }

  /** 22 mm of July are 0.8661 in of the table; those of the year add up to 572. */
  @Test
  void rain_isThatOfTheTable() {
    Drawn drawn = byTable(BOOK);
    assertEquals("22", drawn.printed("water-by-month", "Jul", "rain"));
    assertEquals("572", drawn.printed("water-by-month", "Year", "rain"));
  }

  /**
   * The same figures by the word, in mm and degrees Celsius: 24.0 and 14 °C have a mean of 66.2 °F.
   */
  @ParameterizedTest
  @ValueSource(strings = {"Jan", "Mar", "Aug", "Dec"})
  void table_saysWhatTheWordSays(String month) {
    Drawn word =
        Drawn.of(
            YARD.formatted(
                WORD.formatted(
                    "[61, 52, 57, 43, 38, 31, 22, 27, 44, 58, 66, 73]",
                    "[7.5, 8.5, 11.5, 14.5, 18.5, 21.5, 23.5, 24.0, 20.5, 15.5, 10.5, 7.0]",
                    "[1.5, 1, 3.5, 5.5, 8.5, 11.5, 13.5, 14, 10.5, 7.5, 4.5, 2]",
                    "[4, 3.9, 3.7, 3.4, 3.1, 2.9, 2.7, 2.8, 3, 3.3, 3.8, 4.1]",
                    "[86, 84, 80, 76, 74, 72, 71, 73, 77, 82, 85, 87]",
                    "[15, 13, 14, 12, 10, 9, 7, 8, 10, 13, 15, 16]")));
    Drawn table = byTable(BOOK);
    for (String column : new String[] {"rain", "effective-rain", "reference-et"}) {
      double expected = word.exact("water-by-month", month, column);
      assertTrue(expected > 0, column);
      assertEquals(expected, table.exact("water-by-month", month, column), expected * 1e-4, column);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "quantity,unit, | quantity,units, | climate book:1: there is no column `units`. Did you mean `unit`?",
        "hill,Hill farm,rain,inch | hill,Hill farm,rain,gal | climate book:2:21: 'gal' is no unit of rain",
        "hill,Hill farm,rain,inch | hill,Hill farm,snow,inch | climate book:2:16: 'snow' is no quantity",
        "hill,Hill farm,wind,mph | hill,Hill farm,wind,knots | climate book:5:21: 'knots' is no unit of wind; write m/s or mph",
        "hill,Hill farm,range | hill,Hill farm,max | this climate has no row 'range'",
        "hill,Hill farm,range | hill,Hill farm,mean | climate book:4:16: 'mean' of this climate is given twice",
        "2.4016 | x | climate book:2:26: the column `jan` needs a number",
        "2.4016 | -3 | `rain:` of Jan must be 0 to 4000 mm",
      })
  void whatCannotBe_isRefusedWithItsCell(String good, String bad, String said) {
    String csv = BOOK.replaceFirst(good, bad);
    PlanException e = assertThrows(PlanException.class, () -> byTable(csv));
    assertTrue(e.problems().get(0).toString().contains(said), e.problems().get(0).toString());
  }

  @Test
  void unknownClimate_namesThoseOfTheTableToo() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                Drawn.beside(
                    YARD.formatted("climateBook fileText('hill.csv')\nclimate 'hil'"),
                    "hill.csv",
                    BOOK));
    assertTrue(e.problems().get(0).message().contains("Did you mean `hill`?"), e.getMessage());
  }
}
