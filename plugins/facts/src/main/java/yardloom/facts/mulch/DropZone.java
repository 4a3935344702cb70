package yardloom.facts.mulch;

import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Where a truck tips a heap.
 *
 * @param shape the ground the heap may take
 * @param material what is tipped there
 * @param repose the angle at which the heap stands
 * @param way the middle of the way by which the truck comes, from the street, if the plan says
 * @param access the width of the way by which the truck comes
 * @param barrow what one barrow takes
 * @param detour how much longer the walk over open ground is than the way round buildings
 */
public record DropZone(
    String name,
    SourceRef place,
    Shape shape,
    Material material,
    Angle repose,
    Optional<Line> way,
    Length access,
    Volume barrow,
    double detour) {

  /** The ground that the truck drives over. */
  public Optional<Shape> approach() {
    return way.map(line -> line.strip(access));
  }

  /** The same, reached over a lane. */
  public DropZone by(TruckLane lane) {
    return new DropZone(
        name,
        place,
        shape,
        material,
        repose,
        Optional.of(lane.middle()),
        lane.width(),
        barrow,
        detour);
  }
}
