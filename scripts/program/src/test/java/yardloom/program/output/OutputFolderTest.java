package yardloom.program.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

class OutputFolderTest {
  @TempDir private Path dir;

  private List<String> names(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void write_newFolder_appearsWithItsFilesAndNothingElse() throws IOException {
    OutputFolder.write(dir.resolve("a/yard"), f -> Files.writeString(f.resolve("x.txt"), "1"));
    assertEquals(List.of("yard"), names(dir.resolve("a")));
    assertEquals(List.of(".yardloom", "x.txt"), names(dir.resolve("a/yard")));
  }

  @Test
  void write_again_replacesWithoutLeftovers() throws IOException {
    OutputFolder.write(dir.resolve("yard"), f -> Files.writeString(f.resolve("old.txt"), "1"));
    OutputFolder.write(dir.resolve("yard"), f -> Files.writeString(f.resolve("new.txt"), "2"));
    assertEquals(List.of(".yardloom", "new.txt"), names(dir.resolve("yard")));
    assertEquals(List.of("yard"), names(dir));
  }

  @Test
  void write_failingHalfway_keepsTheOldFolder() throws IOException {
    OutputFolder.write(dir.resolve("yard"), f -> Files.writeString(f.resolve("old.txt"), "1"));
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                OutputFolder.write(
                    dir.resolve("yard"),
                    f -> {
                      Files.writeString(f.resolve("half.txt"), "2");
                      throw new IOException("disk full");
                    }));
    assertEquals(ProblemCode.FILE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("disk full"));
    assertEquals(List.of(".yardloom", "old.txt"), names(dir.resolve("yard")));
    assertEquals(List.of("yard"), names(dir));
  }

  @Test
  void write_overForeignFiles_isRefused() throws IOException {
    Path mine = Files.createDirectories(dir.resolve("yard"));
    Files.writeString(mine.resolve("letter.txt"), "dear");
    assertThrows(PlanException.class, () -> OutputFolder.write(mine, f -> {}));
    assertTrue(Files.exists(mine.resolve("letter.txt")));
  }

  @Test
  void write_whereAFileStands_isRefused() throws IOException {
    Path file = Files.writeString(dir.resolve("yard"), "x");
    assertThrows(PlanException.class, () -> OutputFolder.write(file, f -> {}));
    assertFalse(Files.isDirectory(file));
  }

  /**
   * Two processes write one folder over and over: each ends well every time, the folder is always
   * of one of them alone, and neither leaves anything beside it.
   */
  @Test
  void twoProcesses_onOneFolder_neverFailAndLeaveNothing() throws Exception {
    Path target = dir.resolve("out/yard");
    List<Process> both = new ArrayList<>();
    for (String mark : List.of("left", "right")) {
      both.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Writer.class.getName(),
                  target.toString(),
                  mark)
              .redirectErrorStream(true)
              .start());
    }
    for (Process each : both) {
      String said = new String(each.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, each.waitFor(), said);
    }
    assertEquals(List.of("yard"), names(dir.resolve("out")));
    String mark = Files.readString(target.resolve("a.txt"));
    assertTrue(List.of("left", "right").contains(mark), mark);
    assertEquals(mark, Files.readString(target.resolve("b.txt")));
    assertEquals(List.of(".yardloom", "a.txt", "b.txt", mark), names(target));
  }

  /** One of the two: the folder to write and the mark in all its files. */
  static final class Writer {
    private Writer() {}

    public static void main(String[] args) {
      for (int i = 0; i < 300; i++) {
        OutputFolder.write(
            Path.of(args[0]),
            f -> {
              for (String name : List.of("a.txt", "b.txt", args[1])) {
                Files.writeString(f.resolve(name), args[1]);
              }
            });
      }
    }
  }

  /** The new folder cannot take its place: the old one is back where it was. */
  @Test
  void write_whoseFolderIsGoneAtTheEnd_keepsTheOldFolder() throws IOException {
    Path target = dir.resolve("yard");
    OutputFolder.write(target, f -> Files.writeString(f.resolve("old.txt"), "1"));
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                OutputFolder.write(
                    target,
                    f -> {
                      Files.delete(f.resolve(".yardloom"));
                      Files.delete(f);
                    }));
    assertTrue(e.getMessage().contains("; nothing was changed"), e.getMessage());
    assertEquals(List.of(".yardloom", "old.txt"), names(target));
    assertEquals(List.of("yard"), names(dir));
  }

  /** What a killed process left goes an hour later; what others made or are writing stays. */
  @Test
  void unfinishedFolders_ofKilledProcesses_areSweptAway() throws IOException {
    Path old = unfinished(".plan-17", true, 3);
    Path writing = unfinished(".plan-18", true, 0);
    Path foreign = unfinished(".plan-19", false, 3);
    Path other = unfinished(".plan-b-20", true, 3);
    OutputFolder.write(dir.resolve("plan"), folder -> Files.writeString(folder.resolve("a"), "a"));
    assertFalse(Files.exists(old));
    assertTrue(Files.exists(writing) && Files.exists(foreign) && Files.exists(other));
    assertTrue(Files.exists(dir.resolve("plan/a")));
  }

  private Path unfinished(String name, boolean isOurs, int hours) throws IOException {
    Path folder = Files.createDirectory(dir.resolve(name));
    Path file = Files.createFile(folder.resolve(isOurs ? ".yardloom" : "notes.txt"));
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofHours(hours))));
    return folder;
  }
}
