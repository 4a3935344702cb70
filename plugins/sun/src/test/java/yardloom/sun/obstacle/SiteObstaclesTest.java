package yardloom.sun.obstacle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;

/** What stands in the sun's way, body by body. */
class SiteObstaclesTest {
  private static List<Obstacle> of(Draft draft) {
    return FactGraph.of(List.of(new SiteObstacles())).run(draft.freeze()).all(YardFacts.OBSTACLES);
  }

  private static List<Obstacle> house(Element.RoofForm roof, double overhangM) {
    Draft draft = TestYards.at(40, -105);
    draft.add(
        new ElementId(ElementKind.BUILDING, "house"),
        SourceRef.NONE,
        c ->
            new Element.Building(
                c,
                TestYards.rectangle(0, 0, 10, 6),
                Length.metres(3),
                Length.metres(5),
                Length.metres(overhangM),
                roof,
                false));
    return of(draft);
  }

  private static void assertBody(
      Obstacle.Form form, double areaM2, double baseM, double topM, Obstacle body) {
    assertEquals(form, body.form());
    assertEquals(areaM2, body.footprint().area().squareMetres(), 1e-6);
    assertEquals(baseM, body.base().metres(), 1e-9);
    assertEquals(topM, body.top().metres(), 1e-9);
  }

  /** Eaves of half a metre over 10 by 6 m cover 11 by 7; a flat roof's edge is 20 cm thick. */
  @Test
  void house_isItsWallsAndItsRoof() {
    List<Obstacle> gable = house(Element.RoofForm.GABLE, 0.5);
    assertEquals(2, gable.size());
    assertBody(Obstacle.Form.PRISM, 60, 0, 3, gable.get(0));
    assertBody(Obstacle.Form.GABLE, 77, 3, 5, gable.get(1));
    List<Obstacle> flat = house(Element.RoofForm.FLAT, 0.5);
    assertEquals(2, flat.size());
    assertBody(Obstacle.Form.PRISM, 77, 2.8, 3, flat.get(1));
    assertEquals(1, house(Element.RoofForm.FLAT, 0).size());
  }

  private static List<Obstacle> tree(double latitude, Element.Leaf leaf, double trunkM) {
    Draft draft = TestYards.at(latitude, -105);
    Point at = Point.metres(4, 5);
    draft.add(
        new ElementId(ElementKind.TREE, "tree"),
        SourceRef.NONE,
        c ->
            new Element.Tree(
                c,
                at,
                Shape.circle(at, Length.metres(3)),
                Length.metres(6),
                Length.metres(9),
                Length.metres(2),
                Length.metres(trunkM),
                leaf));
    return of(draft);
  }

  /**
   * In leaf a fifth of the light passes, bare 65 % (recalled). In leaf from 15 April, 16 of its 30
   * days, to 1 November, one of 30; in the south half a year later, from 15 October, 17 of 31 days,
   * to 1 May. The stem is solid up to a quarter into the crown: 2 + 7 / 4 m.
   */
  @Test
  void tree_passesLightByMonth_itsStemNone() {
    List<Obstacle> north = tree(40, Element.Leaf.DECIDUOUS, 0.4);
    assertEquals(2, north.size());
    List<Double> passes = north.get(0).passes();
    assertEquals(0.65, passes.get(0), 1e-12);
    assertEquals(0.2 * 16 / 30 + 0.65 * 14 / 30, passes.get(3), 1e-12);
    assertEquals(0.2, passes.get(6), 1e-12);
    assertEquals(0.2 / 30 + 0.65 * 29 / 30, passes.get(10), 1e-12);
    assertEquals(Obstacle.Form.ELLIPSOID, north.get(0).form());
    assertEquals(2, north.get(0).base().metres(), 1e-9);
    assertEquals(Obstacle.Form.CYLINDER, north.get(1).form());
    assertEquals(3.75, north.get(1).top().metres(), 1e-9);
    assertEquals(0.4, north.get(1).footprint().bounds().getWidth(), 0.01);
    assertEquals(Collections.nCopies(12, 0.0), north.get(1).passes());
    List<Double> south = tree(-40, Element.Leaf.DECIDUOUS, 0).get(0).passes();
    assertEquals(0.2 * 17 / 31 + 0.65 * 14 / 31, south.get(9), 1e-12);
    assertEquals(0.2 / 31 + 0.65 * 30 / 31, south.get(4), 1e-12);
    List<Obstacle> fir = tree(40, Element.Leaf.EVERGREEN, 0);
    assertEquals(1, fir.size());
    assertEquals(Collections.nCopies(12, 0.2), fir.get(0).passes());
  }

  @Test
  void fencesPassTheirOpenness_whatHasNoHeightCastsNothing_norWhatHasNoSite() {
    Draft draft = TestYards.at(40, -105);
    Line line = Line.between(Point.metres(0, 0), Point.metres(5, 0));
    draft.add(
        new ElementId(ElementKind.FENCE, "fence"),
        SourceRef.NONE,
        c ->
            new Element.Fence(
                c, line, TestYards.rectangle(0, 0, 5, 0.1), Length.metres(1.8), 0.35));
    draft.add(
        new ElementId(ElementKind.STRUCTURE, "pit"),
        SourceRef.NONE,
        c -> new Element.Structure(c, TestYards.rectangle(0, 2, 1, 3), Length.ZERO));
    List<Obstacle> found = of(draft);
    assertEquals(1, found.size());
    assertEquals(0.35, found.get(0).passes().get(4));
    assertEquals(1.8, found.get(0).top().metres(), 1e-9);
    Draft nowhere = TestYards.nowhere();
    nowhere.add(
        new ElementId(ElementKind.STRUCTURE, "shed"),
        SourceRef.NONE,
        c -> new Element.Structure(c, TestYards.rectangle(0, 2, 1, 3), Length.metres(2)));
    assertTrue(of(nowhere).isEmpty());
  }
}
