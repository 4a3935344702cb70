package yardloom.soil.texture;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * What the plan says about its soil.
 *
 * @param sand percent of the fine earth
 * @param clay percent of the fine earth
 * @param organic percent of the soil's mass
 * @param rock share of the volume that is rock fragments
 * @param depth the depth that roots use
 * @param available share of the fine earth's volume that holds water, if it is known by name
 * @param intake depth of water taken in an hour, likewise
 * @param how where sand and clay come from: laboratory, jar, ribbon or texture class
 */
public record SoilGiven(
    double sand,
    double clay,
    double organic,
    double rock,
    Length depth,
    OptionalDouble available,
    Optional<Length> intake,
    Source how,
    SourceRef place) {
  /** The soil as tested or named. */
  public static final FactKey<SoilGiven> FACT =
      FactKey.one("soil.given", SoilGiven.class).called("soil as tested or named");

  /** On the plan: its soil. */
  public static final AttributeKey<SoilGiven> KEY =
      new AttributeKey<>("soil.soil", SoilGiven.class);
}
