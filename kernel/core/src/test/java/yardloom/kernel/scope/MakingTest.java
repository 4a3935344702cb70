package yardloom.kernel.scope;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Standing;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** The steps of words that make elements, and the blocks they open. */
class MakingTest {
  private static final AttributeKey<String> SOIL = new AttributeKey<>("test.soil", String.class);
  private static final Shape GROUND =
      Shape.rectangle(Point.metres(0, 0), Length.metres(2), Length.metres(3));

  private final Draft draft = new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, at("yard.groovy", 7));

  private static SourceRef at(String file, int line) {
    return new SourceRef(file, line, 2);
  }

  private static void refused(ProblemCode code, String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertEquals(code, refused.problems().get(0).code());
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  private ElementDraft bed(String name) {
    return Making.add(
        in,
        Making.id(ElementKind.BED, name),
        c -> new Element.Bed(c, GROUND, Element.BedUse.ANNUAL));
  }

  @Test
  void name_isOneLineOfOneToSixtyLetters() {
    String sixty = "a".repeat(60);
    assertEquals(sixty, Making.name("bed", sixty));
    assertEquals(new ElementId(ElementKind.BED, "Kale 1"), Making.id(ElementKind.BED, "Kale 1"));
    String says = "the name of a bed needs 1 to 60 letters without spaces at its ends";
    refused(ProblemCode.OUT_OF_RANGE, says, () -> Making.name("bed", sixty + "a"));
    refused(ProblemCode.OUT_OF_RANGE, says, () -> Making.name("bed", ""));
    refused(ProblemCode.OUT_OF_RANGE, says, () -> Making.name("bed", " kale"));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "must be one line of plain text",
        () -> Making.id(ElementKind.BED, "ka\nle"));
  }

  @Test
  void text_isOneToSoManyLetters_withoutTheSpacesAboutIt() {
    assertEquals("old well", Making.text(in, "a note", " old well ", 10));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "a note has 1 to 10 letters, got 11",
        () -> Making.text(in, "a note", " old wells ", 10));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "a note has 1 to 10 letters, got 1",
        () -> Making.text(in, "a note", " ", 10));
  }

  @Test
  void element_standsInTheDraftAtItsWord() {
    ElementDraft kale = bed("kale");
    assertEquals(new ElementId(ElementKind.BED, "kale"), kale.id());
    assertEquals(at("yard.groovy", 7), kale.place());
    assertSame(kale, draft.element(kale.id()).orElseThrow());
    assertTrue(draft.element(new ElementId(ElementKind.PATH, "kale")).isEmpty());
    assertEquals(GROUND, draft.freeze().element(kale.id()).orElseThrow().shape());
  }

  @Test
  void standing_isKeptWhereTheScriptSaysSo() {
    ElementDraft kept = Making.standing(bed("old"), true);
    ElementDraft silent = Making.standing(bed("new"), null);
    assertTrue(kept.attributes().has(Standing.KEY));
    assertEquals(
        List.of(true), kept.attributes().all(Standing.KEY).stream().map(e -> e.value()).toList());
    assertTrue(!silent.attributes().has(Standing.KEY));
    assertEquals("old", kept.id().name());
    assertEquals("new", silent.id().name());
  }

  @Test
  void statement_isRefusedASecondTimeInOneFile_notInALaterFile() {
    draft
        .attributes()
        .add(SOIL, "clay", at("region.groovy", 3))
        .add(SOIL, "loam", at("yard.groovy", 5));
    assertDoesNotThrow(() -> Making.once(in, SOIL, s -> s.equals("clay"), "the soil"));
    refused(
        ProblemCode.DUPLICATE,
        "yard.groovy:7:2: the soil is already given at yard.groovy:5:2",
        () -> Making.once(in, SOIL, s -> s.equals("loam"), "the soil"));
    assertDoesNotThrow(() -> Making.once(in.at(at("last.groovy", 1)), SOIL, s -> true, "the soil"));
  }

  @Test
  void emptyGround_isRefused() {
    ElementId id = Making.id(ElementKind.BED, "kale");
    assertDoesNotThrow(() -> Making.requireGround(id, GROUND));
    refused(
        ProblemCode.BAD_SHAPE,
        "bed \"kale\" covers no ground",
        () -> Making.requireGround(id, Shape.EMPTY));
  }

  @Test
  void block_isReadWhereThereIsOne_andKnowsDraftElementAndPlace() {
    ElementDraft kale = bed("kale");
    List<BedScope> read = new ArrayList<>();
    Making.read(null, BedScope::new, in, kale);
    assertEquals(List.of(), read);
    Making.read(read::add, BedScope::new, in, kale);
    BedScope scope = read.get(0);
    assertSame(draft, scope.draft());
    assertSame(kale, scope.element());
    assertEquals(at("yard.groovy", 7), scope.place());
  }

  @Test
  void blocks_seenFromAnotherLine_areTheSameBlocks() {
    ElementDraft kale = bed("kale");
    SourceRef next = at("yard.groovy", 8);
    for (ElementScope scope :
        List.of(
            new BedScope(draft, kale, in.place()).at(next),
            new BuildingScope(draft, kale, in.place()).at(next),
            new GroundScope(draft, kale, in.place()).at(next),
            new PathScope(draft, kale, in.place()).at(next),
            new TreeScope(draft, kale, in.place()).at(next))) {
      assertEquals(next, scope.place());
      assertSame(draft, scope.draft());
      assertSame(kale, scope.element());
    }
    assertSame(draft, in.at(next).draft());
    assertEquals(next, in.at(next).place());
    LotScope lot = new LotScope(draft, in.place()).at(next);
    assertSame(draft, lot.draft());
    assertEquals(next, lot.place());
  }
}
