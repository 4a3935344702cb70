package yardloom.sun;

import java.time.ZoneId;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Plans for tests. */
public final class TestYards {
  private TestYards() {}

  public static Draft nowhere() {
    return new Draft(new PlanInfo("test", "Test yard", "", "", "", "", UnitSystem.METRIC, ""));
  }

  public static Draft at(double latitudeDeg, double longitudeDeg) {
    Draft draft = nowhere();
    draft.site(
        new Site(
            "test site",
            Angle.degrees(latitudeDeg),
            Angle.degrees(longitudeDeg),
            Length.ZERO,
            ZoneId.of("Etc/GMT+7"),
            Angle.ZERO),
        SourceRef.NONE);
    return draft;
  }

  public static Shape rectangle(double x0, double y0, double x1, double y1) {
    return Shape.rectangle(Point.metres(x0, y0), Length.metres(x1 - x0), Length.metres(y1 - y0));
  }

  public static void bed(Draft draft, ElementId id, Shape shape) {
    draft.add(id, SourceRef.NONE, c -> new Element.Bed(c, shape, BedUse.ANNUAL));
  }
}
