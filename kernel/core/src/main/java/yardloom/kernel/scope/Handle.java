package yardloom.kernel.scope;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.Sides;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * What a word that makes an element returns, so that later words can refer to it: {@code def house
 * = building(…)}, then {@code roof(…, house.shape)} or {@code bedAlong('wall bed', house.south,
 * depth: 3.ft)}. A value: nothing that is done with it changes the plan.
 *
 * <p>Sides run so that the useful ground is on their left: outside of a house, inside of a lot.
 */
public final class Handle {
  private final ElementId id;
  private final Shape shape;
  private final Line line;
  private final Map<String, Line> sides;
  private final List<Handle> parts;

  public Handle(ElementId id, Shape shape) {
    this(id, shape, null, Map.of(), List.of());
  }

  private Handle(
      ElementId id, Shape shape, Line line, Map<String, Line> sides, List<Handle> parts) {
    this.id = id;
    this.shape = shape;
    this.line = line;
    this.sides = new TreeMap<>(sides);
    this.parts = List.copyOf(parts);
  }

  /** A handle of something along a line. */
  public static Handle along(ElementId id, Line line, Shape shape) {
    return new Handle(id, shape, line, Map.of(), List.of());
  }

  /** A handle of something whose sides have names of their own. */
  public static Handle withSides(ElementId id, Shape shape, Map<String, Line> sides) {
    return new Handle(id, shape, null, sides, List.of());
  }

  /** A handle of several elements made by one word; its shape is that of all together. */
  public static Handle group(ElementId id, List<Handle> parts) {
    Shape all = Shape.union(parts.stream().map(Handle::getShape).toList());
    return new Handle(id, all, null, Map.of(), parts);
  }

  public ElementId id() {
    return id;
  }

  /** Its name; scripts read it as {@code house.name}. */
  public String getName() {
    return id.name();
  }

  /** The ground it covers; scripts read it as {@code house.shape}. */
  public Shape getShape() {
    return shape;
  }

  /** The elements a word for several made, in their order; empty for a single element. */
  public List<Handle> getParts() {
    return parts;
  }

  /**
   * The line it was drawn along, such as a fence's.
   *
   * @throws PlanException (WRONG_TYPE) if it was not drawn along a line
   */
  public Line getLine() {
    if (line == null) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          id + " was not drawn along a line; use one of its sides, such as `.south`");
    }
    return line;
  }

  /** The middle of the ground it covers. */
  public Point getCentre() {
    requireGround();
    return shape.centroid();
  }

  public Line getNorth() {
    return side("north");
  }

  public Line getSouth() {
    return side("south");
  }

  public Line getEast() {
    return side("east");
  }

  public Line getWest() {
    return side("west");
  }

  /**
   * The side called so: a side of the lot by its name, otherwise north, south, east or west by the
   * plan's up direction.
   *
   * @throws PlanException (UNKNOWN_WORD) if there is no such side
   */
  public Line side(String name) {
    if (sides.containsKey(name)) {
      return sides.get(name);
    }
    if (!sides.isEmpty()) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          id + " has no side '" + name + "'; it has " + String.join(", ", sides.keySet()));
    }
    requireGround();
    return Sides.Compass.named(name)
        .flatMap(c -> Sides.facing(shape, c))
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    id + " has no edge that faces '" + name + "' on the plan (north is up)"));
  }

  /** The ground of both; {@code house + shed} in scripts. */
  public Shape plus(Handle other) {
    return shape.plus(other.shape);
  }

  public Shape plus(Shape other) {
    return shape.plus(other);
  }

  /** Its ground without the other's; {@code lot - house} in scripts. */
  public Shape minus(Handle other) {
    return shape.minus(other.shape);
  }

  public Shape minus(Shape other) {
    return shape.minus(other);
  }

  /** The ground both share; {@code bed & lot} in scripts. */
  public Shape and(Handle other) {
    return shape.and(other.shape);
  }

  public Shape and(Shape other) {
    return shape.and(other);
  }

  /** Its ground and everything within {@code distance} of it. */
  public Shape grown(Length distance) {
    return shape.grown(distance);
  }

  /** The part of its ground at least {@code distance} from its edge. */
  public Shape shrunk(Length distance) {
    return shape.shrunk(distance);
  }

  public Shape moved(Length right, Length up) {
    return shape.moved(right, up);
  }

  public Shape turned(Angle by, Point centre) {
    return shape.turned(by, centre);
  }

  /** Its ground mirrored in the straight line through two points. */
  public Shape mirrored(Point from, Point to) {
    return shape.mirrored(from, to);
  }

  /** The point of its ground nearest to {@code to}; itself if it lies inside. */
  public Point nearest(Point to) {
    requireGround();
    return shape.nearest(to);
  }

  private void requireGround() {
    if (shape.isEmpty()) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE, id + " is a point without ground, so it has no sides or middle");
    }
  }
}
