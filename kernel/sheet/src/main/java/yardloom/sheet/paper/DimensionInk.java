package yardloom.sheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;

/**
 * Draws a dimension: two extension lines, the dimension line with slanted ticks, and the measure
 * above it, readable from below or from the right.
 *
 * <p>References: [1] ISO 129 dimensioning (from memory, unverified).
 */
public final class DimensionInk {
  public static final double TEXT_MM = 2.5;
  private static final double LEAST_OFFSET_MM = 5;
  private static final double GAP_MM = 1;
  private static final double BEYOND_MM = 1.5;
  private static final double TICK_MM = 2;
  private static final double ABOVE_LINE_MM = 0.9;

  /** Along a side that is nearly upright texts run up the sheet, whichever way it leans. */
  private static final double STEEPEST_DOWN_DEGREES = 75;

  private static final Style THIN = Style.line("dimension", Palette.INK, 0.18);
  private static final Style TICK = Style.line("dimension-tick", Palette.INK, 0.35);

  private final String text;
  private final Xy from;
  private final Xy to;
  private final Xy lineFrom;
  private final Xy lineTo;

  public DimensionInk(Mark.Dimension dimension, View view) {
    text = dimension.text();
    from = view.toPaper(dimension.from());
    to = view.toPaper(dimension.to());
    double length = from.distance(to);
    double metres = dimension.offset().metres();
    double offset = metres * view.mmPerM();
    if (metres != 0 && Math.abs(offset) < LEAST_OFFSET_MM) {
      offset = Math.copySign(LEAST_OFFSET_MM, offset);
    }
    // Left of the direction on the plan; y runs down on paper.
    double nx = length == 0 ? 0 : (to.y() - from.y()) / length;
    double ny = length == 0 ? 0 : -(to.x() - from.x()) / length;
    lineFrom = from.plus(nx * offset, ny * offset);
    lineTo = to.plus(nx * offset, ny * offset);
  }

  /** The ends of segment and dimension line in plan metres. */
  public static List<Coordinate> ends(Mark.Dimension dimension) {
    Coordinate a = dimension.from().coordinate();
    Coordinate b = dimension.to().coordinate();
    double length = a.distance(b);
    if (length == 0) {
      return List.of(a);
    }
    double offset = dimension.offset().metres() / length;
    double nx = -(b.y - a.y) * offset;
    double ny = (b.x - a.x) * offset;
    return List.of(a, b, new Coordinate(a.x + nx, a.y + ny), new Coordinate(b.x + nx, b.y + ny));
  }

  public List<Ink> lines() {
    List<Ink> inks = new ArrayList<>(unticked());
    tick(lineFrom, inks);
    tick(lineTo, inks);
    return inks;
  }

  /** The dimension line and its extension lines, without the ticks. */
  public List<Ink.Track> tracks() {
    return unticked().stream().flatMap(path -> path.tracks().stream()).toList();
  }

  private List<Ink.Path> unticked() {
    List<Ink.Path> inks = new ArrayList<>();
    extension(from, lineFrom, inks);
    extension(to, lineTo, inks);
    inks.add(Ink.Path.line(THIN, lineFrom, lineTo));
    return inks;
  }

  private static void extension(Xy foot, Xy head, List<Ink.Path> inks) {
    double length = foot.distance(head);
    if (length <= GAP_MM) {
      return;
    }
    double ux = (head.x() - foot.x()) / length;
    double uy = (head.y() - foot.y()) / length;
    inks.add(
        Ink.Path.line(
            THIN, foot.plus(ux * GAP_MM, uy * GAP_MM), head.plus(ux * BEYOND_MM, uy * BEYOND_MM)));
  }

  private void tick(Xy at, List<Ink> inks) {
    double angle = StrictMath.toRadians(turnDegrees() - 45);
    double x = StrictMath.cos(angle) * TICK_MM / 2;
    double y = StrictMath.sin(angle) * TICK_MM / 2;
    inks.add(Ink.Path.line(TICK, at.plus(-x, -y), at.plus(x, y)));
  }

  public Xy middle() {
    return new Xy((lineFrom.x() + lineTo.x()) / 2, (lineFrom.y() + lineTo.y()) / 2);
  }

  public Xy lineFrom() {
    return lineFrom;
  }

  public Xy lineTo() {
    return lineTo;
  }

  private double turnDegrees() {
    double dx = lineTo.x() - lineFrom.x();
    double dy = lineTo.y() - lineFrom.y();
    double degrees = StrictMath.toDegrees(StrictMath.atan2(dy, dx));
    if (degrees >= STEEPEST_DOWN_DEGREES) {
      return degrees - 180;
    }
    return degrees < STEEPEST_DOWN_DEGREES - 180 ? degrees + 180 : degrees;
  }

  /** Places for the measure, best first: above the middle, along the line, below it. */
  public List<Ink.Text> texts() {
    double turn = turnDegrees();
    double up = ABOVE_LINE_MM;
    double down = -ABOVE_LINE_MM - TEXT_MM;
    List<Ink.Text> texts = new ArrayList<>();
    for (double off : new double[] {up, down}) {
      for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        double sin = StrictMath.sin(StrictMath.toRadians(turn));
        double cos = StrictMath.cos(StrictMath.toRadians(turn));
        Xy at =
            new Xy(
                lineFrom.x() + share * (lineTo.x() - lineFrom.x()) + sin * off,
                lineFrom.y() + share * (lineTo.y() - lineFrom.y()) - cos * off);
        texts.add(
            new Ink.Text(at, text, TEXT_MM, false, Ink.Align.MIDDLE, Palette.INK, true, turn));
      }
    }
    return texts;
  }

  public String text() {
    return text;
  }
}
