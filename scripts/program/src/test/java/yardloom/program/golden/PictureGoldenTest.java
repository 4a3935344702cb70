package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
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
  private static final Path ACTUAL = Path.of("target", "pictures");
  private static final int DPI = 32;
  private static final long MOST_BYTES = 100_000;

  /** Of 255: an edge that another Java version smooths otherwise differs by less. */
  private static final int SEEN = 48;

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
    Path golden = FOLDER.resolve(name);
    if (Boolean.getBoolean("updateGolden")) {
      Files.createDirectories(FOLDER);
      Files.write(golden, Files.readAllBytes(drawn));
      return;
    }
    if (!Files.exists(golden)) {
      fail("no picture " + name + "; write it with -DupdateGolden=true and look at it");
    }
    BufferedImage now = ImageIO.read(drawn.toFile());
    BufferedImage then = ImageIO.read(golden.toFile());
    assertEquals(then.getWidth() + "x" + then.getHeight(), now.getWidth() + "x" + now.getHeight());
    BufferedImage marked = new BufferedImage(now.getWidth(), now.getHeight(), 1);
    double share = different(now, then, marked);
    if (share > MOST_DIFFERENT) {
      Files.createDirectories(ACTUAL);
      Files.write(ACTUAL.resolve(name), Files.readAllBytes(drawn));
      Path red = ACTUAL.resolve("differs-" + name);
      ImageIO.write(marked, "png", red.toFile());
      fail(String.format("%s: %.2f %% of its dots differ, red in %s", name, 100 * share, red));
    }
  }

  /** As it is in a set: asked for alone, it would carry the cautions of all. */
  private static ComposedSheet sheet(Outcome outcome, String id) {
    Paper paper = Paper.usual(outcome.plan().info().units());
    return SheetSet.of(outcome, paper, List.of("layout", id), Hands.ONE).stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The share of dots that differ to the eye; they are red in {@code marked}, the rest pale. */
  private static double different(BufferedImage a, BufferedImage b, BufferedImage marked) {
    long count = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        int dot = a.getRGB(x, y);
        boolean differs = distance(dot, b.getRGB(x, y)) > SEEN;
        count += differs ? 1 : 0;
        marked.setRGB(x, y, differs ? 0xcc0000 : 0xc0c0c0 | dot & 0xffffff);
      }
    }
    return count / (double) (a.getWidth() * a.getHeight());
  }

  private static int distance(int a, int b) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 0xff) - (b >> shift & 0xff)));
    }
    return most;
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
    assertEquals(0.0075, different(a, b, marked), 1e-12);
    assertEquals(0xcc0000, marked.getRGB(2, 0) & 0xffffff);
    assertEquals(0xffffff, marked.getRGB(3, 0) & 0xffffff);
  }
}
