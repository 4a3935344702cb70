package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.MulchWords;
import yardloom.materials.surface.formula.TaperedLayer;

/** Laws that hold for every yard; overlapping beds, paths and trees on purpose. */
class MaterialsLawsTest {
  private static PlanKit yard(List<Integer> seeds, Length mulch) {
    PlanKit kit = PlanKit.us();
    int n = 0;
    for (int s : seeds) {
      double x = s % 37;
      double y = s / 37 % 31;
      Shape box = PlanKit.box(x, y, 2 + s % 7, 3 + s % 5);
      String name = "e" + n++;
      switch (s % 4) {
        case 0 -> kit.path(name, box);
        case 1 -> kit.tree(name, x, y, 2 + s % 9);
        default -> {
          var bed = kit.bed(name, s % 4 == 2 ? BedUse.ANNUAL : BedUse.PERENNIAL, box);
          MulchWords.mulch(bed, mulch);
        }
      }
    }
    return kit;
  }

  @Property(tries = 60, seed = "20261125")
  void bill_anyYard_isSumOverSurfacesAndCoversUnionOnce(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 0, max = 5000) Integer> seeds) {
    var plan = yard(seeds, Length.inches(8)).plan();
    Results r = PlanKit.run(plan);
    List<MulchSurface> surfaces = r.all(YardFacts.SURFACES);
    double sum =
        surfaces.stream()
            .flatMap(s -> s.volume(Material.WOOD_CHIPS).stream())
            .mapToDouble(v -> v.value().si())
            .sum();
    double billed =
        r.all(YardFacts.BILL).stream()
            .filter(l -> l.item().equals("wood-chip mulch"))
            .mapToDouble(l -> ((Volume) l.exact().value()).si())
            .sum();
    assertEquals(sum, billed, 1e-9);
    double areas = surfaces.stream().mapToDouble(s -> s.area().value().si()).sum();
    double union =
        Shape.union(surfaces.stream().map(MulchSurface::shape).toList()).area().squareMetres();
    assertEquals(union, areas, 1e-4, "no ground twice");
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      double net =
          surfaces.stream()
              .filter(s -> s.of().equals(bed.id()))
              .mapToDouble(s -> s.area().value().si())
              .sum();
      assertTrue(net <= bed.shape().area().squareMetres() + 1e-9);
    }
  }

  private static double netGround(PlanKit kit) {
    return PlanKit.run(kit.plan()).all(YardFacts.SURFACES).stream()
        .filter(s -> s.kind() == SurfaceKind.MULCHED_GROUND)
        .mapToDouble(s -> s.area().value().squareFeet())
        .sum();
  }

  private static double chips(PlanKit kit) {
    return PlanKit.run(kit.plan()).get(YardFacts.MULCH_TOTALS).chips().value().cubicFeet();
  }

  /** All that lies in the ground, path, tree or bed, keeps its own; a cut changes no total. */
  @Property(tries = 30, seed = "20261127")
  void mulchedGround_cutInTwo_changesNoTotal(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 1100) Integer> seeds,
      @ForAll @DoubleRange(min = 3, max = 37) double cutFt) {
    PlanKit whole = yard(seeds, Length.inches(3));
    whole.ground("lawn", PlanKit.box(0, 0, 40, 30));
    PlanKit cut = yard(seeds, Length.inches(3));
    cut.ground("east", PlanKit.box(cutFt, 0, 40 - cutFt, 30));
    cut.ground("west", PlanKit.box(0, 0, cutFt, 30));
    assertEquals(netGround(whole), netGround(cut), 1e-3);
    assertEquals(chips(whole), chips(cut), 1e-3);
  }

  @Property(tries = 30, seed = "20261127")
  void bedInMulchedGround_lowersItByItsArea(
      @ForAll @DoubleRange(min = 1, max = 17) double widthFt,
      @ForAll @DoubleRange(min = 1, max = 13) double depthFt) {
    PlanKit kit = PlanKit.us();
    kit.ground("lawn", PlanKit.box(0, 0, 40, 30));
    kit.bed("bed", BedUse.ANNUAL, PlanKit.box(5, 7, widthFt, depthFt));
    assertEquals(40 * 30 - widthFt * depthFt, netGround(kit), 1e-4);
  }

  @Property(tries = 40, seed = "20261125")
  void depth_doubled_doublesVolume(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 5000) Integer> seeds,
      @ForAll @DoubleRange(min = 0.5, max = 2) double inches) {
    // Below the depth that roots bear, so that no tree ring appears at one depth only.
    double once = bedChips(yard(seeds, Length.inches(inches)));
    double twice = bedChips(yard(seeds, Length.inches(2 * inches)));
    assertEquals(2 * once, twice, 1e-9);
  }

  private static double bedChips(PlanKit kit) {
    return PlanKit.run(kit.plan()).all(YardFacts.SURFACES).stream()
        .filter(s -> s.of().kind() == yardloom.kernel.plan.ElementKind.BED)
        .flatMap(s -> s.volume(Material.WOOD_CHIPS).stream())
        .mapToDouble(v -> v.value().si())
        .sum();
  }

  @Property(tries = 60, seed = "20261125")
  void order_anyYard_coversExactAndAllowance(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 0, max = 5000) Integer> seeds) {
    Results r = PlanKit.run(yard(seeds, Length.inches(9)).plan());
    for (BillLine line : r.all(YardFacts.BILL)) {
      if (line.exact().value() instanceof Volume exact) {
        double order = ((Volume) line.order().value()).si();
        assertTrue(order >= exact.si() * 1.1 * (1 - 1e-12), line.item());
        assertTrue(order <= exact.si() * 1.1 + Volume.cubicYards(0.5).si() + 1e-9, line.item());
      } else {
        int exact = (Integer) line.exact().value();
        assertTrue((Integer) line.order().value() >= exact * 1.1 - 1e-9, line.item());
      }
    }
  }

  @Property(tries = 60, seed = "20261125")
  void taper_anyWidth_neverAddsVolumeAndMatchesFrustum(
      @ForAll @DoubleRange(min = 1, max = 30) double side,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Shape square = PlanKit.box(0, 0, side, side);
    double w = share * side / 2;
    double v = TaperedLayer.volume(square, Length.feet(1), Length.feet(w)).cubicFeet();
    // Frustum of a pyramid, exact: h/3 (A1 + A2 + sqrt(A1 A2)).
    double top = side - 2 * w;
    assertEquals((side * side + top * top + side * top) / 3, v, 1e-5 * side * side + 1e-6);
    assertTrue(v <= side * side + 1e-9);
  }
}
