package yardloom.kernel.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Reads.Question;
import yardloom.kernel.plan.Reads.Topic;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** What a plan answers, and what it notes of the question. */
class PlanReadingTest {
  private static final AttributeKey<String> SOIL = new AttributeKey<>("test.soil", String.class);
  private static final Shape GROUND =
      Shape.rectangle(Point.metres(0, 0), Length.metres(20), Length.metres(30));
  private static final PlanInfo INFO =
      new PlanInfo("p", "P", "", "", "", "", UnitSystem.METRIC, "$");

  private static SourceRef at(String file, int line) {
    return new SourceRef(file, line, 1);
  }

  private static Site site(double latitude) {
    return new Site(
        "S",
        Angle.degrees(latitude),
        Angle.degrees(8),
        Length.metres(120),
        ZoneId.of("UTC"),
        Angle.degrees(0));
  }

  /** 20 m × 30 m with 3 m kept free in the south and 5 m in the north. */
  private static Lot lot(String file) {
    List<Point> c =
        List.of(Point.metres(0, 0), Point.metres(20, 0), Point.metres(20, 30), Point.metres(0, 30));
    List<Lot.Edge> edges = new ArrayList<>();
    List<String> names = List.of("south", "east", "north", "west");
    List<Double> setbacks = List.of(3.0, 0.0, 5.0, 0.0);
    for (int i = 0; i < 4; i++) {
      edges.add(
          new Lot.Edge(
              names.get(i),
              Line.between(c.get(i), c.get((i + 1) % 4)),
              EdgeRole.SIDE,
              Length.metres(setbacks.get(i)),
              ""));
    }
    return new Lot(at(file, 2), GROUND, edges);
  }

  private static Set<Question> asked(Runnable work) {
    return Reads.noting(
            () -> {
              work.run();
              return "";
            })
        .questions();
  }

  @Test
  void questions_areNotedOneByOne() {
    Draft draft = new Draft(INFO);
    draft.site(site(50), SourceRef.NONE);
    draft.lot(lot("yard.groovy"));
    Plan plan = draft.freeze();
    ElementId kale = new ElementId(ElementKind.BED, "kale");
    assertEquals(Set.of(new Question(Topic.INFO, "")), asked(plan::info));
    assertEquals(Set.of(new Question(Topic.SITE, "")), asked(plan::isSouthern));
    assertEquals(Set.of(new Question(Topic.LOT, "")), asked(plan::lot));
    assertTrue(asked(plan::lotFile).contains(new Question(Topic.LOT_FILE, "")));
    assertEquals(Set.of(new Question(Topic.PARAMETERS, "")), asked(plan::parameters));
    assertEquals(Set.of(new Question(Topic.KIND, Element.class)), asked(plan::elements));
    assertEquals(Set.of(new Question(Topic.ELEMENT, kale)), asked(() -> plan.element(kale)));
    assertEquals(
        Set.of(new Question(Topic.ATTRIBUTE, new Reads.Attribute(null, SOIL))),
        asked(() -> plan.attributes().all(SOIL)));
    Reads.Noted<Set<Question>> nested =
        Reads.noting(
            () -> {
              plan.info();
              Set<Question> inner = asked(plan::parameters);
              plan.lot();
              return inner;
            });
    assertEquals(Set.of(new Question(Topic.PARAMETERS, "")), nested.result());
    assertEquals(
        Set.of(new Question(Topic.INFO, ""), new Question(Topic.LOT, "")), nested.questions());
    Set<Question> before = nested.questions();
    plan.parameters();
    assertEquals(2, before.size(), "nothing is noted when the work is over");
  }

  @Test
  void south_isBelowTheEquator() {
    for (double latitude : List.of(-33.9, 0.0, 51.5)) {
      Draft draft = new Draft(INFO);
      draft.site(site(latitude), SourceRef.NONE);
      assertEquals(latitude == -33.9, draft.freeze().isSouthern());
      assertThrows(PlanException.class, () -> draft.site(site(1), at("yard.groovy", 9)));
    }
    assertFalse(new Draft(INFO).freeze().isSouthern());
  }

  @Test
  void statement_ofTheFileWithTheLot_goesBeforeTheOthers() {
    Draft draft = new Draft(INFO);
    assertSame(INFO, draft.info());
    assertSame(SourceRef.NONE, draft.infoPlace());
    draft
        .attributes()
        .add(SOIL, "clay", at("region.groovy", 3))
        .add(SOIL, "sand", at("late.groovy", 1));
    Plan without = draft.freeze();
    assertEquals("", without.lotFile());
    assertEquals("sand", without.said(SOIL).orElseThrow().value(), "what was said last");
    draft.attributes().add(SOIL, "loam", at("yard.groovy", 4));
    draft.attributes().add(SOIL, "peat", at("late.groovy", 2));
    draft.lot(lot("yard.groovy"));
    Plan plan = draft.freeze();
    assertEquals("yard.groovy", plan.lotFile());
    assertEquals("loam", plan.said(SOIL).orElseThrow().value());
    assertTrue(plan.said(new AttributeKey<>("test.other", String.class)).isEmpty());
    assertThrows(PlanException.class, () -> draft.lot(lot("other.groovy")));
    PlanInfo other = new PlanInfo("q", "Q", "", "", "", "", UnitSystem.US, "$");
    draft.info(other, at("yard.groovy", 1));
    assertSame(other, draft.info());
    assertEquals(at("yard.groovy", 1), draft.infoPlace());
  }

  @Test
  void setbacks_leaveTheMiddleOfTheLot() {
    Lot lot = lot("yard.groovy");
    assertEquals(
        List.of("south 3.0", "east 0.0", "north 5.0", "west 0.0"),
        lot.setbackSides().stream().map(s -> s.name() + " " + s.distance().metres()).toList());
    assertEquals(20 * (30 - 3 - 5), lot.insideSetbacks().area().squareMetres(), 1e-6);
  }

  private static Element.Common common(ElementKind kind, Boolean standing) {
    Attributes.Builder attributes = new Attributes.Builder();
    if (standing != null) {
      attributes.add(Standing.KEY, standing, SourceRef.NONE);
    }
    return new Element.Common(new ElementId(kind, "x"), SourceRef.NONE, attributes.build());
  }

  private static Element.Tree tree(Length trunk) {
    Length some = Length.metres(3);
    return new Element.Tree(
        common(ElementKind.TREE, null),
        Point.metres(1, 1),
        GROUND,
        some,
        some,
        some,
        trunk,
        Element.Leaf.EVERGREEN);
  }

  @Test
  void standing_goesByKindAndTrunk_unlessTheScriptSaysSo() {
    assertTrue(tree(Length.inches(4.1)).stands());
    assertFalse(tree(Length.inches(4)).stands(), "nurseries sell up to 4 in");
    Line line = Line.between(Point.metres(0, 0), Point.metres(4, 0));
    Element.Path path =
        new Element.Path(
            common(ElementKind.PATH, null), line, GROUND, Length.metres(1), Element.PathUse.FOOT);
    assertFalse(path.stands());
    assertFalse(
        new Element.MulchedGround(common(ElementKind.MULCHED_GROUND, null), GROUND).stands());
    assertFalse(
        new Element.Bed(common(ElementKind.BED, null), GROUND, Element.BedUse.ANNUAL).stands());
    assertTrue(new Element.Paving(common(ElementKind.PAVING, null), GROUND, "brick").stands());
    assertEquals(
        new Standing(true, true),
        new Element.Bed(common(ElementKind.BED, true), GROUND, Element.BedUse.ANNUAL).standing());
    assertEquals(
        new Standing(false, true),
        new Element.Paving(common(ElementKind.PAVING, false), GROUND, "brick").standing());
    Element.WaterPoint tap =
        new Element.WaterPoint(common(ElementKind.WATER_POINT, null), Point.metres(1, 2), "main");
    assertEquals(new Standing(true, false), tap.standing());
    assertSame(Shape.EMPTY, tap.shape());
  }

  @Test
  void id_isCalledByNameOrKindAndName_andHasATitle() {
    ElementId south = new ElementId(ElementKind.BED, "south");
    assertTrue(south.isCalled("south"));
    assertTrue(south.isCalled("bed \"south\""));
    assertFalse(south.isCalled("path \"south\""));
    assertEquals("South", south.title());
    assertEquals("Bed 12", new ElementId(ElementKind.BED, "12").title());
    assertEquals("Abc", new ElementId(ElementKind.BED, "abc").title());
    assertEquals("Mulched ground A", new ElementId(ElementKind.MULCHED_GROUND, "A").title());
  }

  @Test
  void attributes_areAlikeByOwnerValuesAndPlaces() {
    Attributes.Builder loam = new Attributes.Builder().add(SOIL, "loam", at("a", 1));
    ElementId a = new ElementId(ElementKind.BED, "a");
    ElementId b = new ElementId(ElementKind.BED, "b");
    assertEquals(loam.build(a), loam.build(a));
    assertEquals(loam.build(a).hashCode(), loam.build(a).hashCode());
    assertNotEquals(loam.build(a), loam.build(b));
    assertNotEquals(loam.build(a).hashCode(), loam.build(b).hashCode());
    assertNotEquals(loam.build(a), loam.build());
    assertNotEquals(loam.build(a), new Attributes.Builder().add(SOIL, "clay", at("a", 1)).build(a));
    assertNotEquals(loam.build(a), new Attributes.Builder().add(SOIL, "loam", at("a", 2)).build(a));
    Object text = "loam";
    assertNotEquals(text, loam.build(a));
  }

  @Test
  void element_isFoundByKindAndName() {
    Draft draft = new Draft(INFO);
    for (String name : List.of("b", "a", "c")) {
      draft.add(
          new ElementId(ElementKind.BED, name),
          SourceRef.NONE,
          c -> new Element.Bed(c, GROUND, Element.BedUse.ANNUAL));
    }
    Plan plan = draft.freeze();
    ElementId c = new ElementId(ElementKind.BED, "c");
    assertEquals(c, plan.element(c).orElseThrow().id());
    assertTrue(plan.element(new ElementId(ElementKind.PATH, "c")).isEmpty());
    assertEquals(List.of("a", "b", "c"), plan.elements().stream().map(e -> e.id().name()).toList());
  }
}
