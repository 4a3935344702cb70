package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.vocab.Word;
import yardloom.program.guide.GuidePages;

/** The guide is what the vocabulary gives, and everything in it runs. */
class GuideTest {
  private static final Path GUIDE = Path.of("../guide");

  @TempDir private Path dir;

  @Test
  void pages_areCurrent() throws IOException {
    Map<String, String> pages = GuidePages.of(Toolkit.load().plugins().lexicon());
    if (Boolean.getBoolean("updateGolden")) {
      write(pages);
    }
    List<String> there;
    try (Stream<Path> all = Files.list(GUIDE.resolve("words"))) {
      there = all.map(p -> "words/" + p.getFileName()).sorted().toList();
    }
    assertEquals(List.copyOf(pages.keySet()), there, "run with -DupdateGolden=true");
    for (var page : pages.entrySet()) {
      assertEquals(
          page.getValue(),
          Files.readString(GUIDE.resolve(page.getKey()), StandardCharsets.UTF_8),
          "run with -DupdateGolden=true");
    }
  }

  private static void write(Map<String, String> pages) throws IOException {
    Files.createDirectories(GUIDE.resolve("words"));
    try (Stream<Path> old = Files.list(GUIDE.resolve("words"))) {
      for (Path each : old.toList()) {
        Files.delete(each);
      }
    }
    for (var page : pages.entrySet()) {
      Files.writeString(GUIDE.resolve(page.getKey()), page.getValue());
    }
  }

  @Test
  void exampleOfEveryWord_runs() throws IOException {
    Toolkit toolkit = Toolkit.load();
    Path file = dir.resolve("example.groovy");
    List<String> broken = new ArrayList<>();
    for (Word word : toolkit.plugins().lexicon().all()) {
      Files.writeString(file, GuidePages.example(word));
      try {
        toolkit.read(file, Map.of());
      } catch (PlanException e) {
        broken.add(GuidePages.path(word) + ": " + e.problems().get(0));
      }
    }
    assertEquals(List.of(), broken);
  }

  @Test
  void recipes_run() throws IOException {
    List<Path> recipes;
    try (Stream<Path> all = Files.list(GUIDE.resolve("recipes"))) {
      recipes = all.filter(p -> p.toString().endsWith(".groovy")).sorted().toList();
    }
    assertTrue(recipes.size() >= 6);
    for (Path recipe : recipes) {
      Run run = Run.in(Path.of(""), "check", recipe.toString());
      assertEquals(ExitCode.FINE, run.code(), recipe + run.out() + run.err());
    }
  }

  /** Each step stands on those before it, as the page says. */
  @Test
  void tutorial_runsAfterEachStep() throws IOException {
    String page = Files.readString(GUIDE.resolve("tutorial.md"));
    StringBuilder script = new StringBuilder();
    List<String> steps = blocks(page, "groovy");
    assertTrue(steps.size() >= 6);
    for (String step : steps) {
      script.append(step);
      Files.writeString(dir.resolve("first-yard.groovy"), script);
      Run run = Run.in(dir, "check", "first-yard.groovy");
      assertEquals(ExitCode.FINE, run.code(), step + run.out() + run.err());
    }
  }

  @Test
  void commandOfThePluginRecipe_writesAProject() throws IOException {
    String line = blocks(Files.readString(GUIDE.resolve("recipes/plugin.md")), "sh").get(0);
    List<String> said = List.of(line.strip().split(" "));
    assertEquals("scripts/yardloom", said.get(0));
    Run run = Run.in(dir, said.subList(1, said.size()).toArray(new String[0]));
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    assertTrue(Files.exists(dir.resolve("rain-well/pom.xml")));
    assertTrue(Files.isDirectory(GUIDE.resolve("../samples/county-soil")));
  }

  private static List<String> blocks(String page, String kind) {
    return Pattern.compile("(?s)```" + kind + "\\n(.*?)```")
        .matcher(page)
        .results()
        .map(found -> found.group(1))
        .toList();
  }
}
