package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import yardloom.planting.placing.formula.TallKinds;

/**
 * Flags beds in which a tall kind stands on the sunny side of a low one: at noon its shadow falls
 * towards the pole. What a bed's lines leave open is laid so that it does not.
 */
public final class TallSideCheck implements Check {
  static final Source RULE =
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
    Optional<Poleward> pole = Poleward.of(plan);
    if (pole.isEmpty()) {
      return found;
    }
    for (List<Planting> bed : facts.get(PlantPlaces.KEY).byBed().values()) {
      if (bed.get(0).bed().attributes().get(PlantingKeys.KEPT_ORDER).isPresent()) {
        continue;
      }
      bed.stream()
          .flatMap(
              tall ->
                  bed.stream()
                      .filter(low -> shades(pole.get(), tall, low))
                      .map(l -> pair(plan, tall, l)))
          .findFirst()
          .ifPresent(found::add);
    }
    return found;
  }

  private static boolean shades(Poleward pole, Planting tall, Planting low) {
    if (!TallKinds.overtops(
        tall.plant().size().height().middle(), low.plant().size().height().middle())) {
      return false;
    }
    Point from = middle(tall);
    Point to = middle(low);
    double away = from.distance(to).metres();
    // Of the way between their middles, as much must lie along the meridian as of a bed's length.
    return away > 0 && pole.metres(to) - pole.metres(from) > BedSlices.MOSTLY * away;
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
