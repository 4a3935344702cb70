package yardloom.materials.built;

import java.util.Locale;
import yardloom.facts.built.Flight;
import yardloom.facts.mulch.TruckLane;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.formula.Pavers;

/** What new paving, steps and sheds take of ground. */
final class Grounds {
  private static final Length SLAB = Length.inches(4);
  private static final Length GRAVEL = Length.inches(4);
  private static final Length PAVER = Length.inches(2.375);

  /** Gravel stands out so far about a shed. */
  private static final Length ABOUT = Length.inches(12);

  private static final Source PRACTICE =
      Source.commonPractice("slabs of 4 in on 4 in of gravel; gravel walks of 4 in");

  /** Printed beside steps and what is said against them. */
  static final Source STEPS =
      Source.read("What size steps?", "a garden magazine", 2012, "tread + 2 risers = 26 or 27 in");

  private static final Source PAD =
      Source.commonPractice("a shed stands on gravel that is 12 in wider all round");
  private static final Source OUTLINE = Source.plan("outlines of the plan");

  private Grounds() {}

  /** By what its surface is called: slab, gravel, else pieces on sand. */
  static void paving(Element.Paving paving, Tally tally) {
    Derived<Area> area = Derived.given(paving.shape().area(), "paved ground", paving.place());
    boolean isLane = paving.attributes().get(TruckLane.KEY).isPresent();
    Length under = (isLane ? Pavers.Traffic.DRIVE : Pavers.Traffic.FOOT).base();
    String surface = paving.surface().toLowerCase(Locale.ROOT);
    if (surface.contains("concrete")) {
      tally.concrete("ready-mix concrete", deep(area, "slab", SLAB, paving.place()));
      tally.bulk("gravel base", paving, deep(area, "base", under, paving.place()));
      dig(area, SLAB.plus(under), tally);
      tally.job(WorkTask.GRADE_BASE, area);
      tally.job(WorkTask.POUR_SLAB, area);
    } else if (surface.contains("gravel") || surface.contains("granite")) {
      tally.bulk("gravel", paving, deep(area, "gravel", GRAVEL, paving.place()));
      if (isLane) {
        tally.bulk("gravel base", paving, deep(area, "base", under, paving.place()));
      }
      dig(area, isLane ? GRAVEL.plus(under) : GRAVEL, tally);
      tally.job(WorkTask.GRADE_BASE, area);
    } else {
      tally.area("paving, " + paving.surface(), area);
      tally.bulk("bedding sand", paving, deep(area, "bedding", Pavers.BEDDING, paving.place()));
      tally.bulk("gravel base", paving, deep(area, "base", under, paving.place()));
      dig(area, PAVER.plus(Pavers.BEDDING).plus(under), tally);
      tally.job(WorkTask.GRADE_BASE, area);
      tally.job(WorkTask.LAY_PAVERS, area);
    }
  }

  private static Derived<Volume> deep(
      Derived<Area> area, String layer, Length depth, SourceRef place) {
    return Derived.by("area × " + layer, PRACTICE)
        .from("area", area, place)
        .from(layer, depth)
        .gives(area.value().deep(depth));
  }

  /** Paved ground lies level with what is around it. */
  private static void dig(Derived<Area> area, Length depth, Tally tally) {
    Derived<Volume> earth =
        Derived.by("area × depth", PRACTICE)
            .from("area", area)
            .from("depth", depth)
            .gives(area.value().deep(depth));
    tally.job(WorkTask.DIG_EARTH, WorkPhase.EARTH, earth);
  }

  static void steps(Element.Paving ground, Flight flight, Tally tally) {
    Derived<Integer> steps =
        Derived.by("rise / riser, rounded up", STEPS)
            .from("rise", flight.rise(), ground.place())
            .from("riser", flight.riser(), ground.place())
            .gives(flight.risers());
    tally.pieces("step blocks, " + Say.distance(flight.width(), tally.units()) + " wide", steps);
    Derived<Area> area = Derived.given(ground.shape().area(), "ground of steps", ground.place());
    Derived<Volume> base = deep(area, "base", Pavers.Traffic.FOOT.base(), ground.place());
    tally.bulk("gravel base", ground, base);
    tally.job(WorkTask.SET_STEPS, steps);
    dig(area, Pavers.Traffic.FOOT.base(), tally);
  }

  /** The thing itself, by its name, and the gravel under it. */
  static void structure(Element.Structure built, Length pad, Tally tally) {
    Derived<Integer> one = Derived.by("typical of what is drawn: one of it", OUTLINE).gives(1);
    tally.pieces(built.id().name(), one);
    tally.job(WorkTask.SET_UP, Derived.given(built.shape().area(), "its ground", built.place()));
    if (pad.metres() == 0) {
      return;
    }
    Shape wide = built.shape().grown(ABOUT);
    Derived<Area> area =
        Derived.by("area within all outlines: 12 in wider all round", PAD)
            .from("ground", built.shape().area(), built.place())
            .gives(wide.area());
    tally.bulk("gravel base", built, deep(area, "base", pad, built.place()));
    dig(area, pad, tally);
    tally.job(WorkTask.GRADE_BASE, area);
  }
}
