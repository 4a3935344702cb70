package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * A lane for trucks of 11 × 30 ft, 330 sq ft, from the script to the printed tables. It ends at the
 * drop zone, so that it is the truck's way.
 */
class TruckLaneByHandTest {
  private static final String YARD =
      """
      plan 'Lane by hand', units: 'us'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 60.ft), point(0.ft, 60.ft)])
      sheetMulch { chips perennial: 12.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
      truckLane 'lane', line([point(70.ft, 0.ft), point(70.ft, 30.ft)]), width: 11.ft, standing: false
      dropZone 'heap', rect(62.ft, 30.ft, 16.ft, 16.ft)
      tree 'oak', point(70.ft, 12.ft), crown: 12.ft, height: 30.ft, trunk: 10.inch
      bed('long', rect(20.ft, 20.ft, 30.ft, 4.ft), use: 'perennial')
      """;

  /** 4 in of gravel: 330 / 3 / 27 = 4.07 cu yd; a base of 6 in as for cars: 330 / 2 / 27 = 6.11. */
  @Test
  void newLane_hasGravelOnABaseForCars() {
    Drawn drawn = Drawn.of(YARD);
    assertEquals("4.07 cu yd", exact(drawn, "gravel"));
    assertEquals("6.11 cu yd", exact(drawn, "gravel base"));
  }

  /** The same ground as paving is for feet: gravel alone. */
  @Test
  void pavingOfTheSameGround_hasNoBase() {
    String paving =
        YARD.replaceAll(
            "truckLane .*",
            "paving 'lane', rect(64.5.ft, 0.ft, 11.ft, 30.ft), surface: 'gravel', standing: false");
    Drawn drawn = Drawn.of(paving);
    assertEquals("4.07 cu yd", exact(drawn, "gravel"));
    assertFalse(drawn.rows("materials-hard-goods").contains("gravel base"));
    assertFalse(found(drawn).contains("crosses the truck's way"));
  }

  @Test
  void laneAtADropZone_isTheTrucksWay() {
    assertTrue(
        found(Drawn.of(YARD)).contains("tree \"oak\" crosses the truck's way to the drop zone"));
    // 3 ft short of the drop zone it leads elsewhere.
    String away = YARD.replace("point(70.ft, 30.ft)]", "point(70.ft, 27.ft)]");
    assertFalse(found(Drawn.of(away)).contains("crosses the truck's way"));
  }

  @Test
  void narrowLane_isFound() {
    assertFalse(found(Drawn.of(YARD)).contains("The way to the drop zone"));
    assertTrue(
        found(Drawn.of(YARD.replace("width: 11.ft", "width: 7.ft")))
            .contains("The way to the drop zone \"heap\" is 84"));
  }

  private static String exact(Drawn drawn, String item) {
    return drawn.printed("materials-hard-goods", item, "exact").replace('\u00a0', ' ');
  }

  private static String found(Drawn drawn) {
    return drawn.outcome().findings().toString();
  }
}
