package yardloom.water.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;
import yardloom.water.WaterPlugin;
import yardloom.water.drip.DripWords;
import yardloom.water.head.HeadWords;

/** What the installer asks of fittings, sleeves and head, from words to printed tables. */
class FittingsByHandTest {
  private static final SourceRef HERE = new SourceRef("fittings.groovy", 3, 1);

  private final Draft draft = draft();

  private static Draft draft() {
    return new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
  }

  private static Shape box(double x, double y, double w, double d) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(w), Length.metres(d));
  }

  private static void bed(Draft draft, String name, Shape shape) {
    ElementId id = new ElementId(ElementKind.BED, name);
    BedScope bed =
        new BedScope(
            draft,
            draft.add(id, HERE, c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL)),
            HERE);
    DripWords.drip(
        bed, Flow.litresPerHour(2), Length.metres(0.3), Length.metres(0.4), null, null, null, null);
  }

  private static void tap(Draft draft, String name) {
    draft.add(
        new ElementId(ElementKind.WATER_POINT, name),
        HERE,
        c -> new Element.WaterPoint(c, Point.metres(0, 0), "mains"));
  }

  private static Outcome outcome(Draft draft) {
    return new Study(PluginLoader.of(List.of(new WaterPlugin()))).of(draft.freeze());
  }

  private static List<String> printed(Outcome outcome, String id) {
    return RoofYard.printed(RoofYard.table(outcome, id));
  }

  private static Map<String, Integer> pieces(Outcome outcome) {
    Map<String, Integer> pieces = new TreeMap<>();
    for (String row : printed(outcome, "irrigation-parts")) {
      String[] cells = row.split(" \\| ", -1);
      if (!cells[3].isBlank()) {
        pieces.put(cells[0], Integer.parseInt(cells[3].trim()));
      }
    }
    return pieces;
  }

  private static int sum(Table table, String column) {
    int at = table.columns().stream().map(c -> c.id()).toList().indexOf(column);
    return table.rows().stream()
        .mapToInt(r -> ((Number) r.get(at).value().orElseThrow()).intValue())
        .sum();
  }

  private static void yard(Draft draft, double y, double depth) {
    tap(draft, "side tap");
    bed(draft, "long", box(10, -0.6, 8, 1.2));
    bed(draft, "wide", box(10, y, 5, depth));
    bed(draft, "strip", box(10, y + depth + 4, 4, 0.4));
    draft.add(
        new ElementId(ElementKind.PAVING, "drive"),
        HERE,
        c -> new Element.Paving(c, box(3, -20, 2.5, 60), "concrete"));
    HeadWords.supply(new PlanScope(draft, HERE), Flow.litresPerHour(900), null, null);
  }

  /**
   * Beds 1.2, 2.0 and 0.4 m deep with rows 0.4 m apart have 3, 5 and 1 rows. The pipe parts twice:
   * first for the long bed, then for the wide one, the rest goes on straight. In a bed of n rows on
   * one header: a tee where the pipe comes in, a tee at each row between, an elbow at the last, so
   * (3 − 1) + (5 − 1) = 6 tees and 2 elbows; the strip's one row is coupled; 9 rows end in caps.
   * The pipe crosses the drive of 2.5 m once and squarely.
   */
  @Test
  void fittingsAndSleeves_areThoseCountedByHand() {
    yard(draft, 6, 2.0);
    Outcome outcome = outcome(draft);

    assertEquals(
        List.of("1 | 2 | fork: Strip + Wide / Long; fork: Strip / Wide | 0 | 0 | 6 | 2 | 1 | 9"),
        printed(outcome, "fittings"));
    assertEquals(List.of("1 | drive | 2.50 | Z1: 16 mm"), printed(outcome, "sleeves"));
    Map<String, Integer> pieces = pieces(outcome);
    assertEquals(2, pieces.get("tees for tube"));
    assertEquals(6, pieces.get("tees in the beds"));
    assertEquals(2, pieces.get("elbows in the beds"));
    assertEquals(1, pieces.get("couplings from pipe to a single row"));
    assertEquals(9, pieces.get("flush caps"));
    assertEquals(1, pieces.get("threaded adapters for tube"));
    assertEquals(null, pieces.get("threaded tees between the zone valves"));
  }

  /**
   * (1.2 − 2 × 0.4) / 2 and (2.0 − 4 × 0.4) / 2 are both 0.2 m from the edge, and so is the middle
   * of 0.4 m. 2 L/h, 0.528 gph, wet medium soil 2 + 0.028 / 0.5 = 2.057 ft, 31.3 cm to each side.
   */
  @Test
  void rows_lieByTheBed() {
    yard(draft, 6, 2.0);
    assertEquals(
        List.of(
            "long, wide | 20.0 | 40.0 |  | 30.0 | 31.3 |  | ",
            "strip | 20.0 |  |  | 30.0 | 31.3 |  | "),
        printed(outcome(draft), "drip-rows"));
  }

  /** By the tap's name, in the order of the head table, with a timer that needs no wiring. */
  @Test
  void head_standsByTheTap_andFlowsAwayFromIt() {
    yard(draft, 6, 2.0);
    List<String> notes = notes(outcome(draft));

    assertTrue(
        notes.contains(
            "Flow: tap side tap → shut-off valve → timer → vacuum breaker → filter → zone valve →"
                + " regulator → zone 1. The arrow on each part points away from the tap."),
        notes::toString);
    assertTrue(notes.stream().anyMatch(n -> n.contains("on batteries")), notes::toString);
    assertTrue(notes.stream().anyMatch(n -> n.contains("licensed electrician")), notes::toString);
  }

  /** Without a timer nothing is said of its power. */
  @Test
  void headWithoutTimer_asksForNoPower() {
    yard(draft, 6, 2.0);
    HeadWords.headAssembly(new PlanScope(draft, HERE), null, null, false);
    assertTrue(notes(outcome(draft)).stream().noneMatch(n -> n.contains("batteries")));
  }

  private static List<String> notes(Outcome outcome) {
    return HeadPlace.notes(outcome.plan(), outcome.results());
  }

  /**
   * Together the fittings of all zones are those that are bought, and in the beds as many as the
   * tubes need: a tree of n rows on one pipe has n − 1 headers.
   */
  @Property(tries = 15, seed = "20261127")
  void fittings_areThoseOfThePartsList(
      @ForAll @DoubleRange(min = 2, max = 12) double y,
      @ForAll @DoubleRange(min = 0.5, max = 4) double depth) {
    Draft yard = draft();
    yard(yard, y, depth);
    Outcome outcome = outcome(yard);
    Table table = RoofYard.table(outcome, "fittings");
    Map<String, Integer> pieces = pieces(outcome);
    assertEquals(pieces.getOrDefault("tees for tube", 0), sum(table, "tees"));
    assertEquals(pieces.getOrDefault("elbows for tube", 0), sum(table, "elbows"));
    assertEquals(pieces.getOrDefault("reducers for tube", 0), sum(table, "reducers"));
    assertEquals(pieces.getOrDefault("tees in the beds", 0), sum(table, "bed-tees"));
    assertEquals(pieces.getOrDefault("elbows in the beds", 0), sum(table, "bed-elbows"));
    assertEquals(
        pieces.getOrDefault("couplings from pipe to a single row", 0), sum(table, "couplings"));
    assertEquals(pieces.get("flush caps"), sum(table, "caps"));
    // Three ways from one valve part twice, whatever the way.
    assertEquals(2, sum(table, "tees"));
  }
}
