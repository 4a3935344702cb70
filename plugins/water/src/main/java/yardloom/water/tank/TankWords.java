package yardloom.water.tank;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.tank.formula.TankBehaviour.Order;

/** The words for tanks of roof water. */
public final class TankWords {
  /** Share that a fine screen lets into the tank (TRCA, as quoted by the STEP wiki). */
  static final double USUAL_SCREEN = 0.9;

  private static final Length LEAST = Length.inches(6);
  private static final Length MOST = Length.metres(6);
  private static final int MOST_LINKED = 20;

  private TankWords() {}

  /** Orders of use and rain within a day, as people say them. */
  public enum DayOrder {
    USE_BEFORE_RAIN(Order.YIELD_AFTER_SPILL),
    RAIN_BEFORE_USE(Order.YIELD_BEFORE_SPILL),
    FULL_THEN_USE(Order.CAP_THEN_DRAW);

    private final Order order;

    DayOrder(Order order) {
      this.order = order;
    }
  }

  @Verb(
      help = "A tank, barrel or cistern for the water of a roof, or several linked in a row.",
      example =
          "tank('barrels', point(12.ft, 30.ft), roof: 'south slope') { round diameter: 2.ft,"
              + " height: 3.ft, count: 3 ; stand 18.inch }")
  public static void tank(
      PlanScope in,
      @Arg(name = "name", help = "what tables call it") String name,
      @Arg(name = "at", help = "the middle of the first one") Point at,
      @Opt(name = "roof", help = "the roof that fills it, by its name", required = true)
          String roof,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      Consumer<TankScope> block) {
    if (in.draft().attributes().all(TankPlan.KEY).stream()
        .anyMatch(e -> e.value().name().equals(name))) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "there is a tank '" + name + "' already");
    }
    TankScope.Given given = new TankScope.Given();
    if (block != null) {
      block.accept(new TankScope(given, in.place()));
    }
    TankPlan made = given.plan(name, at, roof, in.place());
    Making.add(in, built, () -> in.draft().attributes().add(TankPlan.KEY, made, in.place()));
  }

  @Verb(
      help = "A standing round tank; several of the same size may be linked at the foot.",
      example = "round diameter: 2.ft, height: 3.ft, count: 3")
  public static void round(
      TankScope in,
      @Opt(name = "diameter", help = "inside", required = true) Length diameter,
      @Opt(name = "height", help = "of the water when full", required = true) Length height,
      @Opt(name = "count", help = "how many, linked", fallback = "1") Integer count) {
    in.round(size(in, "diameter", diameter), size(in, "height", height), count(in, count));
  }

  @Verb(
      help = "A rectangular tank; several of the same size may be linked at the foot.",
      example = "box width: 4.ft, depth: 3.ft, height: 5.ft")
  public static void box(
      TankScope in,
      @Opt(name = "width", help = "inside", required = true) Length width,
      @Opt(name = "depth", help = "inside, front to back", required = true) Length depth,
      @Opt(name = "height", help = "of the water when full", required = true) Length height,
      @Opt(name = "count", help = "how many, linked", fallback = "1") Integer count) {
    in.box(
        size(in, "width", width),
        size(in, "depth", depth),
        size(in, "height", height),
        count(in, count));
  }

  @Verb(help = "How high the foot of the tank stands above the ground.", example = "stand 18.inch")
  public static void stand(
      TankScope in, @Arg(name = "height", help = "0 to 6 m (20 ft)") Length height) {
    if (height.metres() < 0 || height.compareTo(MOST) > 0) {
      throw outOfRange(in, "a stand is 0 to 20 ft (6 m) high", height);
    }
    in.stand(height);
  }

  @Verb(
      help = "The beds and trees that the tank waters, by their names; all if nothing is said.",
      example = "serves(['Greens', 'Berry row'])")
  public static void serves(
      TankScope in, @Arg(name = "names", help = "beds and trees of the plan") List<?> names) {
    in.serves(names.stream().map(String::valueOf).toList());
  }

  @Verb(
      help = "What is drawn from the tank every day for something else, such as hens or cleaning.",
      example = "otherUse 5.gal")
  public static void otherUse(
      TankScope in, @Arg(name = "daily", help = "in a day, all year") Volume daily) {
    if (daily.litres() < 0 || daily.litres() > 10_000) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          String.format(
              Locale.ROOT,
              "`otherUse` is 0 to 2,640 gal (10,000 L) a day, got %s; check the unit",
              Say.both(Measure.WATER, daily)));
    }
    in.otherUse(daily);
  }

  @Verb(
      help = "What keeps dirt out of the tank: the first rain led past it, and a screen.",
      example = "inlet firstFlush: 0.02.inch, screened: 0.9")
  public static void inlet(
      TankScope in,
      @Opt(
              name = "firstFlush",
              help = "depth over the roof that is led past after a dry day",
              fallback = "0.016 in (0.4 mm), 10 gal for 1,000 sq ft")
          Length firstFlush,
      @Opt(name = "screened", help = "share that screen and filter let in", fallback = "0.9")
          Number screened) {
    Length depth = firstFlush == null ? FirstFlush.LEAST : firstFlush;
    if (depth.metres() < 0 || depth.millimetres() > 5) {
      throw outOfRange(in, "a first flush is 0 to 0.2 in (5 mm) over the roof", depth);
    }
    double share = screened == null ? USUAL_SCREEN : screened.doubleValue();
    if (!(share > 0 && share <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`screened:` is a share above 0 and up to 1, got " + screened);
    }
    in.inlet(depth, share);
  }

  @Verb(
      help = "Which comes first in a day of rain; the cautious one if nothing is said.",
      example = "order 'rain before use'")
  public static void order(
      TankScope in,
      @Arg(name = "order", help = "within a day", choices = DayOrder.class) String order) {
    in.order(Choices.parse(DayOrder.class, order).order);
  }

  @Verb(
      help = "What the tank costs with its stand and screen, in the plan's currency.",
      example = "costs 340")
  public static void costs(
      TankScope in, @Arg(name = "amount", help = "of all linked ones") Number amount) {
    if (!(amount.doubleValue() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "a cost is above 0, got " + amount);
    }
    in.cost(amount.doubleValue());
  }

  private static Length size(TankScope in, String what, Length given) {
    if (given.compareTo(LEAST) < 0 || given.compareTo(MOST) > 0) {
      throw outOfRange(in, "`" + what + ":` of a tank is 6 in (15 cm) to 20 ft (6 m)", given);
    }
    return given;
  }

  private static int count(TankScope in, Integer given) {
    int count = given == null ? 1 : given;
    if (count < 1 || count > MOST_LINKED) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`count:` is 1 to " + MOST_LINKED + ", got " + count);
    }
    return count;
  }

  private static PlanException outOfRange(TankScope in, String allowed, Length got) {
    return new PlanException(
        ProblemCode.OUT_OF_RANGE,
        in.place(),
        String.format(Locale.ROOT, "%s, got %s", allowed, Say.size(got)));
  }
}
