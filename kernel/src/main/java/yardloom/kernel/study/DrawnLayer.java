package yardloom.kernel.study;

import java.util.List;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;

/**
 * One layer of a plan's drawing.
 *
 * @param shown whether the site plan shows it unless told otherwise
 */
public record DrawnLayer(List<Mark> marks, List<LegendEntry> legend, boolean shown) {
  public DrawnLayer {
    marks = List.copyOf(marks);
    legend = List.copyOf(legend);
  }
}
