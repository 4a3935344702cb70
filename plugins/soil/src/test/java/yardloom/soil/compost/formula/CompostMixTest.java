package yardloom.soil.compost.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Mass;
import yardloom.soil.compost.formula.CompostMix.Feed;
import yardloom.soil.compost.formula.CompostMix.Grade;

/** Soil checks K01 to K09. */
class CompostMixTest {
  private static Mass kg(double value) {
    return Mass.kilograms(value);
  }

  private static final Feed GRASS = new Feed("grass", kg(10), 45, 2.4, 77);
  private static final Feed LEAVES = new Feed("leaves", kg(3.474), 50, 0.75, 35);

  @Test
  void ratio_sheetMethodWithoutMoisture_isReproduced() {
    // K01: percents by wet mass, so moisture counts as nothing.
    Feed a = new Feed("a", Mass.pounds(30), 40, 1.0, 0);
    Feed b = new Feed("b", Mass.pounds(20), 12, 0.8, 0);
    assertEquals(31.30, CompostMix.ratio(List.of(a, b)), 0.01);
  }

  @Test
  void ratio_grassAndLeaves_isThirty() {
    // K02
    assertEquals(30.00, CompostMix.ratio(List.of(GRASS, LEAVES)), 0.01);
    assertEquals(66.17, CompostMix.moisture(List.of(GRASS, LEAVES)), 0.01);
  }

  @Test
  void partner_forRatio_isSolved() {
    // K04
    assertEquals(3.474, CompostMix.partnerForRatio(GRASS, LEAVES, 30).kilograms(), 0.001);
  }

  @Test
  void ratio_equalGrassAndLeavesOfTable_matches() {
    // K05: G. Bertrand, Missouri S&T compost table.
    List<Feed> mix =
        List.of(Feed.shipped("grass clippings", kg(10)), Feed.shipped("leaves", kg(10)));
    assertEquals(33.155, CompostMix.ratio(mix), 0.005);
    assertEquals(60.0, CompostMix.moisture(mix), 0.005);
  }

  @Test
  void ratio_manureAndStraw_isRightButTooDry() {
    // K06
    List<Feed> mix = List.of(Feed.shipped("chicken manure", kg(10)), Feed.shipped("straw", kg(20)));
    assertEquals(30.560, CompostMix.ratio(mix), 0.005);
    assertEquals(31.0, CompostMix.moisture(mix), 0.005);
    assertEquals(Grade.TOO_LOW, CompostMix.gradeMoisture(CompostMix.moisture(mix)));
  }

  @ParameterizedTest
  @CsvSource({
    // K07: Cooperband, UW CIAS 2002, table 1.
    "19, TOO_LOW",
    "20, ACCEPTABLE",
    "25, IDEAL",
    "35, IDEAL",
    "40, ACCEPTABLE",
    "41, TOO_HIGH"
  })
  void ratio_limits_gradeTheMix(double ratio, Grade grade) {
    assertEquals(grade, CompostMix.gradeRatio(ratio));
  }

  @ParameterizedTest
  @CsvSource({
    "39, TOO_LOW",
    "40, ACCEPTABLE",
    "45, IDEAL",
    "60, IDEAL",
    "65, ACCEPTABLE",
    "66, TOO_HIGH"
  })
  void moisture_limits_gradeTheMix(double moisture, Grade grade) {
    assertEquals(grade, CompostMix.gradeMoisture(moisture));
  }

  @Test
  void feedstock_ratios_lieInCornellRanges() {
    // K08: Cornell Composting Fact Sheet 2: grass 19 (table: 17), leaves 40-80.
    assertEquals(19, CompostMix.ratio(List.of(Feed.shipped("grass clippings", kg(1)))), 2.0);
    double leaves = CompostMix.ratio(List.of(Feed.shipped("leaves", kg(1))));
    assertEquals(60, leaves, 20);
  }

  @Test
  void partner_onTheSameSide_isRefused() {
    // K09: cardboard 560 and straw 80 cannot make 30.
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                CompostMix.partnerForRatio(
                    Feed.shipped("cardboard", kg(10)), Feed.shipped("straw", kg(1)), 30));
    assertEquals(ProblemCode.CONTRADICTION, e.problems().get(0).code());
  }

  @Test
  void mix_empty_isRefused() {
    assertThrows(PlanException.class, () -> CompostMix.ratio(List.of()));
    assertThrows(PlanException.class, () -> CompostMix.moisture(List.of()));
  }

  @Property(seed = "20261125")
  void partner_solved_meetsTheGoal(
      @ForAll @DoubleRange(min = 10, max = 24) double low,
      @ForAll @DoubleRange(min = 41, max = 300) double high,
      @ForAll @DoubleRange(min = 25, max = 40) double goal,
      @ForAll @DoubleRange(min = 5, max = 85) double moisture) {
    Feed green = Feed.ofRatio("green", kg(7), low, 2.5, moisture);
    Feed brown = Feed.ofRatio("brown", kg(1), high, 0.3, 20);
    Mass wet = CompostMix.partnerForRatio(green, brown, goal);
    Feed solved = Feed.ofRatio("brown", wet, high, 0.3, 20);
    assertEquals(goal, CompostMix.ratio(List.of(green, solved)), 1e-6);
  }
}
