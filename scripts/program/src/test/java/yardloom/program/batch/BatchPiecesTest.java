package yardloom.program.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;

class BatchPiecesTest {
  private static final LotResult FINE = LotResult.drawn("a", 0, 0, "", "", "");

  /** Every lot is in one part, and no part has two more than another. */
  @Property
  void parts_shareTheListEvenly(
      @ForAll @IntRange(max = 40) int lots, @ForAll @IntRange(min = 1, max = 9) int of) {
    List<Integer> all = IntStream.range(0, lots).boxed().toList();
    List<Integer> together = new ArrayList<>();
    for (int i = 1; i <= of; i++) {
      List<Integer> part = new Part(i, of).of(all);
      assertTrue(part.size() == lots / of || part.size() == lots / of + 1);
      together.addAll(part);
    }
    together.sort(null);
    assertEquals(all, together);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/3", "4/3", "1", "a/b", "1/0", "-1/2", "1/2/3"})
  void part_thatIsNone_isNotRead(String text) {
    assertEquals(Optional.empty(), Part.read(text));
  }

  @Test
  void part_ofThree_takesEveryThirdLot_andHasItsSummary() {
    List<String> all = List.of("a", "b", "c", "d", "e", "f", "g");
    assertEquals(List.of("a", "d", "g"), new Part(1, 3).of(all));
    assertEquals(List.of("b", "e"), new Part(2, 3).of(all));
    assertEquals("summary-2-of-3.csv", Part.read("2/3").orElseThrow().summary());
    assertEquals("summary.csv", Part.WHOLE.summary());
  }

  /** 2 lots in 60 s, 3 left: 90 s, which is 2 min to the next minute. */
  @Test
  void progress_estimatesFromTheLotsOfThisRun() {
    Progress progress = new Progress(9, 4);
    assertEquals("4 of 9", progress.state(Duration.ZERO));
    progress.add(FINE);
    progress.add(LotResult.failed("b", "line one\nline two"));
    assertEquals("6 of 9, 1 failed, about 2 min left", progress.state(Duration.ofSeconds(60)));
    assertEquals("6 of 9, 1 failed, about 30 s left", progress.state(Duration.ofSeconds(20)));
    assertEquals("6 of 9, 1 failed, about 15 h left", progress.state(Duration.ofHours(10)));
    assertEquals("6/9 b: failed: line one", progress.line(LotResult.failed("b", "line one\n2")));
  }

  @Test
  void csv_namesLotsAndLeavesBlankCellsToThePlan() {
    List<LotRow> lots =
        LotList.read(
            "lots.csv", "lot,width,depth\n\"Oak St. 12\",3ft,\n,,4ft\n", Set.of("width", "depth"));
    assertEquals(
        List.of(
            new LotRow("oak-st-12", Map.of("width", "3ft")),
            new LotRow("lot-2", Map.of("depth", "4ft"))),
        lots);
  }

  @Test
  void csv_withAColumnThatIsNoParameter_namesTheNearest() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> LotList.read("lots.csv", "lot,widht\na,1\n", Set.of("width")));
    assertTrue(e.getMessage().startsWith("lots.csv:1: the plan has no parameter `widht`"));
    assertTrue(e.getMessage().contains("Did you mean `width`?"), e.getMessage());
  }

  @Test
  void twoLotsOfOneFolder_areRefusedWithTheLine() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> LotList.read("lots.csv", "lot\nOak 1\noak-1\n", Set.of("lot")));
    assertTrue(e.getMessage().startsWith("lots.csv:3: two lots would be written"), e.getMessage());
  }

  @Test
  void emptyList_isRefused() {
    for (String text : List.of("", "lot\n")) {
      assertThrows(PlanException.class, () -> LotList.read("lots.csv", text, Set.of()));
    }
    assertThrows(
        PlanException.class, () -> LotList.read("a.geojson", "{\"features\": []}", Set.of("lot")));
  }
}
