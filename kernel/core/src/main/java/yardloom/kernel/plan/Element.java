package yardloom.kernel.plan;

import java.util.Objects;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/** A thing on the plan. What is common to all kinds is in {@link Common}. */
public sealed interface Element
    permits Element.Building,
        Element.Structure,
        Element.Fence,
        Element.Paving,
        Element.Tree,
        Element.Path,
        Element.Bed,
        Element.MulchedGround,
        Element.WaterPoint,
        Element.Roof,
        Element.Utility,
        Element.KeepOut {

  /** What every element has. */
  Common common();

  /** The ground it covers in plan; empty for points and lines without a width. */
  Shape shape();

  default ElementId id() {
    return common().id();
  }

  default SourceRef place() {
    return common().place();
  }

  default Attributes attributes() {
    return common().attributes();
  }

  /** Whether it is there before the work begins, and whether the script says so. */
  default Standing standing() {
    return Standing.of(this);
  }

  /** Whether it is there before the work begins. */
  default boolean stands() {
    return standing().stands();
  }

  /** Whether it is made now, where the yard is made in parts. */
  default PartTurn turn() {
    return attributes().get(PartTurn.KEY).orElse(PartTurn.NOW);
  }

  /** The part of the plan in which it was said; empty outside of any. */
  default String part() {
    return attributes().get(PartTurn.PART).orElse("");
  }

  /** The same thing with {@code common} in the place of its own. */
  Element with(Common common);

  /** The same thing, made in that turn. */
  default Element in(PartTurn turn) {
    return turn == PartTurn.NOW ? this : with(common().with(PartTurn.KEY, turn));
  }

  /** Identity, script place and what plugins attached. */
  record Common(ElementId id, SourceRef place, Attributes attributes) {
    public Common {
      Objects.requireNonNull(id);
      Objects.requireNonNull(place);
      Objects.requireNonNull(attributes);
    }

    /** The same with {@code value} alone under {@code key}. */
    <T> Common with(AttributeKey<T> key, T value) {
      return new Common(id, place, attributes.with(key, value, place));
    }
  }

  /** How a roof rises above the eaves. */
  enum RoofForm {
    FLAT,
    GABLE,
    HIP,
    SHED
  }

  /** What a bed mainly grows; decides its mulch and compost. */
  enum BedUse {
    PERENNIAL,
    ANNUAL
  }

  /** Who or what uses a path. */
  enum PathUse {
    FOOT,
    BARROW,
    ACCESSIBLE
  }

  /** When a tree bears leaves. */
  enum Leaf {
    DECIDUOUS,
    EVERGREEN
  }

  /**
   * A house, on the lot or a neighbour's outside it.
   *
   * @param shape the footprint of the walls
   * @param eavesHeight height of the eaves above ground
   * @param ridgeHeight height of the highest part of the roof; equal to the eaves on a flat roof
   * @param overhang how far the eaves stand out beyond the walls
   * @param neighbour whether it stands outside the lot
   */
  record Building(
      Common common,
      Shape shape,
      Length eavesHeight,
      Length ridgeHeight,
      Length overhang,
      RoofForm roof,
      boolean neighbour)
      implements Element {
    @Override
    public Building with(Common common) {
      return new Building(common, shape, eavesHeight, ridgeHeight, overhang, roof, neighbour);
    }
  }

  /** A shed, pergola, deck or other built thing. */
  record Structure(Common common, Shape shape, Length height) implements Element {
    @Override
    public Structure with(Common common) {
      return new Structure(common, shape, height);
    }
  }

  /**
   * A fence, wall or hedge.
   *
   * @param shape the ground under it
   * @param openness share of light that passes, 0 (solid) to 1
   */
  record Fence(Common common, Line line, Shape shape, Length height, double openness)
      implements Element {
    @Override
    public Fence with(Common common) {
      return new Fence(common, line, shape, height, openness);
    }
  }

  /** A drive, terrace or other hard surface. */
  record Paving(Common common, Shape shape, String surface) implements Element {
    @Override
    public Paving with(Common common) {
      return new Paving(common, shape, surface);
    }
  }

  /**
   * A tree, standing or to be planted.
   *
   * @param shape the crown in plan
   * @param trunk the diameter of the trunk at breast height
   * @param crownBase the height of the lowest branches
   */
  record Tree(
      Common common,
      Point at,
      Shape shape,
      Length crown,
      Length height,
      Length crownBase,
      Length trunk,
      Leaf leaf)
      implements Element {
    @Override
    public Tree with(Common common) {
      return new Tree(common, at, shape, crown, height, crownBase, trunk, leaf);
    }
  }

  /** A path along a line. */
  record Path(Common common, Line line, Shape shape, Length width, PathUse use) implements Element {
    @Override
    public Path with(Common common) {
      return new Path(common, line, shape, width, use);
    }
  }

  /** Ground to be planted. */
  record Bed(Common common, Shape shape, BedUse use) implements Element {
    @Override
    public Bed with(Common common) {
      return new Bed(common, shape, use);
    }
  }

  /**
   * Ground that is mulched whole, such as a lawn turned over.
   *
   * @param shape all of it; beds, paths and what is built may lie in it
   */
  record MulchedGround(Common common, Shape shape) implements Element {
    @Override
    public MulchedGround with(Common common) {
      return new MulchedGround(common, shape);
    }
  }

  /** A tap, tank or other place where water can be taken. */
  record WaterPoint(Common common, Point at, String source) implements Element {
    @Override
    public WaterPoint with(Common common) {
      return new WaterPoint(common, at, source);
    }

    @Override
    public Shape shape() {
      return Shape.EMPTY;
    }
  }

  /**
   * A roof surface that drains to one place.
   *
   * @param shape the catchment in plan (footprint, not along the slope)
   * @param surface what it is covered with
   */
  record Roof(Common common, Shape shape, String surface) implements Element {
    @Override
    public Roof with(Common common) {
      return new Roof(common, shape, surface);
    }
  }

  /**
   * A buried or overhead line.
   *
   * @param clearance how far digging must keep away from it
   */
  record Utility(Common common, Line line, Shape shape, String carries, Length clearance)
      implements Element {
    @Override
    public Utility with(Common common) {
      return new Utility(common, line, shape, carries, clearance);
    }
  }

  /** Ground that must not be built or planted on. */
  record KeepOut(Common common, Shape shape, String reason) implements Element {
    @Override
    public KeepOut with(Common common) {
      return new KeepOut(common, shape, reason);
    }
  }
}
