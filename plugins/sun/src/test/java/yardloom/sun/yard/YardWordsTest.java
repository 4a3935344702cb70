package yardloom.sun.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Obstacle;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;
import yardloom.sun.neighbour.ProposedWords;
import yardloom.sun.position.Dates;
import yardloom.sun.spot.SpotWords;

/** What the words of the sun take, up to the ends of their ranges, and what holds unsaid. */
class YardWordsTest {
  private final Draft draft = TestYards.at(40, -105);
  private final PlanScope plan = new PlanScope(draft, new SourceRef("plan.groovy", 4, 1));

  private static void refused(Executable word) {
    PlanException e = assertThrows(PlanException.class, word);
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
  }

  private static Angle deg(double degrees) {
    return Angle.degrees(degrees);
  }

  private BedScope bed(String name) {
    ElementDraft bed =
        draft.add(
            new ElementId(ElementKind.BED, name),
            SourceRef.NONE,
            c -> new Element.Bed(c, TestYards.rectangle(0, 0, 2, 1), Element.BedUse.ANNUAL));
    return new BedScope(draft, bed, new SourceRef("plan.groovy", 9, 1));
  }

  @Test
  void endsOfRanges_areAllowed_whatLiesBeyondIsNot() {
    YardWords.sunGrid(plan, Length.millimetres(50));
    refused(() -> YardWords.sunGrid(plan, Length.millimetres(49)));
    refused(() -> YardWords.sunGrid(plan, Length.metres(5.01)));
    YardWords.skyline(plan, deg(0), deg(-10));
    YardWords.skyline(plan, deg(359.9), deg(80));
    refused(() -> YardWords.skyline(plan, deg(360), deg(5)));
    refused(() -> YardWords.skyline(plan, deg(-0.1), deg(5)));
    refused(() -> YardWords.skyline(plan, deg(5), deg(-10.1)));
    refused(() -> YardWords.skyline(plan, deg(5), deg(80.1)));
    YardWords.groundFall(plan, Length.metres(2), Length.metres(2), deg(90));
    refused(() -> YardWords.groundFall(plan, Length.metres(2.1), Length.metres(2), deg(90)));
    refused(() -> YardWords.groundFall(plan, Length.metres(-0.1), Length.metres(2), deg(90)));
    BedScope bed = bed("a");
    YardWords.soilTop(bed, Length.metres(3));
    refused(() -> YardWords.soilTop(bed("b"), Length.metres(3.01)));
    refused(() -> YardWords.soilTop(bed("c"), Length.metres(-0.01)));
    SpotWords.bestSpot(plan, Area.squareMetres(1), null, 24);
    refused(() -> SpotWords.bestSpot(plan, Area.squareMetres(1), null, 24.1));
    refused(() -> SpotWords.bestSpot(plan, Area.squareMetres(1), null, 0));
  }

  @Test
  void largestCell_andLevelGround_areAllowed() {
    YardWords.sunGrid(plan, Length.metres(5));
    YardWords.groundFall(plan, Length.ZERO, Length.metres(2), deg(90));
    SunSettings said = SunSettings.of(draft.freeze());
    assertEquals(5, said.cell().metres(), 1e-12);
    assertEquals(0, said.fall().orElseThrow().slope());
  }

  @Test
  void settings_areAsSaid_skylineInOrderOfBearing() {
    YardWords.skyline(plan, deg(200), deg(12));
    YardWords.skyline(plan, deg(100), deg(7));
    YardWords.groundFall(plan, Length.feet(1), Length.feet(20), deg(180));
    YardWords.shadeStage(plan, "year 5");
    SunSettings said = SunSettings.of(draft.freeze());
    assertEquals(
        List.of(100.0, 200.0),
        said.skyline().stream().map(s -> (double) Math.round(s.bearing().degrees())).toList());
    assertEquals(7, said.skyline().get(0).rise().degrees(), 1e-9);
    assertEquals(0.05, said.fall().orElseThrow().slope(), 1e-12);
    assertEquals(180, said.fall().orElseThrow().towards().degrees(), 1e-9);
    assertEquals(Obstacle.Stage.YEAR_5, said.stage());
  }

  @Test
  void unsaid_cellsAreAFoot_plantsGrown_theSeasonThatOfTheHemisphere() {
    SunSettings north = SunSettings.of(draft.freeze());
    assertEquals(1, north.cell().feet(), 1e-12);
    assertEquals(Obstacle.Stage.MATURE, north.stage());
    assertEquals(new Dates(MonthDay.of(4, 1), MonthDay.of(9, 30)), north.season());
    assertEquals(
        new Dates(MonthDay.of(10, 1), MonthDay.of(3, 31)),
        SunSettings.of(TestYards.at(-35, 150).freeze()).season());
  }

  /** Days of a year without a leap day, 1 January 0: 31 March 89, 15 April 104, 15 October 287. */
  @ParameterizedTest
  @CsvSource({
    "10-15, 03-31, 286, false",
    "10-15, 03-31, 287, true",
    "10-15, 03-31, 0, true",
    "10-15, 03-31, 89, true",
    "10-15, 03-31, 90, false",
    "04-15, 10-15, 103, false",
    "04-15, 10-15, 104, true",
    "04-15, 10-15, 287, true",
    "04-15, 10-15, 288, false",
    "04-15, 10-15, 0, false",
    "04-15, 04-15, 104, true",
    "04-15, 04-15, 105, false"
  })
  void dates_includeBothEnds_alsoOverNewYear(String from, String to, int day, boolean held) {
    assertEquals(held, Dates.read(SourceRef.NONE, from, to).holds(day));
  }

  @Test
  void whatStandsAlready_cannotBeProposed() {
    BedScope bed = bed("a");
    Handle handle = new Handle(bed.element().id(), TestYards.rectangle(0, 0, 2, 1));
    bed.element().attributes().add(yardloom.kernel.plan.Standing.KEY, true, SourceRef.NONE);
    PlanException e = assertThrows(PlanException.class, () -> ProposedWords.proposed(plan, handle));
    assertEquals(ProblemCode.CONTRADICTION, e.problems().get(0).code());
    BedScope other = bed("b");
    ProposedWords.proposed(plan, new Handle(other.element().id(), TestYards.rectangle(0, 0, 2, 1)));
    assertEquals(1, ProposedWords.proposed(draft.freeze()).size());
    assertTrue(
        draft.freeze().all(Element.Bed.class).stream()
            .filter(b -> b.id().name().equals("b"))
            .noneMatch(Element.Bed::stands));
  }
}
