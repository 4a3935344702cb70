package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

class WktOutlineTest {
  private static final Length METRE = Length.metres(1);

  // a widely used example of the text form (from memory); the area is computed by the
  // shoelace formula: 550.
  @Test
  void polygon_hasItsShoelaceArea() {
    String text = "POLYGON ((30 10, 40 40, 20 40, 10 20, 30 10))";
    assertEquals(550, WktOutline.read(text, METRE).area().squareMetres(), 1e-9);
    double squareFootM2 = 0.3048 * 0.3048;
    assertEquals(
        550 * squareFootM2, WktOutline.read(text, Length.feet(1)).area().squareMetres(), 1e-9);
  }

  // the same with a hole (from memory): 675 by the shoelace formula.
  @Test
  void polygonWithHole_hasItsShoelaceArea() {
    String text = "POLYGON ((35 10, 45 45, 15 40, 10 20, 35 10), (20 30, 35 35, 30 20, 20 30))";
    assertEquals(675, WktOutline.read(text, METRE).area().squareMetres(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "BAD_SHAPE    | starts with POLYGON | POINT (1 2)",
        "BAD_SHAPE    | starts with POLYGON | GEOMETRYCOLLECTION (POLYGON ((0 0, 1 0, 1 1, 0 0)))",
        "BAD_SHAPE    | is empty            | POLYGON EMPTY",
        "SYNTAX       | cannot be read      | POLYGON ((0 0, 1 0, 1 1))",
        "SYNTAX       | cannot be read      | POLYGON ((0 0, 1 0, x 1, 0 0))",
        "SYNTAX       | cannot be read      | POLYGON ((0 0, 1 0, 1 1, 0 0)",
        "BAD_SHAPE    | crosses             | POLYGON ((0 0, 9 9, 9 0, 0 9, 0 0))",
        "SYNTAX       | cannot be read      | POLYGON ((NaN 0, 9 9, 9 0, NaN 0))",
        "OUT_OF_RANGE | 10 km               | POLYGON ((6000000 0, 6000009 9, 6000009 0, 6000000 0))"
      })
  void badText_isRefusedWithWhatIsWrong(String code, String says, String text) {
    PlanException e = assertThrows(PlanException.class, () -> WktOutline.read(text, METRE));
    assertEquals(code, e.problems().get(0).code().name(), e.getMessage());
    assertTrue(e.getMessage().contains(says), e.getMessage());
  }
}
