package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.vocab.Word;
import yardloom.program.guide.GuidePages;
import yardloom.program.guide.GuidePicture;

/** The guide is what the vocabulary gives, and everything in it runs. */
class GuideTest {
  private static final Path GUIDE = Path.of("../guide");

  @TempDir private Path dir;

  @Test
  void pages_areCurrent() throws IOException {
    Toolkit toolkit = Toolkit.load();
    if (Boolean.getBoolean("updateGolden")) {
      writePictures(toolkit);
    }
    Map<String, String> pages = GuidePages.of(toolkit.plugins().lexicon(), pictures());
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

  private static Set<String> pictures() throws IOException {
    try (Stream<Path> all = Files.list(GUIDE.resolve("pictures"))) {
      return all.map(p -> "pictures/" + p.getFileName()).collect(Collectors.toSet());
    }
  }

  /** A word has a picture if it draws something: if the drawing without it is another. */
  private Optional<String> picture(Toolkit toolkit, Word word) throws IOException {
    Optional<String> with = drawn(toolkit, GuidePages.example(word));
    Optional<String> without;
    try {
      without = drawn(toolkit, GuidePages.exampleWithout(word));
    } catch (PlanException e) {
      return with;
    }
    return with.equals(without) ? Optional.empty() : with;
  }

  /** Many words have the same beginning. */
  private final Map<String, Optional<String>> known = new HashMap<>();

  private Optional<String> drawn(Toolkit toolkit, String script) throws IOException {
    if (!known.containsKey(script)) {
      Path file = dir.resolve("example.groovy");
      Files.writeString(file, script);
      known.put(script, GuidePicture.of(toolkit.study(toolkit.read(file, Map.of()))));
    }
    return known.get(script);
  }

  /** All pictures, or with {@code -Dpictures=plan-tree,bed-plant} those of these pages alone. */
  private void writePictures(Toolkit toolkit) throws IOException {
    String named = System.getProperty("pictures", "");
    List<String> some = List.of(named.split(","));
    Files.createDirectories(GUIDE.resolve("pictures"));
    List<String> broken = new ArrayList<>();
    Set<String> stale = new TreeSet<>(pictures());
    for (Word word : toolkit.plugins().lexicon().all()) {
      String path = GuidePages.picture(word);
      stale.remove(path);
      if (!named.isEmpty() && !some.contains(name(path))) {
        continue;
      }
      try {
        Optional<String> picture = picture(toolkit, word);
        if (picture.isPresent()) {
          Files.writeString(GUIDE.resolve(path), picture.get());
        } else {
          Files.deleteIfExists(GUIDE.resolve(path));
        }
      } catch (PlanException e) {
        broken.add(GuidePages.path(word) + ": " + e.problems().get(0));
      }
    }
    for (String old : stale) {
      Files.delete(GUIDE.resolve(old));
    }
    assertEquals(List.of(), broken);
  }

  private static String name(String picture) {
    return picture.replaceAll("pictures/|\\.svg", "");
  }

  /** Some of many, since each is two studies of a plan; the next test compares all. */
  @Test
  void somePictures_areWhatTheExamplesDraw() throws IOException {
    Set<String> some = Set.of("plan-tree", "bed-plant", "plan-tank", "any-keyhole", "plan-price");
    assertEquals(some.size(), comparePictures(name -> some.contains(name)));
  }

  @Test
  @Tag("heavy")
  void allPictures_areWhatTheExamplesDraw() throws IOException {
    assertTrue(comparePictures(name -> true) > 170);
  }

  private int comparePictures(Predicate<String> which) throws IOException {
    Toolkit toolkit = Toolkit.load();
    int compared = 0;
    for (Word word : toolkit.plugins().lexicon().all()) {
      String path = GuidePages.picture(word);
      if (which.test(name(path))) {
        compared++;
        Path kept = GUIDE.resolve(path);
        Optional<String> there =
            Files.exists(kept) ? Optional.of(Files.readString(kept)) : Optional.empty();
        assertEquals(there, picture(toolkit, word), path + ": run with -DupdateGolden=true");
      }
    }
    return compared;
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
    Run run = Run.in(dir, words(line));
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    assertTrue(Files.exists(dir.resolve("rain-well/pom.xml")));
    assertTrue(Files.isDirectory(GUIDE.resolve("../samples/county-soil")));
  }

  /** The page's commands and texts, one after the other, in an empty folder. */
  @Test
  void regionalRecipe_findsWhatItSays() throws IOException {
    String page = Files.readString(GUIDE.resolve("recipes/regional-file.md"));
    List<String> commands = blocks(page, "sh");
    List<String> texts = blocks(page, "groovy");
    Run made = Run.in(dir, words(commands.get(0)));
    assertEquals(ExitCode.FINE, made.code(), made.out() + made.err());
    Path file = dir.resolve("oak-county.groovy");
    Files.writeString(file, Files.readString(file) + texts.get(0));
    Files.writeString(dir.resolve("first.groovy"), texts.get(1));
    Run checked = Run.in(dir, words(commands.get(1)));
    assertEquals(ExitCode.FINE, checked.code(), checked.out() + checked.err());
    String said = checked.out();
    assertTrue(said.contains("The county keeps planted ground 3 ft off the line."), said);
    assertTrue(said.contains("1 ft"), said);
  }

  /** What a line of the guide says behind the name of the program. */
  private static String[] words(String line) {
    List<String> said = List.of(line.strip().split(" "));
    assertEquals("yardloom", said.get(0));
    return said.subList(1, said.size()).toArray(new String[0]);
  }

  private static List<String> blocks(String page, String kind) {
    return Pattern.compile("(?s)```" + kind + "\\n(.*?)```")
        .matcher(page)
        .results()
        .map(found -> found.group(1))
        .toList();
  }
}
