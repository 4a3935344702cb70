package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.source.Source;

/**
 * Where bars of care are drawn: names take 52 mm, each month 11 mm, each row 4.7 mm, bars 2.8 mm of
 * it; one metre of the figure stands for 1 mm.
 */
class CareFigureTest {
  private static CareAct act(String what, int season, String from, String until) {
    return new CareAct(
        what,
        new CareTask(Act.PRUNE, what, "", Source.plan("test")),
        List.of(),
        new CareAct.When(season, LocalDate.parse(from), LocalDate.parse(until), 1),
        Optional.empty());
  }

  private static List<Mark.Region> bars(Panel.Figure figure, String what) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Region r && r.about().equals(what))
        .map(m -> (Mark.Region) m)
        .toList();
  }

  private static void assertBox(double x, double y, double toX, double toY, Mark.Region bar) {
    Envelope box = bar.shape().bounds();
    assertEquals(x, box.getMinX(), 1e-6);
    assertEquals(y, box.getMinY(), 1e-6);
    assertEquals(toX, box.getMaxX(), 1e-6);
    assertEquals(toY, box.getMaxY(), 1e-6);
  }

  private static void assertLine(double x, double y, double toX, double toY, Mark.Stroke stroke) {
    assertEquals(x, stroke.line().start().x().metres(), 1e-9);
    assertEquals(y, stroke.line().start().y().metres(), 1e-9);
    assertEquals(toX, stroke.line().end().x().metres(), 1e-9);
    assertEquals(toY, stroke.line().end().y().metres(), 1e-9);
  }

  /**
   * 8 March to 20 April: 2 + 7/31 months to 3 + 20/30 months. It ends before the other, so its row
   * is the first, its middle 2.35 mm down; the other's is 7.05 mm down. 16 November to 10 January
   * runs over the year's end: 10.5 months to the end, and from the beginning 10/31 of a month;
   * since January comes first, that row would be above. A single day takes the least width, 0.8 mm.
   */
  @Test
  void bars_lieOnTheirDaysAndRows() {
    Panel.Figure figure =
        CareFigure.of(
            List.of(
                act("Prune", 1, "2026-03-08", "2026-04-20"),
                act("Prune", 2, "2027-03-08", "2027-04-20"),
                act("Guard", 1, "2026-11-16", "2027-01-10"),
                act("Divide", 3, "2028-02-29", "2028-02-29"),
                act("Pick", 4, "2029-09-01", "2029-09-01")));
    List<Mark.Region> pruned = bars(figure, "Prune");
    assertEquals(2, pruned.size());
    double rowPrune = -2.5 * 4.7;
    assertBox(
        52 + (2 + 7 / 31.0) * 11,
        rowPrune - 1.4,
        52 + (3 + 20 / 30.0) * 11,
        rowPrune + 1.4,
        pruned.get(0));
    List<Mark.Region> guard = bars(figure, "Guard");
    assertEquals(2, guard.size());
    double rowGuard = -0.5 * 4.7;
    assertBox(52 + 10.5 * 11, rowGuard - 1.4, 52 + 132, rowGuard + 1.4, guard.get(0));
    assertBox(52, rowGuard - 1.4, 52 + 10 / 31.0 * 11, rowGuard + 1.4, guard.get(1));
    // The leap day lies on the 28th: 27/28 of February and on to its end.
    double rowDivide = -1.5 * 4.7;
    double day = 52 + (1 + 27 / 28.0) * 11;
    assertBox(day, rowDivide - 1.4, day + 0.8, rowDivide + 1.4, bars(figure, "Divide").get(0));
    assertEquals(
        List.of("care-each", "care-first", "care-later", "care-later"),
        List.of(
            pruned.get(0).style().name(),
            guard.get(0).style().name(),
            bars(figure, "Divide").get(0).style().name(),
            bars(figure, "Pick").get(0).style().name()));
  }

  @Test
  void monthsAndNames_standOverTheirColumnsAndRows() {
    Panel.Figure figure =
        CareFigure.of(
            List.of(
                act("Prune", 1, "2026-03-08", "2026-04-20"),
                act("Pick", 2, "2027-09-01", "2027-09-30")));
    List<Mark.Label> labels =
        figure.marks().stream()
            .filter(m -> m instanceof Mark.Label)
            .map(m -> (Mark.Label) m)
            .toList();
    assertEquals(14, labels.size());
    Mark.Label march = labels.get(2);
    assertEquals("Mar", march.text());
    assertEquals(52 + 2.5 * 11, march.at().x().metres(), 1e-9);
    assertEquals(2.35, march.at().y().metres(), 1e-9);
    assertTrue(march.bold());
    Mark.Label pick = labels.get(13);
    assertEquals("Pick", pick.text());
    assertEquals(26, pick.at().x().metres(), 1e-9);
    assertEquals(-7.05, pick.at().y().metres(), 1e-9);
    List<Mark.Stroke> grid =
        figure.marks().stream()
            .filter(m -> m instanceof Mark.Stroke)
            .map(m -> (Mark.Stroke) m)
            .toList();
    assertEquals(13 + 2, grid.size());
    // The sixth line of a month parts May from June and runs down both rows.
    assertLine(107, 0, 107, -9.4, grid.get(5));
    // Between the rows, over the whole width.
    assertLine(0, -4.7, 184, -4.7, grid.get(13));
    assertEquals(184, figure.minWidthMm(), 1e-9);
    assertEquals(3, figure.legend().size());
  }
}
