package yardloom.facts.mulch;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Volume;

/**
 * Ground of one element that receives one stack of layers. Surfaces of a plan do not overlap.
 *
 * @param of the bed, path or tree it belongs to
 * @param shape what is left of the element after all that wins over it
 * @param area its size, with what was taken off
 * @param courses all layers from the ground up, in the order in which they are laid: what lies
 *     lower has no later phase
 */
public record MulchSurface(
    ElementId of,
    SourceRef place,
    SurfaceKind kind,
    Shape shape,
    Derived<Area> area,
    List<LaidLayer> courses) {
  private static final Source LIFTS = Source.plan("lifts of one layer");

  public MulchSurface {
    courses = List.copyOf(courses);
  }

  /** The layers of {@code material}, from the ground up; chips may come in two lifts. */
  public List<LaidLayer> lifts(Material material) {
    return courses.stream().filter(c -> c.material().equals(material)).toList();
  }

  /** Cardboard sheets under the stack; empty where none is laid. */
  public Optional<Derived<Integer>> sheets() {
    return lifts(Material.CARDBOARD).stream()
        .findFirst()
        .map(c -> c.amount().map(n -> (Integer) n));
  }

  /** The depth of all lifts of {@code material} together, if the stack has it. */
  public Optional<Derived<Length>> depth(Material material) {
    return sum(lifts(material).stream().flatMap(c -> c.depth().stream()).toList());
  }

  /** The volume of all lifts of {@code material} together, if the stack has it. */
  public Optional<Derived<Volume>> volume(Material material) {
    return sum(lifts(material).stream().flatMap(c -> c.volume().stream()).toList());
  }

  private static <Q extends Quantity<Q>> Optional<Derived<Q>> sum(List<Derived<Q>> lifts) {
    if (lifts.size() < 2) {
      return lifts.stream().findFirst();
    }
    Derived.Builder why = Derived.by("sum over lifts", LIFTS);
    for (int i = 0; i < lifts.size(); i++) {
      why.from("lift " + (i + 1), lifts.get(i));
    }
    Q all = lifts.stream().map(Derived::value).reduce(Quantity::plus).orElseThrow();
    return Optional.of(why.gives(all));
  }

  /** How tables call it: {@code South} or {@code Apple, tree ring}. */
  public String title() {
    return of.title() + (kind == SurfaceKind.TREE_RING ? ", tree ring" : "");
  }
}
