package yardloom.kernel.draw;

import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** One thing to draw, in plan metres. */
public sealed interface Mark
    permits Mark.Region, Mark.Stroke, Mark.Symbol, Mark.Label, Mark.Dimension {

  /** A filled and outlined region; {@code about} names what it shows, for tooltips and readers. */
  record Region(Shape shape, Style style, String about) implements Mark {}

  /** A line. */
  record Stroke(Line line, Style style, String about) implements Mark {}

  /**
   * A symbol at a point.
   *
   * @param size its true size for {@link SymbolForm#isTrueSize true-size} forms; otherwise the
   *     symbol keeps its size on paper and this is ignored
   * @param turn clockwise from the plan's up direction
   */
  record Symbol(Point at, SymbolForm form, Length size, Angle turn, Style style, String about)
      implements Mark {}

  /**
   * Text near a point; the composer finds a free place for it, or leads a line to it.
   *
   * @param rank lower ranks are placed first; up to rank 3 they are never dropped, from rank 5 on
   *     they stand at what they name or are left out
   * @param heightMm letter height on paper, at least 2
   * @param ground what the label names, if that is more than a point: the text stands in it or
   *     beside its edge, and a leader starts at its edge
   */
  record Label(
      Point at,
      String text,
      double heightMm,
      boolean bold,
      int rank,
      Anchor anchor,
      Optional<Shape> ground)
      implements Mark {

    /** The label of a point. */
    public Label(Point at, String text, double heightMm, boolean bold, int rank, Anchor anchor) {
      this(at, text, heightMm, bold, rank, anchor, Optional.empty());
    }

    /** The same as the label of {@code shape}. */
    public Label on(Shape shape) {
      return new Label(at, text, heightMm, bold, rank, anchor, Optional.of(shape));
    }
  }

  /** Where a label stands relative to its point. */
  enum Anchor {
    /** Centred on the point, or elsewhere in its ground. */
    CENTRE,
    /**
     * In its ground, over whatever grows there, level or upright, or led to it from elsewhere;
     * never beside it, where it could be read as the name of what lies there.
     */
    INSIDE,
    /** Anywhere close by; with a ground, rather beside it than in it. */
    NEAR,
    /** As close by as can be, on whatever ground that is: the number of a point. */
    POINT,
    /** Level and centred on the point, or left out where a text stands already. */
    FIXED
  }

  /**
   * A dimension line beside the segment {@code from}–{@code to}.
   *
   * @param offset distance from the segment to the dimension line, to the left of its direction if
   *     positive
   * @param text what it says; the painter formats it in the plan's units
   */
  record Dimension(Point from, Point to, Length offset, String text) implements Mark {}

  /** The symbols that painters may use. */
  enum SymbolForm {
    /** A circle of true diameter with a centre mark. */
    CROWN_DECIDUOUS(true),
    CROWN_EVERGREEN(true),
    /** A plain circle of true diameter. */
    DISC(true),
    /** A small fixed-size cross. */
    CROSS(false),
    DOT(false),
    SQUARE(false),
    TRIANGLE(false),
    /** A tap or other water source. */
    TAP(false),
    ARROW(false);

    private final boolean trueSize;

    SymbolForm(boolean trueSize) {
      this.trueSize = trueSize;
    }

    public boolean isTrueSize() {
      return trueSize;
    }
  }
}
