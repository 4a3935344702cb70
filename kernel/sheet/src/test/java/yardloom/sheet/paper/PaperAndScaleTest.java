package yardloom.sheet.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ScaleBar;

class PaperAndScaleTest {
  private static final double FOOT = 0.3048;

  @ParameterizedTest
  @CsvFileSource(resources = "paper.csv", useHeadersInDisplayName = true)
  void paper_listedSizes_match(String id, String name, double widthMm, double heightMm) {
    Paper paper = Paper.named(name);
    assertEquals(widthMm, paper.widthMm(), 1e-9);
    assertEquals(heightMm, paper.heightMm(), 1e-9);
    assertEquals(heightMm, paper.portrait().widthMm(), 1e-9);
  }

  /** D-02: the halving rule of ISO 216, to the millimetre below. */
  @Test
  void paper_isoSizes_halve() {
    for (int n = 0; n < 4; n++) {
      Paper large = Paper.named("A" + n);
      Paper small = Paper.named("A" + (n + 1));
      assertEquals(large.heightMm(), small.widthMm());
      assertEquals(Math.floor(large.widthMm() / 2), small.heightMm());
    }
  }

  /** D-07: drawing space with the margins of D-05, which are from memory. */
  @Test
  void frame_landscapeSheets_leaveTheDrawingSpace() {
    assertEquals(new Box(20, 10, 390, 277), Paper.named("A3").frame());
    assertEquals(new Box(20, 10, 564, 400), Paper.named("a2").frame());
    assertEquals(new Box(20, 10, 811, 574), Paper.named("A 1").frame());
  }

  @Test
  void paper_unknownName_saysWhatThereIs() {
    PlanException e = assertThrows(PlanException.class, () -> Paper.named("ARCH X"));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("ARCH C"), e.getMessage());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "scale.csv", useHeadersInDisplayName = true)
  void scale_plotFactors_match(String id, double inches, double feet, double denominator) {
    assertEquals(25.4 * inches, new Scale(denominator, "").paperMm(feet * FOOT), 1e-9);
  }

  @Test
  void scale_engineersWords_giveTheFactor() {
    assertEquals(120, Scale.engineer(10).denominator());
    assertEquals("1\" = 10'", Scale.of(120, UnitSystem.US).words());
    assertEquals("1:120", Scale.of(120, UnitSystem.METRIC).words());
    assertEquals("1/4\" = 1'-0\"", Scale.of(48, UnitSystem.US).words());
  }

  /** By hand: 1000 / 96; 1000 / 50; 25.4 / (10 × 0.3048) = 1000 / 120; 1000 / (4 × 12). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "US | 1/8\" = 1'-0\" | 10.416667",
        "METRIC | 1:50 | 20",
        "US | 1\" = 10' | 8.333333",
        "US | 1/4\" = 1'-0\" | 20.833333"
      })
  void scale_asTitleBlocksWriteIt_givesPaperForAMetre(
      UnitSystem units, String words, double wanted) {
    Scale scale =
        Scale.usual(units).stream().filter(s -> s.words().equals(words)).findFirst().orElseThrow();
    assertEquals(wanted, scale.paperMm(1), 1e-6);
  }

  /** D-26: the scales that permit offices list. */
  @Test
  void usualScales_us_includeThoseOfPermitOffices() {
    List<Double> usual = Scale.usual(UnitSystem.US).stream().map(Scale::denominator).toList();
    for (int feet : new int[] {10, 20, 30, 40, 50, 60, 100, 200}) {
      assertTrue(usual.contains(12.0 * feet), "1 inch = " + feet);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "true-size.csv", useHeadersInDisplayName = true)
  void scale_trueSize_matches(String id, double feet, double denominator, double paperMm) {
    assertEquals(paperMm, new Scale(denominator, "").paperMm(feet * FOOT), 1e-9);
  }

  /** D-13: a 60 by 120 ft lot on A3. */
  @Test
  void largestFitting_lotOnA3_isOneToHundred() {
    List<Scale> choices = IntStream.of(500, 200, 100, 50).mapToObj(n -> Scale.metric(n)).toList();
    assertEquals(
        100,
        Scale.largestFitting(choices, 120 * FOOT, 60 * FOOT, 390, 277).orElseThrow().denominator());
  }

  /** D-14: the same on ANSI B with 16 by 10 in usable. */
  @Test
  void largestFitting_lotOnAnsiB_isTenFeetToTheInch() {
    List<Scale> choices = IntStream.of(10, 20, 30, 40).mapToObj(Scale::engineer).toList();
    assertEquals(
        Scale.engineer(10),
        Scale.largestFitting(choices, 120 * FOOT, 60 * FOOT, 16 * 25.4, 10 * 25.4).orElseThrow());
  }

  /** D-15: the same on ARCH D with 35 by 23 in usable and the architect's scales. */
  @Test
  void largestFitting_lotOnArchD_isAQuarterInchToTheFoot() {
    List<Scale> choices =
        IntStream.of(192, 96, 48, 32, 24, 16, 12).mapToObj(n -> Scale.metric(n)).toList();
    Scale scale =
        Scale.largestFitting(choices, 120 * FOOT, 60 * FOOT, 35 * 25.4, 23 * 25.4).orElseThrow();
    assertEquals(48, scale.denominator());
    assertEquals(45 * 25.4, new Scale(32, "").paperMm(120 * FOOT), 1e-9);
  }

  @Test
  void largestFitting_nothingFits_isEmpty() {
    assertTrue(Scale.largestFitting(Scale.usual(UnitSystem.METRIC), 9000, 10, 300, 300).isEmpty());
  }

  @Test
  void scaleBar_parts_areTrueAndRound() {
    ScaleBar bar = new ScaleBar(Scale.engineer(10), UnitSystem.US, 300);
    assertEquals(10, bar.step());
    assertEquals(25.4, bar.partMm(), 1e-9);
    ScaleBar narrow = new ScaleBar(Scale.engineer(10), UnitSystem.US, 60);
    assertEquals(12.7, narrow.partMm(), 1e-9);
    ScaleBar metric = new ScaleBar(Scale.metric(200), UnitSystem.METRIC, 300);
    assertEquals(5, metric.step());
    assertEquals(25, metric.partMm(), 1e-9);
  }
}
