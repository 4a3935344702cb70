package yardloom.materials.pile;

import java.util.Optional;
import yardloom.facts.WayStart;
import yardloom.facts.mulch.DropZone;
import yardloom.facts.mulch.Material;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.mulch.OwnBulk;

/** The word about where heaps are tipped. */
public final class PileWords {
  private static final Volume BARROW = Volume.cubicFeet(6);

  private PileWords() {}

  @Verb(
      help = "Says where a truck may tip a heap, and with what it is carried on.",
      example = "dropZone('drive', rect(48.ft, 2.ft, 10.ft, 18.ft), access: 10.ft)")
  public static void dropZone(
      PlanScope plan,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground that the heap may take") Shape shape,
      @Opt(
              name = "material",
              help = "what is tipped there: wood chips, compost, or a `bulkMaterial` of the plan",
              fallback = "wood chips")
          String material,
      @Opt(name = "angle", help = "angle at which the heap stands", fallback = "37 degrees")
          Angle angle,
      @Opt(name = "access", help = "width of the truck's way", fallback = "10 ft") Length access,
      @Opt(name = "barrow", help = "what one barrow takes", fallback = "6 cu ft") Volume barrow,
      @Opt(
              name = "detour",
              help = "over open ground: way walked over shortest way",
              fallback = "1.2")
          Number detour,
      @Opt(
              name = "way",
              help = "middle of the truck's way from the street",
              fallback = "not drawn or checked")
          Line way) {
    if (shape.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, plan.place(), "the drop zone " + name + " has no area");
    }
    Angle repose = angle == null ? Angle.degrees(37) : angle;
    if (!(repose.degrees() >= 10 && repose.degrees() <= 60)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "heaps of chips or compost stand at 10 to 60 degrees, got " + repose.degrees());
    }
    Volume each = barrow == null ? BARROW : barrow;
    double factor = detour == null ? 1.2 : detour.doubleValue();
    if (each.litres() < 10 || each.cubicMetres() > 2 || !(factor >= 1 && factor <= 5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a barrow takes 0.4 cu ft (10 L) to 70 cu ft (2 m³) and a detour is 1 to 5");
    }
    plan.draft()
        .attributes()
        .add(
            PileCalculator.SPOTS,
            new DropZone(
                name,
                plan.place(),
                shape,
                tipped(plan, material),
                repose,
                Optional.ofNullable(way),
                access == null ? Length.feet(10) : access,
                each,
                factor),
            plan.place())
        .add(WayStart.KEY, new WayStart(name, shape), plan.place());
  }

  private static Material tipped(PlanScope plan, String material) {
    if (material == null || material.equals("wood chips")) {
      return Material.WOOD_CHIPS;
    }
    return material.equals("compost")
        ? Material.COMPOST
        : Material.own(OwnBulk.named(plan.draft().attributes(), material, plan.place()));
  }
}
