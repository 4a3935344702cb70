package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Hours of planting stand with the visit that plants; those of phases and visits add up. */
class VisitHoursByHandTest {
  private static final String YARD =
      """
      plan 'Visits', units: 'us', date: '2026-08-20'
      site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      frost last: '04-25', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft, 60.ft)])
      bed('warm', rect(5.ft, 10.ft, 12.ft, 4.ft), use: 'annual') { plant 'tomato', spacing: 2.ft }
      bed('herbs', rect(5.ft, 20.ft, 6.ft, 3.ft), use: 'perennial') { plant 'chives', spacing: 1.ft }
      labourBook 'task,unit,low,likely,high\\nplant plugs and seedlings,piece,0.2,0.25,0.3\\nplant from pots,piece,0.3,0.4,0.5\\nplant crowns and runners,piece,0.5,0.6,0.7\\nwater in,piece,0.05,0.1,0.15'
      work crew: 1, hoursPerDay: 2, start: '%s'
      """;

  /**
   * In September chives are in season, tomatoes only from two weeks after 25 April, Sunday 9 May
   * 2027, on: Monday the 10th. On 6 × 3 sq ft stand 18 chives: 0.4 h from the pot and 0.1 h of
   * water each are 9 h, 4.5 days of 2 h, five begun. On 12 × 4 sq ft stand 12 tomatoes: 0.25 and
   * 0.1 h each are 4.2 h, two days, the last 0.2 h on the evening of the second. From Wednesday 2
   * September, six weeks before the first frost, five working days end on Tuesday the 8th; on the
   * morning of 12 May the bed of the tomatoes is mulched.
   */
  @Test
  void visits_haveTheHoursOfTheirOwnKinds_andThePhaseThoseOfTheFirst() {
    Drawn yard = Drawn.of(YARD.formatted("2026-08-24"));
    assertEquals("2026-09-02", yard.printed("planting-visits", "1", "date"));
    assertEquals(9.0, yard.exact("planting-visits", "1", "hours"), 1e-9);
    assertEquals("5", yard.printed("planting-visits", "1", "days"));
    assertEquals("2027-05-10", yard.printed("planting-visits", "2", "date"));
    assertEquals(4.2, yard.exact("planting-visits", "2", "hours"), 1e-9);
    assertEquals("2", yard.printed("planting-visits", "2", "days"));
    assertEquals(9.0, yard.exact("materials-phases", "Plant", "hours"), 1e-9);
    assertEquals("5", yard.printed("materials-phases", "Plant", "days"));
    assertEquals("2026-09-08", yard.printed("materials-phases", "Plant", "to"));
    String later = "Mulch what is planted later";
    assertEquals("2027-05-12", yard.printed("materials-phases", later, "from"));
    assertEquals(0, yard.exact("materials-phases", later, "at"), 1e-9);
    assertEquals("3", yard.printed("work-visits", "5", "days"));
    assertEquals(later + "; plant tomato", yard.printed("work-visits", "5", "what"));
  }

  /** The labour table has all: 4.2 h more than the phases, and a note says so. */
  @Test
  void phasesAndLaterVisits_addUpToTheLabour() {
    Drawn yard = Drawn.of(YARD.formatted("2026-08-24"));
    double all = yard.exact("materials-labour", "all, hours of one person", "likely");
    assertEquals(all, yard.sum("materials-phases", "hours") + 4.2, 1e-9);
    String notes = yard.tables().get("materials-phases").notes().toString();
    assertTrue(notes.contains("Later visits to plant take 4.2 h beside"), notes);
  }

  /** From 12 April on both are in season on 10 May: one visit, 13.2 h, 6.6 days, seven begun. */
  @Test
  void oneVisit_hasAllHours_andNothingIsBeside() {
    Drawn yard = Drawn.of(YARD.formatted("2027-04-12"));
    assertEquals(List.of("1"), yard.rows("planting-visits"));
    assertEquals(13.2, yard.exact("planting-visits", "1", "hours"), 1e-9);
    assertEquals("7", yard.printed("planting-visits", "1", "days"));
    assertEquals(13.2, yard.exact("materials-phases", "Plant", "hours"), 1e-9);
    String notes = yard.tables().get("materials-phases").notes().toString();
    assertFalse(notes.contains("Later visits"), notes);
  }
}
