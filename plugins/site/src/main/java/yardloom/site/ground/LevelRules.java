package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;

/** Whether levels may hold a slip of the pen: far from the lot, or higher than ground stands. */
public final class LevelRules {
  /** Streets and neighbours are levelled too, but not further away than this. */
  private static final Length FAR = Length.metres(30);

  /** Ground steeper than this from one level to the next is a wall or a mistake. */
  private static final double STEEPEST = 1;

  /** A garden wall may be this high; more is likelier a slip. */
  private static final Length WALL = Length.metres(3);

  private static final Source PRACTICE =
      Source.commonPractice("levels are taken on and near the lot; earth does not stand steeper");

  private LevelRules() {}

  public static List<Finding> levels(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<Surface> entry : plan.attributes().all(Surface.KEY)) {
      for (Spot spot : entry.value().spots()) {
        far(plan, spot, entry).ifPresent(findings::add);
      }
      steep(plan, entry).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> far(Plan plan, Spot spot, Attributes.Entry<Surface> entry) {
    return plan.lot()
        .map(Lot::shape)
        .map(lot -> lot.distance(spot.at()))
        .filter(away -> away.compareTo(FAR) > 0)
        .map(
            away ->
                at(
                    entry,
                    Severity.WARNING,
                    "the level of "
                        + show(plan, spot)
                        + " lies "
                        + Show.length(plan, away)
                        + " outside of the lot; levels further than "
                        + Show.length(plan, FAR)
                        + " away are mostly slips",
                    "check its place and unit"));
  }

  /** The pair of levels with the steepest ground between them, if that is too steep. */
  private static Optional<Finding> steep(Plan plan, Attributes.Entry<Surface> entry) {
    List<Spot> spots = entry.value().spots();
    Spot low = null;
    Spot high = null;
    double worst = STEEPEST;
    for (Spot a : spots) {
      for (Spot b : spots) {
        Length rise = b.level().minus(a.level());
        double ratio = rise.metres() <= 0 ? 0 : rise.ratioTo(a.at().distance(b.at()));
        if (ratio > worst) {
          worst = ratio;
          low = a;
          high = b;
        }
      }
    }
    return low == null
        ? Optional.empty()
        : Optional.of(
            at(
                entry,
                high.level().minus(low.level()).compareTo(WALL) > 0
                    ? Severity.WARNING
                    : Severity.NOTE,
                "from the level of "
                    + show(plan, low)
                    + " to that of "
                    + show(plan, high)
                    + " the ground would rise "
                    + Show.length(plan, high.level().minus(low.level()))
                    + " in "
                    + Show.length(plan, low.at().distance(high.at()))
                    + "; steeper than 1 in 1 is a wall or a slip",
                "check both levels; give a wall's foot and top as two breaklines"));
  }

  private static String show(Plan plan, Spot spot) {
    return Show.length(plan, spot.level())
        + " at ("
        + Show.length(plan, spot.at().x())
        + ", "
        + Show.length(plan, spot.at().y())
        + ")";
  }

  private static Finding at(
      Attributes.Entry<Surface> entry, Severity severity, String text, String advice) {
    return Finding.of("site.levels", severity, text, advice, PRACTICE).at(entry.place());
  }
}
