package yardloom.planting.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantingPlugin;
import yardloom.planting.rotation.RotationWords;

/** Rows, rings, drifts and mixes in a bed of 6 by 4 m, worked by hand. */
class PlacingYardTest {
  private static final SourceRef HERE = new SourceRef("bed.groovy", 5, 1);
  private static final String LOW = "garden strawberry";
  private static final String TALL = "highbush blueberry";

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "USD"));
  private final BedScope bed = bed();

  private BedScope bed() {
    Shape shape = Shape.rectangle(Point.metres(0, 0), m(6), m(4));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, "a"),
            HERE,
            c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
    return new BedScope(draft, element, HERE);
  }

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private void row(String plant, double y) {
    PlacingWords.plantRow(
        bed, plant, Line.between(Point.metres(1, y), Point.metres(5, y)), m(0.5), null);
  }

  private Outcome outcome() {
    return new Study(PluginLoader.of(List.of(new PlantingPlugin()))).of(draft.freeze());
  }

  private Stand stand(String plant) {
    return outcome().results().all(YardFacts.STANDS).stream()
        .filter(s -> s.plant().equals(plant))
        .findFirst()
        .orElseThrow();
  }

  /** 4 m hold eight at half a metre, from 1.25 to 4.75 m. */
  @Test
  void row_standsAlongItsLine() {
    row(LOW, 2);
    List<Point> at = stand(LOW).placed().at();
    assertEquals(8, at.size());
    assertEquals(1.25, at.get(0).x().metres(), 1e-9);
    assertEquals(4.75, at.get(7).x().metres(), 1e-9);
  }

  /** A row of half a metre keeps a quarter of it, 125 mm, from the edge. */
  @Test
  void row_tooNearTheEdge_isLeftOut() {
    row(LOW, 0.12);
    assertEquals(
        0,
        outcome().results().all(YardFacts.STANDS).stream()
            .mapToInt(s -> s.placed().at().size())
            .sum());
  }

  /** Five about (2, 1): all within a metre of it. */
  @Test
  void drift_isAGroup() {
    PlacingWords.plantDrift(bed, LOW, Point.metres(2, 1), 5, m(0.4), null);
    List<Point> at = stand(LOW).placed().at();
    assertEquals(5, at.size());
    at.forEach(p -> assertEquals(0, p.distance(Point.metres(2, 1)).metres(), 0.7));
  }

  /** Northern sun comes from below on the plan: what is tall there shades what is behind it. */
  @ParameterizedTest
  @CsvSource({"40, 1, 3, 1", "40, 3, 1, 0", "-35, 1, 3, 0", "-35, 3, 1, 1"})
  void tallKinds_onTheSunnySide_areTold(double latitude, double tallY, double lowY, int found) {
    draft.site(
        new Site(
            "here",
            Angle.degrees(latitude),
            Angle.degrees(10),
            m(100),
            ZoneId.of("UTC"),
            Angle.ZERO),
        HERE);
    row(TALL, tallY);
    row(LOW, lowY);
    assertEquals(
        found,
        outcome().findings().stream().filter(f -> f.rule().equals("planting.tall-side")).count());
  }

  private static void refused(Executable word) {
    assertThrows(PlanException.class, word);
  }

  @Test
  void words_haveTheirRanges() {
    Length close = Length.inches(0.9);
    Length wide = Length.feet(60.1);
    for (Length bad : List.of(close, wide)) {
      refused(() -> PlantingWords.plant(bed, LOW, bad, null, null, null, null, null));
      refused(() -> PlantingWords.plant(bed, LOW, null, bad, null, null, null, null));
      refused(
          () ->
              PlacingWords.plantRow(
                  bed, LOW, Line.between(Point.metres(1, 1), Point.metres(5, 1)), bad, null));
      refused(() -> PlacingWords.plantThinned(bed, LOW, bad, 3));
    }
    PlantingWords.plant(bed, LOW, Length.inches(1), Length.feet(60), null, null, null, null);
    refused(() -> PlantingWords.plant(bed, LOW, null, null, null, 0, null, null));
    refused(() -> PlantingWords.plant(bed, LOW, null, null, null, 1.1, null, null));
    refused(() -> PlacingWords.plantMix(bed, LOW, 0.5, 3, null));
    refused(() -> PlacingWords.plantThinned(bed, LOW, m(1), 1));
    refused(() -> PlacingWords.plantThinned(bed, LOW, m(1), 11));
    PlanScope plan = new PlanScope(draft, HERE);
    refused(() -> RotationWords.rotation(plan, 1));
    refused(() -> RotationWords.rotation(plan, 9));
    refused(() -> RotationWords.rotation(plan, 2.5));
    RotationWords.rotation(plan, 8);
    refused(() -> RotationWords.rotation(plan, 2));
  }
}
