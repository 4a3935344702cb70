package countysoil;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words of this plugin. */
public final class CountySoilWords {
  /** A well, and how far fed ground keeps from it. */
  public record Well(String name, Point at, Length distance) {
    /** On the plan, any number. */
    public static final AttributeKey<Well> KEY = new AttributeKey<>("countysoil.well", Well.class);
  }

  private CountySoilWords() {}

  @Verb(
      help = "Says where a well is and how far beds that are fed with compost keep from it.",
      example = "countySoilWell('the well', point(10.ft, 12.ft), distance: 50.ft)")
  public static void countySoilWell(
      PlanScope plan,
      @Arg(name = "name", help = "how findings call it") String name,
      @Arg(name = "at", help = "its middle") Point at,
      @Opt(name = "distance", help = "from its middle to fed ground", required = true)
          Length distance) {
    if (!(distance.metres() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, plan.place(), "the distance is more than nothing");
    }
    plan.draft().attributes().add(Well.KEY, new Well(name, at, distance), plan.place());
  }
}
