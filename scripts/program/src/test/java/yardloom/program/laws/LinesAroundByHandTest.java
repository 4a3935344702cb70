package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Pipe goes around what is dug out or stands heavy, from plan text to the table of lines. */
class LinesAroundByHandTest {
  /** The tap lies 20 ft south of the bed, which is 2 ft wide and square before it. */
  private static final String YARD =
      """
      plan 'Around', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      tap 'bib', point(20.ft, 4.ft)
      roof 'barn', rect(40.ft, 2.ft, 8.ft, 9.ft), surface: 'metal'
      bed('row', rect(19.ft, 24.ft, 2.ft, 4.ft), use: 'annual') {
        drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 24.inch
        plant 'kale'
      }
      """;

  private static double lengthFt(String more) {
    return Drawn.of(YARD + more).exact("lines", "1", "length") / 0.3048;
  }

  /**
   * The row lies a hand, 3 in, beside the kale in the middle, 9 in from the bed's corner, to which
   * pipe comes first: 20.02 + 0.75 ft. A basin from 10 to 30 ft east, 10 to 20 ft north: √(10² +
   * 6²) = 11.66 ft to its corner, 10 along its side, √(9² + 4²) = 9.85 to the bed's corner: 32.3
   * instead. A tank 6 ft across at 14 ft stands on 17 to 23 by 11 to 17 ft: √(3² + 7²) + 6 + √(2² +
   * 7²) + 0.75 = 21.6.
   */
  @Test
  void pipe_goesAroundBasinsAndTanks() {
    assertEquals(20.77, lengthFt(""), 0.1);
    String basin =
        "basin('hollow', rect(10.ft, 10.ft, 20.ft, 10.ft), drains: 'barn', depth: 6.inch)";
    assertEquals(32.26, lengthFt(basin), 0.2);
    String tank =
        "tank('butt', point(20.ft, 14.ft), roof: 'barn') { round diameter: 6.ft, height: 3.ft }";
    assertEquals(21.65, lengthFt(tank), 0.2);
  }

  /**
   * A tree 12 ft across stands 16 ft east and 12 ft north of the tap, 20 ft from it. Its ring is
   * met on the near side: within 20 − 6 + 3 ft, whatever ring it is; round the far side it is more
   * than 20.
   */
  @Test
  void pipe_meetsTheRingOfATreeOnItsNearSide() {
    String tree =
        "tree('pear', point(8.ft, 20.ft), crown: 12.ft, height: 12.ft, trunk: 2.inch, standing:"
            + " false) { species 'European pear' ; drip emitter: 0.9.gph, spacing: 12.inch,"
            + " rowSpacing: 18.inch }";
    String lone = YARD.replaceAll("(?s)bed\\('row'.*?\\n}\\n", "") + tree;
    double ft = Drawn.of(lone).exact("lines", "1", "length") / 0.3048;
    assertEquals(15.5, ft, 1.5);
  }

  /**
   * A tree 12 ft west and 32 ft north of the tap, 34.2 ft from it, is 16.3 ft from the corner of
   * the bed that has a trench of 20.8 ft already: 16.3 less 2 to 3 ft to its outer ring are dug
   * besides, not 31 from the tap.
   */
  @Test
  void pipeToATree_sharesTheTrenchOfABed() {
    String tree =
        "tree('pear', point(8.ft, 36.ft), crown: 6.ft, height: 12.ft, trunk: 2.inch, standing:"
            + " false) { species 'European pear' ; drip emitter: 0.9.gph, spacing: 12.inch,"
            + " rowSpacing: 18.inch }";
    String dug =
        Drawn.of(YARD + tree)
            .printed("materials-labour", "dig and fill trenches for pipe", "amount");
    assertEquals(20.77 + 16.3 - 2.5, Double.parseDouble(dug.replaceAll("[^0-9.]", "")), 1);
  }
}
