package yardloom.materials.mulch;

import java.util.function.Consumer;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.GroundScope;
import yardloom.kernel.scope.PathScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words about mulch, compost and cardboard. */
public final class MulchWords {
  private static final Length DEEPEST = Length.inches(36);

  private MulchWords() {}

  @Verb(
      help = "Describes the sheet mulch of the whole plan, where it is not as usual.",
      example = "sheetMulch { chips perennial: 12.inch ; compost annual: 3.inch }")
  public static void sheetMulch(PlanScope plan, Consumer<MulchScope> block) {
    Attributes.Builder attributes = plan.draft().attributes();
    if (attributes.has(MulchSettings.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "`sheetMulch` is already given; say it once");
    }
    MulchScope.Given given = new MulchScope.Given();
    if (block != null) {
      block.accept(new MulchScope(given, plan.place()));
    }
    MulchSettings settings = given.settings(plan.place());
    attributes.add(MulchSettings.KEY, settings, plan.place());
    if (settings.chipsOnly()) {
      attributes.add(OpenGround.NO_CARDBOARD, true, plan.place());
    }
  }

  @Verb(
      help = "Sets how deep chips lie, as laid, and how they settle.",
      example = "chips perennial: 12.inch, path: 4.inch")
  public static void chips(
      MulchScope mulch,
      @Opt(name = "perennial", help = "depth on perennial beds", fallback = "10 in")
          Length perennial,
      @Opt(name = "annual", help = "depth on annual beds", fallback = "2 in") Length annual,
      @Opt(name = "path", help = "depth on paths", fallback = "4 in") Length path,
      @Opt(name = "ground", help = "depth on ground mulched whole", fallback = "4 in")
          Length ground,
      @Opt(name = "treeRing", help = "depth over tree roots", fallback = "4 in") Length treeRing,
      @Opt(name = "ringWidth", help = "width of that ring from the trunk", fallback = "36 in")
          Length ringWidth,
      @Opt(name = "edgeTaper", help = "width over which they fall to nothing", fallback = "0 in")
          Length edgeTaper,
      @Opt(name = "settling", help = "share of depth lost in a year", fallback = "0.3")
          Number settling) {
    mulch.set(LengthSetting.PERENNIAL_MULCH, perennial);
    mulch.set(LengthSetting.ANNUAL_MULCH, annual);
    mulch.set(LengthSetting.PATH_MULCH, path);
    mulch.set(LengthSetting.GROUND_MULCH, ground);
    mulch.set(LengthSetting.TREE_RING_MULCH, treeRing);
    mulch.set(LengthSetting.TREE_RING_WIDTH, ringWidth);
    mulch.set(LengthSetting.EDGE_TAPER, edgeTaper);
    mulch.settling(settling);
  }

  @Verb(
      help = "Sets how deep compost lies, and what each plant gets in its pocket.",
      example = "compost annual: 3.inch")
  public static void compost(
      MulchScope mulch,
      @Opt(name = "perennial", help = "depth on perennial beds", fallback = "1 in")
          Length perennial,
      @Opt(name = "annual", help = "depth on annual beds", fallback = "3 in") Length annual,
      @Opt(name = "ground", help = "depth on ground mulched whole", fallback = "none")
          Length ground,
      @Opt(
              name = "pocket",
              help = "for each plant of a perennial bed",
              fallback = "none but what lies over the bed")
          Volume pocket) {
    mulch.set(LengthSetting.PERENNIAL_COMPOST, perennial);
    mulch.set(LengthSetting.ANNUAL_COMPOST, annual);
    mulch.set(LengthSetting.GROUND_COMPOST, ground);
    mulch.pocket(pocket);
  }

  @Verb(
      help = "Sets the size of the sheets and how they lap.",
      example = "cardboard overlap: 8.inch, length: 60.inch, width: 40.inch")
  public static void cardboard(
      MulchScope mulch,
      @Opt(name = "overlap", help = "lap of neighbouring sheets", fallback = "6 in") Length overlap,
      @Opt(name = "length", help = "longer side of a sheet", fallback = "48 in") Length length,
      @Opt(name = "width", help = "shorter side of a sheet", fallback = "36 in") Length width) {
    mulch.set(LengthSetting.CARDBOARD_OVERLAP, overlap);
    mulch.set(LengthSetting.SHEET_LENGTH, length);
    mulch.set(LengthSetting.SHEET_WIDTH, width);
  }

  @Verb(help = "Leaves out all cardboard.", example = "chipsOnly()")
  public static void chipsOnly(MulchScope mulch) {
    mulch.chipsOnly();
  }

  @Verb(help = "Sets what stays bare.", example = "gaps trunk: 6.inch, wall: 12.inch")
  public static void gaps(
      MulchScope mulch,
      @Opt(name = "trunk", help = "about trunks", fallback = "6 in") Length trunk,
      @Opt(name = "wall", help = "along buildings", fallback = "12 in") Length wall) {
    mulch.set(LengthSetting.TRUNK_GAP, trunk);
    mulch.set(LengthSetting.WALL_GAP, wall);
  }

  @Verb(
      help = "Sets how material is ordered.",
      example = "ordering allowance: 0.15, minimumLoad: 10.yd3")
  public static void ordering(
      MulchScope mulch,
      @Opt(name = "allowance", help = "extra share to order", fallback = "0.1") Number allowance,
      @Opt(name = "minimumLoad", help = "least delivery of chips", fallback = "none")
          Volume minimumLoad) {
    mulch.ordering(allowance, minimumLoad);
  }

  @Verb(help = "Sets the depth of chips on this bed, as laid.", example = "mulch 8.inch")
  public static void mulch(
      BedScope bed, @Arg(name = "depth", help = "depth as laid; zero for none") Length depth) {
    setDepth(bed.element(), GroundKeys.MULCH_DEPTH, "mulch", depth, bed.place());
  }

  @Verb(help = "Sets the depth of chips on this path, as laid.", example = "mulch 4.inch")
  public static void mulch(
      PathScope path, @Arg(name = "depth", help = "depth as laid; zero for none") Length depth) {
    setDepth(path.element(), GroundKeys.MULCH_DEPTH, "mulch", depth, path.place());
  }

  @Verb(help = "Sets the depth of chips on this ground, as laid.", example = "mulch 5.inch")
  public static void mulch(
      GroundScope ground,
      @Arg(name = "depth", help = "depth as laid; zero for none") Length depth) {
    setDepth(ground.element(), GroundKeys.MULCH_DEPTH, "mulch", depth, ground.place());
  }

  @Verb(help = "Sets the depth of compost on this ground.", example = "compost 1.inch")
  public static void compost(
      GroundScope ground,
      @Arg(name = "depth", help = "depth as laid; zero for none") Length depth) {
    setDepth(ground.element(), GroundKeys.COMPOST_DEPTH, "compost", depth, ground.place());
  }

  @Verb(help = "Lays no cardboard under this ground.", example = "noCardboard()")
  public static void noCardboard(GroundScope ground) {
    ground.element().attributes().add(GroundKeys.NO_CARDBOARD, true, ground.place());
  }

  @Verb(help = "Sets the depth of compost on this bed.", example = "compost 3.inch")
  public static void compost(
      BedScope bed, @Arg(name = "depth", help = "depth as laid; zero for none") Length depth) {
    setDepth(bed.element(), GroundKeys.COMPOST_DEPTH, "compost", depth, bed.place());
  }

  @Verb(help = "Lays no cardboard under this bed.", example = "noCardboard()")
  public static void noCardboard(BedScope bed) {
    bed.element().attributes().add(GroundKeys.NO_CARDBOARD, true, bed.place());
  }

  @Verb(help = "Lays no cardboard under this path.", example = "noCardboard()")
  public static void noCardboard(PathScope path) {
    path.element().attributes().add(GroundKeys.NO_CARDBOARD, true, path.place());
  }

  @Verb(help = "Mulches a ring about this tree, also where no bed is.", example = "mulchRing 3.ft")
  public static void mulchRing(
      TreeScope tree, @Arg(name = "width", help = "from the trunk outward") Length width) {
    if (width.metres() <= 0 || width.metres() > 6) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          tree.place(),
          "mulchRing must be wider than zero and at most 20 ft (6 m), got " + Say.depth(width));
    }
    tree.element().attributes().add(GroundKeys.TREE_RING, width, tree.place());
  }

  private static void setDepth(
      ElementDraft element, AttributeKey<Length> key, String word, Length depth, SourceRef place) {
    if (depth.metres() < 0 || depth.compareTo(DEEPEST) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          word + " must be between 0 and " + Say.depth(DEEPEST) + " deep, got " + Say.depth(depth));
    }
    element.attributes().add(key, depth, place);
  }
}
