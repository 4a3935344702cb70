package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.language.compile.ScriptStore;
import yardloom.program.cache.KeptDrawings;

/** A plan drawn twice: what did not change is written again, whatever did change is worked out. */
class UnchangedPlanTest {
  private static final String PLAN =
      """
      plan 'Twice', units: 'us'
      lot([point(0.ft, 0.ft), point(30.ft, 0.ft), point(30.ft, 50.ft), point(0.ft, 50.ft)])
      def wide = param('wide', 4.ft, 'how wide the bed is')
      bed 'kitchen', rect(4.ft, 2.ft, wide, 7.ft), use: 'annual'
      include 'more'
      """;
  private static final String MORE = "bed 'herbs', rect(12.ft, 2.ft, 3.ft, 5.ft), use: 'annual'\n";

  @TempDir Path folder;

  private final Map<String, byte[]> store = new TreeMap<>();
  private int written;
  private final KeptDrawings kept =
      new KeptDrawings(
          new ScriptStore() {
            @Override
            public Optional<byte[]> get(String key) {
              return Optional.ofNullable(store.get(key));
            }

            @Override
            public void put(String key, byte[] bytes) {
              store.put(key, bytes);
              written++;
            }
          },
          "build 1");

  @BeforeEach
  void plan() throws IOException {
    Files.writeString(folder.resolve("twice.groovy"), PLAN);
    Files.writeString(folder.resolve("more.groovy"), MORE);
  }

  private Run draw(KeptDrawings memory, String out, String... more) {
    String[] all = new String[more.length + 4];
    System.arraycopy(new String[] {"draw", "twice.groovy", "--out", out}, 0, all, 0, 4);
    System.arraycopy(more, 0, all, 4, more.length);
    return Run.in(folder, memory, all);
  }

  private String beds(String out) throws IOException {
    return Files.readString(folder.resolve(out + "/twice/tables/beds.csv"));
  }

  @Test
  void nothingChanged_sameFilesAndWords() {
    Run first = draw(kept, "a");
    Run again = draw(kept, "b");
    Run without = draw(KeptDrawings.OFF, "c");
    assertEquals(1, written);
    assertEquals(0, first.code(), first.err());
    assertEquals(Run.files(folder.resolve("a")), Run.files(folder.resolve("b")));
    assertEquals(Run.files(folder.resolve("c")), Run.files(folder.resolve("b")));
    assertEquals(first.out().replace("a/twice", "b/twice"), again.out());
    assertEquals(without.out().replace("c/twice", "b/twice"), again.out());
    assertEquals(first.code(), again.code());
  }

  /** Proof that nothing is worked out again: what lies under the plan's key is what comes out. */
  @Test
  void nothingChanged_isTakenFromTheStore() throws IOException {
    draw(kept, "a");
    String first = store.keySet().iterator().next();
    byte[] narrow = store.get(first);
    store.clear();
    // Kept with a wider bed, and put in the place of the narrow one.
    draw(kept, "wide", "--set", "wide=5ft");
    assertFalse(store.containsKey(first));
    store.put(first, store.values().iterator().next());
    draw(kept, "b");
    assertEquals(beds("wide"), beds("b"));
    store.put(first, narrow);
    draw(kept, "b");
    assertEquals(beds("a"), beds("b"));
    assertEquals(2, written);
  }

  /** 4 × 7 = 28 sq ft and 3 × 5 = 15 sq ft; then 3 × 6 = 18 sq ft. */
  @Test
  void changedInclude_isSeen() throws IOException {
    draw(kept, "a");
    assertTrue(beds("a").contains("28") && beds("a").contains("15"), beds("a"));
    Files.writeString(folder.resolve("more.groovy"), MORE.replace("5.ft", "6.ft"));
    draw(kept, "a");
    assertEquals(2, written);
    assertTrue(beds("a").contains("28") && beds("a").contains("18"), beds("a"));
  }

  @Test
  void changedScriptOptionParameterOrBuild_isDrawnAnew() throws IOException {
    draw(kept, "a");
    draw(kept, "a", "--as", "csv");
    draw(kept, "a", "--sheet", "a3");
    draw(kept, "a", "--sheets", "cover");
    draw(kept, "a", "--set", "wide=6ft");
    draw(kept, "a", "--without", "soil");
    assertEquals(6, written);
    draw(new KeptDrawings(kept.store(), "build 2"), "a");
    assertEquals(7, written);
    Files.writeString(folder.resolve("twice.groovy"), PLAN + "\n");
    draw(kept, "a");
    assertEquals(8, written);
  }

  @Test
  void includeThatBecameALinkElsewhere_isSeen() throws IOException {
    draw(kept, "a");
    Files.writeString(folder.resolve("other.groovy"), MORE.replace("3.ft", "9.ft"));
    Files.move(folder.resolve("more.groovy"), folder.resolve("old.groovy"));
    Files.createSymbolicLink(folder.resolve("more.groovy"), folder.resolve("other.groovy"));
    draw(kept, "b");
    assertNotEquals(beds("a"), beds("b"));
    // 9 × 5 = 45 sq ft.
    assertTrue(beds("b").contains("45"), beds("b"));
  }

  @Test
  void damagedStore_isDrawnAnew() throws IOException {
    draw(kept, "a");
    String key = store.keySet().iterator().next();
    byte[] half = java.util.Arrays.copyOf(store.get(key), store.get(key).length / 2);
    for (byte[] bad : new byte[][] {{}, {1, 2, 3}, half}) {
      store.put(key, bad);
      assertEquals(0, draw(kept, "b").code());
      assertEquals(Run.files(folder.resolve("a")), Run.files(folder.resolve("b")));
    }
    assertEquals(4, written);
  }

  @Test
  void wrongPlan_isNotKeptAndOldOutputStays() throws IOException {
    draw(kept, "a");
    Map<String, String> before = Run.files(folder.resolve("a"));
    Files.writeString(folder.resolve("more.groovy"), "nonsense 'x'\n");
    assertEquals(ExitCode.PLAN, draw(kept, "a").code());
    assertEquals(1, written);
    assertEquals(before, Run.files(folder.resolve("a")));
  }
}
