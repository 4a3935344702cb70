package yardloom.facts.built;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.unit.Length;

/**
 * How a fence, wall or hedge is made.
 *
 * @param made of what
 * @param spacing the most from post to post, or from plant to plant of a hedge
 * @param unitLength length of a block in the face of a wall
 * @param unitHeight height of a course of a wall
 */
public record Barrier(Made made, Length spacing, Length unitLength, Length unitHeight) {
  /** On a fence, which the plan draws for all of them. */
  public static final AttributeKey<Barrier> KEY = new AttributeKey<>("site.barrier", Barrier.class);

  /** What a line that bars the way is made of. */
  public enum Made {
    /** Boards on rails between posts. */
    BOARDS,
    /** Mesh between posts. */
    MESH,
    /** Blocks laid dry that stand free. */
    WALL,
    /** Blocks laid dry that hold earth. */
    RETAINING,
    HEDGE;

    /** Whether it is laid of blocks. */
    public boolean isWall() {
      return this == WALL || this == RETAINING;
    }

    /** Whether it hangs on posts. */
    public boolean isFence() {
      return this == BOARDS || this == MESH;
    }
  }

  /** Whether a fence of the plan is a hedge. */
  public static boolean isHedge(Element.Fence fence) {
    return fence.attributes().get(KEY).filter(b -> b.made == Made.HEDGE).isPresent();
  }

  /** Of posts. */
  public static Barrier fence(Made made, Length spacing) {
    return new Barrier(made, spacing, Length.ZERO, Length.ZERO);
  }

  /** Of blocks. */
  public static Barrier wall(boolean retains, Length unitLength, Length unitHeight) {
    return new Barrier(retains ? Made.RETAINING : Made.WALL, Length.ZERO, unitLength, unitHeight);
  }
}
