package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * The packaged jars, started as users start them. Each start is a process of its own, so one test
 * need not wait for another.
 */
@Execution(ExecutionMode.CONCURRENT)
class PackagedIT {
  private static final Path LIB = Path.of(System.getProperty("packaged"), "lib");

  @TempDir private Path dir;

  private record Ended(int code, String text) {}

  private static List<Path> jars() throws IOException {
    try (var files = Files.list(LIB)) {
      return files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
    }
  }

  private Ended start(List<Path> jars, String... args) throws IOException, InterruptedException {
    return run(command(jars, args));
  }

  private static String[] command(List<Path> jars, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // As the start script says for all but many plans at once.
    command.addAll(List.of("-Xmx512m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.add("-cp");
    command.add(
        jars.stream()
            .map(Path::toString)
            .collect(Collectors.joining(System.getProperty("path.separator"))));
    command.add("yardloom.program.cli.Main");
    command.addAll(List.of(args));
    return command.toArray(new String[0]);
  }

  private Ended run(String... command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).directory(dir.toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    Process process = builder.redirectErrorStream(true).start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(2, TimeUnit.MINUTES));
    return new Ended(process.exitValue(), text);
  }

  @Test
  void packaged_plugins_findsAllFour() throws Exception {
    Ended ended = start(jars(), "plugins");
    assertEquals(ExitCode.FINE, ended.code(), ended.text());
    for (String id : new String[] {"materials", "planting", "soil", "sun", "water", "work"}) {
      assertTrue(ended.text().contains(id + " "), ended.text());
    }
  }

  /** Licences as each library's own description on the central repository names them. */
  @Test
  void packaged_jarsOfOthers_areThoseOfTheListOfLicences() throws Exception {
    List<String> listed =
        Files.readAllLines(Path.of("src/assembly/licences.csv")).stream()
            .skip(1)
            .map(line -> line.split(",")[0])
            .filter(jar -> !jar.startsWith("\""))
            .toList();
    List<String> shipped =
        jars().stream()
            .map(j -> j.getFileName().toString().replaceFirst("\\.jar$", ""))
            .filter(j -> !j.startsWith("yardloom-"))
            .toList();
    assertEquals(listed, shipped, "write the licence of a new jar into licences.csv");
  }

  @Test
  void packaged_withoutAPluginJar_saysWhichWordBelongsToIt() throws Exception {
    List<Path> without =
        jars().stream().filter(j -> !j.getFileName().toString().contains("planting")).toList();
    assertEquals(jars().size() - 1, without.size());
    Files.writeString(
        dir.resolve("plan.groovy"),
        "bed('a', rect(1.ft, 1.ft, 4.ft, 8.ft)) {\n  plant 'kale'\n}\n");
    Ended ended = start(without, "draw", "plan.groovy");
    assertEquals(ExitCode.PLAN, ended.code(), ended.text());
    assertTrue(ended.text().contains("plan.groovy:2:3"), ended.text());
    assertTrue(ended.text().contains("`plant`"), ended.text());
    assertTrue(ended.text().contains("planting"), ended.text());
    Files.writeString(
        dir.resolve("bare.groovy"),
        "lot([point(0.ft, 0.ft), point(9.ft, 0.ft), point(9.ft, 9.ft), point(0.ft, 9.ft)])\n"
            + "bed('a', rect(1.ft, 1.ft, 4.ft, 8.ft))\n");
    assertEquals(ExitCode.FINE, start(without, "draw", "bare.groovy").code());
  }

  /** From nothing to a changed, explained, compared and repeated plan, as the README tells it. */
  @Test
  void packaged_designersLoop_goesRound() throws Exception {
    assertEquals(ExitCode.FINE, start(jars(), "new", "oak-street").code());
    Ended why = start(jars(), "explain", "oak-street.groovy", "mulch", "of", "berry", "bed");
    assertEquals(ExitCode.FINE, why.code(), why.text());
    // 24 × 4 ft; raspberries bear 6 in of the 10: 96 × 6 / 324 = 1.778 cu yd.
    assertTrue(why.text().contains("Chips = 1.778\u00a0cu yd"), why.text());
    Ended changed = start(jars(), "compare", "oak-street.groovy", "--new", "bedWidth=3.5ft");
    assertEquals(ExitCode.FINE, changed.code(), changed.text());
    // 16 × 4 and 16 × 3.5 ft.
    assertTrue(
        changed.text().replace('\u00a0', ' ').contains("\"kitchen 1\", 64 sq ft → 56 sq ft"),
        changed.text());
    Files.writeString(dir.resolve("lots.csv"), "lot,bedWidth\na,3ft\nb,4ft\n");
    Ended batch = start(jars(), "batch", "oak-street.groovy", "lots.csv", "--as", "csv");
    assertEquals(ExitCode.FINE, batch.code(), batch.text());
    assertTrue(Files.exists(dir.resolve("yardloom-batch/b/tables/beds.csv")), batch.text());
  }

  /** An editor starts the packaged program and speaks with it over its streams. */
  @Test
  void packaged_editor_isHelpedOverTheStreams() throws Exception {
    Process process = new ProcessBuilder(command(jars(), "editor")).directory(dir.toFile()).start();
    try (EditorTalk editor = new EditorTalk(process.getOutputStream(), process.getInputStream())) {
      assertTrue(editor.begin().at("/capabilities/hoverProvider").asBoolean());
      Path file = dir.resolve("wrong.groovy");
      String text = "plan 'P', units: 'us'\nbde('a', rect(1.ft, 1.ft, 4.ft, 8.ft))\n";
      Files.writeString(file, text);
      editor.open(file.toUri().toString(), text);
      assertEquals(1, editor.remarks(file.toUri().toString()).at("/0/range/start/line").asInt());
      assertTrue(editor.labels(file.toUri().toString(), 1, 3).contains("bed"));
      editor.leave();
      assertTrue(process.waitFor(1, TimeUnit.MINUTES));
      assertEquals(ExitCode.FINE, process.exitValue());
    } finally {
      process.destroyForcibly();
    }
  }

  /** What lies where the start script keeps its class archive is used only if nobody else's. */
  @Test
  void packaged_archiveOfSomebodyElse_isNotUsedAndNothingBreaks() throws Exception {
    Path bin = Files.createDirectories(dir.resolve("home/bin"));
    Path lib = Files.createDirectories(dir.resolve("home/lib"));
    Path script = bin.resolve("yardloom");
    Files.copy(LIB.resolveSibling("bin").resolve("yardloom"), script);
    for (Path jar : jars()) {
      Files.copy(jar, lib.resolve(jar.getFileName()));
    }
    Path notes = Path.of(System.getProperty("java.home"), "release");
    String sum = run("bash", "-c", "cksum < '" + notes + "'").text().split(" ")[0];
    Path archive = dir.resolve("home/classes-" + sum + ".jsa");

    Files.writeString(archive, "noise");
    assertUsed(script, true);
    Files.setPosixFilePermissions(archive, PosixFilePermissions.fromString("rw-rw-rw-"));
    assertUsed(script, false);
    Files.delete(archive);
    Path other = Files.writeString(dir.resolve("other.jsa"), "noise");
    Files.createSymbolicLink(archive, other);
    assertUsed(script, false);
    assertEquals("noise", Files.readString(other));
  }

  private void assertUsed(Path script, boolean used) throws IOException, InterruptedException {
    Ended ended = run("bash", "-x", script.toString(), "--version");
    assertEquals(ExitCode.FINE, ended.code(), ended.text());
    assertTrue(ended.text().contains("yardloom 0."), ended.text());
    assertEquals(used, ended.text().contains("SharedArchiveFile="), ended.text());
  }
}
