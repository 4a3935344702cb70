package yardloom.program.cache;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.language.compile.CompileCache;

class CacheFolderTest {
  @TempDir Path temp;

  @Test
  void bytes_putAndGot_areTheSame() {
    CacheFolder cache = new CacheFolder(temp.resolve("a/b"));
    assertTrue(cache.get("k").isEmpty());
    cache.put("k", new byte[] {1, 2, 3});
    assertArrayEquals(new byte[] {1, 2, 3}, cache.get("k").orElseThrow());
  }

  @Test
  void damagedFile_isForgotten() throws IOException {
    Path folder = temp.resolve("own");
    CacheFolder cache = new CacheFolder(folder);
    cache.put("k", new byte[] {1, 2, 3});
    byte[] all = Files.readAllBytes(folder.resolve("k"));
    all[all.length - 2] ^= 1;
    Files.write(folder.resolve("k"), all);
    assertTrue(cache.get("k").isEmpty());
    Files.write(folder.resolve("k"), new byte[] {4});
    assertTrue(cache.get("k").isEmpty());
  }

  @Test
  void folderThatOthersMayWrite_isNotRead() throws IOException {
    assumeTrue(temp.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path folder = temp.resolve("own");
    CacheFolder cache = new CacheFolder(folder);
    cache.put("k", new byte[] {1});
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
    assertTrue(cache.get("k").isEmpty());
  }

  @Test
  void linkInPlaceOfAFile_isNotFollowed() throws IOException {
    Path folder = temp.resolve("own");
    CacheFolder cache = new CacheFolder(folder);
    cache.put("k", new byte[] {1});
    Path elsewhere = Files.write(temp.resolve("elsewhere"), new byte[] {9});
    Files.createSymbolicLink(folder.resolve("link"), elsewhere);
    assertTrue(cache.get("link").isEmpty());
  }

  @Test
  void moreThanTheMost_oldestGoFirst() throws IOException {
    Path folder = temp.resolve("own");
    CacheFolder cache = new CacheFolder(folder, 5, 1_000);
    for (int i = 0; i <= 5; i++) {
      cache.put("k" + i, new byte[] {1});
      Files.setLastModifiedTime(folder.resolve("k" + i), FileTime.fromMillis(1_000L * (i + 1)));
    }
    cache.put("last", new byte[] {1});
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(5, all.count());
    }
    assertTrue(cache.get("k0").isEmpty());
    assertTrue(cache.get("k1").isEmpty());
    assertTrue(cache.get("last").isPresent());
  }

  @Test
  void moreBytesThanTheMost_oldestGoFirst() throws IOException {
    Path folder = temp.resolve("own");
    // Each file has 32 bytes of check sum: 32 + 8 = 40, so 100 bytes have room for two.
    CacheFolder cache = new CacheFolder(folder, 9, 100);
    for (int i = 0; i < 2; i++) {
      cache.put("k" + i, new byte[8]);
      Files.setLastModifiedTime(folder.resolve("k" + i), FileTime.fromMillis(1_000L * (i + 1)));
    }
    assertTrue(cache.get("k0").isPresent());
    cache.put("k2", new byte[8]);
    assertTrue(cache.get("k0").isEmpty());
    assertTrue(cache.get("k1").isPresent());
    assertTrue(cache.get("k2").isPresent());
  }

  @Test
  void switchedOff_orRunFromClasses_keepsNothing() {
    for (var environment : List.of(Map.of("YARDLOOM_CACHE", "off"), Map.<String, String>of())) {
      assertEquals(CompileCache.OFF, ProcessCache.of(environment).scripts());
      assertEquals(KeptDrawings.OFF, ProcessCache.of(environment).drawings());
    }
    assertEquals(Path.of("/x"), ProcessCache.folder(Map.of("XDG_CACHE_HOME", "/x")));
  }
}
