package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Style;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

class LineBreaksTest {
  private static final Style THIN = Style.line("row", "#000000", 0.25);

  /** A text's room from x = 10 to 17 and from y = 3 to 5. */
  private static final Quad TEXT = Quad.of(new Box(10, 3, 7, 2));

  private static List<Ink.Track> broken(Style style, Quad text, Xy... points) {
    return ((Ink.Path) LineBreaks.under(List.of(text), Ink.Path.line(style, points))).tracks();
  }

  private static void at(double x, double y, Xy p) {
    assertEquals(x, p.x(), 1e-9);
    assertEquals(y, p.y(), 1e-9);
  }

  @Test
  void under_levelLine_isBrokenAtBothEndsOfTheText() {
    List<Ink.Track> left = broken(THIN, TEXT, new Xy(2, 4), new Xy(30, 4));
    assertEquals(2, left.size());
    at(2, 4, left.get(0).points().get(0));
    at(10, 4, left.get(0).points().get(1));
    at(17, 4, left.get(1).points().get(0));
    at(30, 4, left.get(1).points().get(1));
  }

  /** From (8, 0) to (16, 8) the way is x = y + 8: in at (11, 3) and out at (13, 5). */
  @Test
  void under_slantingLine_isBrokenWhereItMeetsTheRoom() {
    List<Ink.Track> left = broken(THIN, TEXT, new Xy(8, 0), new Xy(16, 8));
    at(11, 3, left.get(0).points().get(1));
    at(13, 5, left.get(1).points().get(0));
  }

  /** A row that turns under the text is left out up to where its second leg comes out. */
  @Test
  void under_lineThatTurnsUnderTheText_losesItsCorner() {
    List<Ink.Track> left = broken(THIN, TEXT, new Xy(2, 4), new Xy(14, 4), new Xy(14, 9));
    assertEquals(2, left.size());
    at(10, 4, left.get(0).points().get(1));
    at(14, 5, left.get(1).points().get(0));
    at(14, 9, left.get(1).points().get(1));
  }

  /** The room turned to run up the sheet about (10, 3): x from 10 to 12, y from 3 down to -4. */
  @Test
  void under_uprightText_breaksAcrossItsHeight() {
    List<Ink.Track> left =
        broken(THIN, TEXT.turned(-90, new Xy(10, 3)), new Xy(1, -1), new Xy(20, -1));
    at(10, -1, left.get(0).points().get(1));
    at(12, -1, left.get(1).points().get(0));
  }

  @Test
  void under_linesElsewhere_strongLinesAndAreas_areWhole() {
    assertEquals(1, broken(THIN, TEXT, new Xy(2, 6), new Xy(30, 6)).size());
    assertEquals(
        1, broken(Style.line("pipe", "#000000", 0.5), TEXT, new Xy(2, 4), new Xy(30, 4)).size());
    Ink area = Ink.Path.box(Style.filled("bed", "#00ff00"), new Box(8, 2, 20, 2));
    assertEquals(area, LineBreaks.under(List.of(TEXT), area));
  }

  /** Groups keep their names, and what lies whole under a text is gone. */
  @Test
  void under_groups_keepTheirNames() {
    Ink.Group group =
        new Ink.Group(
            "row",
            "Row",
            Optional.empty(),
            List.of(Ink.Path.line(THIN, new Xy(11, 4), new Xy(15, 4))));
    Ink.Group left = (Ink.Group) LineBreaks.under(List.of(TEXT), group);
    assertEquals("Row", left.title());
    assertEquals(List.of(), left.inks());
  }
}
