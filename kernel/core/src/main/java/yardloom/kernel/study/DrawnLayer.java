package yardloom.kernel.study;

import java.util.List;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;

/**
 * One layer of a plan's drawing.
 *
 * @param shown whether the site plan shows it unless told otherwise
 * @param yard whether it is what anybody finds their way by
 */
public record DrawnLayer(List<Mark> marks, List<LegendEntry> legend, boolean shown, boolean yard) {
  public DrawnLayer {
    marks = List.copyOf(marks);
    legend = List.copyOf(legend);
  }
}
