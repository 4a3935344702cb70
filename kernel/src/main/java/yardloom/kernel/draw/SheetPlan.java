package yardloom.kernel.draw;

import java.util.List;

/**
 * What goes on a sheet; the composer decides where.
 *
 * @param number order among the sheets, also the start of the file name
 * @param id file name part, lower case with hyphens
 */
public record SheetPlan(int number, String id, String title, List<Panel> panels)
    implements Comparable<SheetPlan> {
  public SheetPlan {
    panels = List.copyOf(panels);
  }

  @Override
  public int compareTo(SheetPlan other) {
    int byNumber = Integer.compare(number, other.number);
    return byNumber != 0 ? byNumber : id.compareTo(other.id);
  }
}
