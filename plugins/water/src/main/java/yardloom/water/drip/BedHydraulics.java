package yardloom.water.drip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.formula.CatchUniformity;
import yardloom.water.drip.formula.DesignUniformity;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.drip.formula.HeaderLayout.Joined;
import yardloom.water.pipe.formula.DarcyWeisbach;
import yardloom.water.pipe.formula.Emitter;
import yardloom.water.pipe.formula.Friction;
import yardloom.water.pipe.formula.Lateral;
import yardloom.water.pipe.formula.LongestRun;
import yardloom.water.pipe.formula.PipeNetwork;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.Water;

/**
 * What flows out of a bed's dripline, on level ground: the rows on a header that is fed where the
 * first row starts, at the pressure of which the outlets' flow is given.
 *
 * @param rated what the outlets give where no tube takes pressure
 * @param flow of all outlets together
 * @param least pressure at the outlet that gets least
 * @param variation largest less least outlet flow over the largest
 * @param lowQuarter mean of the quarter of outlets that gives least over the mean of all; empty
 *     below four outlets or where some are dry
 * @param design what is left of evenness when outlets differ as they are made
 * @param longestRow that the bed has
 * @param longestRun a row that, alone, keeps within {@link #ALLOWED}
 */
public record BedHydraulics(
    Derived<Flow> rated,
    Derived<Flow> flow,
    Derived<Pressure> least,
    Derived<Double> variation,
    Optional<Derived<Double>> lowQuarter,
    Derived<Double> design,
    Length longestRow,
    Derived<Length> longestRun) {
  /** How much outlets of one bed may differ. */
  static final double ALLOWED = 0.10;

  /** At the head of the header, and of the outlets' rating. */
  static final Pressure INLET = Pressure.psi(20);

  /** Inside diameter of common 17 mm dripline; from memory. */
  private static final Length TUBE = Length.millimetres(14.5);

  /** Coefficient of variation of outlets as they are made; from memory, 0.02 to 0.20 are found. */
  static final double MAKERS = 0.05;

  private static final double TURBULENT = 0.5;
  private static final Friction FRICTION =
      new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S);
  private static final String TAP = "tap";
  private static final Source METHOD =
      Source.computed(
          "EPANET 2.2 User Manual",
          "US EPA",
          2020,
          "network of pipes by Darcy-Weisbach, and emitters; tube from memory");
  private static final Source COUNT = Source.commonPractice("every outlet gives its rated flow");

  /**
   * Solves a bed.
   *
   * @param rows at least one, each with an outlet at least
   */
  static BedHydraulics of(List<Joined> joined, Entry<DripChoice> line, Derived<Integer> outlets) {
    List<Line> rows = joined.stream().map(Joined::line).toList();
    DripChoice choice = line.value();
    Emitter emitter = Emitter.rated(choice.emitter().cubicMetresPerSecond(), headM(), TURBULENT);
    PipeNetwork.Solution solved = network(joined, choice, emitter).solve();
    DoubleSummaryStatistics flows =
        Arrays.stream(solved.outletsM3s()).filter(q -> q > 0).summaryStatistics();
    // The least of all joints: those of the header lie upstream of outlets and have more.
    double leastM = solved.leastPressureM();
    boolean isDry = flows.getCount() < outlets.value();
    double leastFlow = isDry ? 0 : flows.getMin();
    return new BedHydraulics(
        Derived.by("outlets × flow of one", COUNT)
            .from("outlets", outlets)
            .from("flow of one", choice.emitter(), line.place())
            .gives(choice.emitter().times(outlets.value())),
        why("sum of the outlets' flows in the network of rows and header", rows, line, outlets)
            .gives(Flow.cubicMetresPerSecond(flows.getSum())),
        why("least pressure in the network of rows and header", rows, line, outlets)
            .gives(Water.pressure(Length.metres(leastM))),
        why("(largest − least outlet flow) / largest, in the whole bed", rows, line, outlets)
            .gives((flows.getMax() - leastFlow) / flows.getMax()),
        isDry || flows.getCount() < 4
            ? Optional.empty()
            : Optional.of(
                why("mean of the least quarter of outlets / mean", rows, line, outlets)
                    .gives(lowQuarter(solved))),
        why(
                "(1 − 1.27 × variation of outlets as made) × least flow / mean flow",
                rows,
                line,
                outlets)
            .from("variation of outlets as made", MAKERS)
            .from("least flow", Flow.cubicMetresPerSecond(leastFlow))
            .from("mean flow", Flow.cubicMetresPerSecond(flows.getAverage()))
            .gives(DesignUniformity.of(MAKERS, 1, leastFlow / flows.getAverage())),
        longest(rows),
        longestRun(line, emitter));
  }

  private static double lowQuarter(PipeNetwork.Solution solved) {
    return CatchUniformity.of(
            Arrays.stream(solved.outletsM3s()).filter(q -> q > 0).toArray())
        .lowQuarter();
  }

  private static Derived.Builder why(
      String what, List<Line> rows, Entry<DripChoice> line, Derived<Integer> outlets) {
    return Derived.by(what, METHOD)
        .from("rows", rows.size())
        .from("longest row", longest(rows))
        .from("row spacing", line.value().rowSpacing(), line.place())
        .from("outlets", outlets)
        .from("outlet spacing", line.value().spacing(), line.place())
        .from("flow of one", line.value().emitter(), line.place())
        .from("pressure of that flow, and at the head of the header", INLET)
        .from("inside diameter of tube and header", TUBE);
  }

  private static Derived<Length> longestRun(Entry<DripChoice> line, Emitter emitter) {
    DripChoice choice = line.value();
    Lateral row = new Lateral(1, choice.spacing().metres(), TUBE.metres(), 0, FRICTION, emitter);
    int most = LongestRun.outlets(row, headM(), ALLOWED);
    return Derived.by("outlets until their flow differs too much × outlet spacing", METHOD)
        .from("outlets until their flow differs too much", most)
        .from("outlet spacing", choice.spacing(), line.place())
        .from("flow of one", choice.emitter(), line.place())
        .from("allowed difference", ALLOWED)
        .from("pressure of that flow, and at the head of the row", INLET)
        .from("inside diameter of the tube", TUBE)
        .gives(choice.spacing().times(most));
  }

  private static Length longest(List<Line> rows) {
    return rows.stream().map(Line::length).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  private static double headM() {
    return Water.head(INLET).metres();
  }

  private static PipeNetwork network(List<Joined> rows, DripChoice choice, Emitter emitter) {
    List<Joint> joints = new ArrayList<>();
    List<Pipe> pipes = new ArrayList<>();
    List<String> starts = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      String start = rows.get(r).from() < 0 ? TAP : starts.get(rows.get(r).from());
      if (rows.get(r).header().isPresent()) {
        String next = "h" + r;
        joints.add(new Joint(next, 0, 0, null));
        pipes.add(pipe(start, next, rows.get(r).headerLength().metres()));
        start = next;
      }
      starts.add(start);
      String before = start;
      int outlets = DripLayout.outlets(rows.get(r).line().length(), choice.spacing());
      for (int i = 0; i < outlets; i++) {
        String outlet = r + "." + i;
        joints.add(new Joint(outlet, 0, 0, emitter));
        // The first outlet stands half a spacing from the start of its row.
        pipes.add(pipe(before, outlet, choice.spacing().metres() * (i == 0 ? 0.5 : 1)));
        before = outlet;
      }
    }
    return new PipeNetwork(joints, List.of(new Reservoir(TAP, headM())), pipes);
  }

  private static Pipe pipe(String from, String to, double lengthM) {
    return new Pipe(from + "-" + to, from, to, lengthM, TUBE.metres(), FRICTION, 0);
  }
}
