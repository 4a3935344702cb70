package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;

/**
 * A plan's own limits of sun, to the printed table. Open level ground at 43.3° N from April to
 * September has, with the declinations of the mean days (9.4, 18.8, 23.1, 21.2, 13.5 and 2.2°;
 * Klein 1977, from memory) and days of 2/15 × arccos(−tan φ tan δ): 13.2, 14.5, 15.2, 14.9, 13.7
 * and 12.3 h, in the mean 13.96 h.
 */
class OwnLightByHandTest {
  private static String yard(String light) {
    return """
        plan 'Own light', units: 'metric'
        site 'place', latitude: 43.3.deg, longitude: -92.4.deg, zone: 'Etc/GMT+6'
        lot([point(0.m, 0.m), point(17.m, 0.m), point(17.m, 11.m), point(0.m, 11.m)])
        bed 'bed', rect(6.m, 4.m, 0.8.m, 2.m), use: 'annual'
        """
        + light;
  }

  @ParameterizedTest
  @CsvSource({"14.5, 13.1, part sun", "13.7, 12, full sun", "15.5, 14.3, shade"})
  void openGround_hasTheClassOfThePlansOwnLimits(String full, String part, String expected) {
    Drawn drawn =
        Drawn.of(
            yard(
                "lightScheme 'valley', classes: 'class,from_hours\\nfull sun,"
                    + full
                    + "\\npart sun,"
                    + part
                    + "\\nshade,0', source: publication('Valley light', by: 'the county',"
                    + " seen: 'memory')\n"));
    assertEquals(expected, drawn.printed("sun-hours", "open level ground", "class"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "full sun,6;shde,0 | light scheme valley:3:1: plants know no light 'shde'",
        "full sun,6;part sun,7;shade,0 | :3:10: 'part sun' begins at 0 h or more",
        "full sun,6;shade,1 | :3: the last class of a light scheme begins at 0 h",
        "full sun,25;shade,0 | at most 24 h, got 25.0 h"
      })
  void wrongLimits_areRefusedWithTheirLine(String rows, String said) {
    String table = "class,from_hours;" + rows;
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                Drawn.of(
                    yard("lightScheme 'valley', classes: '" + table.replace(";", "\\n") + "'\n")));
    assertTrue(e.problems().get(0).toString().contains(said), e.problems().get(0).toString());
  }
}
