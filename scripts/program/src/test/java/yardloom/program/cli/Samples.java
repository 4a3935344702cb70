package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Supplier;
import java.util.stream.Stream;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.OutputFolder;
import yardloom.program.output.OutputKind;
import yardloom.program.output.PlanWriter;

/** The plans that the README draws, each drawn once for all tests that only look at it. */
public final class Samples {
  /** As seen from the module: what is drawn from here names no folder of this machine. */
  static final Path HERE = Path.of("..", "samples");

  static final Path FOLDER = HERE.toAbsolutePath().normalize();

  private static final Map<String, Map<String, String>> DRAWN = new HashMap<>();
  private static final Map<String, Outcome> OUTCOMES = new HashMap<>();

  private Samples() {}

  /** The names of all sample plans, sorted. */
  public static List<String> plans() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".groovy"))
          .map(f -> f.replace(".groovy", ""))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a sample comes to, worked out once for all tests that do not write files. */
  public static synchronized Outcome outcome(String plan) {
    return OUTCOMES.computeIfAbsent(
        plan,
        p ->
            elsewhere(
                () -> {
                  Toolkit toolkit = Toolkit.load();
                  return toolkit.study(toolkit.read(HERE.resolve(p + ".groovy"), Map.of()));
                }));
  }

  /** The same of a plan elsewhere. */
  public static synchronized Map<String, String> drawnFrom(Path script) {
    return DRAWN.computeIfAbsent(
        script.toString(),
        s -> draw(script.getParent(), script.getFileName().toString().replace(".groovy", "")));
  }

  /**
   * Every file that {@code draw} makes of a sample, by path below the plan's folder. Written from
   * the outcome that other tests read too, on a Turkish machine in Nepal; DemoPlanTest holds what
   * the command itself writes against it.
   */
  public static synchronized Map<String, String> drawn(String plan) {
    return DRAWN.computeIfAbsent(
        plan,
        p -> {
          Outcome outcome = outcome(p);
          PlanWriter writer =
              elsewhere(
                  () ->
                      new PlanWriter(
                          outcome,
                          Papers.of(null, outcome.plan()),
                          EnumSet.of(OutputKind.SVG, OutputKind.CSV, OutputKind.JSON)));
          return elsewhere(
              () -> inFolder(out -> OutputFolder.write(out.resolve(p), writer::write), p));
        });
  }

  /**
   * Does it where numbers, capitals and hours are others than where golden files were written: what
   * the machine had to do with them would show there.
   */
  private static <T> T elsewhere(Supplier<T> work) {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      return work.get();
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static Map<String, String> draw(Path base, String plan) {
    return inFolder(
        out -> {
          Run run = Run.in(base, "draw", plan + ".groovy", "--out", out.toString());
          assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
        },
        plan);
  }

  private interface Drawing {
    void into(Path folder) throws IOException;
  }

  private static Map<String, String> inFolder(Drawing drawing, String plan) {
    try {
      Path out = Files.createTempDirectory("yardloom-samples");
      try {
        drawing.into(out);
        return Map.copyOf(Run.files(out.resolve(plan)));
      } finally {
        try (Stream<Path> files = Files.walk(out)) {
          for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
            Files.delete(file);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
