package yardloom.soil.lab;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;

/**
 * What a soil test found and what is wanted.
 *
 * @param bufferPh buffer pH by the Mehlich method
 * @param limePurity calcium carbonate equivalent of the lime, percent
 * @param lead ppm
 * @param otherSources whether there are other sources of lead about
 * @param nitrogen the rate asked for over {@code nitrogenOver}
 * @param nitrogenByCrop whether nitrogen follows the crops of the annual beds
 * @param grade the product that brings it, such as {@code 5-10-10}
 * @param wantedOrganic percent of organic matter wanted in the mixed layer
 * @param mixDepth depth to which compost is mixed in
 */
public record SoilTest(
    OptionalDouble ph,
    OptionalDouble wantedPh,
    OptionalDouble bufferPh,
    double limePurity,
    OptionalDouble lead,
    boolean otherSources,
    Optional<Mass> nitrogen,
    Area nitrogenOver,
    boolean nitrogenByCrop,
    Optional<String> grade,
    OptionalDouble wantedOrganic,
    Length mixDepth,
    SourceRef place) {
  /** On the plan: what a soil test found. */
  public static final AttributeKey<SoilTest> KEY =
      new AttributeKey<>("soil.soil-test", SoilTest.class);
}
