package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.Outcome;
import yardloom.program.cli.Samples;
import yardloom.program.export.PngWriter;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/**
 * A sheet of each demo against a picture of it that somebody has looked at. Digests tell that a
 * sheet differs, this tells by how much, and where: what differs is red in {@code target/pictures}.
 * With {@code -DupdateGolden=true} the pictures are written instead.
 */
class PictureGoldenTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "pictures");
  private static final int DPI = 32;
  private static final long MOST_BYTES = 100_000;

  /** So much may differ by more: some letters, no line, no bed. */
  private static final double MOST_DIFFERENT = 0.0005;

  @TempDir private Path dir;

  @ParameterizedTest
  @CsvSource({
    "urbana-yard,client",
    "seattle-corner,client",
    "san-francisco-slope,cover",
    "desert-basins,client"
  })
  void sheet_looksAsItDid(String demo, String id) throws IOException {
    Outcome outcome = Samples.outcome(demo);
    ComposedSheet sheet = sheet(outcome, id);
    String name = demo + "-" + id + ".png";
    Path drawn = dir.resolve(name);
    PngWriter.write(SvgSheet.of(sheet), DPI, drawn);
    assertTrue(Files.size(drawn) <= MOST_BYTES, name + ": " + Files.size(drawn) + " bytes");
    PictureDifference.check(FOLDER, name, drawn, MOST_DIFFERENT);
  }

  /** As it is in a set: asked for alone, it would carry the cautions of all. */
  private static ComposedSheet sheet(Outcome outcome, String id) {
    Paper paper = Paper.usual(outcome.plan().info().units());
    return SheetSet.of(outcome, paper, List.of("layout", id), Hands.ONE).stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** 3 of 400 dots turned black are 0.75 %, far too many; a shade of 40 is not seen. */
  @Test
  void dots_thatDiffer_areCounted_shadesAreNot() {
    BufferedImage a = new BufferedImage(20, 20, 1);
    BufferedImage b = new BufferedImage(20, 20, 1);
    for (int i = 0; i < 400; i++) {
      a.setRGB(i % 20, i / 20, 0xffffff);
      b.setRGB(i % 20, i / 20, i < 3 ? 0 : i < 9 ? 0xffffd7 : 0xffffff);
    }
    BufferedImage marked = new BufferedImage(20, 20, 1);
    assertEquals(0.0075, PictureDifference.share(a, b, marked), 1e-12);
    assertEquals(0xcc0000, marked.getRGB(2, 0) & 0xffffff);
    assertEquals(0xffffff, marked.getRGB(3, 0) & 0xffffff);
  }
}
