package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.cache.CacheFolder;
import yardloom.program.cache.KeptDrawings;

/**
 * Folders of the cache and of the output that somebody else left behind, or uses at the same time:
 * a bad cache costs time and nothing else, a bad output folder is refused and stays as it was.
 */
class HostileStateTest {
  private static final String PLAN =
      """
      plan 'Hostile', units: 'metric'
      lot([point(0.m, 0.m), point(11.m, 0.m), point(11.m, 17.m), point(0.m, 17.m)])
      bed 'kitchen', rect(2.m, 3.m, 1.2.m, 5.m), use: 'annual'
      """;

  @TempDir Path folder;
  private Path cache;
  private Map<String, String> right;

  @BeforeEach
  void plan() throws IOException {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.writeString(folder.resolve("hostile.groovy"), PLAN);
    cache = folder.resolve("cache/drawings");
    assertEquals(ExitCode.FINE, Run.in(folder, args("right")).code());
    right = Run.files(folder.resolve("right"));
  }

  private static String[] args(String out) {
    return new String[] {"draw", "hostile.groovy", "--out", out, "--as", "csv"};
  }

  private Run draw(String out) {
    return Run.in(folder, new KeptDrawings(new CacheFolder(cache), "build"), args(out));
  }

  private void assertDrawn(String out) {
    Run run = draw(out);
    assertEquals(ExitCode.FINE, run.code(), run.err());
    assertEquals("", run.err());
    assertEquals(right, Run.files(folder.resolve(out)));
  }

  private static List<Path> in(Path folder) throws IOException {
    try (var all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  @Test
  void folderOfOnesOwn_keepsOneDrawing() throws IOException {
    assertDrawn("a");
    assertEquals(1, in(cache).size());
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)));
    assertDrawn("b");
    assertEquals(1, in(cache).size());
  }

  /** What the link leads to keeps its permissions and gets no file. */
  @Test
  void linkInPlaceOfTheFolder_isNotFollowed() throws IOException {
    Path pages = Files.createDirectory(folder.resolve("pages"));
    Files.setPosixFilePermissions(pages, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.createDirectories(cache.getParent());
    Files.createSymbolicLink(cache, pages);
    assertDrawn("a");
    assertDrawn("b");
    assertEquals(List.of(), in(pages));
    assertEquals("rwxr-xr-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(pages)));
    assertTrue(Files.isSymbolicLink(cache));
  }

  /** A link to nowhere, a file where the folder should be, or a file where its parent should be. */
  @Test
  void noFolderToBeMade_drawsAllTheSame() throws IOException {
    Files.createDirectories(cache.getParent());
    Files.createSymbolicLink(cache, folder.resolve("nowhere"));
    assertDrawn("a");
    assertFalse(Files.exists(folder.resolve("nowhere")));
    Files.delete(cache);
    Files.writeString(cache, "a file");
    assertDrawn("a");
    assertEquals("a file", Files.readString(cache));
    Files.delete(cache);
    Files.delete(cache.getParent());
    Files.writeString(cache.getParent(), "another file");
    assertDrawn("a");
    assertEquals("another file", Files.readString(cache.getParent()));
  }

  /** What others put there is not trusted later only because they no longer can. */
  @Test
  void folderThatOthersCouldWrite_isNeitherUsedNorTakenOver() throws IOException {
    assertDrawn("a");
    byte[] kept = Files.readAllBytes(in(cache).get(0));
    Files.setPosixFilePermissions(cache, PosixFilePermissions.fromString("rwxrwxrwx"));
    Files.writeString(folder.resolve("hostile.groovy"), PLAN.replace("5.m", "6.m"));
    assertEquals(ExitCode.FINE, draw("b").code());
    assertEquals(1, in(cache).size());
    assertEquals("rwxrwxrwx", PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)));
    assertEquals(kept.length, Files.size(in(cache).get(0)));
  }

  /** Noise, nothing, a folder and a link under the very name of the kept drawing. */
  @Test
  void garbageInPlaceOfTheDrawing_isDrawnAnew() throws IOException {
    assertDrawn("a");
    Path kept = in(cache).get(0);
    byte[] noise = new byte[(int) Files.size(kept)];
    new java.util.Random(7).nextBytes(noise);
    for (byte[] bad : new byte[][] {noise, {}, new byte[32], new byte[33]}) {
      Files.write(kept, bad);
      assertDrawn("b");
    }
    Path elsewhere = folder.resolve("elsewhere");
    Files.write(elsewhere, noise);
    Files.delete(kept);
    Files.createSymbolicLink(kept, elsewhere);
    assertDrawn("b");
    assertEquals(noise.length, Files.size(elsewhere));
    assertFalse(Files.isSymbolicLink(kept), "replaced, not written through");
    Files.delete(kept);
    Files.createDirectory(kept);
    assertDrawn("b");
    assertTrue(Files.isDirectory(kept, LinkOption.NOFOLLOW_LINKS));
    assertEquals(List.of(kept), in(cache));
  }

  @Test
  void folderThatCannotBeWritten_drawsAllTheSame() throws IOException {
    assertDrawn("a");
    Path kept = in(cache).get(0);
    Files.setPosixFilePermissions(cache, PosixFilePermissions.fromString("r-x------"));
    assumeFalse(Files.isWritable(cache), "the superuser may write everywhere");
    Files.writeString(folder.resolve("hostile.groovy"), PLAN + "\n");
    assertDrawn("b");
    assertEquals(List.of(kept), in(cache));
    Files.setPosixFilePermissions(cache, PosixFilePermissions.fromString("rwx------"));
  }

  /** Only the superuser can give files away, so that elsewhere this is not tried. */
  @Test
  void fileOfAnotherUser_isNotRead() throws IOException {
    assertDrawn("a");
    Path kept = in(cache).get(0);
    byte[] before = Files.readAllBytes(kept);
    try {
      Files.setOwner(
          kept,
          folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("nobody"));
    } catch (IOException e) {
      assumeTrue(false, "no right to give a file away");
    }
    assertTrue(new CacheFolder(cache).get(kept.getFileName().toString()).isEmpty());
    assertDrawn("b");
    // Drawn anew and kept again, now as a file of one's own.
    assertEquals(before.length, Files.size(kept));
    assertTrue(new CacheFolder(cache).get(kept.getFileName().toString()).isPresent());
  }

  @Test
  void outputThatCannotBeWritten_isRefusedAndStays() throws IOException {
    assertDrawn("out");
    Path out = folder.resolve("out");
    Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(out), "the superuser may write everywhere");
    for (int i = 0; i < 2; i++) {
      Run run = draw("out");
      assertEquals(ExitCode.PLAN, run.code(), run.err());
      assertTrue(run.err().contains("nothing was changed"), run.err());
      assertTrue(run.err().contains("there is no permission to write"), run.err());
      assertEquals(right, Run.files(out));
      // First out of the cache, then drawn anew: refused in the same words.
      Files.writeString(folder.resolve("hostile.groovy"), PLAN + "\n");
    }
    Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("rwx------"));
  }

  /** A file, and a link to nowhere, where the folder of the plan should be. */
  @Test
  void outputThatIsNoFolder_isRefusedAndStays() throws IOException {
    for (String out : List.of("file", "link")) {
      Path place = Files.createDirectory(folder.resolve(out)).resolve("hostile");
      if (out.equals("file")) {
        Files.writeString(place, "a letter");
      } else {
        Files.createSymbolicLink(place, folder.resolve("nowhere"));
      }
      Run run = draw(out);
      assertEquals(ExitCode.PLAN, run.code(), run.err());
      assertEquals(List.of(place), in(folder.resolve(out)));
      assertFalse(Files.exists(folder.resolve("nowhere")));
    }
    assertEquals("a letter", Files.readString(folder.resolve("file/hostile")));
  }

  /** A link to the drawings of another plan is replaced; what it leads to stays. */
  @Test
  void outputThatIsALink_isReplacedByAFolder() throws IOException {
    Path other = folder.resolve("right/hostile");
    Path place = Files.createDirectory(folder.resolve("out")).resolve("hostile");
    Files.createSymbolicLink(place, other);
    assertDrawn("out");
    assertFalse(Files.isSymbolicLink(place));
    assertEquals(right, Run.files(folder.resolve("right")));
    assertEquals(List.of(place), in(folder.resolve("out")));
  }

  /** Four draws of one plan to one folder with one cache, begun at one moment. */
  @Test
  void drawsAtOnce_allEndWellAndLeaveOneWholeFolder() throws Exception {
    CyclicBarrier begin = new CyclicBarrier(4);
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<Run>> runs = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Callable<Run> one =
            () -> {
              begin.await();
              return draw("out");
            };
        runs.add(threads.submit(one));
      }
      TreeSet<String> said = new TreeSet<>();
      for (Future<Run> run : runs) {
        assertEquals(ExitCode.FINE, run.get().code(), run.get().err());
        said.add(run.get().out());
      }
      assertEquals(1, said.size(), said::toString);
    } finally {
      threads.shutdownNow();
    }
    assertEquals(right, Run.files(folder.resolve("out")));
    assertEquals(1, in(folder.resolve("out")).size());
    assertEquals(1, in(cache).size());
  }
}
