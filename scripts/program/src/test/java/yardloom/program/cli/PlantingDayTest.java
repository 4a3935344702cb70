package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One calendar: the days of frost, of planting and of the crew, from the script to the tables. */
class PlantingDayTest {
  @TempDir private Path dir;

  private static String plan(String frost, String work, String... plants) {
    StringBuilder text =
        new StringBuilder(
            "plan 'Days'\n"
                + "site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m,"
                + " zone: 'America/Chicago'\n"
                + "lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft,"
                + " 60.ft)])\n");
    text.append(frost).append('\n').append(work).append('\n');
    for (int i = 0; i < plants.length; i++) {
      text.append(
          "bed('bed %d', rect(%d.ft, 10.ft, 4.ft, 8.ft), use: 'annual') { plant '%s' }\n"
              .formatted(i + 1, 5 + 10 * i, plants[i]));
    }
    return text.toString();
  }

  private Map<String, String> drawn(String plan) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), plan);
    Run run = Run.in(dir, "draw", "plan.groovy", "--out", "out", "--as", "csv,json");
    assertEquals("", run.err());
    return Run.files(dir.resolve("out/plan"));
  }

  private String said(String plan) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), plan);
    Run run = Run.in(dir, "check", "plan.groovy");
    return run.out() + run.err();
  }

  private static final String FROST = "frost last: '04-25', first: '10-14', source: 'demo'";

  /**
   * By hand: perennials from 6 weeks before the last frost of 25 April to 8 weeks after it, 14
   * March to 20 June; tomatoes from 2 weeks after it, Sunday 9 May, to 145 days before the first
   * frost of 14 October, 22 May. They meet on Monday, 10 May.
   */
  @Test
  void kindsThatMeet_arePlantedInOneVisit_onTheDayOfThePhase() throws IOException {
    Map<String, String> files = drawn(plan(FROST, "work start: '2027-04-01'", "tomato", "chives"));
    assertEquals(
        "visit,date,hours_h,days,kinds\n1,2027-05-10,_,1,\"chives (crowns or potted), tomato (set out)\"\n",
        // Hours are worked by hand in VisitHoursByHandTest.
        files
            .get("tables/planting-visits.csv")
            .replace("\r", "")
            .replaceAll("-10,[0-9.]+,1", "-10,_,1"));
    String times = files.get("tables/planting-times.csv");
    assertTrue(times.contains("chives,crowns or potted,--03-14,--06-20"), times);
    assertTrue(times.contains("tomato,set out,--05-09,--05-22"), times);
    String phases = files.get("tables/materials-phases.csv");
    assertTrue(phases.contains(",2027-05-10,"), phases);
    assertTrue(files.get("results.json").contains("\"iso\" : \"2027-05-10\""));
  }

  /**
   * Tomatoes wait for 10 May. Cardboard of September rests longer than six months until then, that
   * of January does not, and chives of another bed in fall say nothing about it.
   */
  @Test
  void restOfTheCardboard_countsToTheVisitThatPlantsTheAnnuals() throws IOException {
    String yard =
        plan(FROST, "work start: '%s'", "tomato", "chives")
            .replace(
                "4.ft, 8.ft), use: 'annual') { plant 'chives'",
                "4.ft, 8.ft), use: 'perennial') { plant 'chives'");
    assertTrue(yard.contains("perennial"), yard);
    String fall = said(yard.formatted("2026-09-14"));
    assertTrue(
        fall.contains("the crew comes again on 10 May 2027 to plant tomato and mulch what is"),
        fall);
    assertFalse(fall.contains("work.resting-time"), fall);
    String winter = said(yard.formatted("2027-01-04"));
    assertTrue(winter.contains("Annual beds are planted on 10 May 2027, less than six"), winter);
  }

  /**
   * A week ahead of the visit that plants them: tomatoes by 3 May for Monday, 10 May 2027, whatever
   * is planted in fall.
   */
  @Test
  void orders_areAheadOfTheVisitThatPlantsTheKind() throws IOException {
    String yard = plan(FROST, "work start: '2026-09-14'", "tomato", "chives");
    Map<String, String> files = drawn(yard);
    String fall = files.get("tables/planting-visits.csv").lines().skip(1).findFirst().orElseThrow();
    assertTrue(fall.startsWith("1,2026-09-") && fall.contains("chives"), fall);
    String ordered = files.get("tables/materials-orders-by-phase.csv");
    String tomato = ordered.lines().filter(l -> l.contains("tomato")).findFirst().orElseThrow();
    assertTrue(tomato.endsWith(",7,2027-05-03"), tomato);
    String chives = ordered.lines().filter(l -> l.contains("chives")).findFirst().orElseThrow();
    assertTrue(chives.contains(",7,2026-"), chives);
  }

  @Test
  void kindsThatNeverMeet_needTwoVisits_andThePlanSaysSo() throws IOException {
    String said = said(plan(FROST, "work start: '2027-06-01'", "tomato", "chives"));
    assertTrue(said.contains("the crew comes again on 9 May 2028 to plant tomato and mulch"), said);
    String early = said(plan(FROST, "work start: '2027-04-05'", "tomato", "chives"));
    assertFalse(early.contains("comes again"), early);
  }

  /** {@code work} and {@code frost} give one set of days to every table. */
  @Test
  void frostSaidWithTheWork_isTheOneFrostOfAllTables() throws IOException {
    String work = "work start: '2027-04-01', lastFrost: '04-25', firstFrost: '10-14'";
    Map<String, String> files = drawn(plan("", work, "tomato"));
    assertTrue(
        files.get("tables/planting-times.csv").contains("tomato,set out,--05-09,--05-22"),
        files.get("tables/planting-times.csv"));
    assertTrue(files.get("tables/frost.csv").contains("--04-25"), files.get("tables/frost.csv"));
  }

  @Test
  void frostSaidTwiceAndDifferently_isRefused() throws IOException {
    String work = "work start: '2027-04-01', lastFrost: '04-20'";
    String said = said(plan(FROST, work, "tomato"));
    assertTrue(said.contains("the last frost is 20 Apr here and 25 Apr by `frost`"), said);
  }
}
