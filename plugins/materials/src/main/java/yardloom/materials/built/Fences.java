package yardloom.materials.built;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.facts.BillGroup;
import yardloom.facts.built.Barrier;
import yardloom.facts.built.Gate;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.materials.built.formula.FenceParts;
import yardloom.materials.built.formula.FenceParts.Opening;
import yardloom.materials.built.formula.FenceParts.Runs;
import yardloom.materials.goods.formula.Lumber;
import yardloom.materials.goods.formula.TrellisParts;

/** What new fences, gates and hedges are made of. */
final class Fences {
  /** A gate further away belongs to no fence. */
  private static final Length NEAR = Length.metres(1);

  private static final String BOARD = "1x6";
  private static final int SCREWS = 2;
  private static final Source PRACTICE = Source.commonPractice("two screws a board and rail");
  private static final Source HANGING = Source.commonPractice("gates as the plan has them");

  private Fences() {}

  /** Gates in reach of the line, in order along it. */
  private static List<Opening> openings(Plan plan, Line line) {
    List<Opening> openings = new ArrayList<>();
    for (var entry : plan.attributes().all(Gate.KEY)) {
      Gate gate = entry.value();
      if (isIn(gate, line)) {
        Length at = line.along(gate.at());
        Length half = gate.width().div(2);
        openings.add(
            new Opening(at.minus(half).max(Length.ZERO), at.plus(half).min(line.length())));
      }
    }
    openings.sort(Comparator.comparing(Opening::from));
    return openings;
  }

  static boolean isIn(Gate gate, Line line) {
    return line.nearest(gate.at()).distance(gate.at()).compareTo(NEAR) <= 0;
  }

  /** Posts, rails, boards or mesh, concrete and screws. */
  static void fence(Plan plan, Element.Fence fence, Barrier how, Tally tally) {
    Runs runs = FenceParts.runs(fence.line(), how.spacing(), openings(plan, fence.line()));
    Length height = fence.height();
    Length buried = FenceParts.buried(height);
    Derived<Length> run =
        Derived.by("typical of a fence: its line without gates", FenceParts.SOURCE)
            .gives(runs.length());
    Derived<Integer> posts =
        Derived.by(
                "posts at ends and bends, at gates, none further apart than the spacing",
                FenceParts.SOURCE)
            .from("length", fence.line().length(), fence.place())
            .from("spacing", how.spacing(), fence.place())
            .gives(runs.posts().size());
    UnitSystem units = tally.units();
    String post = Say.distance(stock(height.plus(buried), units), units);
    tally.pieces("fence posts, 4x4 by " + post, posts);
    Derived<Integer> bags = bags(posts, buried);
    tally.pieces("concrete mix, 60 lb bags", bags);
    tally.job(WorkTask.SET_POSTS, posts);
    tally.job(WorkTask.MIX_CONCRETE, bags);
    if (run.value().metres() == 0) {
      return;
    }
    if (how.made() == Barrier.Made.MESH) {
      tally.length("fence mesh, " + Say.distance(height, units) + " high", run);
    } else {
      boards(fence, how, runs, run, tally);
    }
    tally.job(WorkTask.HANG_FENCE, run);
  }

  private static void boards(
      Element.Fence fence, Barrier how, Runs runs, Derived<Length> run, Tally tally) {
    Derived<Integer> bays =
        Derived.by("posts at ends and bends: the bays between them", FenceParts.SOURCE)
            .from("run", run)
            .from("spacing", how.spacing(), fence.place())
            .gives(runs.bays());
    int each = FenceParts.rails(fence.height());
    Derived<Integer> rails =
        Derived.by("bays × rails of a bay", FenceParts.SOURCE)
            .from("bays", bays)
            .from("rails of a bay", each)
            .gives(runs.bays() * each);
    Length width = Lumber.size(BOARD).width();
    Derived<Integer> boards =
        Derived.by("run / board × (1 − openness), rounded up", FenceParts.SOURCE)
            .from("run", run)
            .from("board", width)
            .from("openness", fence.openness(), fence.place())
            .gives(FenceParts.boards(run.value(), fence.openness(), width));
    UnitSystem units = tally.units();
    String rail = Say.distance(stock(how.spacing(), units), units);
    tally.cut("fence rails, 2x4 by " + rail, rails);
    String board = Say.distance(stock(fence.height(), units), units);
    tally.cut("fence boards, 1x6 by " + board, boards);
    tally.pieces(
        "exterior screws",
        Derived.by("boards × rails of a bay × 2", PRACTICE)
            .from("boards", boards)
            .from("rails of a bay", each)
            .gives(boards.value() * each * SCREWS));
  }

  private static Derived<Integer> bags(Derived<Integer> posts, Length buried) {
    Volume hole = FenceParts.concrete(FenceParts.HOLE, FenceParts.POST, buried);
    Derived<Volume> each =
        Derived.by("(3.14159 / 4 × hole × hole − post × post) × depth", FenceParts.CONCRETE)
            .from("hole", FenceParts.HOLE)
            .from("post", FenceParts.POST)
            .from("depth", buried)
            .gives(hole);
    double bags = hole.times(posts.value() * 1.1).ratioTo(FenceParts.BAG);
    return Derived.by("posts × concrete of a hole × 1.1 / bag, rounded up", FenceParts.CONCRETE)
        .from("posts", posts)
        .from("concrete of a hole", each)
        .from("bag", FenceParts.BAG)
        .gives((int) Math.ceil(bags - 1e-9));
  }

  /** Lumber is sold by whole feet, or by steps of 30 cm. */
  private static Length stock(Length length, UnitSystem units) {
    Length step = units == UnitSystem.US ? Length.feet(1) : Length.metres(0.3);
    return step.times(Math.ceil(length.ratioTo(step) - 1e-9));
  }

  /** Plants in a row with the spacing as most between two. */
  static void hedge(Element.Fence hedge, Barrier how, Tally tally) {
    Derived<Integer> plants =
        Derived.by(
                "posts at ends and bends: plants, none further apart than the spacing",
                TrellisParts.SOURCE)
            .from("length", hedge.line().length(), hedge.place())
            .from("spacing", how.spacing(), hedge.place())
            .gives(TrellisParts.posts(hedge.line(), how.spacing()));
    tally.line(
        BillGroup.TREES, WorkPhase.TREES, "hedge plants", plants, plants, "no spares included");
    tally.job(WorkTask.PLANT_SHRUB, WorkPhase.TREES, plants);
  }

  static void gate(Gate gate, Tally tally) {
    Derived<Integer> one = Derived.by("typical of a gate: one leaf", HANGING).gives(1);
    tally.pieces("gates, " + Say.distance(gate.width(), tally.units()) + " wide", one);
    tally.job(WorkTask.HANG_GATE, one);
  }
}
