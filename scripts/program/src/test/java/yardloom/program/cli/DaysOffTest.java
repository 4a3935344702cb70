package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Days off of the plan and of a regional file, from script to the printed phases. */
class DaysOffTest {
  private static final String PLAN =
      """
      plan 'Off', units: 'us'
      include 'holidays'
      work crew: 2, hoursPerDay: 4, start: '2027-05-27', visits: 1
      daysOff(['2027-06-04'])
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      task 'carry the old shed out', hours: 19, phase: 'earth'
      """;

  @TempDir private Path dir;

  /**
   * Memorial Day is Monday 31 May 2027. Marks take Thursday the 27th, Friday and Tuesday; 19 h are
   * three days of 8: Wednesday, Thursday and, the 4th being off, Monday the 7th. The visit follows
   * a week after the 8th.
   */
  @Test
  void phases_leaveThemOut() throws IOException {
    Files.writeString(dir.resolve("holidays.groovy"), "daysOff(['2027-05-31', '07-04'])\n");
    Files.writeString(dir.resolve("off.groovy"), PLAN);
    Run run = Run.in(dir, "draw", "off.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    Map<String, String> files = Run.files(dir.resolve("out/off"));
    assertEquals(
        List.of(
            "Mark utilities,1,3,0.5,2027-05-27,2027-06-01",
            "Earthwork,4,3,19.0,2027-06-02,2027-06-07",
            "Establish,12,1,1.0,2027-06-15,2027-06-15"),
        files
            .get("tables/materials-phases.csv")
            .lines()
            .skip(1)
            .map(r -> r.replaceAll("^((?:[^,]*,){5}[^,]*),.*", "$1"))
            .toList());
  }

  @Test
  void whatIsNoDay_isRefusedWithTheForm() throws IOException {
    Files.writeString(
        dir.resolve("bad.groovy"), "plan 'Off', units: 'us'\ndaysOff(['31.5.2027'])\n");
    Run run = Run.in(dir, "check", "bad.groovy");
    assertEquals(ExitCode.PLAN, run.code(), run.out() + run.err());
    assertTrue(run.err().contains("not a date of the form '2027-05-31'"), run.err());
    assertTrue(run.err().contains("bad.groovy:2:"), run.err());
  }
}
