package yardloom.facts.mulch;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;

/**
 * Ground of one element that receives one stack of layers. Surfaces of a plan do not overlap.
 *
 * @param of the bed, path or tree it belongs to
 * @param shape what is left of the element after all that wins over it
 * @param area its size, with what was taken off
 * @param sheets cardboard sheets under the stack; empty where none is laid
 * @param courses the layers from the ground up, without those of no depth
 */
public record Surface(
    ElementId of,
    SourceRef place,
    SurfaceKind kind,
    Shape shape,
    Derived<Area> area,
    Optional<Derived<Integer>> sheets,
    List<Course> courses) {
  public Surface {
    courses = List.copyOf(courses);
  }

  /** The layer of {@code material}, if the stack has one. */
  public Optional<Course> course(Material material) {
    return courses.stream().filter(c -> c.material() == material).findFirst();
  }

  /** How tables call it: {@code bed "south"} or {@code bed "south", tree ring}. */
  public String title() {
    return of + (kind == SurfaceKind.TREE_RING ? ", tree ring" : "");
  }
}
