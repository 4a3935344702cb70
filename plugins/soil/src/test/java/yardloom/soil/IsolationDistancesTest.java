package yardloom.soil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.facts.PlanKit;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.site.SitePlugin;
import yardloom.site.built.BuiltWords;
import yardloom.site.lot.LotWords;
import yardloom.site.setback.RestrictionWords;
import yardloom.soil.region.LocalCheckWords;
import yardloom.soil.region.RegionWords;

/**
 * Distances of one county's table (soil check P19) as local data: they hold where a file says so,
 * and nowhere else.
 */
class IsolationDistancesTest {
  private static final double OTHER_FT = 300;

  private static Point p(double xFt, double yFt) {
    return new Point(Length.feet(xFt), Length.feet(yFt));
  }

  /** A lot of 500 by 300 ft from its western line at x = 0. */
  private static PlanKit lot() {
    PlanKit kit = PlanKit.us();
    LotWords.lot(kit.words(), List.of(p(0, 0), p(500, 0), p(500, 300), p(0, 300)), null);
    return kit;
  }

  /** Puts something so that its right side or point lies at x. */
  private static void endingAt(PlanKit kit, String kind, String name, double xFt) {
    if (kind.equals("water point")) {
      BuiltWords.tap(kit.words(), name, p(xFt, 105), "well");
    } else {
      RestrictionWords.keepOut(kit.words(), name, PlanKit.box(xFt - 10, 100, 10, 10), "septic");
    }
  }

  /** Something at x = 300 ft to keep away from; the lot's western line needs nothing. */
  private static double other(PlanKit kit, String kind, String name) {
    switch (kind) {
      case "lot line" -> {
        return 0;
      }
      case "building" -> kit.house(PlanKit.box(OTHER_FT, 90, 30, 30));
      default ->
          RestrictionWords.keepOut(kit.words(), name, PlanKit.box(OTHER_FT, 100, 10, 10), "septic");
    }
    return OTHER_FT;
  }

  /** The two, so far apart. */
  private static PlanKit yard(String kind, String named, String to, String toNamed, double gapFt) {
    PlanKit kit = lot();
    double at = other(kit, to, toNamed);
    endingAt(kit, kind, named, to.equals("lot line") ? gapFt + 10 : at - gapFt);
    return kit;
  }

  private static void rule(
      PlanKit kit, String kind, String named, double feet, String to, String toNamed, String by) {
    Source source =
        RegionWords.publication(kit.words(), "Isolation distances", by, null, null, "read");
    LocalCheckWords.localCheck(
        kit.words(),
        "isolation",
        kind,
        named,
        Length.feet(feet),
        to,
        toNamed,
        null,
        "They stand too near each other.",
        "Move one of them.",
        source);
  }

  private static List<Finding> all(Plan plan) {
    Results r = PlanKit.run(plan);
    Stream<Check> checks =
        Stream.concat(
            new SitePlugin().checks().stream(),
            PlanKit.plugins().stream().flatMap(p -> p.checks().stream()));
    return checks.flatMap(c -> c.run(plan, r).stream()).toList();
  }

  private static List<Finding> isolation(PlanKit kit) {
    return all(kit.plan()).stream().filter(f -> f.rule().equals("region.isolation")).toList();
  }

  @ParameterizedTest(name = "{0}: {2} to {3} {4}, {5} ft")
  @CsvFileSource(resources = "/yardloom/soil/isolation-distances.csv", numLinesToSkip = 1)
  void countysDistance_asLocalData_isFoundWithSourceJustBelowIt(
      String id,
      String kind,
      String named,
      String to,
      String toNamed,
      double feet,
      String source,
      String mark) {
    // The kit's house has its name from elsewhere; the table's "basement" is whichever stands
    // there.
    String other = to.equals("building") ? "house" : toNamed;
    PlanKit near = yard(kind, named, to, other, feet - 1);
    rule(near, kind, named, feet, to, other, source);
    List<Finding> found = isolation(near);
    assertEquals(1, found.size(), found::toString);
    Finding f = found.get(0);
    String limit = "lies " + Math.round(feet - 1) + " ft from ";
    assertTrue(f.text().contains(limit), f.text());
    assertTrue(f.text().contains("the limit is " + Math.round(feet) + " ft"), f.text());
    assertTrue(f.source().toString().contains("Washtenaw County"), f.source().toString());
    assertTrue(f.advice().endsWith("Verify locally."), f.advice());

    PlanKit far = yard(kind, named, to, other, feet);
    rule(far, kind, named, feet, to, other, source);
    assertEquals(List.of(), isolation(far), "a thing at the limit is far enough");
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/yardloom/soil/isolation-distances.csv", numLinesToSkip = 1)
  void withoutLocalData_nothingIsSaid(
      String id, String kind, String named, String to, String toNamed) {
    Plan plan = yard(kind, named, to, toNamed, 0.5).plan();
    List<Finding> about =
        all(plan).stream()
            .filter(f -> f.element().filter(e -> e.name().equals(named)).isPresent())
            .toList();
    assertEquals(List.of(), about, "no built-in verdict");
  }

  /** Coordinates in metres do not hold feet exactly: the limit is far enough anywhere on a lot. */
  @Property(tries = 100, seed = "20261125")
  void limit_anywhereOnALot_isFarEnoughAndAnEighthOfAnInchLessIsNot(
      @ForAll @IntRange(min = 1, max = 280) int feet, @ForAll boolean isShort) {
    double gap = isShort ? feet - 1.0 / 96 : feet;
    PlanKit kit = yard("keep out", "tank", "keep out", "field", gap);
    rule(kit, "keep out", "tank", feet, "keep out", "field", "county");
    assertEquals(isShort ? 1 : 0, isolation(kit).size());
  }

  @Test
  void otherName_isNotMeasuredTo() {
    PlanKit kit = yard("water point", "well", "keep out", "drain field", 20);
    rule(kit, "water point", "well", 50, "keep out", "septic tank", "county");
    assertEquals(List.of(), isolation(kit));
    PlanKit any = yard("water point", "well", "keep out", "drain field", 20);
    rule(any, "water point", "well", 50, "keep out", null, "county");
    assertEquals(1, isolation(any).size());
  }

  /** A tap has no ground and a line's ground is its clearance: neither may stand for the thing. */
  @Test
  void tapAndLine_areMeasuredToTheirPointAndMiddle() {
    PlanKit kit = lot();
    kit.bed("beans", BedUse.ANNUAL, PlanKit.box(100, 100, 20, 10));
    BuiltWords.tap(kit.words(), "well", p(130, 105), "well");
    BuiltWords.utility(
        kit.words(), "gas", Line.between(p(94, 0), p(94, 200)), "gas", Length.feet(4));
    rule(kit, "bed", "beans", 10, "water point", null, "county");
    rule(kit, "bed", "beans", 6, "utility", null, "county");
    assertEquals(List.of(), isolation(kit), "10 ft from the tap, 6 ft from the line");
    rule(kit, "bed", "beans", 6.5, "utility", null, "county");
    Finding f = isolation(kit).get(0);
    assertTrue(f.text().contains("6 ft from utility \"gas\""), f.text());
    // Half a foot of the bed's 10 ft side lies within the limit.
    assertEquals(5, f.ground().orElseThrow().area().squareFeet(), 0.01);
  }

  @Test
  void lotLine_marksTheStripAndNamesTheSide() {
    PlanKit kit = lot();
    kit.bed("beans", BedUse.ANNUAL, PlanKit.box(4, 100, 20, 10));
    rule(kit, "bed", "beans", 10, "lot line", null, "county");
    Finding f = isolation(kit).get(0);
    assertTrue(f.text().contains("4 ft from lot line \""), f.text());
    assertEquals(6 * 10, f.ground().orElseThrow().area().squareFeet(), 0.01);
  }

  @Test
  void lotLine_withoutALot_isNothingToMeasureTo() {
    PlanKit kit = PlanKit.us();
    kit.bed("beans", BedUse.ANNUAL, PlanKit.box(4, 100, 20, 10));
    rule(kit, "bed", "beans", 10, "lot line", null, "county");
    assertEquals(List.of(), isolation(kit));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lot line", "basement"})
  void kind_thatIsNoThing_isRefused(String kind) {
    PlanException e =
        assertThrows(
            PlanException.class, () -> rule(lot(), kind, null, 10, "building", null, "county"));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
  }

  @Test
  void toNamed_withoutTo_isRefused() {
    PlanKit kit = lot();
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                LocalCheckWords.localCheck(
                    kit.words(),
                    "x",
                    "bed",
                    null,
                    null,
                    null,
                    "well",
                    Length.inches(1),
                    "say",
                    "do",
                    null));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
  }
}
