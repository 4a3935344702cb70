package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.suit.rule.ReasonWords;

/**
 * Flags plants that outgrow their bed: wider, when grown, than the bed, or hanging far over its
 * edge.
 *
 * <p>The width of a bed is that of the largest circle in it. Plants are taken as circles of the
 * middle of their mature spread; that some leaves hang over an edge is common and not flagged.
 */
final class SpreadRule {
  /** What may hang over an edge without a word: common practice. */
  static final Length TOLERATED = Length.inches(6);

  private static final Source RULE =
      Source.commonPractice("grown plants keep within their bed, but for half a foot");

  private SpreadRule() {}

  /** A planting that outgrows its bed. */
  private record Overgrown(Planting planting, Length over, Length bedWidth) {
    Length spread() {
      return planting.plant().size().spread().middle();
    }

    boolean isWider() {
      return spread().compareTo(bedWidth) > 0;
    }

    /** By how much the bed would have to be wider. */
    Length lack() {
      Length both = over.times(2);
      Length alone = spread().minus(bedWidth);
      return both.compareTo(alone) > 0 ? both : alone;
    }
  }

  /** One finding for each kind, about the bed where it lacks most room. */
  static List<Finding> findings(String id, Plan plan, PlantPlaces layout) {
    Map<String, List<Overgrown>> kinds = new TreeMap<>();
    for (Planting p : layout.plantings()) {
      Overgrown o = new Overgrown(p, overhang(p), fromEdge(p, p.bed().shape().heart()).times(2));
      if (!p.at().isEmpty() && (o.isWider() || o.over().compareTo(TOLERATED) > 0)) {
        kinds.computeIfAbsent(p.plant().name(), k -> new ArrayList<>()).add(o);
      }
    }
    return kinds.values().stream().map(kind -> finding(id, plan, kind)).toList();
  }

  private static Finding finding(String id, Plan plan, List<Overgrown> kind) {
    Overgrown worst = Collections.max(kind, Comparator.comparing(Overgrown::lack));
    List<String> beds = kind.stream().map(o -> o.planting().bed().id().name()).distinct().toList();
    String others = beds.size() == 1 ? "" : " (so in " + NameRuns.text(beds) + ")";
    return Finding.of(
            id,
            worst.isWider() ? Severity.WARNING : Severity.NOTE,
            text(plan, worst) + intoPath(worst.planting(), plan) + others,
            "make the bed "
                + ReasonWords.both(plan, worst.lack())
                + " wider, set fewer rows nearer to its middle, take a smaller plant, or mean to"
                + " cut it back each year",
            RULE)
        .about(worst.planting().bed().id(), worst.planting().place());
  }

  /** How far the plant nearest to the edge reaches beyond it. */
  private static Length overhang(Planting p) {
    return p.at().stream()
        .map(at -> radius(p).minus(fromEdge(p, at)))
        .max(Comparator.naturalOrder())
        .orElse(Length.ZERO);
  }

  private static Length radius(Planting p) {
    return p.plant().size().spread().middle().div(2);
  }

  private static Length fromEdge(Planting p, Point at) {
    Geometry bed = p.bed().shape().jts();
    return Length.metres(bed.getBoundary().distance(bed.getFactory().createPoint(at.coordinate())));
  }

  private static String text(Plan plan, Overgrown o) {
    return "grown, "
        + o.planting().plant().name()
        + " spreads "
        + ReasonWords.both(plan, o.spread())
        + (o.isWider() ? ", wider than the bed of " + ReasonWords.both(plan, o.bedWidth()) : "")
        + " and hangs "
        + ReasonWords.both(plan, o.over())
        + " over the edge";
  }

  private static String intoPath(Planting p, Plan plan) {
    record Reach(Element.Path path, Length into) {}
    Optional<Reach> deepest =
        plan.all(Element.Path.class).stream()
            .filter(path -> !path.shape().isEmpty())
            .flatMap(
                path ->
                    p.at().stream()
                        .map(at -> new Reach(path, radius(p).minus(path.shape().distance(at)))))
            .filter(r -> r.into().metres() > 0.005)
            .max(Comparator.comparing(Reach::into));
    return deepest
        .map(r -> ", " + ReasonWords.both(plan, r.into()) + " of it into " + r.path().id())
        .orElse("");
  }
}
