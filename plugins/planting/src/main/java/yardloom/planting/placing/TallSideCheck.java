package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;

/**
 * Flags beds in which a tall kind stands on the sunny side of a low one: at noon its shadow falls
 * towards the pole. Tall is what passes 3 ft and twice the other's height.
 */
public final class TallSideCheck implements Check {
  private static final Length TALL = Length.feet(3);
  private static final double TIMES = 2;

  /** Of the way between their middles, how much must lie along the meridian: 45°. */
  private static final double MOSTLY = Math.sqrt(0.5);

  private static final Source RULE =
      Source.commonPractice("tall kinds stand on the side of the pole, low ones in the sun");

  @Override
  public String id() {
    return "planting.tall-side";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    if (plan.site().isEmpty()) {
      return found;
    }
    for (List<Planting> bed : facts.get(PlantPlaces.KEY).byBed().values()) {
      bed.stream()
          .flatMap(
              tall ->
                  bed.stream().filter(low -> shades(plan, tall, low)).map(l -> pair(plan, tall, l)))
          .findFirst()
          .ifPresent(found::add);
    }
    return found;
  }

  private static boolean shades(Plan plan, Planting tall, Planting low) {
    Length height = tall.plant().size().height().middle();
    if (height.compareTo(TALL) < 0
        || height.compareTo(low.plant().size().height().middle().times(TIMES)) < 0) {
      return false;
    }
    // The bearing of north on the plan, clockwise from straight up.
    double north = plan.site().orElseThrow().north().radians();
    Point from = middle(tall);
    Point to = middle(low);
    double right = to.x().minus(from.x()).metres();
    double up = to.y().minus(from.y()).metres();
    double poleward = right * StrictMath.sin(north) + up * StrictMath.cos(north);
    double away = Math.hypot(right, up);
    return away > 0 && (plan.isSouthern() ? -poleward : poleward) > MOSTLY * away;
  }

  private static Point middle(Planting p) {
    double x = p.at().stream().mapToDouble(a -> a.x().metres()).average().orElseThrow();
    double y = p.at().stream().mapToDouble(a -> a.y().metres()).average().orElseThrow();
    return Point.metres(x, y);
  }

  private Finding pair(Plan plan, Planting tall, Planting low) {
    return Finding.of(
            id(),
            Severity.NOTE,
            String.format(
                Locale.ROOT,
                "%s grows to %s on the sunny side of %s and shades it at noon",
                tall.plant().name(),
                Say.both(
                    Measure.LENGTH, tall.plant().size().height().middle(), plan.info().units()),
                low.plant().name()),
            "change the order of the lines of this bed, so that what is tall stands nearer the"
                + " pole",
            RULE)
        .about(tall.bed().id(), tall.place());
  }
}
