package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A compost bay from its word to the order, the hours, the phase and the months of its mix. */
class BayByHandTest {
  private static final String PLAN =
      """
      plan 'Bay', units: 'us', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-08', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      bed('herbs', rect(4.ft, 4.ft, 12.ft, 4.ft), use: 'perennial') { plant 'lovage', spacing: 3.ft }
      tree('pear', point(30.ft, 30.ft), crown: 14.ft, height: 14.ft, standing: false) { species 'European pear' }
      compostBay 'bay', rect(40.ft, 40.ft, 10.ft, 3.5.ft)%s
      priceBook 'item,unit,low,likely,high\\nfence posts,piece,11,13,17\\nfence mesh,ft,2,3,5\\nfence boards,piece,5,7,8\\nlabour,h,20,30,40\\nany plants,piece,1,2,3\\nany trees and shrubs,piece,10,20,30'
      work crew: 2, hoursPerDay: 6, start: '2027-04-05'
      """;

  private static final Drawn YARD = Drawn.of(PLAN.formatted(""));

  /**
   * 10 ft have room for three bins of 3 ft: eight posts, 4 ft and 18 in deep, so 6 ft long; mesh of
   * 10 + 4 × 3.5 = 24 ft, with a tenth more 26.4; eight boards of 5.5 in in 4 ft, three times, each
   * 3.33 ft, so 4 ft long.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "'fence posts, 4x4 by 6 ft', 8, 8",
    "'fence mesh, 4 ft high', 24.0 ft, 26.4 ft",
    "'fence boards, 1x6 by 4 ft', 24, 24",
  })
  void parts_standInTheOrder(String item, String exact, String order) {
    assertEquals("Bay", YARD.printed("materials-hard-goods", item, "for"));
    assertEquals(exact, YARD.printed("materials-hard-goods", item, "exact"));
    assertEquals(order, YARD.printed("materials-hard-goods", item, "order"));
  }

  /** 8 posts at 0.75 h are 6 h, 24 + 10 ft at 0.19 h are 6.46 h: 12.5 h of building. */
  @Test
  void hours_standInTheLabourAndInThePhase() {
    assertEquals("6.0", YARD.printed("materials-labour", "set posts", "likely"));
    assertEquals("6.5", YARD.printed("materials-labour", "hang rails, boards and mesh", "likely"));
    assertEquals(12.46, YARD.exact("materials-phases", "Build", "hours"), 1e-6);
    assertFalse(YARD.rows("materials-labour").contains("put up what is built"));
  }

  /** What stands is neither bought nor built, and still named to the household. */
  @Test
  void standingBay_takesNothing() {
    Drawn old = Drawn.of(PLAN.formatted(", standing: true"));
    assertFalse(old.rows("materials-labour").contains("set posts"));
    assertFalse(old.tables().get("materials-orders-by-phase").toString().contains("fence posts"));
    assertTrue(old.tables().get("compost-bay").notes().toString().contains("On the plan: bay"));
  }

  /**
   * Lovage is cut from 6 May − 42 to − 14, 25 March to 22 April, and parted from 1 to 29 April;
   * pears are pruned from 20 February on; weeds from 22 April to 8 October; leaves fall for five
   * weeks from 8 October, to 11 November.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "January, '', '', Nothing new",
    "March, '', cut perennials down, Keep it dry",
    "April, 'divide a quarter of the clumps, weeds', cut perennials down, 3 buckets of brown",
    "July, weeds, '', 3 buckets of saved leaves",
    "October, weeds, leaves of trees, 3 buckets of brown",
    "November, '', leaves of trees, Keep it dry",
    "December, '', '', Nothing new",
  })
  void months_sayWhatThereIs(String month, String green, String brown, String mix) {
    assertEquals(green, YARD.printed("compost-months", month, "green"));
    assertEquals(brown, YARD.printed("compost-months", month, "brown"));
    String said = YARD.printed("compost-months", month, "mix");
    assertTrue(said.startsWith(mix), said);
  }

  /** It is drawn, and its place stands in the legend of the plan. */
  @Test
  void bay_isDrawn() {
    long drawn =
        YARD.outcome().layers().values().stream()
            .flatMap(l -> l.marks().stream())
            .filter(yardloom.kernel.draw.Mark.Region.class::isInstance)
            .map(yardloom.kernel.draw.Mark.Region.class::cast)
            .filter(r -> Math.abs(r.shape().area().squareFeet() - 35) < 1e-6)
            .count();
    assertTrue(drawn >= 1, "no ground of 35 sq ft is drawn");
    assertEquals(35, YARD.exact("areas", "Bay", "area") / 0.09290304, 1e-6);
  }
}
