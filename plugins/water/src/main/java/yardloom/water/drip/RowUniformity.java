package yardloom.water.drip;

import java.util.Comparator;
import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.pipe.formula.DarcyWeisbach;
import yardloom.water.pipe.formula.Emitter;
import yardloom.water.pipe.formula.Lateral;
import yardloom.water.pipe.formula.Water;

/** How much the flow of outlets varies along the longest row of a bed, on level ground. */
final class RowUniformity {
  /** Inside diameter of common 17 mm dripline; from memory. */
  private static final Length TUBE = Length.millimetres(14.5);

  private static final Pressure INLET = Pressure.psi(20);
  private static final double TURBULENT = 0.5;
  private static final Source METHOD =
      Source.computed(
          "EPANET 2.2 User Manual", "US EPA", 2020, "Darcy-Weisbach, emitters; tube from memory");

  private RowUniformity() {}

  static Derived<Double> variation(List<Line> rows, Entry<DripChoice> line) {
    DripChoice choice = line.value();
    Length longest =
        rows.stream().map(Line::length).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    int outlets = DripLayout.outlets(longest, choice.spacing());
    Derived.Builder why =
        Derived.by("(largest − least outlet flow) / largest, along the longest row", METHOD)
            .from("longest row", longest)
            .from("outlets", outlets)
            .from("flow of one", choice.emitter(), line.place())
            .from("inside diameter of the tube", TUBE)
            .from("pressure", INLET);
    if (outlets < 1) {
      return why.gives(0.0);
    }
    double headM = Water.head(INLET).metres();
    Emitter emitter = Emitter.rated(choice.emitter().cubicMetresPerSecond(), headM, TURBULENT);
    Lateral row =
        new Lateral(
            outlets,
            choice.spacing().metres(),
            TUBE.metres(),
            0,
            new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S),
            emitter);
    return why.gives(row.solve(headM).variation());
  }
}
