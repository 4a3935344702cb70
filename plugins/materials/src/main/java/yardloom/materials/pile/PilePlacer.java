package yardloom.materials.pile;

import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.DropZone;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Clearance;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Lays a heap on its spot: a cone at the roomiest place if it fits, else a windrow along the spot
 * as wide as the spot allows there.
 *
 * <p>The heap {@code fits} if its ground lies on the spot but for the chords of its round ends.
 * What does not fit is drawn all the same, so that the sheet shows how far it spills. The load is
 * above zero.
 *
 * <p>References: {@link Pile}.
 */
public final class PilePlacer {
  // Round ends are chords; a heap is no machine part.
  private static final Length TOLERANCE = Length.metres(0.01);

  private PilePlacer() {}

  public static DropPile place(DropZone spot, Derived<Volume> load) {
    Pile.Cone cone = Pile.coneHolding(load.value(), spot.repose());
    Point heart = spot.shape().heart();
    Length radius = cone.diameter().div(2);
    Length room = Clearance.within(spot.shape()).of(heart);
    if (room.plus(TOLERANCE).compareTo(radius) >= 0) {
      return new DropPile(
          spot,
          load,
          Shape.circle(heart, radius),
          "cone",
          height(spot, load, "cone", cone.height()),
          cone.diameter(),
          cone.diameter(),
          heart,
          true);
    }
    return windrow(spot, load, heart, room.times(2));
  }

  private static DropPile windrow(DropZone spot, Derived<Volume> load, Point heart, Length base) {
    Pile.Windrow heap = Pile.windrowHolding(load.value(), base, spot.repose());
    LongAxis axis = LongAxis.of(spot.shape());
    Length half = heap.ridge().div(2);
    Line ridge = Line.between(step(axis, heart, half.negative()), step(axis, heart, half));
    Shape ground =
        Shape.circle(ridge.start(), base.div(2))
            .plus(Shape.circle(ridge.end(), base.div(2)))
            .plus(strip(ridge, base));
    boolean fits = spot.shape().grown(TOLERANCE).covers(ground);
    return new DropPile(
        spot,
        load,
        ground,
        "windrow",
        height(spot, load, "windrow", heap.height()),
        base,
        heap.length(),
        heart,
        fits);
  }

  private static Point step(LongAxis axis, Point from, Length along) {
    Point origin = axis.at(Length.ZERO, Length.ZERO);
    Point ahead = axis.at(along, Length.ZERO);
    return from.moved(ahead.x().minus(origin.x()), ahead.y().minus(origin.y()));
  }

  private static Shape strip(Line ridge, Length width) {
    double dx = ridge.end().x().metres() - ridge.start().x().metres();
    double dy = ridge.end().y().metres() - ridge.start().y().metres();
    double half = width.metres() / 2 / ridge.length().metres();
    Length right = Length.metres(-dy * half);
    Length up = Length.metres(dx * half);
    return Shape.polygon(
        java.util.List.of(
            ridge.start().moved(right, up),
            ridge.start().moved(right.negative(), up.negative()),
            ridge.end().moved(right.negative(), up.negative()),
            ridge.end().moved(right, up)));
  }

  private static Derived<Length> height(
      DropZone spot, Derived<Volume> load, String form, Length height) {
    return Derived.by("height of a " + form + " at its angle of repose", Pile.SOURCE)
        .from("volume", load)
        .from("angle of repose", spot.repose(), spot.place())
        .gives(height);
  }
}
