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

/** Address and contacts, from the plan's lines to cover, booklet and the driver's paper. */
class ContactsYardTest {
  private static final String PLAN =
      """
      plan 'Called', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      sheetMulch { chips perennial: 8.inch ; compost perennial: 1.inch }
      bed 'herbs', rect(5.ft, 5.ft, 20.ft, 4.ft), use: 'perennial'
      dropZone 'drive', rect(40.ft, 0.ft, 16.ft, 16.ft)
      """;

  private static final String LINES =
      """
      siteAddress '14 Linden Walk, Urbana'
      contact 'Digging service', phone: '811', role: 'marks buried lines'
      contact 'R. Rowan', phone: '217 555 0142', role: 'household', onSite: true
      contact 'Chip yard', phone: '(217) 555-0198 ext 12'
      """;

  @TempDir private static Path dir;

  private static Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "svg,csv,html");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  private static String sheets(Map<String, String> files, String part) {
    StringBuilder all = new StringBuilder();
    files.forEach(
        (name, text) -> {
          if (name.startsWith("sheets/") && name.contains(part)) {
            all.append(text);
          }
        });
    return all.toString().replaceAll("(<[^>]*>\\s*)+", " ");
  }

  @Test
  void contacts_standOnCoverAndBooklet_andTheDriverHasHisOwn() throws IOException {
    Map<String, String> files = drawn("called", PLAN + LINES);
    assertEquals(
        "who,for,phone\r\n"
            + "This yard,deliveries,\"14 Linden Walk, Urbana\"\r\n"
            + "Digging service,marks buried lines,811\r\n"
            + "R. Rowan,\"household, on site\",217 555 0142\r\n"
            + "Chip yard,,(217) 555-0198 ext 12\r\n",
        files.get("tables/contacts.csv"));
    for (String part : new String[] {"cover", "crew"}) {
      String text = sheets(files, part);
      for (String said :
          new String[] {"Contacts", "14 Linden Walk", "811", "217 555 0142", "0198 ext 12"}) {
        assertTrue(text.contains(said), said + " on " + part + ": " + text);
      }
    }
    String driver = sheets(files, "materials");
    assertTrue(driver.contains("Address: 14 Linden Walk, Urbana"), driver);
    assertTrue(driver.contains("Phone on site: R. Rowan, 217 555 0142"), driver);
    assertFalse(driver.contains("811") || driver.contains("____"), "no other number: " + driver);
  }

  /** Who is not in the yard is no help to a driver: that blank stays. */
  @Test
  void unsaid_isLeftToBeFilledInByHand() throws IOException {
    Map<String, String> none = drawn("silent", PLAN);
    assertFalse(none.containsKey("tables/contacts.csv"));
    assertTrue(sheets(none, "materials").contains("Address: ____"));
    assertTrue(
        sheets(none, "materials").contains("Phone on site: ____"), sheets(none, "materials"));
    String some =
        sheets(drawn("away", PLAN + "contact 'Digging service', phone: '811'\n"), "materials");
    assertTrue(some.contains("Address: ____") && some.contains("Phone on site: ____"), some);
  }

  @Test
  void hostileTexts_stayTexts() throws IOException {
    Map<String, String> files =
        drawn(
            "hostile",
            PLAN
                + """
                siteAddress '=cmd|1 <script>alert(8)</script>'
                contact '@SUM(A1)', phone: '+1-217-555-0142', role: '-2+3', onSite: true
                contact '<script>alert(9)</script>', phone: '811'
                """);
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".svg") || name.endsWith(".html")) {
            assertFalse(text.contains("<script>alert"), name);
          }
        });
    String table = files.get("tables/contacts.csv");
    assertTrue(table.contains(",'=cmd|1 <script>"), table);
    assertTrue(table.contains("\r\n'@SUM(A1),\"'-2+3, on site\",'+1-217-555-0142\r\n"), table);
    assertTrue(files.get("report.html").contains("&lt;script&gt;alert(9)"));
  }
}
