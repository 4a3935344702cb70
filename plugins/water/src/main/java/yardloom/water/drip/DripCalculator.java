package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Dripline;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.drip.formula.HeaderLayout;
import yardloom.water.drip.formula.HeaderLayout.Joined;
import yardloom.water.route.LineWays;

/** Lays dripline in the beds and round the trees that ask for it. */
public final class DripCalculator implements Calculator {
  private static final Source LAYOUT =
      Source.commonPractice(
          "rows along the bed or its outline, the outer ones about half a row spacing inside, each a"
              + " little aside where it would lie under plants");

  /** The ground that stays bare about a trunk (common practice). */
  private static final Length OFF_TRUNK = Length.inches(12);

  private static final Source COUNT = Source.commonPractice("every outlet gives its rated flow");

  @Override
  public String id() {
    return "water.drip";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(LineWays.KEY, YardFacts.STANDS, YardFacts.SOIL);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(DripRun.KEY, YardFacts.DRIPLINES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Element of : plan.elements()) {
      List<Entry<DripChoice>> lines = of.attributes().all(DripChoice.KEY);
      if (!lines.isEmpty()) {
        lay(plan, of, lines.get(0), in)
            .ifPresent(
                run -> {
                  out.give(DripRun.KEY, run);
                  out.give(
                      YardFacts.DRIPLINES,
                      new Dripline(
                          of.id(), run.totals().length(), run.rows(), run.choice().spacing()));
                });
      }
    }
  }

  /** Where tube may lie: never beyond the lot, whatever the plan draws there. */
  private static Shape ground(Plan plan, Element of) {
    Shape own = of.shape();
    if (of instanceof Element.Tree tree) {
      Length bare = tree.trunk().div(2).plus(OFF_TRUNK);
      own =
          bare.times(2).compareTo(tree.crown()) < 0
              ? own.minus(Shape.circle(tree.at(), bare))
              : own;
      for (Element e : plan.elements()) {
        boolean hard = e instanceof Element.Building || e instanceof Element.Paving;
        own = hard && e.shape().overlaps(own) ? own.minus(e.shape()) : own;
      }
    }
    Shape inner = own;
    return plan.lot().map(lot -> inner.and(lot.shape())).orElse(inner);
  }

  private static List<ElementId> waters(Plan plan, Element of) {
    List<ElementId> waters = new ArrayList<>();
    waters.add(of.id());
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      boolean own = !tree.attributes().all(DripChoice.KEY).isEmpty();
      if (of instanceof Element.Bed && !own && of.shape().surrounds(tree.at())) {
        waters.add(tree.id());
      }
    }
    return waters;
  }

  private static Derived.Builder withRows(Derived.Builder why, List<Line> rows) {
    for (int i = 0; i < rows.size(); i++) {
      why.from("length of row " + (i + 1), rows.get(i).length());
    }
    return why;
  }

  private static Optional<DripRun> lay(Plan plan, Element bed, Entry<DripChoice> line, Facts in) {
    Shape ground = ground(plan, bed);
    List<ElementId> waters = waters(plan, bed);
    Optional<Emitters.Laid> single =
        Optional.of(line)
            .filter(l -> l.value().isSingle())
            .map(l -> Emitters.lay(bed, ground, waters, l, in));
    Optional<Contour> contour =
        single.isPresent() ? Optional.empty() : Contour.of(plan, bed, ground);
    DripChoice choice = single.map(Emitters.Laid::choice).orElse(line.value());
    Optional<Point> feed = in.find(LineWays.KEY).flatMap(w -> w.nearestCorner(ground));
    List<Line> laid =
        single
            .map(Emitters.Laid::rows)
            .orElseGet(
                () ->
                    DripLayout.rows(
                        ground,
                        choice.rowSpacing(),
                        choice.spacing(),
                        contour.map(Contour::bearing)));
    boolean goesStraight = bed instanceof Element.Bed && single.isEmpty() && contour.isEmpty();
    List<Joined> joined =
        HeaderLayout.of(
            ground,
            goesStraight ? RowShift.beside(ground, laid, choice, waters, feed, in) : laid,
            feed);
    if (joined.isEmpty()) {
      return Optional.empty();
    }
    List<Line> rows = joined.stream().map(Joined::line).toList();
    Length total = Length.ZERO;
    int count = 0;
    for (Line row : rows) {
      total = total.plus(row.length());
      count += DripLayout.outlets(row.length(), choice.spacing());
    }
    Area area = bed instanceof Element.Tree ? ground.area() : bed.shape().area();
    Derived<Length> length =
        withRows(Derived.by("sum over rows of length", LAYOUT), rows)
            .from("row spacing", choice.rowSpacing(), line.place())
            .from("bed area", area, bed.place())
            .gives(total);
    Derived<Integer> outlets =
        withRows(Derived.by("sum over rows of down(length / outlet spacing + 0.5)", LAYOUT), rows)
            .from("dripline", length)
            .from("outlet spacing", choice.spacing(), line.place())
            .gives(count);
    Derived<Flow> rated =
        Derived.by("outlets × flow of one", COUNT)
            .from("outlets", outlets)
            .from("flow of one", choice.emitter(), line.place())
            .gives(choice.emitter().times(count));
    return Optional.of(
        new DripRun(
            line.place(),
            choice,
            new DripRun.Ground(bed.id(), waters, ground, area, contour.map(Contour::falls)),
            new DripRun.Laid(joined, single.map(Emitters.Laid::kinds).orElse(List.of())),
            new DripRun.Totals(length, header(joined, line), outlets, rated)));
  }

  private static Derived<Length> header(List<Joined> joined, Entry<DripChoice> line) {
    Derived.Builder why =
        Derived.by("sum over rows of way from the row before", LAYOUT)
            .from("row spacing", line.value().rowSpacing(), line.place());
    Length sum = Length.ZERO;
    for (int i = 0; i < joined.size(); i++) {
      why.from("way from the row before to row " + (i + 1), joined.get(i).headerLength());
      sum = sum.plus(joined.get(i).headerLength());
    }
    return why.gives(sum);
  }
}
