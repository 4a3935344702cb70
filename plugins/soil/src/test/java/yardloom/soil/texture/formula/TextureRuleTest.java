package yardloom.soil.texture.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.soil.texture.formula.FieldTexture.Feel;

/** Soil checks T01 to T43; sources stand in the rows. */
class TextureRuleTest {
  private static final OutsideRows TEXTURE_CLASS =
      OutsideRows.of(TextureRuleTest.class, "/yardloom/soil/texture/formula/texture-class.csv");
  private static final OutsideRows TEXTURE_COUNT =
      OutsideRows.of(TextureRuleTest.class, "/yardloom/soil/texture/formula/texture-count.csv");

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/yardloom/soil/texture/formula/texture-class.csv", numLinesToSkip = 1)
  void soil_publishedPoint_hasItsClass(
      String id, double sand, double silt, double clay, String expected) {
    TEXTURE_CLASS.same(id, "", expected, TextureRule.classify(sand, clay).title());
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/yardloom/soil/texture/formula/texture-count.csv", numLinesToSkip = 1)
  void wholePercentPoints_perClass_countAsPublished(String id, String texture, int points) {
    TEXTURE_COUNT.same(id, "", points, counts().get(texture));
  }

  @Test
  void wholePercentPoints_allClasses_total5151() {
    assertEquals(5151, counts().values().stream().mapToInt(Integer::intValue).sum());
    assertEquals(12, counts().size());
  }

  private static Map<String, Integer> counts() {
    Map<TextureClass, Integer> counts = new EnumMap<>(TextureClass.class);
    for (int sand = 0; sand <= 100; sand++) {
      for (int clay = 0; sand + clay <= 100; clay++) {
        counts.merge(TextureRule.classify(sand, clay), 1, Integer::sum);
      }
    }
    Map<String, Integer> byTitle = new java.util.TreeMap<>();
    counts.forEach((k, v) -> byTitle.put(k.title(), v));
    return byTitle;
  }

  @ParameterizedTest
  @CsvSource({"60, 50", "-1, 20", "20, -1", "NaN, 20", "20, NaN", "Infinity, 0"})
  void soil_outsideTheTriangle_isRefused(double sand, double clay) {
    // T43
    PlanException e = assertThrows(PlanException.class, () -> TextureRule.classify(sand, clay));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
  }

  @ParameterizedTest
  @CsvSource({
    // Trap 1: half-point polygons (27.5, 7.5, 12.5, 52.5) call these otherwise.
    "23, 27, clay loam",
    "20, 27, silty clay loam",
    "52, 7, loam",
    "8, 12, silt loam"
  })
  void soil_onWholePointEdges_followsTheRuleNotThePolygons(
      double sand, double clay, String expected) {
    assertEquals(expected, TextureRule.classify(sand, clay).title());
  }

  @ParameterizedTest
  @EnumSource(TextureClass.class)
  void middle_ofEachClass_liesInIt(TextureClass texture) {
    double[] middle = TextureRule.middle(texture);
    assertEquals(texture, TextureRule.classify(middle[0], middle[1]));
  }

  @Test
  void jar_layers_becomeShares() {
    double[] parts = FieldTexture.jar(Length.inches(2), Length.inches(2), Length.inches(1));
    assertEquals(40, parts[0], 1e-9);
    assertEquals(20, parts[1], 1e-9);
    assertThrows(
        PlanException.class, () -> FieldTexture.jar(Length.ZERO, Length.ZERO, Length.ZERO));
  }

  @ParameterizedTest
  @CsvSource({
    // Thien 1979 with ribbon lengths of 1 and 2 in, as quoted by Colorado State Univ. Extension.
    "false, 0, NEITHER, sand",
    "true, 0, GRITTY, loamy sand",
    "true, 0.5, GRITTY, sandy loam",
    "true, 0.5, NEITHER, loam",
    "true, 0.5, SMOOTH, silt loam",
    "true, 1.5, GRITTY, sandy clay loam",
    "true, 1.5, NEITHER, clay loam",
    "true, 1.5, SMOOTH, silty clay loam",
    "true, 2.5, GRITTY, sandy clay",
    "true, 2.5, NEITHER, clay",
    "true, 2.5, SMOOTH, silty clay"
  })
  void ribbon_lengthAndFeel_followTheFlowDiagram(
      boolean ball, double inches, Feel feel, String expected) {
    assertEquals(expected, FieldTexture.ribbon(ball, Length.inches(inches), feel).title());
  }

  @Test
  void heavyAndCoarse_neverMeet() {
    for (TextureClass t : TextureClass.values()) {
      assertTrue(!(t.isCoarse() && t.isHeavy()), t.title());
    }
  }
}
