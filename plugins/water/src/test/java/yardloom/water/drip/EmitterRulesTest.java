package yardloom.water.drip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;
import yardloom.water.WaterPlugin;

/**
 * The rules of single emitters, each from both sides, to the printed tables: the share is that of
 * training pages of an equipment maker (read), 60 percent; distances are common practice.
 */
class EmitterRulesTest {
  private static final SourceRef HERE = new SourceRef("emitters.groovy", 3, 1);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
  private final List<Stand> stands = new ArrayList<>();

  private void bed(String name, double atFt, double longFt, double wideFt) {
    Shape shape =
        Shape.rectangle(
            Point.metres(Length.feet(atFt).metres(), 0), Length.feet(longFt), Length.feet(wideFt));
    BedScope bed =
        new BedScope(
            draft,
            draft.add(
                new ElementId(ElementKind.BED, name),
                HERE,
                c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL)),
            HERE);
    EmitterWords.emitters(bed, Flow.gallonsPerHour(1), null, null, null);
  }

  private void plant(String bed, double atFt, double spreadFt) {
    stands.add(
        new Stand(
            new ElementId(ElementKind.BED, bed),
            HERE,
            new Stand.Kind("thyme", "", Length.feet(spreadFt)),
            new Stand.Placed(
                List.of(Point.metres(Length.feet(atFt + 1).metres(), 0.1)),
                Length.feet(spreadFt).by(Length.feet(spreadFt)),
                Optional.empty()),
            new Stand.Thirst(
                Collections.nCopies(12, 0.5), Source.commonPractice("test"), Optional.empty()),
            Stand.Planted.THROUGH_CARDBOARD));
  }

  private Outcome outcome() {
    Giver giver =
        new Giver(
            Set.of(YardFacts.STANDS),
            (plan, out) -> stands.forEach(s -> out.give(YardFacts.STANDS, s)));
    return new Study(PluginLoader.of(List.of(new WaterPlugin(), giver))).of(draft.freeze());
  }

  private static Map<String, String> column(Table table, String key, String column) {
    List<String> ids = table.columns().stream().map(c -> c.id()).toList();
    Map<String, String> texts = new HashMap<>();
    for (String row : RoofYard.printed(table)) {
      String[] cells = row.split(" \\| ", -1);
      texts.put(cells[ids.indexOf(key)], cells[ids.indexOf(column)]);
    }
    return texts;
  }

  /**
   * One emitter wets π / 4 × 3² = 7.069 sq ft of loam. 12 × 7.9 = 94.8 sq ft × 0.6 / 7.069 − 0.1 =
   * 7.95: 8, with a share of 0.61 9. 7 × 5.3 = 37.1 sq ft × 0.6 / 7.069 − 0.1 = 3.05: 4, with 0.59
   * 3.
   */
  @Test
  void share_isSixtyPercent() {
    bed("more", 0, 12, 7.9);
    bed("less", 20, 7, 5.3);
    Table table = RoofYard.table(outcome(), "emitters");
    assertEquals("8", column(table, "in", "each").get("more"));
    assertEquals("4", column(table, "in", "each").get("less"));
  }

  /**
   * Without plants a bed counts as one wide plant, so its tubes lie 6 ft apart: 9.1 / 6 = 1.52 are
   * 2 (at 6.1 ft 1), 14.9 / 6 = 2.48 are 2 (at 5.9 ft 3).
   */
  @Test
  void tubes_lieSixFeetApartAtMost() {
    bed("nine", 0, 30, 9.1);
    bed("fifteen", 40, 31, 14.9);
    Map<String, String> rows = column(RoofYard.table(outcome(), "irrigation"), "bed", "rows");
    assertEquals("2", rows.get("nine"));
    assertEquals("2", rows.get("fifteen"));
  }

  /** Thyme half a foot wide: 2.45 / 1 are 2 (at 0.95 ft 3), 2.55 / 1 are 3 (at 1.05 ft 2). */
  @Test
  void tubes_lieAFootApartAtLeast() {
    bed("two", 0, 20, 2.45);
    bed("three", 30, 21, 2.55);
    plant("two", 0, 0.5);
    plant("three", 30, 0.5);
    Outcome outcome = outcome();
    Map<String, String> rows = column(RoofYard.table(outcome, "irrigation"), "bed", "rows");
    assertEquals("2", rows.get("two"));
    assertEquals("3", rows.get("three"));
    assertTrue(
        RoofYard.table(outcome, "emitters").notes().get(0).contains("12 in (30 cm) at least"));
  }

  /** A corner of 3.1 in takes a tube, one of 2.9 in none. */
  @Test
  void tubes_ofLessThanThreeInches_areLeftOut() {
    bed("kept", 0, 3.1 / 12, 0.2);
    bed("left", 5, 2.9 / 12, 0.19);
    Map<String, String> rows = column(RoofYard.table(outcome(), "irrigation"), "bed", "rows");
    assertEquals("1", rows.get("kept"));
    assertEquals("0", rows.getOrDefault("left", "0"));
  }
}
