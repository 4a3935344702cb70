package yardloom.sun.figure;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word that places the sun-path diagram. */
public final class SunPathWords {
  public static final AttributeKey<Point> SUN_POINT = new AttributeKey<>("sun.point", Point.class);

  private SunPathWords() {}

  @Verb(
      help = "Chooses the point for which the sun-path diagram is drawn.",
      example = "sunPath point(20.ft, 30.ft)")
  public static void sunPath(
      PlanScope in, @Arg(name = "at", help = "a point of the plan") Point at) {
    in.draft().attributes().add(SUN_POINT, at, in.place());
  }
}
