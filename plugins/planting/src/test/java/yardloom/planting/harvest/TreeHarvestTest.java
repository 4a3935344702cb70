package yardloom.planting.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantingPlugin;
import yardloom.planting.placing.PlantingWords;
import yardloom.planting.trained.TrainedWords;

/** What trees bear by their crown or their form, to the printed table. */
class TreeHarvestTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));

  private TreeScope tree(String name, double xFt, double crownFt, String species) {
    Point at = new Point(Length.feet(xFt), Length.ZERO);
    Length crown = Length.feet(crownFt);
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.TREE, name),
            SourceRef.NONE,
            c ->
                new Element.Tree(
                    c,
                    at,
                    Shape.circle(at, crown.div(2)),
                    crown,
                    Length.feet(8),
                    Length.feet(2),
                    Length.inches(1),
                    Element.Leaf.DECIDUOUS));
    TreeScope scope = new TreeScope(draft, element, SourceRef.NONE);
    PlantingWords.species(scope, species, null, null);
    return scope;
  }

  private Outcome outcome() {
    return new Study(PluginLoader.of(List.of(new PlantingPlugin()))).of(draft.freeze());
  }

  /**
   * A semi-dwarf apple grows 12 to 15 ft wide, 13.5 ft in the middle, and bears 25 to 50 kg
   * (Appropedia, Fruit tree forms, read). Kept to 9 ft it has (9 / 13.5)² = 0.444 of its crown: 11
   * to 22 kg; drawn 20 ft wide it bears no more than a grown one.
   */
  @ParameterizedTest(name = "crown of {0} ft")
  @CsvSource({"9, 11.1, 22.2", "13.5, 25, 50", "20, 25, 50"})
  void appleTree_bearsByItsCrown(double crownFt, double lowKg, double highKg) {
    tree("a", 0, crownFt, "apple (semi-dwarf)");
    Table table =
        outcome().tables().stream().filter(t -> t.id().equals("harvest")).findFirst().get();
    assertEquals(lowKg, kilograms(table, 0, 2), 0.05);
    assertEquals(highKg, kilograms(table, 0, 3), 0.05);
  }

  /**
   * Worked yard. Mature espaliers bring 30 to 60 lb (a magazine on a nursery of trained trees,
   * 1993, read) at a usual 12 ft (memory): 7 ft bring 7/12, 17.5 to 35 lb. A dwarf pyramid brings 3
   * to 7 kg at 1.75 m (Appropedia, read): at its usual width all of it. A pear 0.7 m wide is no
   * tree of 45 to 91 kg: 0.7 / 3.658 of 13.6 to 27.2 kg.
   */
  @Test
  void trainedTrees_bearByFormAndWidth() {
    TrainedWords.trained(tree("a", 0, 2, "apple (semi-dwarf)"), "espalier", Length.feet(7), null);
    TrainedWords.trained(tree("b", 30, 5, "European pear"), "dwarf pyramid", null, null);
    TrainedWords.trained(tree("c", 60, 2.3, "European pear"), "espalier", Length.metres(0.7), null);
    Outcome outcome = outcome();
    Table table = outcome.tables().stream().filter(t -> t.id().equals("harvest")).findFirst().get();
    assertEquals("apple (semi-dwarf), espalier", table.rows().get(0).get(1).value().get());
    assertEquals(17.5, kilograms(table, 0, 2) / 0.45359237, 1e-6);
    assertEquals(35, kilograms(table, 0, 3) / 0.45359237, 1e-6);
    assertEquals(3, kilograms(table, 1, 2), 0.02);
    assertEquals(7, kilograms(table, 1, 3), 0.02);
    assertEquals(13.6 * 0.7 / 3.658, kilograms(table, 2, 2), 0.01);
    assertEquals(27.2 * 0.7 / 3.658, kilograms(table, 2, 3), 0.01);
    List<Stand> stands = outcome.results().all(YardFacts.STANDS);
    assertEquals(7, stands.get(0).kind().spread().feet(), 1e-9);
    assertEquals(14, stands.get(0).placed().area().squareFeet(), 1e-9, "7 ft long, 2 ft deep");
  }

  /** Semi-dwarf pears grow 17.5 ft wide; two espaliers of 7 and 9 ft need 8 ft between them. */
  @Test
  void trainedTrees_needTheRoomOfTheirForm() {
    TrainedWords.trained(tree("a", 0, 2, "European pear"), "espalier", Length.feet(7), null);
    TrainedWords.trained(tree("b", 8.1, 2, "European pear"), "espalier", Length.feet(9), null);
    assertTrue(room().isEmpty());
    tree("c", 20, 5, "European pear");
    assertEquals(1, room().size(), "9 / 2 + 17.5 / 2 = 13.25 ft are wanted, 11.9 ft are there");
  }

  private List<Finding> room() {
    return outcome().findings().stream()
        .filter(f -> f.rule().equals("planting.tree-room"))
        .toList();
  }

  @Test
  void training_outOfRangeOrTwice_isRefused() {
    TreeScope tree = tree("a", 0, 2, "European pear");
    PlanException wide =
        assertThrows(
            PlanException.class, () -> TrainedWords.trained(tree, "fan", Length.feet(31), null));
    assertEquals(ProblemCode.OUT_OF_RANGE, wide.problems().get(0).code());
    TrainedWords.trained(tree, "cordon", null, null);
    PlanException twice =
        assertThrows(PlanException.class, () -> TrainedWords.trained(tree, "cordon", null, null));
    assertEquals(ProblemCode.DUPLICATE, twice.problems().get(0).code());
  }

  private static double kilograms(Table table, int row, int column) {
    return ((Mass) table.rows().get(row).get(column).value().orElseThrow()).kilograms();
  }
}
