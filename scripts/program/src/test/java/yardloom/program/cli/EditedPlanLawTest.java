package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import org.junit.jupiter.api.Test;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.OutputKind;
import yardloom.program.output.PlanWriter;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetMemory;
import yardloom.sheet.svg.ArcMemory;
import yardloom.sheet.svg.SvgWriter;

/**
 * A run that remembers the one before gives what a run without memory gives, to the byte, after any
 * edit: sheets, tables, results, findings with their lines, calculations with theirs.
 */
class EditedPlanLawTest {
  private static final Toolkit TOOLKIT = Toolkit.load();

  /** One thing that is done to a plan. */
  record Step(EditedYard.Edit edit, int by) {}

  /** One plan after its edits. */
  private static final class Desk implements AutoCloseable {
    private final Recall recall = new Recall();
    private final SheetMemory memory = new SheetMemory();
    private final ArcMemory arcs = new ArcMemory();
    private final Path script;
    private Outcome last;
    private int drawn;

    Desk(Path script) {
      this.script = script;
    }

    /** Draws both ways and holds one against the other; false if the plan cannot be drawn. */
    boolean compare(String text, String after) throws IOException {
      Files.writeString(script, text);
      Plan plan;
      Outcome whole;
      try {
        plan = TOOLKIT.read(script, Map.of());
        whole = TOOLKIT.study(plan);
      } catch (PlanException e) {
        // A plan that cannot be drawn has nothing to compare; what is known stays for the next.
        return false;
      }
      inViewFirst(plan);
      Outcome again = TOOLKIT.study(plan, recall);
      recall.keep();
      last = again;
      assertEquals(
          drawings(SheetSet.of(whole, Papers.of(null, plan), new SheetMemory()), new ArcMemory()),
          drawings(SheetSet.of(again, Papers.of(null, plan), memory), arcs),
          after);
      arcs.next();
      Map<String, byte[]> files = files(whole);
      Map<String, byte[]> remembered = files(again);
      assertEquals(files.keySet(), remembered.keySet(), after);
      files.forEach(
          (name, bytes) -> assertArrayEquals(bytes, remembered.get(name), after + ": " + name));
      return true;
    }

    /** As `watch` does for the sheet that is looked at: another one each time. */
    private void inViewFirst(Plan plan) {
      if (last != null) {
        String sheet = last.sheets().get(drawn++ % last.sheets().size()).id();
        Optional<Outcome> ahead = TOOLKIT.ahead(plan, recall, last, sheet);
        recall.keepPart();
        ahead.ifPresent(o -> SheetSet.ahead(o, Papers.of(null, plan), sheet, memory));
      }
    }

    @Override
    public void close() throws IOException {
      Files.deleteIfExists(script);
    }
  }

  private static Map<String, String> drawings(List<ComposedSheet> sheets, ArcMemory arcs) {
    Map<String, String> drawn = new LinkedHashMap<>();
    sheets.forEach(s -> drawn.put(s.id(), SvgWriter.element(s, arcs)));
    return drawn;
  }

  private static Map<String, byte[]> files(Outcome outcome) throws IOException {
    Path folder = Files.createTempDirectory("edited");
    new PlanWriter(
            outcome, Papers.of(null, outcome.plan()), EnumSet.of(OutputKind.CSV, OutputKind.JSON))
        .write(folder);
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
        Files.delete(file);
      }
    }
    return files;
  }

  /** Every edit once, in an order that is shuffled but stays; chance has its turn behind heavy. */
  @Test
  void editedYard_byEveryEdit_isTheOneDrawnWithout() throws IOException {
    Random random = new Random(20261127);
    List<Step> steps = new ArrayList<>();
    for (EditedYard.Edit edit : EditedYard.Edit.values()) {
      steps.add(new Step(edit, random.nextInt(10)));
    }
    Collections.shuffle(steps, random);
    editedYard_drawnWithMemory_isTheOneDrawnWithout(steps);
  }

  @Tag("heavy")
  @Property(tries = 20, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void editedYard_drawnWithMemory_isTheOneDrawnWithout(@ForAll("steps") List<Step> steps)
      throws IOException {
    EditedYard yard = new EditedYard();
    try (Desk desk = new Desk(Files.createTempFile("edited", ".groovy"))) {
      assertTrue(desk.compare(yard.text(), "at first"));
      for (Step step : steps) {
        yard.edit(step.edit(), step.by());
        assertTrue(desk.compare(yard.text(), steps + " up to " + step), () -> yard.text());
      }
    }
  }

  @Provide
  Arbitrary<List<Step>> steps() {
    return Combinators.combine(
            Arbitraries.of(EditedYard.Edit.class), Arbitraries.integers().between(0, 9))
        .as(Step::new)
        .list()
        .ofSize(6);
  }

  /** Numbers of demos, changed one after the other by up to a tenth; places too. */
  @Tag("heavy")
  @Property(tries = 4, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void editedDemo_drawnWithMemory_isTheOneDrawnWithout(
      @ForAll("demos") String demo, @ForAll("numbers") List<Integer> which) throws IOException {
    Path shipped = Samples.FOLDER.resolve(demo);
    String text = Files.readString(shipped);
    try (Desk desk = new Desk(shipped.resolveSibling(".edited-" + demo))) {
      assertTrue(desk.compare(text, "at first"));
      for (int number : which) {
        text = DemoEdits.of(text, number);
        desk.compare(text, demo + " " + which + " up to " + number);
      }
    }
  }

  @Provide
  Arbitrary<String> demos() {
    return Arbitraries.of("urbana-yard.groovy", "seattle-corner.groovy");
  }

  @Provide
  Arbitrary<List<Integer>> numbers() {
    return Arbitraries.integers().between(0, 999).list().ofSize(5);
  }

  @Test
  void nothingChanged_nobodyWorks() throws IOException {
    assertEquals(List.of(), workedAfter(EditedYard.Edit.NOTHING, 0));
  }

  @Test
  void commentPutIn_nobodyWorks() throws IOException {
    assertEquals(List.of(), workedAfter(EditedYard.Edit.COMMENT, 0));
  }

  @Test
  void bedMoved_climateAndHouseAreNotWorkedOutAgain() throws IOException {
    List<String> worked = workedAfter(EditedYard.Edit.MOVE_BED, 3);
    assertTrue(worked.contains("table beds"), worked.toString());
    assertTrue(worked.contains("layer site.bed"), worked.toString());
    assertTrue(worked.stream().noneMatch(w -> w.contains("climate.")), worked.toString());
    assertTrue(!worked.contains("layer site.building"), worked.toString());
  }

  private static List<String> workedAfter(EditedYard.Edit edit, int by) throws IOException {
    EditedYard yard = new EditedYard();
    Recall recall = new Recall();
    Path script = Files.createTempFile("edited", ".groovy");
    Files.writeString(script, yard.text(), StandardCharsets.UTF_8);
    TOOLKIT.study(TOOLKIT.read(script, Map.of()), recall);
    recall.keep();
    yard.edit(edit, by);
    Files.writeString(script, yard.text(), StandardCharsets.UTF_8);
    TOOLKIT.study(TOOLKIT.read(script, Map.of()), recall);
    Files.delete(script);
    return List.copyOf(recall.worked());
  }
}
