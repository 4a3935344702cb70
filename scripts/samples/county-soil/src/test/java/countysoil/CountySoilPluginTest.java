package countysoil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Study;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class CountySoilPluginTest {
  /** Beds 6 and 20 m east of a well that wants 15 m: the first is found, the second is not. */
  @Test
  void bedNearTheWell_isFound() {
    PlanInfo info = new PlanInfo("test", "Test", "", "", "", "", UnitSystem.METRIC, "$");
    Draft draft = new Draft(info);
    PlanScope plan = new PlanScope(draft, new SourceRef("test", 1, 1));
    CountySoilWords.countySoilWell(plan, "the well", Point.metres(0, 0), Length.metres(15));
    bed(plan, "near", 6);
    bed(plan, "far", 20);
    Plan made = draft.freeze();
    List<Finding> found =
        new Study(PluginLoader.of(List.of(new CountySoilPlugin()))).of(made).findings();
    assertEquals(1, found.size(), found.toString());
    assertTrue(found.get(0).text().startsWith("lies 6 m from the well"), found.toString());
  }

  private static void bed(PlanScope plan, String name, double east) {
    Shape shape =
        Shape.rectangle(Point.metres(east, 0), Length.metres(1.2), Length.metres(3));
    Making.add(
        plan,
        Making.id(ElementKind.BED, name),
        common -> new Element.Bed(common, shape, Element.BedUse.ANNUAL));
  }
}
