package yardloom.program.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The page of published checks is what the tests' lists give. */
class TruthPageTest {
  private static final Path PAGE = Path.of("../guide/truth.md");

  @Test
  void page_isCurrent() throws IOException {
    String page = new TruthPage(Path.of("../..")).text();
    if (Boolean.getBoolean("updateGolden")) {
      Files.writeString(PAGE, page);
    }
    assertEquals(Files.readString(PAGE), page, "run with -DupdateGolden=true");
  }

  @Test
  void collectedChecks_eachOfThem_areMadeOrSayWhyNot() throws IOException {
    TruthPage page = new TruthPage(Path.of("../.."));
    assertEquals(List.of(), page.unexplained(), "add the check, or its reason");
    assertEquals(List.of(), page.vain(), "the check is made; delete its reason");
  }

  @Test
  void keptFigures_areOfAllRowsOfTheirLists_andOfNoOthers() throws IOException {
    assertEquals(
        List.of(), new TruthPage(Path.of("../..")).apart(), "run the list's test, -DupdateGolden");
  }

  /**
   * K-04: an outside page prints 5.6, cut off. Worked by hand from its rule: luminances 0.7835 and
   * 0.2126 × 0.1221 + 0.7152 × 0.0152 + 0.0722 × 0.8228 = 0.0962, so 0.8335 / 0.1462 = 5.70.
   */
  @Test
  void row_showsWhatTheProgramGives() throws IOException {
    String page = new TruthPage(Path.of("../..")).text();
    assertTrue(
        page.lines()
            .anyMatch(
                l -> l.startsWith("| K-04 |") && l.contains("ratio 5.6 ") && l.contains("| 5.7 |")),
        "contrast");
  }

  /** FAO-56, example 8: 32.2 MJ m⁻² d⁻¹ reach the top of the air at 20° S on 3 September. */
  @Test
  void row_ofAList_standsOnThePageWithItsSource() throws IOException {
    String page = new TruthPage(Path.of("../..")).text();
    assertTrue(
        page.lines()
            .anyMatch(l -> l.startsWith("| F07 |") && l.contains("32.2") && l.contains("FAO-56")),
        "extraterrestrial radiation of FAO-56 example 8");
    assertTrue(page.contains("| soil-checks | M01 |"));
  }
}
