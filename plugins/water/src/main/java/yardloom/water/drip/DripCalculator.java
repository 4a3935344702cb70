package yardloom.water.drip;

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
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.formula.ApplicationRate;
import yardloom.water.drip.formula.DripLayout;

/** Lays dripline in the beds that ask for it. */
public final class DripCalculator implements Calculator {
  private static final Source LAYOUT =
      Source.commonPractice("rows along the bed, the outer ones about half a row spacing inside");
  private static final Source RATE =
      Source.computed(
          "flow over area; 96.25 in/h for 1 gpm on 1 sq ft", "definition", 0, "60 × 231 / 144");

  @Override
  public String id() {
    return "water.drip";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(DripRun.KEY, YardFacts.DRIPLINES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      List<Entry<DripChoice>> lines = bed.attributes().all(DripChoice.KEY);
      if (!lines.isEmpty() && !bed.shape().isEmpty()) {
        lay(bed, lines.get(0))
            .ifPresent(
                run -> {
                  out.give(DripRun.KEY, run);
                  out.give(YardFacts.DRIPLINES, new Dripline(bed.id(), run.length()));
                });
      }
    }
  }

  private static Derived.Builder withRows(Derived.Builder why, List<Line> rows) {
    for (int i = 0; i < rows.size(); i++) {
      why.from("length of row " + (i + 1), rows.get(i).length());
    }
    return why;
  }

  private static Optional<DripRun> lay(Element.Bed bed, Entry<DripChoice> line) {
    DripChoice choice = line.value();
    List<Line> rows = DripLayout.rows(bed.shape(), choice.rowSpacing(), choice.spacing());
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    Length total = Length.ZERO;
    int count = 0;
    for (Line row : rows) {
      total = total.plus(row.length());
      count += DripLayout.outlets(row.length(), choice.spacing());
    }
    Area area = bed.shape().area();
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
    BedHydraulics hydraulics = BedHydraulics.of(rows, line, outlets);
    Derived<Length> rate =
        Derived.by("flow × 1 h / bed area", RATE)
            .from("flow", hydraulics.flow())
            .from("bed area", area, bed.place())
            .gives(ApplicationRate.perHour(hydraulics.flow().value(), area));
    Length header = choice.rowSpacing().times(rows.size() - 1);
    return Optional.of(
        new DripRun(
            bed.id(), line.place(), choice, rows, area, length, header, outlets, rate, hydraulics));
  }
}
