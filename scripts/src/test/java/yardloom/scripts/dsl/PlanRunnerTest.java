package yardloom.scripts.dsl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;

class PlanRunnerTest {
  @TempDir Path folder;

  private final PlanRunner runner =
      new PlanRunner(TestWords.lexicon(), Limits.standard(), (s, w) -> Optional.empty());

  private Plan run(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("my-plan.groovy"), text);
    return runner.run(file, Map.of());
  }

  @Test
  void plainPlan_bedsAndBlocks_areDrawn() throws IOException {
    Plan plan =
        run(
            """
            def w = param('width', 4.ft, 'width of beds')
            def place = rect(0.m, 0.m, w * 2, 1.m)
            def b = bed 'a', place, use: 'annual', depth: 6.inch, {
              plant 'kale', spacing: 1.ft
              plant 'leek'
            }
            for (i in 1..3) {
              bed "row ${i}", b.shape.moved(i * 3.m, 0.m), use: 'perennial'
            }
            """);
    assertEquals(4, plan.elements().size());
  }

  @Test
  void language_loopsHelpersClosuresMaps_work() throws IOException {
    Plan plan =
        run(
            """
            Shape strip(int n, Length gap) {
              if (n > 1) {
                return rect(gap * n, 0.m, 1.m, 1.m)
              }
              rect(0.m, 0.m, 1.m, 1.m)
            }
            def total = 0.m
            def names = ['x', 'y', 'z']
            List<Handle> all = []
            names.eachWithIndex { n, i ->
              all << bed(n, strip(i, 3.m), use: 'annual')
            }
            for (h in all) {
              total = total + h.shape.perimeter
            }
            note "total ${total} of ${all.size()}"
            def sizes = [small: 1.ft, big: 2.ft]
            note "${sizes.big} ${sizes['small']}"
            for (e in sizes) { note "${e.key} is ${e.value}" }
            def widths = (1..3).collect { it * 2.ft }
            note "sum ${widths.sum()}"
            def plot = { String n, Length x -> bed n, rect(x, 0.m, 1.m, 1.m), use: 'annual' }
            plot('p1', 10.m)
            plot('p2', 20.m)
            double half = 1
            int k = 0
            while (k < 3) { k++; half = half / 2 }
            note "half $half ${7 / 2} ${7 % 4} ${1..0} ${'abc'[0]}"
            def both = all[0].shape + all[1].shape & rect(0.m, 0.m, 0.5.m, 1.m)
            note "area ${both.area} ${both.area > 0.2.sqm ? 'big' : 'small'}"
            """);
    assertEquals(5, plan.elements().size());
  }

  @Test
  void mistakes_severalInOneScript_allReportedWithPlaces() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                run(
                    """
                    bed 'a', rect(0.m, 0.m, 1.m, 1.m), use: 'annual', {
                      plnt 'kale'
                    }
                    bed 'b', 3
                    note 'a', 5
                    note 'a' + (3.ft + 2.gpm)
                    """));
    List<String> found =
        e.problems().stream()
            .map(p -> p.place().line() + ":" + p.place().column() + " " + p.code())
            .toList();
    assertEquals(
        List.of(
            "2:3 UNKNOWN_WORD",
            "4:1 MISSING_OPTION",
            "4:10 WRONG_TYPE",
            "5:11 WRONG_TYPE",
            "6:13 WRONG_TYPE"),
        found);
  }
}
