package yardloom.materials.mulch;

import java.util.EnumMap;
import java.util.Map;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
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
      help = "Sets depths, overlaps and clearances of the sheet mulch for the whole plan.",
      example = "sheetMulch perennialMulch: 12.inch, annualCompost: 3.inch")
  public static void sheetMulch(
      PlanScope plan,
      @Opt(name = "cardboardOverlap", help = "lap of neighbouring sheets", fallback = "6 in")
          Length cardboardOverlap,
      @Opt(name = "sheetLength", help = "longer side of a sheet", fallback = "48 in")
          Length sheetLength,
      @Opt(name = "sheetWidth", help = "shorter side of a sheet", fallback = "36 in")
          Length sheetWidth,
      @Opt(name = "perennialMulch", help = "chips on perennial beds, as laid", fallback = "10 in")
          Length perennialMulch,
      @Opt(name = "annualMulch", help = "chips on annual beds, as laid", fallback = "2 in")
          Length annualMulch,
      @Opt(name = "pathMulch", help = "chips on paths, as laid", fallback = "4 in")
          Length pathMulch,
      @Opt(name = "treeRingMulch", help = "chips over tree roots, as laid", fallback = "4 in")
          Length treeRingMulch,
      @Opt(name = "treeRingWidth", help = "width of the ring from the trunk", fallback = "36 in")
          Length treeRingWidth,
      @Opt(name = "perennialCompost", help = "compost on perennial beds", fallback = "1 in")
          Length perennialCompost,
      @Opt(name = "annualCompost", help = "compost on annual beds", fallback = "3 in")
          Length annualCompost,
      @Opt(name = "trunkGap", help = "bare ground about trunks", fallback = "6 in") Length trunkGap,
      @Opt(name = "wallGap", help = "bare strip along buildings", fallback = "12 in")
          Length wallGap,
      @Opt(name = "edgeTaper", help = "width over which chips fall to nothing", fallback = "0 in")
          Length edgeTaper,
      @Opt(name = "allowance", help = "extra share to order", fallback = "0.1") Number allowance,
      @Opt(name = "settling", help = "share of depth lost in a year", fallback = "0.3")
          Number settling,
      @Opt(name = "minimumLoad", help = "least delivery of chips", fallback = "none")
          Volume minimumLoad,
      @Opt(
              name = "pocketCompost",
              help = "compost for each plant of a perennial bed",
              fallback = "none but what lies over the bed")
          Volume pocketCompost,
      @Opt(name = "chipsOnly", help = "whether to leave out all cardboard", fallback = "false")
          Boolean chipsOnly) {
    Map<LengthSetting, Length> given = new EnumMap<>(LengthSetting.class);
    Length[] inOrder = {
      cardboardOverlap,
      sheetLength,
      sheetWidth,
      perennialMulch,
      annualMulch,
      pathMulch,
      treeRingMulch,
      treeRingWidth,
      perennialCompost,
      annualCompost,
      trunkGap,
      wallGap,
      edgeTaper
    };
    for (LengthSetting s : LengthSetting.values()) {
      if (inOrder[s.ordinal()] != null) {
        given.put(s, inOrder[s.ordinal()]);
      }
    }
    Attributes.Builder attributes = plan.draft().attributes();
    if (attributes.has(MulchSettings.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "`sheetMulch` is already given; say it once");
    }
    attributes.add(
        MulchSettings.KEY,
        MulchSettings.of(
            given,
            allowance,
            settling,
            minimumLoad,
            pocketCompost,
            Boolean.TRUE.equals(chipsOnly),
            plan.place()),
        plan.place());
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
