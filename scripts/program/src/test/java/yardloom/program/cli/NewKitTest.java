package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.plugin.JarMaker;

/** What `new plugin` and `new regional` write works as it stands. */
class NewKitTest {
  @TempDir private Path dir;

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static void pack(Path classes, Path project, Path jar) throws IOException {
    Files.createDirectories(jar.getParent());
    Path resources = project.resolve("src/main/resources");
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream made = new JarOutputStream(out)) {
      for (Path root : List.of(classes, resources)) {
        for (Path file : files(root, "")) {
          if (Files.isRegularFile(file)) {
            made.putNextEntry(new JarEntry(root.relativize(file).toString().replace('\\', '/')));
            made.write(Files.readAllBytes(file));
          }
        }
      }
    }
  }

  /** Compiled, its own test run, packed, loaded, drawn: beds 20 ft and 55 ft from the well. */
  @Test
  void plugin_compilesPassesItsTestAndDraws() throws Exception {
    Run made = Run.in(dir, "new", "plugin", "oak-county");
    assertEquals(ExitCode.FINE, made.code(), made.err());
    Path project = dir.resolve("oak-county");
    Path classes = dir.resolve("classes");
    JarMaker.compile(files(project, ".java"), classes);
    try (URLClassLoader loader =
        new URLClassLoader(
            new URL[] {classes.toUri().toURL()}, NewKitTest.class.getClassLoader())) {
      Class<?> test = loader.loadClass("oakcounty.OakCountyPluginTest");
      var maker = test.getDeclaredConstructor();
      maker.setAccessible(true);
      Method method = test.getDeclaredMethod("bedNearTheWell_isFound");
      method.setAccessible(true);
      method.invoke(maker.newInstance());
    }
    pack(classes, project, dir.resolve("jars/oak-county.jar"));
    Run run =
        Run.in(
            dir,
            "draw",
            "oak-county/example.groovy",
            "--out",
            "out",
            "--as",
            "csv",
            "--plugins",
            "jars");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    Map<String, String> files = Run.files(dir.resolve("out/example"));
    assertEquals(
        List.of(
            "well,bed,distance_ft,least_ft", "the well,far,55.0,50.0", "the well,near,20.0,50.0"),
        files.get("tables/oak-county-wells.csv").lines().toList());
    assertTrue(
        files
            .get("findings.txt")
            .contains("bed \"near\": lies 20 ft from the well; the rule is 50 ft"),
        files.get("findings.txt"));
  }

  @Test
  void project_isNotWrittenOverAnother_andNamesAreChecked() {
    assertEquals(ExitCode.FINE, Run.in(dir, "new", "plugin", "once").code());
    Run again = Run.in(dir, "new", "plugin", "once");
    assertEquals(ExitCode.USE, again.code());
    assertTrue(again.err().contains("stays as it is"), again.err());
    assertEquals(ExitCode.USE, Run.in(dir, "new", "plugin", "../out").code());
    assertEquals(ExitCode.USE, Run.in(dir, "new", "regional", "Big River").code());
  }

  @Test
  void regionalFile_isTakenByAPlan() throws IOException {
    assertEquals(ExitCode.FINE, Run.in(dir, "new", "regional", "river-flats").code());
    Files.writeString(
        dir.resolve("yard.groovy"), "plan 'R'\ninclude 'river-flats'\nsoilNamed 'valley loam'\n");
    Run run = Run.in(dir, "check", "yard.groovy");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
  }

  /** The sample is what the command writes, so that it stays right. */
  @Test
  void sampleOfACounty_isWhatTheCommandWrites() throws IOException {
    Run.in(dir, "new", "plugin", "county-soil");
    Path sample = Path.of("../samples/county-soil");
    if (Boolean.getBoolean("updateGolden")) {
      for (var file : Run.files(dir.resolve("county-soil")).entrySet()) {
        Path to = sample.resolve(file.getKey());
        Files.createDirectories(to.getParent());
        Files.writeString(to, file.getValue());
      }
    }
    assertEquals(
        new TreeMap<>(Run.files(dir.resolve("county-soil"))), new TreeMap<>(Run.files(sample)));
  }
}
