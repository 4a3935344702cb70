package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NameRunsTest {
  @Test
  void names_countingUp_areOneRun() {
    assertEquals(
        "kitchen 1 to 5, herbs",
        NameRuns.text(
            List.of("kitchen 1", "kitchen 2", "kitchen 3", "kitchen 4", "kitchen 5", "herbs")));
  }

  @Test
  void names_twoOnly_areBothSaid() {
    assertEquals("kitchen 9, kitchen 10", NameRuns.text(List.of("kitchen 9", "kitchen 10")));
  }

  @Test
  void names_withGapOrOtherStem_startAnew() {
    assertEquals(
        "bed 1, bed 3 to 5, row 6",
        NameRuns.text(List.of("bed 1", "bed 3", "bed 4", "bed 5", "row 6")));
  }

  @Test
  void names_leadingZero_areNotCounted() {
    assertEquals("bed 01, bed 02, bed 03", NameRuns.text(List.of("bed 01", "bed 02", "bed 03")));
  }

  @Test
  void names_none_areNoText() {
    assertEquals("", NameRuns.text(List.of()));
  }
}
