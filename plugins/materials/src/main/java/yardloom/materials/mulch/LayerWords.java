package yardloom.materials.mulch;

import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.GroundScope;
import yardloom.kernel.scope.PathScope;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word for layers of bulk material that the plan names itself. */
public final class LayerWords {
  private static final Length DEEPEST = Length.inches(36);
  private static final String MATERIAL = "a `bulkMaterial` of the plan or its region";

  private LayerWords() {}

  @Verb(
      help =
          "Lays a bulk material of your own on this bed, over compost and under chips; bill, loads,"
              + " hours and sections follow it.",
      example = "layer 'rice straw', 4.inch")
  public static void layer(
      BedScope bed,
      @Arg(name = "material", help = MATERIAL) String material,
      @Arg(name = "depth", help = "as laid") Length depth) {
    add(bed.draft(), bed.element(), material, depth, bed.place());
  }

  @Verb(
      help = "Lays a bulk material of your own on this path, under its chips.",
      example = "layer 'decomposed granite', 3.inch")
  public static void layer(
      PathScope path,
      @Arg(name = "material", help = MATERIAL) String material,
      @Arg(name = "depth", help = "as laid") Length depth) {
    add(path.draft(), path.element(), material, depth, path.place());
  }

  @Verb(
      help = "Lays a bulk material of your own on this ground, under its chips.",
      example = "layer 'pine needles', 5.inch")
  public static void layer(
      GroundScope ground,
      @Arg(name = "material", help = MATERIAL) String material,
      @Arg(name = "depth", help = "as laid") Length depth) {
    add(ground.draft(), ground.element(), material, depth, ground.place());
  }

  private static void add(
      Draft draft, ElementDraft element, String material, Length depth, SourceRef place) {
    String known = OwnBulk.named(draft.attributes(), material, place);
    if (!(depth.metres() > 0) || depth.compareTo(DEEPEST) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          "a layer is deeper than nothing and at most "
              + Say.depth(DEEPEST)
              + ", got "
              + Say.depth(depth));
    }
    for (Entry<OwnLayer> said : element.attributes().all(OwnLayer.KEY)) {
      if (said.value().material().equals(known)) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            place,
            "the layer of " + known + " is already given in line " + said.place().line());
      }
    }
    element.attributes().add(OwnLayer.KEY, new OwnLayer(known, depth), place);
  }
}
