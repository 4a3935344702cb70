package yardloom.site.settingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.survey.TapePair;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.lot.LotWords;
import yardloom.site.path.PathWords;
import yardloom.site.tree.TreeWords;

class SettingOutTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private static Length ft(double feet) {
    return Length.feet(feet);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private static Shape box(double xFt, double yFt, double widthFt, double depthFt) {
    return Shape.rectangle(p(xFt, yFt), ft(widthFt), ft(depthFt));
  }

  private void house() {
    BuiltWords.building(in, "house", box(0, 0, 30, 20), ft(10), null, null, null, null, null);
  }

  private Table table() {
    return SettingOutTable.of(draft.freeze());
  }

  private List<String> row(int i) {
    return texts(table().rows().get(i));
  }

  /** Sides 30 and 40 with the diagonal 50; 30 by 16 with the diagonal 34 (Euclid I.47). */
  @Test
  void table_bedOn345Triangles_readsWholeFeet() {
    house();
    BedWords.bed(in, "b", box(0, 60, 30, 16), null, null, null);
    assertEquals("setting-out", table().id());
    assertEquals(List.of("b", "corner 1", "40'-0\"", "50'-0\""), row(0).subList(0, 4));
    assertEquals("1-3: 34'-0\"", row(0).get(5));
    assertEquals("left", row(0).get(4));
    assertEquals(4, table().rows().size());
  }

  /** The true distance is 10.198 ft = 10 ft 2.376 in, whose nearest quarter is 2 1/2 in. */
  @Test
  void table_oddDistance_isToTheNearestQuarter() {
    house();
    PathWords.path(in, "w", Line.between(p(2, 30), p(2, 60)), ft(3), null, null, null);
    assertEquals("10'-2½\"", row(0).get(2));
    assertEquals("1-2: 30'-0\"", row(0).get(5));
  }

  @Test
  void tapes_neighbourIsLarger_startAtTheOwnHouse() {
    house();
    BuiltWords.building(in, "next", box(-60, 0, 50, 40), ft(10), null, null, null, true, null);
    BedWords.bed(in, "b", box(0, 60, 30, 16), null, null, null);
    assertEquals(new TapePair(p(0, 20), p(30, 20)), SettingOut.of(draft.freeze()).tapes().get());
  }

  @Test
  void tapes_noBuilding_startAtLotCorners() {
    LotWords.lot(in, List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)), null);
    BedWords.bed(in, "b", box(20, 30, 20, 20), null, null, null);
    TapePair tapes = SettingOut.of(draft.freeze()).tapes().get();
    assertTrue(
        List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120))
            .containsAll(List.of(tapes.a(), tapes.b())));
  }

  /** The triangle of 15 and 20 has the hypotenuse 25. */
  @Test
  void table_roundBed_isItsCentreAndRadius() {
    house();
    BedWords.bed(in, "b", Shape.circle(p(15, 40), ft(6)), null, null, null);
    assertEquals(List.of("b", "centre", "25'-0\"", "25'-0\"", "left", "radius 6'-0\""), row(0));
    assertEquals(1, table().rows().size());
  }

  @Test
  void table_manyCorners_areTheRectangleAroundThem() {
    house();
    Shape bed = box(0, 60, 30, 16).minus(box(10, 60, 10, 4)).minus(box(10, 72, 10, 4));
    BedWords.bed(in, "b", bed, null, null, null);
    assertEquals(4, table().rows().size());
    assertEquals("corner of the rectangle around it 1", row(0).get(1));
    assertEquals("1-3: 34'-0\"", row(0).get(5));
  }

  @Test
  void table_behindTheHouse_isMarked() {
    house();
    BedWords.bed(in, "back", box(0, 50, 30, 10), null, null, null);
    PathWords.path(in, "front", Line.between(p(5, -5), p(25, -5)), ft(3), null, null, null);
    assertTrue(row(4).get(2).endsWith("(building between)"), row(4).toString());
  }

  /** The same bed, turned to and fro: rounding must not start it elsewhere. */
  @Test
  void table_bedTurnedAround_startsAtTheLowerLeftCorner() {
    house();
    Shape turned = box(0, 60, 30, 16);
    for (int degrees : List.of(90, 90, 180)) {
      turned = turned.turned(Angle.degrees(degrees), p(15, 68));
    }
    BedWords.bed(in, "b", turned, null, null, null);
    assertEquals(List.of("b", "corner 1", "40'-0\"", "50'-0\""), row(0).subList(0, 4));
  }

  @Test
  void table_nothingToSetOutOrFrom_isEmpty() {
    assertTrue(table().isEmpty());
    BedWords.bed(in, "b", box(0, 60, 30, 16), null, null, null);
    assertTrue(table().isEmpty());
  }

  @Test
  void toCarry_holdsTheSameReadingsUnderOneHeadingForEachFigure() {
    house();
    BedWords.bed(in, "b", box(0, 60, 30, 16), null, null, null);
    Table list = SettingOutTable.toCarry(draft.freeze());
    assertTrue(list.isHeading(0), "the bed's name");
    assertEquals("b", texts(list.rows().get(0)).get(0));
    assertEquals(
        List.of("1", "40'-0\"", "50'-0\"", "left", "1-3: 34'-0\"", "[  ]"),
        texts(list.rows().get(1)));
    assertEquals(1 + 4, list.rows().size());
  }

  /** Corners 1 to 4 of the bed, then the path's two ends, then both stems under one heading. */
  @Test
  void toCarry_numbersRunOnThroughAllFigures_asOnThePlanOfPoints() {
    house();
    BedWords.bed(in, "b", box(0, 60, 30, 16), null, null, null);
    PathWords.path(in, "w", Line.between(p(2, 30), p(2, 57)), ft(3), null, null, null);
    for (double x : new double[] {5, 21}) {
      TreeWords.tree(in, "t" + x, p(x, 95), ft(8), ft(9), null, null, null, null, null);
    }
    Plan plan = draft.freeze();
    List<List<String>> rows =
        SettingOutTable.toCarry(plan).rows().stream().map(SettingOutTest::texts).toList();
    assertEquals(
        List.of(
            "b", "1", "2", "3", "4", "w: middle point", "5", "6", "Stems of new trees", "7", "8"),
        rows.stream().map(r -> r.get(0)).toList());
    assertEquals("5-6: 27'-0\"", rows.get(6).get(4));
    List<Mark> marks = new TapeNumberPainter().paint(plan, null);
    List<Mark.Label> labels =
        marks.stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
    assertEquals(
        List.of("A", "B", "1", "2", "3", "4", "5", "6", "7", "8"),
        labels.stream().map(Mark.Label::text).toList());
    assertEquals(p(0, 60), labels.get(2).at(), "corner 1 is the lower left one");
    assertEquals(p(2, 57), labels.get(7).at());
    assertEquals(p(21, 95), labels.get(9).at());
  }

  @Test
  void toCarry_behindTheHouse_isStarredAndExplained() {
    house();
    BedWords.bed(in, "back", box(0, 50, 30, 10), null, null, null);
    PathWords.path(in, "front", Line.between(p(5, -5), p(25, -5)), ft(3), null, null, null);
    Table list = SettingOutTable.toCarry(draft.freeze());
    assertEquals("front: middle point", texts(list.rows().get(5)).get(0));
    assertEquals(
        row(4).get(2).replace("(building between)", "*"), texts(list.rows().get(6)).get(1));
    assertTrue(texts(list.rows().get(6)).get(1).endsWith(" *"));
    assertTrue(list.notes().stream().anyMatch(n -> n.contains("(*): take a third measure")));
  }

  private static List<String> texts(List<Cell> row) {
    return row.stream().map(c -> (String) c.value().orElse("")).toList();
  }
}
