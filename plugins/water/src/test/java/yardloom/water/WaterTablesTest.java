package yardloom.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.climate.ClimatePlugin;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.site.lot.LotWords;
import yardloom.water.need.AllowanceWords;
import yardloom.water.roof.RoofWords;

/** Tables of water from words to figures that are worked by hand; no two inputs are equal. */
class WaterTablesTest {
  private static final SourceRef HERE = new SourceRef("p.groovy", 4, 1);
  private static final SourceRef REGION = new SourceRef("region.groovy", 2, 1);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
  private final PlanScope plan = new PlanScope(draft, HERE);
  private final PlanScope region = new PlanScope(draft, REGION);

  private void lot(double widthFt, double depthFt) {
    double width = Length.feet(widthFt).metres();
    double depth = Length.feet(depthFt).metres();
    LotWords.lot(
        plan,
        List.of(
            Point.metres(0, 0),
            Point.metres(width, 0),
            Point.metres(width, depth),
            Point.metres(0, depth)),
        null);
  }

  private static Shape box(double xFt, double yFt, double widthFt, double depthFt) {
    return Shape.rectangle(
        Point.metres(Length.feet(xFt).metres(), Length.feet(yFt).metres()),
        Length.feet(widthFt),
        Length.feet(depthFt));
  }

  private BedScope bed(String name, Shape shape) {
    return new BedScope(
        draft,
        draft.add(
            new ElementId(ElementKind.BED, name),
            HERE,
            c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL)),
        HERE);
  }

  private void roof(String name, Shape shape) {
    draft.add(
        new ElementId(ElementKind.ROOF, name), HERE, c -> new Element.Roof(c, shape, "metal"));
  }

  private Table table(String id, Giver... givers) {
    return new Study(
            PluginLoader.of(
                Stream.concat(
                        Stream.of(new WaterPlugin(), new ClimatePlugin()), Arrays.stream(givers))
                    .toList()))
        .of(draft.freeze()).tables().stream()
            .filter(t -> t.id().equals(id))
            .findFirst()
            .orElseThrow();
  }

  private static double gallons(Cell cell) {
    return ((Volume) cell.value().orElseThrow()).gallons();
  }

  /**
   * 50 in × 0.62 = 31 gal a sq ft. Ornamental, 200 sq ft: 0.3 / 0.75, 31 × 0.4 × 200 = 2,480 gal;
   * food, 40 sq ft: 31 × 40 = 1,240 gal; together 3,720. Allowance: 31 × (0.5 × 240 + 0.5 × 40) =
   * 4,340 gal (Model Water Efficient Landscape Ordinance, worksheet). What the regional file says
   * of factor, efficiency and ET gives way to the plan.
   */
  @Test
  void allowance_ofThePlan_notOfTheRegion_isWorkedByHand() {
    lot(60, 50);
    AllowanceWords.waterAllowance(region, 0.9, 0.6, Length.inches(70), null);
    AllowanceWords.waterAllowance(plan, 0.5, 0.75, Length.inches(50), null);
    AllowanceWords.plantFactor(bed("flowers", box(1, 1, 20, 10)), 0.3);
    bed("greens", box(1, 20, 8, 5));

    Table table = table("water-allowance");

    assertEquals(2480, gallons(table.rows().get(0).get(6)), 0.01);
    assertEquals(1240, gallons(table.rows().get(1).get(6)), 0.01);
    assertEquals(3720, gallons(table.rows().get(2).get(6)), 0.01);
    assertEquals(4340, gallons(table.rows().get(3).get(6)), 0.01);
  }

  /** 5 in an hour of the plan, not the 3 in of its region. */
  @Test
  void cloudburst_ofThePlan_standsBeforeThatOfTheRegion() {
    lot(60, 50);
    roof("main", box(5, 5, 31, 20));
    RoofWords.cloudburst(region, Length.inches(3), "the state");
    RoofWords.cloudburst(plan, Length.inches(5), "the town");

    Length rain = (Length) table("roof-drainage").rows().get(0).get(2).value().orElseThrow();

    assertEquals(5, rain.inches(), 1e-9);
  }
}
