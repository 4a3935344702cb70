package yardloom.soil.lab;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;

/** What a soil test found and what is wanted. */
public record SoilTest(
    Acidity acidity, Lead lead, Feeding feeding, Organic organic, SourceRef place) {
  /**
   * How sour it is, and is to be.
   *
   * @param buffer pH by the Mehlich method
   * @param limePurity calcium carbonate equivalent of the lime, percent
   */
  public record Acidity(
      OptionalDouble ph, OptionalDouble wanted, OptionalDouble buffer, double limePurity) {}

  /**
   * Lead in it.
   *
   * @param ppm what was found
   * @param otherSources whether there are other sources of lead about
   */
  public record Lead(OptionalDouble ppm, boolean otherSources) {}

  /**
   * Nitrogen that is asked for.
   *
   * @param nitrogen the rate over {@code over}
   * @param byCrop whether nitrogen follows the crops of the annual beds
   * @param grade the product that brings it, such as {@code 5-10-10}
   */
  public record Feeding(
      Optional<Mass> nitrogen, Area over, boolean byCrop, Optional<String> grade) {}

  /**
   * Organic matter that is asked for.
   *
   * @param wanted percent in the mixed layer
   * @param mixDepth depth to which compost is mixed in
   */
  public record Organic(OptionalDouble wanted, Length mixDepth) {}

  /** On the plan: what a soil test found. */
  public static final AttributeKey<SoilTest> KEY =
      new AttributeKey<>("soil.soil-test", SoilTest.class);
}
