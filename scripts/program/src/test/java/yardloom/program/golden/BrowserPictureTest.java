package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.Outcome;
import yardloom.program.cli.Samples;
import yardloom.program.export.PngWriter;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/**
 * Sheets as headless Chromium shows them, dot by dot: against pictures that somebody has looked at,
 * and against what our own PNG writer paints, a second reader of the same SVG. Skipped where there
 * is no browser; with {@code -DupdateGolden=true} the pictures are written instead.
 */
class BrowserPictureTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "pictures", "browser");
  private static final int DPI = 36;
  private static final double MM_PER_INCH = 25.4;

  /** Another version of the browser smooths edges otherwise: some letters, no line, no bed. */
  private static final double MOST_DIFFERENT = 0.002;

  /** Two painters smooth every edge a little otherwise, so fields of this size are compared. */
  private static final int FIELD = 6;

  /** Of 255, between the means of two fields: a line more in a field of six is 40. */
  private static final int FIELD_DIFFERS = 24;

  private static final double MOST_FIELDS = 0.002;

  private record Shot(String name, ComposedSheet sheet, int width, int height) {
    Path in(Path folder, String ending) {
      return folder.resolve(name + ending);
    }
  }

  @TempDir private static Path dir;

  private static final List<Shot> SHOTS = new ArrayList<>();

  @BeforeAll
  static void takePictures() throws IOException, InterruptedException {
    String modules = String.valueOf(System.getenv("YARDLOOM_BROWSER_MODULES"));
    assumeTrue(
        Files.isDirectory(Path.of(modules, "puppeteer-core"))
            && Files.exists(Path.of("/usr/bin/chromium")),
        "skipped: needs chromium, and puppeteer-core in the folder that YARDLOOM_BROWSER_MODULES"
            + " names");
    for (String[] wanted :
        new String[][] {
          {"urbana-yard", "layout"},
          {"seattle-corner", "planting"},
          {"san-francisco-slope", "grading"},
          {"desert-basins", "cover"}
        }) {
      SHOTS.add(shot(wanted[0], wanted[1]));
    }
    List<String> command = new ArrayList<>(List.of("node", script()));
    for (Shot shot : SHOTS) {
      Files.writeString(shot.in(dir, ".html"), page(shot.sheet()));
      command.add(String.valueOf(shot.width()));
      command.add(String.valueOf(shot.height()));
      command.add(shot.in(dir, ".html").toString());
      command.add(shot.in(dir, ".png").toString());
    }
    Path said = dir.resolve("said.log");
    ProcessBuilder run = new ProcessBuilder(command);
    run.environment().put("NODE_PATH", modules);
    Process process = run.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), "the browser did not end");
    assertEquals("", Files.readString(said).strip());
  }

  private static String script() {
    return Path.of("src/test/browser/pictures.cjs").toAbsolutePath().toString();
  }

  private static Shot shot(String demo, String id) {
    Outcome outcome = Samples.outcome(demo);
    Paper paper = Paper.usual(outcome.plan().info().units());
    ComposedSheet sheet =
        SheetSet.of(outcome, paper, List.of("layout", id), Hands.ONE).stream()
            .filter(s -> s.id().equals(id))
            .findFirst()
            .orElseThrow();
    return new Shot(
        demo + "-" + id, sheet, dots(sheet.paper().widthMm()), dots(sheet.paper().heightMm()));
  }

  private static int dots(double mm) {
    return (int) Math.round(mm / MM_PER_INCH * DPI);
  }

  /** The sheet in the font of the program, whatever the machine has. */
  private static String page(ComposedSheet sheet) throws IOException {
    return "<!doctype html><meta charset=\"utf-8\"><style>"
        + face("NotoSans-Regular.ttf", 400)
        + face("NotoSans-Bold.ttf", 700)
        + "body{margin:0}svg{display:block;width:100vw;height:100vh}</style>"
        + SvgSheet.of(sheet).element();
  }

  private static String face(String file, int weight) throws IOException {
    try (var in = PngWriter.class.getResourceAsStream("fonts/" + file)) {
      return "@font-face{font-family:\"Noto Sans\";font-weight:"
          + weight
          + ";src:url(data:font/ttf;base64,"
          + Base64.getEncoder().encodeToString(in.readAllBytes())
          + ")}";
    }
  }

  @Test
  void sheets_inABrowser_lookAsTheyDid() throws IOException {
    for (Shot shot : SHOTS) {
      PictureDifference.check(FOLDER, shot.name() + ".png", shot.in(dir, ".png"), MOST_DIFFERENT);
    }
  }

  /** What the browser shows is what the PNG has. */
  @Test
  void sheets_inABrowser_areThoseOfThePng() throws IOException {
    for (Shot shot : SHOTS) {
      Path ours = dir.resolve(shot.name() + "-ours.png");
      PngWriter.write(SvgSheet.of(shot.sheet()), DPI, ours);
      BufferedImage a = ImageIO.read(ours.toFile());
      BufferedImage b = ImageIO.read(shot.in(dir, ".png").toFile());
      assertEquals(a.getWidth(), b.getWidth(), 1);
      assertEquals(a.getHeight(), b.getHeight(), 1);
      double share = differentFields(a, b);
      assertTrue(share <= MOST_FIELDS, shot.name() + ": " + share);
    }
  }

  /** A line that one has and the other has not is seen: the check above can fail. */
  @Test
  void aLineMore_isADifference() throws IOException {
    BufferedImage a = ImageIO.read(SHOTS.get(0).in(dir, ".png").toFile());
    BufferedImage b = ImageIO.read(SHOTS.get(0).in(dir, ".png").toFile());
    for (int x = 100; x < b.getWidth() - 100; x++) {
      b.setRGB(x, 7, 0);
      b.setRGB(x, 8, 0);
    }
    assertTrue(differentFields(a, b) > MOST_FIELDS, String.valueOf(differentFields(a, b)));
  }

  private static double differentFields(BufferedImage a, BufferedImage b) {
    int across = Math.min(a.getWidth(), b.getWidth()) / FIELD;
    int down = Math.min(a.getHeight(), b.getHeight()) / FIELD;
    int different = 0;
    for (int x = 0; x < across; x++) {
      for (int y = 0; y < down; y++) {
        different += Math.abs(mean(a, x, y) - mean(b, x, y)) > FIELD_DIFFERS ? 1 : 0;
      }
    }
    return different / (double) (across * down);
  }

  private static double mean(BufferedImage picture, int fieldX, int fieldY) {
    int sum = 0;
    for (int x = fieldX * FIELD; x < (fieldX + 1) * FIELD; x++) {
      for (int y = fieldY * FIELD; y < (fieldY + 1) * FIELD; y++) {
        int dot = picture.getRGB(x, y);
        sum += (dot & 0xff) + (dot >> 8 & 0xff) + (dot >> 16 & 0xff);
      }
    }
    return sum / 3.0 / FIELD / FIELD;
  }
}
