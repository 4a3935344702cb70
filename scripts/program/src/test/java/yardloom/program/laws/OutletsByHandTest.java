package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.geom.Point;

/** From plan text to each outlet, to the ends of zones and to the drawing of the head. */
class OutletsByHandTest {
  /** Kale stands in the middle, at 10 ft; the row lies a hand, 3 in, beside it. */
  private static final double ROW_FT = 9.75;

  private static final double PSI = 6.894757;
  private static final double GPH = 3.785411784;

  /** Ground that rises 2 ft over 40 ft to the north; the row lies 10 to 14 ft south of its end. */
  private static final String YARD =
      """
      plan 'Outlets', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      levels { level(point(0.ft, 0.ft), 100.ft) ; level(point(50.ft, 0.ft), 100.ft) ; level(point(50.ft, 40.ft), 102.ft) ; level(point(0.ft, 40.ft), 102.ft) }
      tap 'bib', point(10.ft, 4.ft)
      headAssembly regulator: 25.psi, backflow: '%s'
      bed('row', rect(9.ft, 10.ft, 2.ft, 4.ft), use: 'annual') {
        drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 24.inch, rated: 20.psi
        plant 'kale'
      }
      %s
      """;

  /**
   * By hand: the regulator lets 25 psi through at the tap, 4 ft north. Pipe to the bed loses next
   * to nothing at 3.9 gph. The first outlet stands at 10.5 ft, 6.5 ft × 0.05 = 0.325 ft higher:
   * less 0.141 psi (0.4335 a foot). 0.9 × √(24.86 / 20) = 1.0034 gph. All four differ by less than
   * a percent: 1.5 ft × 0.05 × 0.4335 = 0.07 psi.
   */
  @Test
  void eachOutlet_hasItsPressureAndFlow() {
    Drawn drawn = Drawn.of(YARD.formatted("vacuum breaker", ""));
    assertEquals(List.of("1 to 4"), drawn.texts("outlets", "outlets"));
    assertEquals(0.5 * 0.3048, drawn.exact("outlets", "row", "at"), 1e-9);
    assertEquals(24.86 * PSI, drawn.exact("outlets", "row", "pressure"), 0.01 * PSI);
    assertEquals(1.0034 * GPH, drawn.exact("outlets", "row", "flow"), 0.0005 * GPH);
  }

  /** The last outlet, highest up, is the zone's end; its pressure stands beside it on the plan. */
  @Test
  void endOfTheZone_isItsWeakestOutlet() {
    Drawn drawn = Drawn.of(YARD.formatted("vacuum breaker", ""));
    List<Mark> marks =
        drawn.outcome().layers().entrySet().stream()
            .filter(e -> e.getKey().id().equals("water.zone-ends"))
            .flatMap(e -> e.getValue().marks().stream())
            .toList();
    Mark.Symbol end =
        (Mark.Symbol) marks.stream().filter(Mark.Symbol.class::isInstance).findFirst().get();
    assertEquals(0, end.at().distance(Point.metres(ROW_FT * 0.3048, 13.5 * 0.3048)).metres(), 1e-6);
    Mark.Label label =
        (Mark.Label) marks.stream().filter(Mark.Label.class::isInstance).findFirst().get();
    assertEquals("Z1: 24.8 psi", label.text().replace('\u00a0', ' '));
    assertEquals(24.79 * PSI, drawn.exact("zones", "1", "least"), 0.01 * PSI);
  }

  private static List<String> labels(Drawn drawn) {
    Panel.Figure figure =
        drawn.outcome().sheets().stream()
            .filter(s -> s.id().equals("irrigation"))
            .flatMap(s -> s.panels().stream())
            .filter(Panel.Figure.class::isInstance)
            .map(Panel.Figure.class::cast)
            .filter(f -> f.title().startsWith("Head assembly"))
            .findFirst()
            .get();
    return figure.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(m -> ((Mark.Label) m).text().replace("\n", " "))
        .toList();
  }

  /**
   * The parts in their order (AMWUA and CSU Extension: shut-off or timer, backflow, filter,
   * regulator), each with what it is for, joints between them, and a branch for each zone.
   */
  @Test
  void head_isDrawnInOrder_withPurposeAndJoints() {
    List<String> labels = labels(Drawn.of(YARD.formatted("double check", "")));
    List<String> parts = labels.stream().filter(l -> l.matches("\\d .*")).toList();
    assertEquals(
        List.of(
            "1 shut-off valve",
            "2 timer",
            "3 double check",
            "4 filter",
            "5 zone valve",
            "6 regulator"),
        parts);
    for (String part : parts) {
      int at = labels.indexOf(part);
      assertTrue(labels.get(at + 1).split(" ").length > 3, part + " is for " + labels.get(at + 1));
    }
    assertEquals(1, labels.stream().filter("3/4 in hose"::equals).count());
    assertEquals(3, labels.stream().filter("3/4 in"::equals).count());
    assertTrue(labels.contains("Zone 1") && labels.contains("1/2 in polyethylene tube"));
  }

  /** Below a tank nothing guards the mains and nothing lowers the pressure. */
  @Test
  void headOfATank_isDrawnWithoutRegulator() {
    List<String> labels =
        labels(
            Drawn.of(
                YARD.formatted(
                    "vacuum breaker",
                    """
                    roof 'barn', rect(20.ft, 20.ft, 20.ft, 15.ft), surface: 'metal'
                    tank('butt', point(5.ft, 30.ft), roof: 'barn') { round diameter: 3.ft, height: 4.ft ; stand 2.ft }
                    supply tank: 'butt'
                    """)));
    assertEquals(
        List.of("1 shut-off valve", "2 timer", "3 filter", "4 zone valve"),
        labels.stream().filter(l -> l.matches("\\d .*")).toList());
    assertTrue(labels.contains("tank"), labels.toString());
  }

  /**
   * The ground rises 2 ft in 40. The tap stands at 4 ft, the last outlet of the row at 13.5: 9.5 ×
   * 0.05 = 0.475 ft above its ground. One of a bed at 38 ft lies 1.7 ft above it. On ground five
   * times as steep that is 8.5 ft: on no post in reach.
   */
  @Test
  void vacuumBreaker_isToldHowHighItHasToStand() {
    String near = head(Drawn.of(YARD.formatted("vacuum breaker", "")));
    assertTrue(near.contains("lies 0.5 ft (0.1 m) above"), near);
    String high =
        "bed('high', rect(20.ft, 37.ft, 4.ft, 2.ft), use: 'annual') { drip emitter: 0.9.gph,"
            + " spacing: 12.inch, rowSpacing: 24.inch }";
    Drawn flat = Drawn.of(YARD.formatted("vacuum breaker", high));
    assertTrue(head(flat).contains("lies 1.7 ft (0.5 m) above"), head(flat));
    assertEquals(0, tooHigh(flat));
    String steep = YARD.replace("102.ft", "110.ft");
    assertEquals(1, tooHigh(Drawn.of(steep.formatted("vacuum breaker", high))));
    assertEquals(0, tooHigh(Drawn.of(steep.formatted("reduced pressure", high))));
  }

  private static long tooHigh(Drawn drawn) {
    return drawn.outcome().findings().stream()
        .filter(f -> f.text().startsWith("the highest outlet lies 8.5 ft"))
        .count();
  }

  private static String head(Drawn drawn) {
    return drawn.outcome().sheets().stream()
        .flatMap(sheet -> sheet.panels().stream())
        .filter(Panel.Notes.class::isInstance)
        .map(Panel.Notes.class::cast)
        .filter(notes -> notes.title().equals("Head and timer"))
        .map(notes -> notes.paragraphs().toString())
        .findFirst()
        .orElseThrow()
        .replace('\u00a0', ' ');
  }
}
