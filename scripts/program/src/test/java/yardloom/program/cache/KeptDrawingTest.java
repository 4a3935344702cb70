package yardloom.program.cache;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.language.compile.SourceFile;

class KeptDrawingTest {
  @TempDir Path temp;

  private static KeptDrawing drawing(String file) {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("findings.txt", new byte[] {1});
    files.put(file, new byte[] {2, 3});
    return new KeptDrawing(
        "yard", List.of("1 sheet", "é"), true, List.of(new SourceFile("p", "/p", "s")), files);
  }

  @Test
  void writtenAndRead_isTheSame() {
    KeptDrawing read = KeptDrawing.read(drawing("sheets/01-a.svg").bytes()).orElseThrow();
    assertEquals("yard", read.id());
    assertEquals(List.of("1 sheet", "é"), read.told());
    assertTrue(read.errors());
    assertEquals(List.of(new SourceFile("p", "/p", "s")), read.sources());
    assertEquals(List.of("findings.txt", "sheets/01-a.svg"), List.copyOf(read.files().keySet()));
    assertArrayEquals(new byte[] {2, 3}, read.files().get("sheets/01-a.svg"));
  }

  /** Whoever writes into the cache must not reach files outside of the output folder. */
  @ParameterizedTest
  @ValueSource(
      strings = {"../x", "/x", "a/../../x", "a//x", "a\\x", "C:x", ".yardloom", "a/./x", ""})
  void nameThatLeadsElsewhere_isRefused(String name) {
    assertTrue(KeptDrawing.read(drawing(name).bytes()).isEmpty());
  }

  @Test
  void folder_readAndWritten_isTheSameWithoutHiddenFiles() throws IOException {
    Path from = Files.createDirectories(temp.resolve("from/tables")).getParent();
    Files.writeString(from.resolve(".yardloom"), "");
    Files.writeString(from.resolve("findings.txt"), "none");
    Files.writeString(from.resolve("tables/beds.csv"), "a,b");
    KeptDrawing drawing = drawing("x").with(KeptDrawing.filesOf(from).orElseThrow());
    Path to = Files.createDirectories(temp.resolve("to"));
    drawing.write(to);
    assertEquals("none", Files.readString(to.resolve("findings.txt")));
    assertEquals("a,b", Files.readString(to.resolve("tables/beds.csv")));
    assertTrue(Files.notExists(to.resolve(".yardloom")));
  }
}
