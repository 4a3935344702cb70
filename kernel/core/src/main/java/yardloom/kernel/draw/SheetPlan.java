package yardloom.kernel.draw;

import java.util.List;

/**
 * What goes on a sheet; the composer decides where.
 *
 * @param number order among the sheets, also the start of the file name
 * @param id file name part, lower case with hyphens
 * @param format what it is meant to be read as; the writer picks the paper
 */
public record SheetPlan(int number, String id, String title, Format format, List<Panel> panels)
    implements Comparable<SheetPlan> {

  /** How a sheet is used. */
  public enum Format {
    /** A drawing sheet, spread on a table. */
    SHEET,
    /** A page to carry in a pocket: letter or A4, upright. */
    PAGE
  }

  public SheetPlan {
    panels = List.copyOf(panels);
  }

  /** A drawing sheet. */
  public SheetPlan(int number, String id, String title, List<Panel> panels) {
    this(number, id, title, Format.SHEET, panels);
  }

  @Override
  public int compareTo(SheetPlan other) {
    int byNumber = Integer.compare(number, other.number);
    return byNumber != 0 ? byNumber : id.compareTo(other.id);
  }
}
