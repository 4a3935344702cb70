package yardloom.soil.texture;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * A named soil of a region.
 *
 * @param sand percent of the fine earth
 * @param clay percent of the fine earth
 * @param organic percent of the soil's mass
 * @param intake depth of water taken in an hour; without it the texture's formula is used
 * @param available share of the fine earth's volume that holds water for plants; likewise
 */
public record LocalSoil(
    String name,
    double sand,
    double clay,
    double organic,
    Optional<Length> intake,
    OptionalDouble available,
    Source source,
    SourceRef place) {
  /** On the plan, any number: named soils. */
  public static final AttributeKey<LocalSoil> KEY =
      new AttributeKey<>("soil.local-soil", LocalSoil.class);
}
