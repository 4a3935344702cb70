package yardloom.water.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
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
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.calc.drip.ApplicationRate;
import yardloom.water.calc.drip.DripLayout;
import yardloom.water.model.DripChoice;
import yardloom.water.model.DripRun;
import yardloom.water.model.WaterKeys;

/** Lays dripline in the beds that ask for it and bills what it takes. */
public final class DripCalculator implements Calculator {
  private static final Source LAYOUT =
      Source.commonPractice("rows along the bed, the outer ones about half a row spacing inside");
  private static final Source RATE =
      Source.computed(
          "flow over area; 96.25 in/h for 1 gpm on 1 sq ft", "definition", 0, "60 × 231 / 144");
  private static final String CUTS = "5 % for cuts, rounded up";

  @Override
  public String id() {
    return "water.drip";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(WaterKeys.DRIP_RUNS, YardFacts.BILL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    int runs = 0;
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      List<Entry<DripChoice>> lines = bed.attributes().all(WaterKeys.DRIP);
      if (!lines.isEmpty() && !bed.shape().isEmpty()) {
        DripRun run = lay(bed, lines.get(0));
        if (!run.rows().isEmpty()) {
          out.give(WaterKeys.DRIP_RUNS, run);
          bill(plan, run, out);
          runs++;
        }
      }
    }
    if (runs > 0) {
      control(out);
    }
  }

  private static DripRun lay(Element.Bed bed, Entry<DripChoice> line) {
    DripChoice choice = line.value();
    List<Line> rows = DripLayout.rows(bed.shape(), choice.rowSpacing(), choice.spacing());
    Length total = Length.ZERO;
    int count = 0;
    for (Line row : rows) {
      total = total.plus(row.length());
      count += DripLayout.outlets(row.length(), choice.spacing());
    }
    Area area = bed.shape().area();
    Derived<Length> length =
        Derived.by("sum of the rows", LAYOUT)
            .from("rows", rows.size())
            .from("row spacing", choice.rowSpacing(), line.place())
            .from("bed area", area, bed.place())
            .gives(total);
    Derived<Integer> outlets =
        Derived.by("outlets of each row, the first half a spacing from its start", LAYOUT)
            .from("length", length)
            .from("outlet spacing", choice.spacing(), line.place())
            .gives(count);
    Derived<Flow> flow =
        Derived.by("outlets × flow of one", LAYOUT)
            .from("outlets", outlets)
            .from("flow of one", choice.emitter(), line.place())
            .gives(choice.emitter().times(count));
    Derived<Length> rate =
        Derived.by("flow in one hour / bed area", RATE)
            .from("flow", flow)
            .from("bed area", area, bed.place())
            .gives(ApplicationRate.perHour(flow.value(), area));
    Length header = choice.rowSpacing().times(rows.size() - 1);
    return new DripRun(
        bed.id(),
        line.place(),
        choice,
        rows,
        area,
        length,
        header,
        outlets,
        flow,
        rate,
        RowUniformity.variation(rows, line));
  }

  private static void bill(Plan plan, DripRun run, Sink out) {
    String outlet =
        plan.info().units() == UnitSystem.US
            ? String.format(
                java.util.Locale.ROOT,
                "%.2f gph every %.0f in",
                run.choice().emitter().gallonsPerHour(),
                run.choice().spacing().inches())
            : String.format(
                java.util.Locale.ROOT,
                "%.1f L/h every %.0f cm",
                run.choice().emitter().litresPerHour(),
                run.choice().spacing().metres() * 100);
    out.give(YardFacts.BILL, tube(plan, run, "dripline, " + outlet, run.length()));
    if (run.header().metres() > 0) {
      Derived<Length> header =
          Derived.by("row spacing × (rows − 1), at one end", LAYOUT)
              .from("rows", run.rows().size())
              .from("row spacing", run.choice().rowSpacing(), run.place())
              .gives(run.header());
      out.give(YardFacts.BILL, tube(plan, run, "solid tube for the header", header));
    }
    Derived<Integer> ends =
        Derived.by("one for each row", LAYOUT)
            .from("rows", run.rows().size())
            .gives(run.rows().size());
    out.give(
        YardFacts.BILL,
        new BillLine(
            "irrigation", "flush caps", Optional.of(run.bed()), ends, ends, "no spares included"));
  }

  private static BillLine tube(Plan plan, DripRun run, String item, Derived<Length> exact) {
    boolean us = plan.info().units() == UnitSystem.US;
    Length step = us ? Length.feet(1) : Length.metres(0.5);
    double steps = Math.ceil(exact.value().ratioTo(step) * 1.05 - 1e-9);
    Derived<Length> order =
        Derived.by("length × 1.05, rounded up", Source.commonPractice(CUTS))
            .from("length", exact)
            .gives(step.times(steps));
    return new BillLine("irrigation", item, Optional.of(run.bed()), exact, order, CUTS);
  }

  private static void control(Sink out) {
    Derived<Integer> one =
        Derived.by(
                "one for the water point that feeds the dripline",
                Source.read(
                    "Drip irrigation basics: shut-off, backflow preventer, filter, regulator",
                    "Arizona Municipal Water Users Association",
                    0,
                    ""))
            .gives(1);
    for (String part :
        List.of(
            "backflow preventer",
            "filter",
            "pressure regulator, 20 to 30 psi (140 to 200 kPa)",
            "valve with timer")) {
      out.give(
          YardFacts.BILL,
          new BillLine("irrigation", part, Optional.empty(), one, one, "as local code asks"));
    }
  }
}
