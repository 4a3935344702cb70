package yardloom.sheet.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Long names and many of them; expectations counted by hand, letter by letter. */
class CrowdedNamesTest {
  /** 9 + 8 + 5 letters: on two lines at best 9 and 8 + 1 + 5 = 14, not 18 and 5. */
  @Test
  void name_onTwoLines_isBrokenWhereTheLongestIsShortest() {
    assertEquals(
        List.of("Asparagus", "opposite shed1"),
        WrappedName.onLines("Asparagus  opposite shed1", 2));
  }

  /** A word is never broken, and there are no more lines than words. */
  @Test
  void name_ofOneWord_staysWhole() {
    assertEquals(List.of("Stachelbeerenbeet7"), WrappedName.onLines(" Stachelbeerenbeet7 ", 4));
  }

  /** Of 12 plots 3 are without room, just a quarter; of 13 rows 3 are, less than a quarter. */
  @Test
  void series_aQuarterWithoutRoom_isCrowded_lessIsNot() {
    Map<String, Boolean> housed = new HashMap<>();
    for (int i = 1; i <= 12; i++) {
      housed.put("Plot " + i, i > 3);
    }
    for (int i = 21; i <= 33; i++) {
      housed.put("Row " + i, i > 23);
    }
    housed.put("Herbs", false);
    List<String> crowded = NameSeries.crowded(housed);
    assertEquals(12, crowded.size());
    assertTrue(crowded.stream().allMatch(n -> n.startsWith("Plot ")), crowded.toString());
    assertEquals(List.of("1 to 12: Plot 1 to Plot 12"), NameSeries.notes(crowded));
  }

  /** As they stand on the drawing: 08 and not 8, and 11 is the last though 9 is written longer. */
  @Test
  void notes_writeFiguresAsTheNamesDo() {
    assertEquals(
        List.of("08 to 11: Plot 08 to Plot 11"),
        NameSeries.notes(List.of("Plot 11", "Plot 009", "Plot 08", "Plot 10")));
  }

  /** Figures that two series share would not say which: the second keeps its names. */
  @Test
  void series_sharedFigures_oneKeepsItsNames() {
    Map<String, Boolean> housed = new HashMap<>();
    for (int i = 1; i <= 12; i++) {
      housed.put("Left " + i, false);
      housed.put("Right " + (i + 11), false);
    }
    List<String> crowded = NameSeries.crowded(housed);
    assertEquals(12, crowded.size());
    assertTrue(crowded.stream().allMatch(n -> n.startsWith("Left ")), crowded.toString());
  }

  /** Eleven names are few enough to be led to. */
  @Test
  void series_ofEleven_isNoneToShorten() {
    Map<String, Boolean> housed = new HashMap<>();
    for (int i = 1; i <= 11; i++) {
      housed.put("Plot " + i, false);
    }
    assertEquals(List.of(), NameSeries.crowded(housed));
  }
}
