package yardloom.program.cache;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import yardloom.language.compile.CompileCache;
import yardloom.language.compile.Sha256;

/**
 * What this process keeps for the next: on for the packaged program, unless switched off.
 *
 * @param scripts compiled plans
 * @param drawings plans as they were drawn
 */
public record ProcessCache(CompileCache scripts, KeptDrawings drawings) {
  /** Set to {@code off}, nothing is kept. */
  public static final String SWITCH = "YARDLOOM_CACHE";

  private static final ProcessCache OFF = new ProcessCache(CompileCache.OFF, KeptDrawings.OFF);
  private static final int MOST_DRAWINGS = 40;
  private static final long MOST_DRAWN_BYTES = 128 << 20;

  /** Found once, since the program's jars are read for it. */
  private static ProcessCache present;

  /** The cache of this process. */
  public static synchronized ProcessCache ofThisProcess() {
    if (present == null) {
      present = of(System.getenv());
    }
    return present;
  }

  /** The cache for these surroundings; off where the program does not run from its own jars. */
  public static ProcessCache of(Map<String, String> environment) {
    if ("off".equalsIgnoreCase(environment.getOrDefault(SWITCH, ""))) {
      return OFF;
    }
    try {
      CodeSource source = ProcessCache.class.getProtectionDomain().getCodeSource();
      Path jar = Path.of(source.getLocation().toURI());
      if (!Files.isRegularFile(jar)) {
        return OFF;
      }
      Path own = folder(environment).resolve("yardloom");
      String stamp = stamp(jar.getParent());
      return new ProcessCache(
          new CompileCache(new CacheFolder(own.resolve("scripts")), stamp),
          new KeptDrawings(
              new CacheFolder(own.resolve("drawings"), MOST_DRAWINGS, MOST_DRAWN_BYTES), stamp));
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return OFF;
    }
  }

  /** Where the system keeps what can be made again. */
  static Path folder(Map<String, String> environment) {
    String said = environment.getOrDefault("XDG_CACHE_HOME", "");
    Path home = Path.of(System.getProperty("user.home"));
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    if (!said.isBlank()) {
      return Path.of(said);
    } else if (system.startsWith("windows") && environment.containsKey("LOCALAPPDATA")) {
      return Path.of(environment.get("LOCALAPPDATA"));
    } else if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Caches");
    }
    return home.resolve(".cache");
  }

  /** Names, sizes and contents of the program's own jars, and the Java that runs them. */
  private static String stamp(Path lib) throws IOException {
    try (Stream<Path> all = Files.list(lib)) {
      MessageDigest digest = Sha256.begin();
      List<Path> jars = all.filter(p -> p.toString().endsWith(".jar")).sorted().toList();
      for (Path jar : jars) {
        String name = jar.getFileName().toString();
        digest.update((name + " " + Files.size(jar) + "\n").getBytes(StandardCharsets.UTF_8));
        if (name.startsWith("yardloom")) {
          digest.update(Files.readAllBytes(jar));
        }
      }
      digest.update(System.getProperty("java.version").getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest());
    }
  }
}
