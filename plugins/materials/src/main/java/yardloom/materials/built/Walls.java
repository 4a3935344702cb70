package yardloom.materials.built;

import yardloom.facts.built.Barrier;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.built.formula.WallParts;

/** What new walls are made of. */
final class Walls {
  private Walls() {}

  /** How thick it stands: of the strip that the plan draws. */
  private static Length thickness(Element.Fence wall) {
    return Length.metres(
        wall.shape().area().squareMetres() / Math.max(wall.line().length().metres(), 1e-9));
  }

  static void wall(Element.Fence wall, Barrier how, Tally tally) {
    Length length = wall.line().length();
    Derived<Integer> courses =
        Derived.by("up(height / course) + 1", WallParts.SOURCE)
            .from("height", wall.height(), wall.place())
            .from("course", how.unitHeight(), wall.place())
            .gives(WallParts.courses(wall.height(), how.unitHeight()) + 1);
    Derived<Integer> along =
        Derived.by("length / block, rounded up", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("block", how.unitLength(), wall.place())
            .gives(WallParts.along(length, how.unitLength()));
    Derived<Integer> blocks =
        Derived.by("courses × blocks of a course", WallParts.SOURCE)
            .from("courses", courses)
            .from("blocks of a course", along)
            .gives(courses.value() * along.value());
    String size =
        Say.depth(how.unitLength(), tally.units())
            + " by "
            + Say.depth(how.unitHeight(), tally.units());
    tally.cut("wall blocks, " + size, blocks);
    tally.pieces("wall caps, " + Say.depth(how.unitLength(), tally.units()), along);
    Length thickness = thickness(wall);
    Derived<Volume> base =
        Derived.by("length × thickness × 2 × base", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("thickness", thickness, wall.place())
            .from("base", WallParts.BASE)
            .gives(WallParts.base(length, thickness));
    tally.bulk("gravel base", wall, base);
    if (how.made() == Barrier.Made.RETAINING) {
      drainage(wall, tally);
    }
    work(wall, how, courses, thickness, tally);
  }

  /** Rock, pipe and fabric behind it. */
  private static void drainage(Element.Fence wall, Tally tally) {
    Length length = wall.line().length();
    Derived<Volume> drain =
        Derived.by("length × height × drain", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("height", wall.height(), wall.place())
            .from("drain", WallParts.DRAIN)
            .gives(WallParts.drain(length, wall.height()));
    tally.bulk("drain rock", wall, drain);
    tally.length("perforated drain pipe", Derived.given(length, "length", wall.place()));
    Derived<Area> fabric =
        Derived.by("length × (height + drain)", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("height", wall.height(), wall.place())
            .from("drain", WallParts.DRAIN)
            .gives(length.by(wall.height().plus(WallParts.DRAIN)));
    tally.area("filter fabric", fabric);
  }

  private static void work(
      Element.Fence wall, Barrier how, Derived<Integer> courses, Length thickness, Tally tally) {
    Length length = wall.line().length();
    Derived<Area> face =
        Derived.by("length × courses × course", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("courses", courses)
            .from("course", how.unitHeight(), wall.place())
            .gives(length.by(how.unitHeight().times(courses.value())));
    tally.job(WorkTask.BUILD_WALL, face);
    Derived<Volume> trench =
        Derived.by("length × thickness × 2 × (base + course)", WallParts.SOURCE)
            .from("length", length, wall.place())
            .from("thickness", thickness, wall.place())
            .from("base", WallParts.BASE)
            .from("course", how.unitHeight(), wall.place())
            .gives(length.by(thickness.times(2)).deep(WallParts.BASE.plus(how.unitHeight())));
    tally.job(WorkTask.DIG_EARTH, WorkPhase.EARTH, trench);
  }
}
