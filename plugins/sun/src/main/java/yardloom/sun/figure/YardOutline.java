package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * What a sun figure shows of the yard itself: lot, buildings, beds, crowns; once, or many times in
 * tiles with a caption over each.
 *
 * <p>Room for captions is kept in millimetres of a figure that is as wide as it asks to be; a sheet
 * that draws it smaller may push captions off their place, but not over a tile.
 */
final class YardOutline {
  private static final Style LOT_EDGE = Style.line("sun-lot-edge", Palette.INK, 0.35);
  private static final Style BED_EDGE = Style.line("sun-bed-edge", Palette.INK, 0.25);
  private static final Style CROWN_EDGE =
      Style.line("sun-crown-edge", Palette.INK, 0.18).dashed("1.5 1");
  private static final Style BAR = Style.line("sun-bar", Palette.INK, 0.7);
  private static final Style NORTH =
      Style.filled("sun-north", Palette.INK).outlined(Palette.INK, 0.25);
  private static final double BAR_BELOW_MM = 5;
  private static final double BAR_TEXT_MM = 4;
  private static final double NORTH_BESIDE_MM = 5;
  private static final double BAR_LETTER_MM = 2.5;
  private static final double GAP_MM = 5;
  private static final double CAPTION_MM = 3;
  private static final double CAPTION_ROOM_MM = 10;
  private static final double MARGIN_MM = 4;
  private static final double LABEL_ROOM_MM = 5.5;

  private final Plan plan;
  private final Shape ground;
  private final int columns;
  private final double mmPerM;

  /** One tile in a figure of a width. */
  YardOutline(Plan plan, double widthMm) {
    this(plan, widthMm, 1);
  }

  /** Tiles in rows of {@code columns} in a figure of a width. */
  YardOutline(Plan plan, double widthMm, int columns) {
    this.plan = plan;
    this.columns = columns;
    ground = groundOf(plan);
    double tilesMm = widthMm - 2 * MARGIN_MM - (columns - 1) * GAP_MM;
    mmPerM = tilesMm / columns / ground.bounds().getWidth();
  }

  /** The lot, or all beds of a plan without one. */
  static Shape groundOf(Plan plan) {
    return plan.lot()
        .map(lot -> lot.shape())
        .orElseGet(
            () -> Shape.union(plan.all(Element.Bed.class).stream().map(b -> b.shape()).toList()));
  }

  Shape ground() {
    return ground;
  }

  /** The lot without what is built on it. */
  static Shape roomOf(Plan plan) {
    List<Shape> built = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> built.add(b.shape()));
    plan.all(Element.Structure.class).forEach(b -> built.add(b.shape()));
    return groundOf(plan).minus(Shape.union(built));
  }

  /** Whether the lot is higher than wide on the plan. */
  static boolean isTall(Plan plan) {
    Envelope box = groundOf(plan).bounds();
    return box.getHeight() > box.getWidth();
  }

  /** Half the room that a short label takes, in metres of the yard. */
  double labelRoomM() {
    return LABEL_ROOM_MM / mmPerM;
  }

  /** How far the {@code index}-th tile lies to the right. */
  double rightM(int index) {
    return index % columns * (ground.bounds().getWidth() + GAP_MM / mmPerM);
  }

  /** How far up the {@code index}-th tile lies; tiles run from the top left. */
  double upM(int index) {
    return -(index / columns) * (ground.bounds().getHeight() + CAPTION_ROOM_MM / mmPerM);
  }

  /** Outlines and a caption over a tile. */
  List<Mark> marks(String caption, double rightM, double upM) {
    List<Mark> marks = new ArrayList<>();
    for (Element.Building b : plan.all(Element.Building.class)) {
      add(marks, b.shape().and(ground), Palette.BUILDING, b.id().toString(), rightM, upM);
    }
    for (Element.Structure s : plan.all(Element.Structure.class)) {
      add(marks, s.shape().and(ground), Palette.STRUCTURE, s.id().toString(), rightM, upM);
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      add(marks, bed.shape(), BED_EDGE, bed.id().toString(), rightM, upM);
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      add(marks, tree.shape().and(ground), CROWN_EDGE, tree.id().toString(), rightM, upM);
    }
    add(marks, ground, LOT_EDGE, "lot", rightM, upM);
    Envelope box = ground.bounds();
    double middleM = CAPTION_ROOM_MM / 2 / mmPerM;
    Point top = Point.metres(box.centre().x + rightM, box.getMaxY() + upM + middleM);
    marks.add(new Mark.Label(top, caption, CAPTION_MM, true, 0, Mark.Anchor.FIXED));
    return marks;
  }

  /** North and a bar of a round length below the first tile of the last of {@code rows}. */
  List<Mark> northAndBar(int rows) {
    Envelope box = ground.bounds();
    boolean us = plan.info().units() == UnitSystem.US;
    Length bar = us ? Length.feet(20) : Length.metres(5);
    double y = box.getMinY() + upM((rows - 1) * columns) - BAR_BELOW_MM / mmPerM;
    Point left = Point.metres(box.getMinX(), y);
    double clear = left.x().metres() + bar.metres() + NORTH_BESIDE_MM / mmPerM;
    Point north = Point.metres(Math.max(clear, box.getMaxX() - BAR_BELOW_MM / mmPerM), y);
    Angle turn = plan.site().map(Site::north).orElse(Angle.ZERO);
    return List.of(
        new Mark.Stroke(Line.between(left, left.moved(bar, Length.ZERO)), BAR, "length of the bar"),
        new Mark.Label(
            left.moved(bar.times(0.5), Length.metres(-BAR_TEXT_MM / mmPerM)),
            us ? "20 ft" : "5 m",
            BAR_LETTER_MM,
            false,
            0,
            Mark.Anchor.FIXED),
        new Mark.Symbol(north, Mark.SymbolForm.ARROW, Length.ZERO, turn, NORTH, "north"),
        new Mark.Label(
            north.moved(Length.metres(BAR_TEXT_MM / mmPerM), Length.ZERO),
            "N",
            BAR_LETTER_MM,
            true,
            0,
            Mark.Anchor.FIXED));
  }

  private static void add(
      List<Mark> marks, Shape shape, Style style, String about, double rightM, double upM) {
    if (!shape.isEmpty()) {
      marks.add(new Mark.Region(HourBands.moved(shape, rightM, upM), style, about));
    }
  }
}
