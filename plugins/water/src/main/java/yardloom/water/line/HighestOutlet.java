package yardloom.water.line;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.Supply;
import yardloom.water.route.LineWays;

/**
 * How far the highest outlet lies above the ground at the tap: a vacuum breaker below it lets
 * garden water run back.
 */
final class HighestOutlet {
  private static final Source ABOVE =
      Source.commonPractice("a vacuum breaker stands higher than every outlet behind it");

  /** On a higher post it is out of reach, and its pipe wants bracing (common practice). */
  private static final Length REACH = Length.feet(5);

  private HighestOutlet() {}

  /** Empty where the plan gives no levels, or where no outlet lies above the tap's ground. */
  static Optional<Length> aboveTap(Plan plan, Facts facts) {
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    Optional<Length> tap =
        facts
            .find(LineWays.KEY)
            .map(LineWays::start)
            .flatMap(at -> surface.flatMap(s -> s.levelAt(at)));
    return tap.flatMap(
        low ->
            facts.all(DripRun.KEY).stream()
                .flatMap(HighestOutlet::outlets)
                .flatMap(at -> surface.flatMap(s -> s.levelAt(at)).stream())
                .map(level -> level.minus(low))
                .max(Comparator.naturalOrder())
                .filter(above -> above.compareTo(Length.ZERO) > 0));
  }

  private static Stream<Point> outlets(DripRun run) {
    Length spacing = run.choice().spacing();
    return run.rows().stream().flatMap(row -> outlets(row, spacing));
  }

  private static Stream<Point> outlets(Line row, Length spacing) {
    return IntStream.range(0, DripLayout.outlets(row.length(), spacing))
        .mapToObj(i -> row.at(spacing.times(i + 0.5).min(row.length())));
  }

  /** Whether the head has a vacuum breaker. */
  static boolean matters(Plan plan) {
    return !Supply.isTank(plan)
        && HeadAssembly.of(plan).backflow() == HeadAssembly.Backflow.VACUUM_BREAKER;
  }

  /** A yard so much higher than its tap wants another kind. */
  static Optional<Finding> finding(Plan plan, Facts facts, String rule) {
    return aboveTap(plan, facts)
        .filter(above -> matters(plan) && above.compareTo(REACH) > 0)
        .map(
            above ->
                Finding.of(
                    rule,
                    Severity.WARNING,
                    "the highest outlet lies "
                        + text(plan, above)
                        + " above the ground at the tap; the vacuum breaker would have to stand"
                        + " higher still",
                    "have a licensed plumber set it uphill, or another kind where the local code"
                        + " allows it: `headAssembly backflow: 'reduced pressure'`",
                    ABOVE));
  }

  static String text(Plan plan, Length length) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.1f ft", length.feet()),
            String.format(Locale.ROOT, "%.1f m", length.metres()));
  }
}
