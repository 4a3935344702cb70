package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;

class DeedTest {
  private static final SourceRef HERE = new SourceRef("plan.groovy", 10, 1);
  private static final Point ORIGIN = Point.metres(0, 0);

  private static Deed read(String table) {
    DeedReader reader = new DeedReader();
    CallsTable.read(table, SurveyFoot.INTERNATIONAL, HERE, reader);
    return reader.finish(ORIGIN, Angle.ZERO, true);
  }

  private static PlanException refused(String table, ProblemCode code) {
    PlanException e = assertThrows(PlanException.class, () -> read(table));
    assertEquals(code, e.problems().get(0).code(), e.getMessage());
    return e;
  }

  private static final String PURDUE =
      """
      bearing,distance,name
      N 26°10'E,285.10 ft,west
      S 75°25'E,610.45 ft,north
      S 15°30'W,720.48 ft,east
      N 1°42'W,203.00 ft,
      N 53°06'W,647.02 ft,south
      """;

  @Test
  void read_purdueTable_hasMisclosureAndBothAreas() {
    Deed deed = read(PURDUE);
    assertTrue(deed.isChecked());
    assertEquals(0.8833, deed.traverse().misclosure().feet(), 5e-4);
    assertEquals(272_611.2, deed.adjustedArea().squareFeet(), 1.0);
    assertTrue(Math.abs(deed.rawArea().squareFeet() - deed.adjustedArea().squareFeet()) > 50);
    assertEquals(
        List.of("west", "north", "east", "side 4", "south"),
        deed.sides().stream().map(Deed.Side::name).toList());
  }

  /** S-20: the missing call; the description then checks nothing. */
  @Test
  void toStart_missingLastCall_isWorkedOutAndUnchecked() {
    Deed deed = read(PURDUE.replace("N 53°06'W,647.02 ft,south", "to start,,south"));
    assertFalse(deed.isChecked());
    Deed.Call last = deed.calls().get(4);
    assertEquals(647.869, last.chord().distance().feet(), 0.002);
    assertEquals(306.9215, last.chord().azimuth().degrees(), 5e-4);
    assertEquals(0, deed.traverse().misclosure().metres(), 1e-9);
  }

  /** C-15: a curve that bulges out of the lot adds its segment, one that bulges in takes it. */
  @Test
  void area_bulgingSides_addOrTakeTheSegment() {
    String square =
        """
        bearing,distance,radius,chord,chord bearing,turn
        East,100 ft,,,,
        %s
        West,100 ft,,,,
        South,100 ft,,,,
        """;
    double segment =
        new Curve(
                yardloom.kernel.unit.Length.feet(80),
                Angle.radians(2 * Math.asin(50 / 80.0)),
                Curve.Definition.ARC)
            .segment()
            .squareFeet();
    Deed out = read(square.formatted(",,80 ft,100 ft,North,left"));
    Deed in = read(square.formatted(",,80 ft,100 ft,North,right"));
    assertEquals(10_000 + segment, out.adjustedArea().squareFeet(), 1e-3);
    assertEquals(10_000 - segment, in.adjustedArea().squareFeet(), 1e-3);
    // The chords of the arc enclose the same to their sagitta.
    double chordsFt2 = chordArea(out);
    assertEquals(out.adjustedArea().squareFeet(), chordsFt2, 1.0);
    assertTrue(chordsFt2 < out.adjustedArea().squareFeet());
    assertEquals(in.adjustedArea().squareFeet(), chordArea(in), 1.0);
  }

  private static double chordArea(Deed deed) {
    List<Point> ring = new java.util.ArrayList<>();
    for (Deed.Side side : deed.sides()) {
      List<Point> points =
          side.arc()
              .map(a -> a.chords(yardloom.kernel.unit.Length.millimetres(0.5)).points())
              .orElse(List.of(side.from(), side.to()));
      ring.addAll(points.subList(0, points.size() - 1));
    }
    return PlaneAreas.byCoordinates(ring).squareFeet();
  }

  /** C-03: a tangent curve leaves in the recorded direction, and its chord bearing agrees. */
  @Test
  void curve_tangentAndChordBearing_agreeForTheRecordedCurve() {
    // Entering tangent: chord bearing N 30°35'13"W plus half of 28°49'34".
    Deed deed =
        read(
            """
            bearing,distance,radius,delta,length,chord,chord bearing,turn,tangent
            N 16-10-26 W,100 ft,,,,,,,
            ,,475 ft,28-49-34,238.98 ft,236.47 ft,N 30-35-13 W,left,yes
            N 45-00-00 W,50 ft,,,,,,,
            to start,,,,,,,,
            """);
    Deed.Bend bend = deed.calls().get(1).bend().orElseThrow();
    assertEquals(List.of(), bend.discrepancies());
    assertEquals(236.465, deed.calls().get(1).chord().distance().feet(), 1e-3);
  }

  @Test
  void curve_contradictingRadius_isReportedNotReconciled() {
    Deed deed =
        read(
            """
            bearing,distance,radius,delta,chord,chord bearing,turn
            ,,457 ft,28-49-34,236.47 ft,N 30-35-13 W,left
            East,300 ft,,,,,
            to start,,,,,,
            """);
    assertEquals("chord", deed.calls().get(0).bend().get().discrepancies().get(0).element());
  }

  @Test
  void curve_withoutChordBearingOrTangent_isRefused() {
    PlanException e =
        refused(
            "bearing,distance,radius,delta,turn\nEast,10 ft,,,\n,,20 ft,90,left\n",
            ProblemCode.MISSING_OPTION);
    assertEquals(HERE, e.problems().get(0).place());
    assertTrue(e.getMessage().contains("line 3 of the table"), e.getMessage());
  }

  @Test
  void read_unknownColumn_suggestsTheNearest() {
    PlanException e = refused("baering,distance\nEast,10 ft\n", ProblemCode.UNKNOWN_WORD);
    assertTrue(e.getMessage().contains("Did you mean `bearing`?"), e.getMessage());
  }

  @Test
  void read_bareNumber_isRefusedAtItsRow() {
    PlanException e = refused("bearing,distance\nEast,10 ft\nNorth,20\n", ProblemCode.SYNTAX);
    assertTrue(e.getMessage().contains("line 3 of the table"), e.getMessage());
  }

  /** Blank lines and line ends inside quotes count as lines of the file, as editors count them. */
  @Test
  void read_badRowAfterBlankAndQuotedLines_isNamedAsEditorsCount() {
    PlanException e =
        refused(
            "bearing,distance,name\n\nEast,10 ft,\"to an\niron pipe\"\nNorth,20,\n",
            ProblemCode.SYNTAX);
    assertTrue(e.getMessage().contains("line 5 of the table"), e.getMessage());
  }

  @Test
  void read_openQuote_namesTheLineItOpensOn() {
    PlanException e = refused("bearing,name\nEast,\"pipe\nWest,\n", ProblemCode.SYNTAX);
    assertTrue(e.getMessage().contains("line 2 of the table"), e.getMessage());
  }

  @Test
  void read_callAfterReturn_isRefused() {
    refused(
        "bearing,distance\nEast,10 ft\nNorth,20 ft\nto start,\nWest,3 ft\n",
        ProblemCode.CONTRADICTION);
  }

  @Test
  void finish_turnedNorth_turnsTheCorners() {
    DeedReader reader = new DeedReader();
    CallsTable.read(
        "bearing,distance\nNorth,100 m\nEast,100 m\nto start,\n",
        SurveyFoot.INTERNATIONAL,
        HERE,
        reader);
    Deed deed = reader.finish(ORIGIN, Angle.degrees(90), true);
    Point second = deed.sides().get(1).from();
    assertEquals(100, second.x().metres(), 1e-9);
    assertEquals(0, second.y().metres(), 1e-9);
  }

  @Test
  void bend_optional_isEmptyForStraightCalls() {
    assertEquals(Optional.empty(), read(PURDUE).calls().get(0).bend());
  }

  /** The tangent makes the chord N 30°35'13" W; told 9″ off it is rounding, 12″ off it is said. */
  @Test
  void chordBearing_besideATangent_mayBeTenSecondsOff() {
    String text =
        """
        bearing,distance,radius,delta,chord bearing,turn,tangent
        N 16-10-26 W,100 ft,,,,,
        ,,475 ft,28-49-34,%s,left,yes
        to start,,,,,,
        """;
    assertEquals(
        List.of(),
        read(text.formatted("N 30-35-22 W")).calls().get(1).bend().get().discrepancies());
    assertEquals(
        "chord bearing is given as N 30°35'25\" W, the other elements make it N 30°35'13\" W",
        read(text.formatted("N 30-35-25 W"))
            .calls()
            .get(1)
            .bend()
            .get()
            .discrepancies()
            .get(0)
            .toString());
  }

  @Test
  void read_curveOrReturnAfterTheReturn_orTangentAtTheStart_isRefused() {
    String closed = "bearing,distance,radius,delta,turn,tangent\nEast,10 ft,,,,\nNorth,20 ft,,,,\n";
    refused(closed + "to start,,,,,\n,,20 ft,90,left,yes\n", ProblemCode.CONTRADICTION);
    refused(closed + "to start,,,,,\nto start,,,,,\n", ProblemCode.CONTRADICTION);
    PlanException first =
        refused("radius,delta,turn,tangent\n20 ft,90,left,yes\n", ProblemCode.MISSING_OPTION);
    assertTrue(first.getMessage().contains("the first call cannot be tangent"), first.getMessage());
    refused(
        "bearing,distance,name\nEast,10 ft,a\nNorth,20 ft,a\nto start,,\n", ProblemCode.DUPLICATE);
  }

  /**
   * A chord of 100 ft north at a radius of 80: the centre lies √(80² − 50²) = 62.45 ft beside its
   * middle, west of it where the way turns left, east where it turns right.
   */
  @Test
  void arc_overItsChord_hasItsCentre() {
    for (String turn : List.of("left", "right")) {
      Deed deed =
          read(
              """
              bearing,distance,radius,chord,chord bearing,turn
              East,100 ft,,,,
              ,,80 ft,100 ft,North,%s
              West,100 ft,,,,
              South,100 ft,,,,
              """
                  .formatted(turn));
      Point from = deed.sides().get(1).from();
      Point centre = deed.sides().get(1).arc().orElseThrow().centre();
      assertEquals(turn.equals("left") ? -62.45 : 62.45, centre.x().minus(from.x()).feet(), 0.01);
      assertEquals(50, centre.y().minus(from.y()).feet(), 0.01);
    }
  }
}
