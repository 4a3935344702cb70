package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.problem.PlanException;

/**
 * Watering zones that the plan makes. A bed of 20 × 4 ft has rows of outlets every foot, of 15 × 4
 * ft three quarters of them; half-inch line carries some 200 gph, 3.33 gpm (rule of thumb). Left to
 * itself the program puts three long beds behind the first valve, since a fourth would take more
 * than the tap gives, and lavender, which needs none of the tomatoes' water, behind its own.
 */
class HandZonesByHandTest {
  private static final String YARD =
      """
      plan 'Zones', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 60.ft), point(0.ft, 60.ft)])
      tap 'bib', point(20.ft, 12.ft), source: 'mains'
      for (i in 1..4) {
        bed("long $i", rect(10.ft, 16.ft + 8.ft * i, 20.ft, 4.ft), use: 'annual') {
          plant 'tomato'
          drip emitter: 0.6.gph, spacing: 12.inch
        }
      }
      bed('dry', rect(50.ft, 30.ft, 15.ft, 4.ft), use: 'perennial') {
        plant 'lavender'
        drip emitter: 0.6.gph, spacing: 12.inch
      }
      """;

  private static List<Finding> found(Drawn yard, String rule) {
    return yard.outcome().findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  @Test
  void zones_areAsThePlanMakesThem_thenAsUsual() {
    Drawn usual = Drawn.of(YARD);
    assertEquals(List.of("long 1 to 3", "long 4", "dry"), usual.texts("zones", "beds"));
    Drawn made =
        Drawn.of(YARD + "wateringZone(['dry', 'long 4'])\nwateringZone(['long 3', 'long 1'])\n");
    assertEquals(
        List.of("dry, long 4", "long 1, long 3", "long 2"), sorted(made.texts("zones", "beds")));
    // Of one pressure, three long beds take three times what one takes; no zone is near the limit.
    double one = usual.exact("zones", "2", "flow");
    assertEquals(2 * one, made.exact("zones", "2", "flow"), 0.01 * one);
    assertEquals(1.75 * one, made.exact("zones", "1", "flow"), 0.02 * one);
    assertEquals(one, made.exact("zones", "3", "flow"), 0.01 * one);
    assertEquals(List.of(), found(usual, "water.hand-zones"));
    assertTrue(found(made, "water.irrigation").isEmpty());
  }

  /** A station without lines on the timer's page would look forgotten. */
  @Test
  void zoneThatRainWaters_isSaidToBeOff() {
    String notes = Drawn.of(YARD).tables().get("timer-page").notes().toString();
    assertTrue(notes.contains("Zone 3: dry: off all year"), notes);
    assertFalse(notes.contains("Zone 2: long 4: off"), notes);
  }

  /**
   * Two beds with rows of 20 ft, one 6 ft above the tap, the other 30: of 25 psi are left 22.4 and
   * 12.0, by 0.433 psi a foot. Their outlets differ by 1 − √(12.0 / 22.4) = 27 percent, whatever
   * the pipes and however short the rows.
   */
  @Test
  void unevennessOfHeights_isNotLaidToTheRows() {
    String slope =
        "levels { level(point(0.ft, 12.ft), 0.ft) ; level(point(80.ft, 12.ft), 0.ft)"
            + " ; level(point(0.ft, 25.ft), 6.ft) ; level(point(80.ft, 25.ft), 6.ft)"
            + " ; level(point(0.ft, 29.ft), 6.ft) ; level(point(80.ft, 29.ft), 6.ft)"
            + " ; level(point(0.ft, 47.ft), 30.ft) ; level(point(80.ft, 47.ft), 30.ft)"
            + " ; level(point(0.ft, 60.ft), 30.ft) ; level(point(80.ft, 60.ft), 30.ft) }\n";
    Drawn made = Drawn.of(YARD + slope + "wateringZone(['long 1', 'long 4'])\n");
    assertEquals("long 1, long 4", made.printed("zones", "1", "beds"));
    assertEquals(27, Double.parseDouble(made.printed("zones", "1", "variation")), 1.5);
    assertEquals("beds of other heights or outlets", made.printed("zones", "1", "binding"));
  }

  /** Names of a zone stand in the order of all dripline, whatever the word says. */
  private static List<String> sorted(List<String> zones) {
    return zones.stream()
        .map(z -> String.join(", ", List.of(z.split(", ")).stream().sorted().toList()))
        .toList();
  }

  @Test
  void dryBedBehindTheValveOfTomatoes_isFoundAtTheWord() {
    Finding unlike =
        found(Drawn.of(YARD + "wateringZone(['dry', 'long 4'])\n"), "water.hand-zones").get(0);
    assertEquals(Severity.NOTE, unlike.severity());
    assertEquals(16, unlike.place().line());
    assertTrue(unlike.text().contains("dry asks for 0 % of the time that long 4"), unlike.text());
    assertEquals(
        List.of(),
        found(Drawn.of(YARD + "wateringZone(['long 1', 'long 4'])\n"), "water.hand-zones"));
  }

  @Test
  void nameOfNothing_isFoundWithTheNearest() {
    Drawn yard = Drawn.of(YARD + "wateringZone(['long 5', 'long 4'])\nwateringZone(['lawn'])\n");
    List<Finding> found = found(yard, "water.hand-zones");
    assertEquals(2, found.size());
    assertTrue(found.get(0).text().contains("'long 5'"), found.get(0).text());
    assertTrue(found.get(0).text().contains("Did you mean `long "), found.get(0).text());
    assertEquals(List.of("long 4", "long 1 to 3", "dry"), yard.texts("zones", "beds"));
  }

  /** Four long beds take four times 0.89 gpm, 3.5, where the tap gives 3.33. */
  @Test
  void zoneAboveTheSupply_isWarnedOf() {
    Drawn yard = Drawn.of(YARD + "wateringZone(['long 1', 'long 2', 'long 3', 'long 4'])\n");
    assertTrue(
        yard.outcome().findings().stream()
            .anyMatch(
                f ->
                    f.severity() == Severity.WARNING
                        && f.text().contains("the dripline of zone 1 takes")),
        yard.outcome().findings().toString());
  }

  @Test
  void oneBedBehindTwoValves_isRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> Drawn.of(YARD + "wateringZone(['dry'])\nwateringZone(['dry', 'long 1'])\n"));
    assertEquals(17, e.problems().get(0).place().line());
    assertThrows(PlanException.class, () -> Drawn.of(YARD + "wateringZone([])\n"));
  }
}
