package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A picture that was drawn now against one that somebody has looked at. */
final class PictureDifference {
  private static final Path ACTUAL = Path.of("target", "pictures");

  /** Of 255: an edge that another version smooths otherwise differs by less. */
  private static final int SEEN = 48;

  private PictureDifference() {}

  /**
   * Fails if more dots differ than that; with {@code -DupdateGolden=true} it keeps what is drawn.
   */
  static void check(Path folder, String name, Path drawn, double most) throws IOException {
    Path golden = folder.resolve(name);
    if (Boolean.getBoolean("updateGolden")) {
      Files.createDirectories(folder);
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
    double share = share(now, then, marked);
    if (share > most) {
      Files.createDirectories(ACTUAL);
      Files.write(ACTUAL.resolve(name), Files.readAllBytes(drawn));
      Path red = ACTUAL.resolve("differs-" + name);
      ImageIO.write(marked, "png", red.toFile());
      fail(String.format("%s: %.2f %% of its dots differ, red in %s", name, 100 * share, red));
    }
  }

  /** The share of dots that differ to the eye; they are red in {@code marked}, the rest pale. */
  static double share(BufferedImage a, BufferedImage b, BufferedImage marked) {
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
}
