package yardloom.facts.mulch;

import java.util.Objects;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * How deep chips may lie on a kind that grows in a bed.
 *
 * @param in the bed
 * @param plant the catalogue name
 * @param most depth as laid; what is deeper smothers it
 * @param source who says so
 */
public record BorneDepth(ElementId in, String plant, Length most, Source source) {
  public BorneDepth {
    Objects.requireNonNull(in);
    Objects.requireNonNull(source);
    if (most.metres() < 0) {
      throw new IllegalArgumentException(plant + " bears " + most);
    }
  }
}
