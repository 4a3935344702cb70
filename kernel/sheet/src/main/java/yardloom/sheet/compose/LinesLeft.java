package yardloom.sheet.compose;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;

/**
 * What filled regions leave of the lines under them, worked out once for all drawings of a set that
 * show both, and for those of the next set. Several threads may ask at once; two of them may then
 * work the same out.
 */
final class LinesLeft {
  private Map<Cut, List<Line>> before = Map.of();
  private Map<Cut, List<Line>> now = new ConcurrentHashMap<>();

  /** Two that lie over each other. */
  private record Cut(Line line, Shape filled) {}

  /** The pieces of {@code line} outside {@code filled}. */
  List<Line> of(Line line, Shape filled) {
    Cut cut = new Cut(line, filled);
    List<Line> known = now.get(cut);
    if (known == null) {
      known = before.get(cut);
      known = known == null ? line.outside(filled) : known;
      now.put(cut, known);
    }
    return known;
  }

  /** Another set begins; what neither it nor the one before asks for is forgotten. */
  void next() {
    before = now;
    now = new ConcurrentHashMap<>();
  }
}
