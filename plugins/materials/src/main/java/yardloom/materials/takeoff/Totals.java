package yardloom.materials.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.MulchTotals.Lift;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Volume;

/**
 * Sums over surfaces, keeping every term as an input. No surfaces give zero.
 *
 * <p>References: addition; no publication is needed.
 */
public final class Totals {
  private static final Source SUM = Source.plan("sum over the surfaces of the plan");

  private Totals() {}

  public static Derived<Volume> volume(List<MulchSurface> surfaces, Material material) {
    Derived.Builder why = Derived.by("sum over surfaces", SUM);
    Volume total = Volume.ZERO;
    for (MulchSurface s : surfaces) {
      Optional<Derived<Volume>> volume = s.volume(material);
      if (volume.isPresent()) {
        Derived<Volume> term = volume.get();
        why.from(s.title(), term, s.place());
        total = total.plus(term.value());
      }
    }
    return why.gives(total);
  }

  /**
   * What is laid of {@code material} in each phase, in their order; phases without any left out.
   */
  public static List<Lift> lifts(List<MulchSurface> surfaces, Material material) {
    List<Lift> lifts = new ArrayList<>();
    for (WorkPhase phase : WorkPhase.values()) {
      Derived.Builder why = Derived.by("sum over surfaces", SUM);
      Volume total = Volume.ZERO;
      for (MulchSurface s : surfaces) {
        for (LaidLayer course : s.lifts(material)) {
          if (course.phase() == phase) {
            Derived<Volume> term = course.volume().orElseThrow();
            why.from(s.title(), term, s.place());
            total = total.plus(term.value());
          }
        }
      }
      if (total.compareTo(Volume.ZERO) > 0) {
        lifts.add(new Lift(material, phase, why.gives(total)));
      }
    }
    return lifts;
  }

  public static Derived<Integer> sheets(List<MulchSurface> surfaces) {
    Derived.Builder why = Derived.by("sum over surfaces", SUM);
    int total = 0;
    for (MulchSurface s : surfaces) {
      if (s.sheets().isPresent()) {
        why.from(s.title(), s.sheets().get(), s.place());
        total += s.sheets().get().value();
      }
    }
    return why.gives(total);
  }

  public static Derived<Area> area(List<MulchSurface> surfaces) {
    Derived.Builder why = Derived.by("sum over surfaces", SUM);
    Area total = Area.ZERO;
    for (MulchSurface s : surfaces) {
      why.from(s.title(), s.area(), s.place());
      total = total.plus(s.area().value());
    }
    return why.gives(total);
  }
}
