package yardloom.planting.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;

/** Rhubarb, 3.5 ft wide, keeps 1.75 ft from a tap. */
class TapCheckTest {
  /** One crown in the middle of a bed of 4 ft, at (12, 12). */
  @ParameterizedTest(name = "{0} ft off: {1}")
  @CsvSource({"1.7, 1", "1.8, 0"})
  void tapUnderAGrownPlant_isFound(double off, int found) {
    PlantYard yard = PlantYard.us("");
    yard.planted(yard.bed("b", 10, 10, 4, 4), "rhubarb", 4);
    Point at = new Point(Length.feet(12 + off), Length.feet(12));
    yard.draft.add(
        new ElementId(ElementKind.WATER_POINT, "hose"),
        yard.next(),
        c -> new Element.WaterPoint(c, at, "mains"));
    assertEquals(found, yard.found("planting.taps").size());
  }
}
