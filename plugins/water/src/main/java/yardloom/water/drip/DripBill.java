package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * What the dripline of a whole plan takes: tube by kind, headers, caps, and the parts at the tap.
 */
public final class DripBill {
  private static final double CUTS = 1.05;

  /** Rows are cut on a grid of 0.1 µm: 140 ft of them on slanting ground are a hair more. */
  private static final double EPS = 1e-5;

  private static final Source CUTTING = Source.commonPractice("5 % for cuts, rounded up");
  private static final Source SUM = Source.commonPractice("sum over the beds");
  private static final Source ASSEMBLY =
      Source.read(
          "Drip irrigation basics: shut-off, backflow preventer, filter, regulator",
          "Arizona Municipal Water Users Association",
          0,
          "");
  private static final List<String> PARTS =
      List.of(
          "backflow preventer",
          "filter",
          "pressure regulator, 20 to 30 psi (140 to 200 kPa)",
          "timer");

  private DripBill() {}

  public static List<BillLine> of(Plan plan, List<DripRun> runs, int zones) {
    boolean us = plan.info().units() == UnitSystem.US;
    List<BillLine> lines = new ArrayList<>();
    if (runs.isEmpty()) {
      return lines;
    }
    Map<String, List<DripRun>> kinds = new TreeMap<>();
    runs.forEach(r -> kinds.computeIfAbsent(kind(us, r.choice()), k -> new ArrayList<>()).add(r));
    kinds.forEach((kind, of) -> lines.add(tube(us, kind, dripline(of))));
    Derived<Length> headers = headers(runs);
    if (headers.value().metres() > 0) {
      lines.add(tube(us, "solid tube for headers in the beds", headers));
    }
    Derived.Builder why = Derived.by("sum over beds", SUM);
    int caps = 0;
    for (DripRun run : runs) {
      caps += run.rows().size();
      why.from("rows in " + run.bed().name(), run.rows().size());
    }
    lines.add(pieces(WorkPhase.DRIP, "flush caps", why.gives(caps), "no spares included"));
    Derived<Integer> one = Derived.by("one at the tap that feeds the dripline", ASSEMBLY).gives(1);
    PARTS.forEach(part -> lines.add(pieces(WorkPhase.HEAD, part, one, "as local code asks")));
    lines.add(
        pieces(
            WorkPhase.HEAD,
            "zone valves",
            Derived.by("zones", ASSEMBLY).from("zones", zones).gives(zones),
            "no spares included"));
    return List.copyOf(lines);
  }

  private static String kind(boolean us, DripChoice choice) {
    return us
        ? String.format(
            Locale.ROOT,
            "dripline, %.2f gph every %.0f in",
            choice.emitter().gallonsPerHour(),
            choice.spacing().inches())
        : String.format(
            Locale.ROOT,
            "dripline, %.1f L/h every %.0f cm",
            choice.emitter().litresPerHour(),
            choice.spacing().metres() * 100);
  }

  private static Derived<Length> dripline(List<DripRun> runs) {
    Derived.Builder why = Derived.by("sum over the beds", SUM);
    Length sum = Length.ZERO;
    for (DripRun run : runs) {
      sum = sum.plus(run.length().value());
      why.from(run.bed().name(), run.length());
    }
    return why.gives(sum);
  }

  private static Derived<Length> headers(List<DripRun> runs) {
    Derived.Builder why = Derived.by("sum over the beds", SUM);
    Length sum = Length.ZERO;
    for (DripRun run : runs) {
      sum = sum.plus(run.header().value());
      why.from("header in " + run.bed().name(), run.header());
    }
    return why.gives(sum);
  }

  private static BillLine tube(boolean us, String item, Derived<Length> exact) {
    Length step = us ? Length.feet(1) : Length.metres(0.5);
    double steps = Math.ceil(exact.value().ratioTo(step) * CUTS - EPS);
    Derived<Length> order =
        Derived.by("length × 1.05, up to the next step", CUTTING)
            .from("length", exact)
            .from("step", step)
            .gives(step.times(steps));
    return new BillLine(
        BillGroup.IRRIGATION,
        WorkPhase.DRIP,
        item,
        Optional.empty(),
        Optional.empty(),
        exact,
        order,
        CUTTING.title());
  }

  private static BillLine pieces(
      WorkPhase phase, String item, Derived<Integer> count, String allowance) {
    return new BillLine(
        BillGroup.IRRIGATION,
        phase,
        item,
        Optional.empty(),
        Optional.empty(),
        count,
        count,
        allowance);
  }
}
