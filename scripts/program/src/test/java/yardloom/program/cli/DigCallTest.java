package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No plan tells anyone to call a number of another country. */
class DigCallTest {
  @TempDir private static Path dir;

  private static String everything(String name, String place) throws IOException {
    String script =
        "plan 'Dig', units: 'metric'\n"
            + place
            + """

            lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 15.m), point(0.m, 15.m)])
            utility 'gas', line([point(0.m, 5.m), point(20.m, 5.m)]), carries: 'gas', clearance: 0.6.m
            bed 'herbs', rect(2.m, 4.m, 5.m, 1.2.m), use: 'perennial'
            """;
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "svg,csv,json");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return String.join("\n", Run.files(dir.resolve("out/" + name)).values());
  }

  private static String site(String zone) {
    return "site 'here', latitude: 45.deg, longitude: 9.deg, zone: '" + zone + "'";
  }

  @Test
  void elsewhereOrNowhere_namesNoNumber() throws IOException {
    assertFalse(everything("italy", site("Europe/Rome")).contains("811"));
    assertFalse(everything("nowhere", "").contains("811"));
    assertFalse(everything("canada", site("America/Toronto")).contains("811"));
    assertFalse(
        everything("said", site("America/Chicago") + "\ncountry 'CA'").contains("811"),
        "the plan's own word goes before its zone");
  }

  @Test
  void inTheUnitedStates_namesIt() throws IOException {
    String text = everything("us", site("America/Indiana/Vincennes"));
    assertTrue(text.contains("have buried lines marked before any digging (call 811"), text);
    assertTrue(everything("word", "country 'US'").contains("call 811"));
  }

  @Test
  void country_thatIsNone_isRefused() throws IOException {
    Files.writeString(dir.resolve("bad.groovy"), "plan 'x'\ncountry 'USA'\n");
    Run run = Run.in(dir, "check", "bad.groovy");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("bad.groovy:2:1: 'USA' is not a country"), run.err());
  }

  /** Canada and the United States by ISO 3166 in any letters; a dotless i is no letter of it. */
  @Test
  void country_inSmallLetters_isTheSame() throws IOException {
    assertTrue(everything("small", "country 'us'").contains("call 811"));
    assertTrue(everything("mixed", site("Europe/Rome") + "\ncountry 'Us'").contains("call 811"));
    assertFalse(everything("ca", site("America/Chicago") + "\ncountry 'ca'").contains("811"));
    Files.writeString(dir.resolve("dotless.groovy"), "plan 'x'\ncountry 'l\u0131'\n");
    assertEquals(ExitCode.PLAN, Run.in(dir, "check", "dotless.groovy").code());
  }
}
