package yardloom.program.output;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.draw.Mark;

/**
 * The styles that are seen on a drawing: a legend explains these and nothing else. What a later
 * region with a fill covers whole, such as a bed under the hatch of its stage, is not seen.
 */
final class SeenStyles {
  private SeenStyles() {}

  /**
   * The names of the styles, in no order.
   *
   * @param layers from the ground up
   */
  static Set<String> of(Collection<List<Mark>> layers) {
    List<Mark> marks = layers.stream().flatMap(List::stream).toList();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      if (mark instanceof Mark.Stroke stroke) {
        seen.add(stroke.style().name());
      } else if (mark instanceof Mark.Symbol symbol) {
        seen.add(symbol.style().name());
      } else if (mark instanceof Mark.Region region
          && !seen.contains(region.style().name())
          && !isHidden(region.shape().jts(), marks.subList(i + 1, marks.size()))) {
        seen.add(region.style().name());
      }
    }
    return seen;
  }

  private static boolean isHidden(Geometry shape, List<Mark> above) {
    for (Mark mark : above) {
      if (mark instanceof Mark.Region region
          && !region.style().fill().isEmpty()
          && region.shape().jts().covers(shape)) {
        return true;
      }
    }
    return false;
  }
}
