package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Contours;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * Contour lines with their levels, each written in a break of its line; every fifth is twice as
 * heavy.
 *
 * <p>References: [1] International Orienteering Federation, ISOM 2017-2 and ISSprOM 2019-2: every
 * fifth contour is an index contour, 2 to 3 times as thick.
 */
public final class ContourPainter implements Painter {
  private static final Style THIN = Style.line("contour", "#7a5a28", 0.25);
  private static final Style INDEX = Style.line("contour-index", "#7a5a28", 0.5);
  private static final int INDEX_EVERY = 5;

  @Override
  public Layer layer() {
    // Above beds and mulched ground: on a grading sheet the ground's form comes first.
    return new Layer("site.lot-contours", "Contours", Layer.Band.WATER);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    Optional<LevelWords.ContourStep> step = plan.attributes().get(LevelWords.ContourStep.KEY);
    if (surface.isEmpty() || step.isEmpty()) {
      return List.of();
    }
    List<Mark> marks = new ArrayList<>();
    ContourLabels labels = new ContourLabels(plan);
    Length interval = step.get().interval();
    for (Contours.Contour contour : Contours.of(surface.get(), interval, Length.ZERO)) {
      boolean index = Math.round(contour.level().ratioTo(interval)) % INDEX_EVERY == 0;
      String text = LevelText.of(plan, contour.level());
      for (Line line : contour.lines()) {
        marks.add(new Mark.Stroke(line, index ? INDEX : THIN, "contour " + text));
        Optional<Point> place = labels.place(line);
        place.ifPresent(at -> marks.add(level(at, text, index, index ? 2 : 4, Mark.Anchor.CENTRE)));
        place
            .flatMap(at -> labels.again(line, at))
            .ifPresent(at -> marks.add(level(at, text, index, 6, Mark.Anchor.FIXED)));
      }
    }
    return marks;
  }

  private static Mark level(Point at, String text, boolean bold, int rank, Mark.Anchor anchor) {
    return new Mark.Label(at, text, 2, bold, rank, anchor);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return paint(plan, facts).isEmpty()
        ? List.of()
        : List.of(LegendEntry.line("Contour line", THIN));
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.LAYOUT, SheetPage.GRADING);
  }
}
