package yardloom.planting.harvest;

import java.util.List;
import java.util.stream.Collectors;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;

/**
 * What a plant brings in a year at full bearing, from the lowest to the highest figure of its
 * sources.
 *
 * @param low 0 where a source says only how much at most
 */
public record Yield(Mass low, Mass high, Per per, List<Source> sources) {

  /** What the masses are counted by. */
  public enum Per {
    PLANT,
    ROW_FOOT,
    SQUARE_FOOT
  }

  public Yield {
    sources = List.copyOf(sources);
    if (low.kilograms() < 0 || low.compareTo(high) > 0 || high.kilograms() == 0) {
      throw new IllegalArgumentException("yield from " + low + " to " + high);
    }
  }

  /** Its sources in one text. */
  String cite() {
    return sources.stream().map(Source::cite).collect(Collectors.joining("; "));
  }
}
