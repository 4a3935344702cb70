package yardloom.program.compare;

import java.util.Optional;
import java.util.function.Function;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * What became of an element.
 *
 * @param old as it was; empty if it is added
 * @param now as it is; empty if it is removed
 */
record ThingChange(How how, Optional<Thing> old, Optional<Thing> now) {
  /** The kinds of change. */
  enum How {
    ADDED,
    REMOVED,
    RENAMED,
    MOVED,
    /** Another area, and perhaps another place. */
    RESIZED,
    /** The same area in another form or turned. */
    RESHAPED
  }

  /** What is read off a tape twice differs by more. */
  private static final double SAME_M = 0.002;

  private static final double SAME_SHARE = 1e-4;

  /** What became of an element that both plans have; empty if nothing. */
  static Optional<ThingChange> between(Thing old, Thing now) {
    Optional<How> how = how(old, now);
    return how.map(h -> new ThingChange(h, Optional.of(old), Optional.of(now)));
  }

  private static Optional<How> how(Thing old, Thing now) {
    double largest = Math.max(areaM2(old), areaM2(now));
    boolean moved = distanceM(old, now) > SAME_M;
    if (Math.abs(areaM2(old) - areaM2(now)) > SAME_SHARE * largest) {
      return Optional.of(How.RESIZED);
    }
    if (largest > 0 && !congruent(old, now)) {
      return Optional.of(How.RESHAPED);
    }
    return moved ? Optional.of(How.MOVED) : Optional.empty();
  }

  /** Whether one covers the other when its middle is laid on the other's. */
  private static boolean congruent(Thing old, Thing now) {
    Point from = old.middle().orElseThrow();
    Point to = now.middle().orElseThrow();
    Shape laid = old.shape().moved(to.x().minus(from.x()), to.y().minus(from.y()));
    double apart =
        laid.minus(now.shape()).area().squareMetres()
            + now.shape().minus(laid).area().squareMetres();
    // A rim of the tolerance all around is the same.
    return apart <= SAME_M * now.shape().perimeter().metres() + SAME_SHARE * areaM2(now);
  }

  static double areaM2(Thing thing) {
    return thing.shape().area().squareMetres();
  }

  private static double distanceM(Thing old, Thing now) {
    return old.middle().isEmpty() || now.middle().isEmpty()
        ? 0
        : old.middle().get().distance(now.middle().get()).metres();
  }

  /** Whether both are one element under two names. */
  static boolean isSame(Thing old, Thing now) {
    return old.kind().equals(now.kind())
        && old.middle().isPresent()
        && now.middle().isPresent()
        && how(old, now).isEmpty();
  }

  /** The element as it is, or as it was. */
  Thing thing() {
    return now.orElseGet(old::orElseThrow);
  }

  /** How far its middle went east on the plan; zero unless both plans have it. */
  Length east() {
    return gone(Point::x);
  }

  /** How far its middle went north on the plan. */
  Length north() {
    return gone(Point::y);
  }

  private Length gone(Function<Point, Length> along) {
    Optional<Length> from = old.flatMap(Thing::middle).map(along);
    Optional<Length> to = now.flatMap(Thing::middle).map(along);
    return from.isPresent() && to.isPresent() ? to.get().minus(from.get()) : Length.ZERO;
  }

  /** Whether it went further than a tape can tell. */
  boolean isMoved() {
    return Math.hypot(east().metres(), north().metres()) > SAME_M;
  }
}
