package yardloom.water.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.DripChoice;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.formula.ApplicationRate;
import yardloom.water.drip.formula.CatchUniformity;
import yardloom.water.drip.formula.DesignUniformity;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.pipe.formula.Lateral;
import yardloom.water.pipe.formula.LongestRun;
import yardloom.water.pipe.formula.Water;

/** What a solved zone says of each of its beds. */
final class BedResults {
  /** Coefficient of variation of outlets as they are made; from memory, 0.02 to 0.20 are found. */
  static final double MAKERS = 0.05;

  private static final Source RATE =
      Source.computed(
          "flow over area; 96.25 in/h for 1 gpm on 1 sq ft", "definition", 0, "60 × 231 / 144");

  /** Outlets are told together that differ by no more of their pressure. */
  private static final double ALIKE = 0.01;

  /** Heads nearer than that are one, whatever order the solver found them in. */
  private static final double SAME_M = 1e-6;

  private final ZoneNetwork network;
  private final ZoneNetwork.Solved solved;

  BedResults(ZoneNetwork network, ZoneNetwork.Solved solved) {
    this.network = network;
    this.solved = solved;
  }

  BedHydraulics of(DripRun run, int zone) {
    double[] outlets = network.outletsM3s(solved, run);
    double[] running = Arrays.stream(outlets).filter(q -> q > 0).toArray();
    DoubleSummaryStatistics flows = Arrays.stream(outlets).summaryStatistics();
    boolean isDry = running.length < outlets.length;
    double leastM = Arrays.stream(network.pressuresM(solved, run)).min().orElseThrow();
    double mean = flows.getAverage();
    double leastOverMean = mean == 0 ? 0 : flows.getMin() / mean;
    Derived<Flow> flow =
        why("sum of the outlets' flows in the network of the zone", run)
            .gives(Flow.cubicMetresPerSecond(flows.getSum()));
    Derived<Pressure> inlet =
        why("pressure at its feed in the network of the zone", run)
            .gives(pressure(network.inletM(solved, run)));
    return new BedHydraulics(
        run.bed(),
        zone,
        new BedHydraulics.Outflow(
            flow,
            Derived.by("flow × 1 h / bed area", RATE)
                .from("flow", flow)
                .from("bed area", run.on().area())
                .gives(ApplicationRate.perHour(flow.value(), run.on().area()))),
        new BedHydraulics.Pressures(
            inlet, why("least pressure in the network of the zone", run).gives(pressure(leastM))),
        new BedHydraulics.Evenness(
            why("(largest − least outlet flow) / largest, in the whole bed", run)
                .gives(flows.getMax() == 0 ? 1 : 1 - flows.getMin() / flows.getMax()),
            isDry || outlets.length < 4
                ? Optional.empty()
                : Optional.of(
                    why("mean of the least quarter of outlets / mean", run)
                        .gives(CatchUniformity.of(outlets).lowQuarter())),
            why("(1 − 1.27 × variation of outlets as made) × least flow / mean flow", run)
                .from("variation of outlets as made", MAKERS)
                .from("least flow", Flow.cubicMetresPerSecond(flows.getMin()))
                .from("mean flow", Flow.cubicMetresPerSecond(mean))
                .gives(DesignUniformity.of(MAKERS, 1, leastOverMean))),
        new BedHydraulics.Rows(allowedDrop(run), longest(run), longestRun(run, inlet)));
  }

  /** Every outlet of a bed, in the order of its rows. */
  BedOutlets outlets(DripRun run, int zone) {
    double[] pressures = network.pressuresM(solved, run);
    double[] flows = network.outletsM3s(solved, run);
    List<BedOutlets.Group> groups = new ArrayList<>();
    int start = 0;
    for (int r = 0; r < run.rows().size(); r++) {
      int count = DripLayout.outlets(run.rows().get(r).length(), run.choice().spacing());
      for (int first = 0; first < count; ) {
        int last = first;
        while (last + 1 < count && isAlike(pressures[start + first], pressures[start + last + 1])) {
          last++;
        }
        Derived<Pressure> pressure =
            why("pressure at the outlet in the network of the zone", run)
                .gives(pressure(pressures[start + first]));
        groups.add(
            new BedOutlets.Group(
                r + 1,
                first + 1,
                last + 1,
                place(run, r, first),
                pressure,
                flow(run, pressure, flows[start + first])));
        first = last + 1;
      }
      start += count;
    }
    return new BedOutlets(run.bed(), zone, groups);
  }

  private static boolean isAlike(double firstM, double otherM) {
    return Math.abs(otherM - firstM) <= ALIKE * Math.abs(firstM);
  }

  private static Derived<Flow> flow(DripRun run, Derived<Pressure> at, double flowM3s) {
    DripChoice choice = run.choice();
    Derived.Builder why;
    if (flowM3s <= 0) {
      why = Derived.by("0 × rated flow", LineCalculator.METHOD);
    } else if (choice.isTooLow(at.value())) {
      why =
          Derived.by(
                  "rated flow × (least pressure / rated pressure)^exponent"
                      + " × (pressure / least pressure)^0.5",
                  LineCalculator.METHOD)
              .from("least pressure", DripChoice.LEAST);
    } else {
      why = Derived.by("rated flow × (pressure / rated pressure)^exponent", LineCalculator.METHOD);
    }
    return why.from("rated flow", choice.emitter(), run.place())
        .from("pressure", at)
        .from("rated pressure", choice.rated(), run.place())
        .from("exponent", choice.exponent(), run.place())
        .gives(Flow.cubicMetresPerSecond(flowM3s));
  }

  /** How far along its row an outlet stands: the first half a spacing from the start. */
  private static Length place(DripRun run, int row, int outlet) {
    return run.choice().spacing().times(outlet + 0.5).min(run.rows().get(row).length());
  }

  /** Where the outlet stands at which least presses; the first of several. */
  Point end(List<DripRun> beds) {
    Point end = null;
    double leastM = Double.POSITIVE_INFINITY;
    for (DripRun run : beds) {
      double[] pressures = network.pressuresM(solved, run);
      int at = 0;
      for (int r = 0; r < run.rows().size(); r++) {
        int count = DripLayout.outlets(run.rows().get(r).length(), run.choice().spacing());
        for (int i = 0; i < count; i++, at++) {
          if (pressures[at] < leastM - SAME_M) {
            leastM = pressures[at];
            end = run.rows().get(r).at(place(run, r, i));
          }
        }
      }
    }
    return end;
  }

  private static Derived.Builder why(String what, DripRun run) {
    return Derived.by(what, LineCalculator.METHOD)
        .from("rows", run.rows().size())
        .from("longest row", longest(run))
        .from("number of outlets", run.totals().outlets())
        .from("outlet spacing", run.choice().spacing(), run.place())
        .from("rated flow of one", run.choice().emitter(), run.place())
        .from("rated pressure", run.choice().rated(), run.place())
        .from("exponent", run.choice().exponent(), run.place())
        .from("inside diameter of tube and header", run.choice().bore(), run.place());
  }

  private static Derived<Double> allowedDrop(DripRun run) {
    return Derived.by("1 − (1 − allowed difference)^(1 / exponent)", LineCalculator.METHOD)
        .from("allowed difference", BedHydraulics.ALLOWED)
        .from("exponent", run.choice().exponent(), run.place())
        .gives(run.choice().outlet().headDrop(BedHydraulics.ALLOWED));
  }

  /** A row and the head it begins with. */
  private record Fed(Lateral row, double headM) {}

  private static Derived<Length> longestRun(DripRun run, Derived<Pressure> inlet) {
    DripChoice choice = run.choice();
    Lateral row =
        new Lateral(
            1,
            choice.spacing().metres(),
            choice.bore().metres(),
            0,
            ZoneNetwork.FRICTION,
            choice.outlet());
    double headM = Math.max(1e-3, Water.head(inlet.value()).metres());
    int most =
        Piece.after("longest run in " + run.bed(), new Fed(row, headM), BedResults::outlets);
    return Derived.by(
            "outlets until their flow differs too much × outlet spacing", LineCalculator.METHOD)
        .from("outlets until their flow differs too much", most)
        .from("outlet spacing", choice.spacing(), run.place())
        .from("pressure at its feed", inlet)
        .gives(choice.spacing().times(most));
  }

  private static int outlets(Optional<Piece.Made<Fed, Integer>> before, Fed fed) {
    return before
        .filter(b -> b.input().row().equals(fed.row()))
        .map(b -> LongestRun.outletsNear(b.piece(), fed.row(), fed.headM(), BedHydraulics.ALLOWED))
        .orElseGet(() -> LongestRun.outlets(fed.row(), fed.headM(), BedHydraulics.ALLOWED));
  }

  private static Length longest(DripRun run) {
    return run.rows().stream().map(Line::length).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  /** The least pressure at any outlet of several beds. */
  Pressure least(List<DripRun> beds) {
    return pressure(
        beds.stream()
            .flatMapToDouble(b -> Arrays.stream(network.pressuresM(solved, b)))
            .min()
            .orElseThrow());
  }

  /** The greatest. */
  Pressure most(List<DripRun> beds) {
    return pressure(
        beds.stream()
            .flatMapToDouble(b -> Arrays.stream(network.pressuresM(solved, b)))
            .max()
            .orElseThrow());
  }

  private static Pressure pressure(double headM) {
    return Water.pressure(Length.metres(headM));
  }
}
