package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** When the crew comes, what must be there before, and what each visit costs, by hand. */
class SiteVisitsByHandTest {
  private static final String YARD =
      """
      plan 'Visits', units: 'us', date: '2026-08-20'
      site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      frost last: '04-25', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft, 60.ft)])
      bed('warm', rect(5.ft, 10.ft, 12.ft, 4.ft), use: 'annual') { plant 'tomato', spacing: 2.ft }
      bed('herbs', rect(5.ft, 20.ft, 6.ft, 3.ft), use: 'perennial') { plant 'chives', spacing: 1.ft }
      labourBook 'task,unit,low,likely,high\\nplant plugs and seedlings,piece,0.2,0.25,0.3\\nplant from pots,piece,0.3,0.4,0.5\\nwater in,piece,0.05,0.1,0.15'
      price 'labour', 31.money, per: 'h'
      price 'compost', 41.money, per: 'yd3'
      price 'delivery of bulk', 60.money
      priceBook('item,unit,low,likely,high\\nplug,piece,2,2,2\\npot 4 in,piece,7,7,7')
      work crew: 2, hoursPerDay: 7, start: '2026-08-31', visits: 9
      """;

  /**
   * On 12 × 4 sq ft stand 12 tomatoes, planted from Monday 10 May 2027 on: 0.25 h and 0.1 h of
   * water each are 4.2 h, at 31 an hour 130.20, and 12 plugs at 2 are 24: 154.20 in all. The crew
   * of two has 14 h a day, so one day. Their bed is mulched then: 2 in on 48 sq ft are 8 cu ft or
   * 0.296 cu yd, at an hour each 0.296 h, and a load of 60. Nine rounds of an hour are 279. Chips
   * are ordered thirty days ahead, on Saturday 10 April, so by the Friday before.
   */
  @Test
  void laterVisit_hasItsOwnDayHoursPlantsAndCost() {
    Drawn yard = Drawn.of(YARD);
    assertEquals(List.of("1", "2", "3", "4", "all"), yard.rows("work-visits"));
    assertEquals(
        "Mulch what is planted later; plant tomato", yard.printed("work-visits", "4", "what"));
    assertEquals("2027-05-10", yard.printed("work-visits", "4", "from"));
    assertEquals("2027-05-10", yard.printed("work-visits", "4", "to"));
    assertEquals("2027-04-09", yard.printed("work-visits", "4", "order"));
    assertEquals("1", yard.printed("work-visits", "4", "days"));
    assertEquals("2", yard.printed("work-visits", "4", "crew"));
    double hours = 4.2 + 8 / 27.0;
    assertEquals(hours, yard.exact("work-visits", "4", "hours"), 1e-9);
    assertEquals(hours * 31 + 12 * 2 + 60, yard.exact("work-visits", "4", "cost"), 1e-6);
    assertEquals(
        "look after it, 9 times, on the days of the care visits",
        yard.printed("work-visits", "3", "what"));
    assertEquals(9.0 * 31, yard.exact("work-visits", "3", "cost"), 1e-6);
    assertEquals("1", yard.printed("work-visits", "3", "crew"));
  }

  /**
   * The call for the marks by itself, half an hour; then all that is worked without a gap. Compost
   * 3 in deep on 48 sq ft and 1 in on 18 are 12 and 1.5 cu ft, 0.5 cu yd, a tenth more 0.55,
   * ordered as 1: 41 and one delivery of 60, one load. The chips of the herbs, 3 in on 18 sq ft,
   * have no price, but come by one load more.
   */
  @Test
  void mainVisit_hasTheLoadsAndTheRestOfTheCost() {
    Drawn yard = Drawn.of(YARD);
    assertEquals("Mark utilities", yard.printed("work-visits", "1", "what"));
    assertEquals(0.5 * 31, yard.exact("work-visits", "1", "cost"), 1e-6);
    double hours = yard.exact("work-visits", "2", "hours");
    double chives = 18 * 7;
    assertEquals(hours * 31 + 41 + 60 + 60 + chives, yard.exact("work-visits", "2", "cost"), 1e-6);
    String there = yard.printed("work-visits", "2", "there");
    assertEquals(
        "compost 1 cu yd (1 load), wood-chip mulch 0.5 cu yd (1 load), 2 items of the orders",
        there);
  }

  /** Nothing is lost between the visits, the phases, the labour and the cost. */
  @Test
  void visits_addUpToHoursAndCost() {
    Drawn yard = Drawn.of(YARD);
    double hours = yard.exact("materials-labour", "all, hours of one person", "likely");
    assertEquals(hours, yard.exact("work-visits", "all", "hours"), 1e-9);
    double cost = yard.exact("materials-cost", "total", "likely");
    assertEquals(cost, yard.exact("work-visits", "all", "cost"), 1e-6);
  }
}
