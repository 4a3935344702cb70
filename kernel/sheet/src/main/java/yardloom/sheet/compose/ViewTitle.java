package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/** The strip under a site plan: north arrow, name, written and graphic scale. */
public final class ViewTitle {
  static final double HEIGHT_MM = 18;
  private static final double BAR_GAP_MM = 12;
  private static final double LEAST_BAR_MM = 24;
  private static final double CIRCLE_MM = 4.6;
  private static final double LETTER_AT_MM = 6.9;
  private static final Style CIRCLE = Style.filled("north", "").outlined(Palette.INK, 0.25);
  private static final Style NEEDLE =
      Style.filled("north-needle", Palette.INK).outlined(Palette.INK, 0.18);
  private static final Style NEEDLE_LIGHT =
      Style.filled("north-light", Palette.PAPER).outlined(Palette.INK, 0.18);

  private ViewTitle() {}

  static List<Ink> at(
      Box strip, String title, Scale scale, UnitSystem units, double northDegrees, Type type) {
    List<Ink> inks = new ArrayList<>();
    inks.add(north(new Xy(strip.x() + 9.5, strip.y() + HEIGHT_MM / 2), northDegrees));
    double x = strip.x() + 22;
    String ratio = Scale.metric(scale.denominator()).words();
    String words =
        "Scale " + (scale.words().equals(ratio) ? ratio : scale.words() + " (" + ratio + ")");
    double wordsWidth = type.width(words, Type.HEADING, false);
    double barRoom = strip.width() - 22 - wordsWidth - 2 * BAR_GAP_MM;
    boolean narrow = barRoom < LEAST_BAR_MM;
    // A bar under the words needs the room above them.
    double y = strip.y() + (narrow ? 1.2 : 3.2);
    double titleRoom = narrow ? strip.right() - x : strip.width() * 0.55;
    double largeRoom = narrow ? titleRoom : Math.max(wordsWidth, strip.width() / 3);
    double size = size(title, largeRoom, titleRoom, type);
    List<String> lines = type.wrap(title, size, true, titleRoom);
    inks.add(Type.line(lines.get(0), x, y, size, true, Ink.Align.START));
    y += Type.pitch(Type.TITLE);
    inks.add(Type.line(words, x, y, Type.HEADING, false, Ink.Align.START));
    double titleWidth = Math.max(wordsWidth, type.width(lines.get(0), size, true));
    if (narrow) {
      // Beside the words no bar could be read: below them.
      ScaleBar below = new ScaleBar(scale, units, strip.right() - x - BAR_GAP_MM);
      inks.addAll(below.at(x + 1, y + Type.pitch(Type.HEADING) + 1));
      return inks;
    }
    double barLeft = x + titleWidth + BAR_GAP_MM;
    ScaleBar bar = new ScaleBar(scale, units, strip.right() - barLeft - BAR_GAP_MM);
    inks.addAll(bar.at(barLeft, strip.y() + 4.4));
    return inks;
  }

  /** A title too long for its room is set smaller; only what is too long even then is cut. */
  private static double size(String title, double largeRoomMm, double roomMm, Type type) {
    if (type.width(title, Type.TITLE, true) <= largeRoomMm) {
      return Type.TITLE;
    }
    return type.width(title, Type.HEADING, true) <= roomMm ? Type.HEADING : type.body();
  }

  /** An arrow to true north; {@code degrees} clockwise from the sheet's up direction. */
  public static Ink north(Xy centre, double degrees) {
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    Xy tip = centre.plus(sin * CIRCLE_MM, -cos * CIRCLE_MM);
    Xy tail = centre.plus(-sin * CIRCLE_MM * 0.55, cos * CIRCLE_MM * 0.55);
    double side = CIRCLE_MM * 0.45;
    Xy foot = centre.plus(-sin * CIRCLE_MM * 0.8, cos * CIRCLE_MM * 0.8);
    Xy right = foot.plus(cos * side, sin * side);
    Xy left = foot.plus(-cos * side, -sin * side);
    Xy letter = centre.plus(sin * LETTER_AT_MM, -cos * LETTER_AT_MM + Type.HEADING / 2);
    return Ink.Group.of(
        "north-arrow",
        "North arrow",
        List.of(
            new Ink.Circle(centre, CIRCLE_MM, CIRCLE),
            new Ink.Path(List.of(new Ink.Track(List.of(tip, left, tail), true)), NEEDLE),
            new Ink.Path(List.of(new Ink.Track(List.of(tip, right, tail), true)), NEEDLE_LIGHT),
            new Ink.Text(
                letter, "N", Type.HEADING, true, Ink.Align.MIDDLE, Palette.INK, false, 0)));
  }
}
