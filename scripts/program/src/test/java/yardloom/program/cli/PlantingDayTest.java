package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The day that the schedule plants against the day that plants are usually set out. */
class PlantingDayTest {
  @TempDir private Path dir;

  /** Kale may go out four weeks before the last frost of 25 April, tomatoes two weeks after it. */
  private String said(String start, String plant) throws IOException {
    Files.writeString(
        dir.resolve("plan.groovy"),
        "plan 'Days'\n"
            + "site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone:"
            + " 'America/Chicago'\n"
            + "frost last: '04-25', first: '10-14', source: 'demo'\n"
            + "lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])\n"
            + "bed('a', rect(10.ft, 10.ft, 4.ft, 8.ft), use: 'annual') { plant '"
            + plant
            + "' }\n"
            + "work start: '"
            + start
            + "'\n");
    Run run = Run.in(dir, "check", "plan.groovy");
    return run.out() + run.err();
  }

  @Test
  void tenderPlant_beforeItsDay_isNoted() throws IOException {
    String said = said("2027-04-01", "tomato");
    assertTrue(said.contains("usual is tomato from 9 May."), said);
  }

  @Test
  void hardyPlant_orALaterStart_isNot() throws IOException {
    assertFalse(said("2027-04-01", "kale").contains("work.planting-day"));
    assertFalse(said("2027-06-01", "tomato").contains("work.planting-day"));
    // In October the day of this year is past; next year's is another season.
    assertFalse(said("2027-10-01", "kale").contains("work.planting-day"));
  }
}
