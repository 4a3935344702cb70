package yardloom.kernel.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/** Every kind of element, asked to be one of another turn. */
class ElementTurnTest {
  private static final Element.Common COMMON =
      new Element.Common(
          new ElementId(ElementKind.BED, "x"),
          new SourceRef("yard.groovy", 7, 3),
          new Attributes.Builder().add(PartTurn.PART, "first", SourceRef.NONE).build());
  private static final Shape SHAPE =
      Shape.rectangle(Point.metres(1, 2), Length.metres(3), Length.metres(4));
  private static final Line LINE = Line.between(Point.metres(1, 2), Point.metres(5, 8));
  private static final Point AT = Point.metres(6, 7);

  /** One of each kind; no two lengths alike, so that none can be given in another's place. */
  private static List<Element> oneOfEach() {
    return List.of(
        new Element.Building(COMMON, SHAPE, m(3), m(7), m(0.5), Element.RoofForm.HIP, true),
        new Element.Structure(COMMON, SHAPE, m(2)),
        new Element.Fence(COMMON, LINE, SHAPE, m(1.8), 0.3),
        new Element.Paving(COMMON, SHAPE, "brick"),
        new Element.Tree(COMMON, AT, SHAPE, m(6), m(9), m(2), m(0.4), Element.Leaf.EVERGREEN),
        new Element.Path(COMMON, LINE, SHAPE, m(1.2), Element.PathUse.BARROW),
        new Element.Bed(COMMON, SHAPE, Element.BedUse.ANNUAL),
        new Element.MulchedGround(COMMON, SHAPE),
        new Element.WaterPoint(COMMON, AT, "main"),
        new Element.Roof(COMMON, SHAPE, "metal"),
        new Element.Utility(COMMON, LINE, SHAPE, "gas", m(0.6)),
        new Element.KeepOut(COMMON, SHAPE, "septic field"));
  }

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Object read(Element element, RecordComponent part) {
    try {
      return part.getAccessor().invoke(element);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void allKinds_areAsked() {
    assertEquals(
        Set.of(Element.class.getPermittedSubclasses()),
        oneOfEach().stream().map(Element::getClass).collect(Collectors.toSet()));
  }

  @Test
  void now_isTheElementItself() {
    oneOfEach().forEach(e -> assertSame(e, e.in(PartTurn.NOW)));
  }

  @Test
  void anotherTurn_changesTheTurnAlone() {
    for (Element e : oneOfEach()) {
      Element later = e.in(PartTurn.LATER);
      assertEquals(PartTurn.LATER, later.turn());
      assertEquals("first", later.part());
      assertEquals(e.id(), later.id());
      assertEquals(e.place(), later.place());
      Arrays.stream(e.getClass().getRecordComponents())
          .filter(part -> !part.getName().equals("common"))
          .forEach(part -> assertEquals(read(e, part), read(later, part), part.toString()));
    }
  }
}
