package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sample plans, the plan of rare words and hostile scripts, each made wrong by chance, as scripts
 * and as JSON. Whatever comes of it, the program says where and what, or does it; it never breaks,
 * writes half a file or runs on. {@code -Dfuzz.seed} and {@code -Dfuzz.tries} repeat a run.
 */
@Tag("heavy")
class PlanFuzzTest {
  private static final Pattern PLACED =
      Pattern.compile("(?s)\\S.*?\\.(groovy|json|csv|txt|geojson)( \\([^)]*\\))?(:\\d+){0,2}: .*");

  /** Reading may take 30 s of processor time, and four times as long by the clock. */
  private static final long LONGEST_SECONDS = 150;

  @TempDir Path folder;

  @Test
  void plan_madeWrongByChance_isDoneOrRefusedWithItsPlace() throws IOException {
    long seed = Long.getLong("fuzz.seed", 4711);
    int tries = Integer.getInteger("fuzz.tries", 60);
    Map<String, String> plans = plans();
    List<String> names = List.copyOf(plans.keySet());
    SplittableRandom random = new SplittableRandom(seed);
    Mutations mutations = new Mutations(random, List.copyOf(plans.values()));
    List<String> failures = new ArrayList<>();
    int[] codes = new int[5];
    for (int i = 0; i < tries; i++) {
      String name = names.get(random.nextInt(names.size()));
      boolean json = name.endsWith(".json");
      String wrong = mutations.of(plans.get(name), json);
      String file = "fuzz-" + i + (json ? ".plan.json" : ".groovy");
      Files.writeString(folder.resolve(file), wrong);
      // Few are drawn: that is a hundred times the work of reading one.
      boolean draw = random.nextInt(12) == 0;
      long start = System.nanoTime();
      Run run =
          draw
              ? Run.in(folder, "draw", file, "--as", "csv,json", "--out", "out")
              : Run.in(folder, "check", file);
      long seconds = (System.nanoTime() - start) / 1_000_000_000;
      codes[run.code()]++;
      String fault = fault(run, seconds, folder.resolve("out/fuzz-" + i), draw);
      if (!fault.isEmpty()) {
        failures.add(i + " of " + name + " (" + seconds + " s): " + fault);
      }
      Files.delete(folder.resolve(file));
    }
    assertEquals(List.of(), failures, "with -Dfuzz.seed=" + seed);
    assertTrue(codes[2] > 0 && codes[0] + codes[1] > 0, "all alike: no fair sample");
  }

  private static String fault(Run run, long seconds, Path out, boolean draw) throws IOException {
    if (run.code() > 2) {
      return "exit " + run.code() + ": " + run.err();
    }
    if ((run.out() + run.err()).contains("\tat ")) {
      return "a stack trace: " + run.err();
    }
    if (seconds > LONGEST_SECONDS) {
      return "runs on";
    }
    if (run.code() == ExitCode.PLAN) {
      List<String> lines = run.err().lines().toList();
      if (!PLACED.matcher(lines.get(0)).matches()) {
        return "no place: " + run.err();
      }
      return Files.exists(out) ? "files of a refused plan" : "";
    }
    return draw && !Files.exists(out.resolve("results.json")) ? "half a folder" : "";
  }

  /** The plans by name, with what they include and read beside the ones that are made of them. */
  private Map<String, String> plans() throws IOException {
    copy(Samples.FOLDER);
    copy(Path.of("src/test/resources/yardloom/program/appendix"));
    Map<String, String> plans = new TreeMap<>();
    List<Path> scripts;
    try (Stream<Path> files = Files.list(folder)) {
      scripts = files.filter(f -> f.toString().endsWith(".groovy")).sorted().toList();
    }
    for (Path script : scripts) {
      String name = script.getFileName().toString();
      plans.put(name, Files.readString(script));
      assertEquals(0, Run.in(folder, "convert", name).code());
      String form = name.replace(".groovy", ".plan.json");
      plans.put(form, Files.readString(folder.resolve(form)));
    }
    try (Stream<Path> files =
        Files.list(Path.of("../language/src/test/resources/yardloom/language/attacks"))) {
      for (Path attack : files.filter(f -> f.toString().endsWith(".groovy")).sorted().toList()) {
        plans.put(attack.getFileName().toString(), Files.readString(attack));
      }
    }
    return plans;
  }

  private void copy(Path from) throws IOException {
    try (Stream<Path> files = Files.walk(from, FileVisitOption.FOLLOW_LINKS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }
}
