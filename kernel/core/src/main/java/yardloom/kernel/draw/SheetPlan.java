package yardloom.kernel.draw;

import java.util.List;

/**
 * What goes on a sheet; the composer decides where.
 *
 * @param number order among the sheets, also the start of the file name
 * @param id file name part, lower case with hyphens
 * @param format what it is meant to be read as; the writer picks the paper
 * @param usual whether a set has it unless the plan says which sheets it wants
 */
public record SheetPlan(
    int number, String id, String title, Format format, List<Panel> panels, boolean usual)
    implements Comparable<SheetPlan> {

  /** How a sheet is used. */
  public enum Format {
    /** A drawing sheet, spread on a table. */
    SHEET,
    /** A page to carry in a pocket: letter or A4, upright. */
    PAGE,
    /** Pages of that size that are read one after the other. */
    BOOKLET;

    /** Whether it is printed on the paper of an office. */
    public boolean isPocket() {
      return this != SHEET;
    }
  }

  public SheetPlan {
    panels = List.copyOf(panels);
  }

  /** A sheet of the usual set. */
  public SheetPlan(int number, String id, String title, Format format, List<Panel> panels) {
    this(number, id, title, format, panels, true);
  }

  /** The same, drawn only where the plan asks for it. */
  public SheetPlan onRequest() {
    return new SheetPlan(number, id, title, format, panels, false);
  }

  /** The same with other panels. */
  public SheetPlan with(List<Panel> others) {
    return new SheetPlan(number, id, title, format, others, usual);
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
