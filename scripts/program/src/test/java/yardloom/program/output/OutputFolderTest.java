package yardloom.program.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
