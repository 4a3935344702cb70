package yardloom.site.remark;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/** What the author adds to the drawing. */
public final class Remark {
  /** On the plan, any number: notes. */
  public static final AttributeKey<Note> NOTE = new AttributeKey<>("site.note", Note.class);

  /** On the plan, any number: dimensions. */
  public static final AttributeKey<Measured> MEASURED =
      new AttributeKey<>("site.dimension", Measured.class);

  /** On the plan, any number: names of elements or kinds whose labels are not drawn. */
  public static final AttributeKey<String> HIDDEN =
      new AttributeKey<>("site.hidden-label", String.class);

  private Remark() {}

  /** A text at a point. */
  public record Note(String text, Point at) {}

  /**
   * A dimension between two points.
   *
   * @param offset from the segment to the dimension line, to the left of its direction if positive
   * @param text goes before the length; may be empty
   */
  public record Measured(Point from, Point to, Length offset, String text) {}
}
