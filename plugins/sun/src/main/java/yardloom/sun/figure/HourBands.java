package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.Field;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.unit.Length;

/**
 * Draws a field of hours in bands of two hours.
 *
 * <p>Bands get lighter with sun and run from blue to yellow, so that they keep their order in grey
 * and for colour-blind readers; hatches tell them apart in black and white. Lines between bands
 * carry their hours.
 */
final class HourBands {
  private static final double[] FROM = {0, 2, 4, 6, 8, 10};
  private static final String[] FILL = {
    "#6d7fa3", "#96a5bf", "#bcc6d2", "#e3dfc4", "#f3e6a6", "#fdf6d8"
  };
  private static final Hatch[] HATCH = {
    Hatch.CROSS, Hatch.DIAGONAL, Hatch.HORIZONTAL, Hatch.DOTS, Hatch.SPARSE_DOTS, Hatch.NONE
  };
  private static final double LABEL_MM = 2.5;
  private static final double LEAST_LABELLED_M2 = 4;

  /** Islands and holes of fewer cells are noise between rows of plants, not ground to plan by. */
  private static final int LEAST_CELLS = 12;

  private HourBands() {}

  private static Style style(int band) {
    return Style.filled("sun-hours-" + (int) FROM[band], FILL[band])
        .hatched(HATCH[band])
        .outlined(Palette.MUTED, 0.13);
  }

  /**
   * All that the bands of a field are made of.
   *
   * @param within where they are drawn
   * @param room where labels may stand
   * @param labelRoomM how far labels keep from the border of that room
   * @param rightM how far the bands are moved on the figure
   */
  record Bands(
      Field field, Shape within, Shape room, double labelRoomM, double rightM, double upM) {
    private List<Mark> marks() {
      return made(field, within, room, labelRoomM, rightM, upM);
    }
  }

  /**
   * The bands of each field, worked on at once.
   *
   * @param name tells them from the other bands of the sheet
   */
  static List<List<Mark>> marks(String name, List<Bands> fields) {
    return Piece.of(
        "bands of " + name, fields, all -> all.parallelStream().map(Bands::marks).toList());
  }

  private static List<Mark> made(
      Field field, Shape within, Shape room, double labelRoomM, double rightM, double upM) {
    List<Mark> marks = new ArrayList<>();
    List<Mark> labels = new ArrayList<>();
    Isolines lines = new Isolines(field);
    double cell = field.cell().metres();
    double leastM2 = LEAST_CELLS * cell * cell;
    Shape above = within;
    for (int band = 0; band < FROM.length; band++) {
      Shape next =
          band + 1 < FROM.length ? lines.atLeast(FROM[band + 1], leastM2).and(within) : Shape.EMPTY;
      Shape ground = above.minus(next);
      if (!ground.isEmpty()) {
        marks.add(
            new Mark.Region(moved(ground, rightM, upM), style(band), "direct sun: " + text(band)));
      }
      if (!next.isEmpty() && ground.area().squareMetres() > LEAST_LABELLED_M2) {
        String hours = (int) FROM[band + 1] + " h";
        Isolines.labelPlace(next, room, labelRoomM)
            .ifPresent(at -> labels.add(label(at, hours, rightM, upM)));
      }
      above = next;
    }
    marks.addAll(labels);
    return marks;
  }

  private static Mark label(Point at, String text, double rightM, double upM) {
    Point place = at.moved(Length.metres(rightM), Length.metres(upM));
    return new Mark.Label(place, text, LABEL_MM, true, 4, Mark.Anchor.FIXED);
  }

  static Shape moved(Shape shape, double rightM, double upM) {
    return shape.moved(Length.metres(rightM), Length.metres(upM));
  }

  static List<LegendEntry> legend() {
    List<LegendEntry> entries = new ArrayList<>();
    for (int band = 0; band < FROM.length; band++) {
      entries.add(LegendEntry.area(text(band) + " of direct sun a day", style(band)));
    }
    return entries;
  }

  private static String text(int band) {
    return band + 1 < FROM.length
        ? (int) FROM[band] + " to " + (int) FROM[band + 1] + " h"
        : (int) FROM[band] + " h and more";
  }
}
