package yardloom.water.overflow;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.overflow.formula.CurveNumber;
import yardloom.water.overflow.formula.SoilGroup;

/** Runoff of a storm off ground and roofs by curve number, with all that it follows from. */
final class Storms {
  private static final Source RUNOFF =
      Source.computed(
          "TR-55, Urban Hydrology for Small Watersheds", "USDA NRCS", 1986, "equations 2-1 to 2-4");

  private Storms() {}

  /** The slowest group stands for an unknown soil; a roof runs off alike on every one. */
  static SoilGroup group(Optional<Derived<Length>> intake) {
    return intake.map(i -> SoilGroup.of(i.value())).orElse(SoilGroup.D);
  }

  static Derived<Volume> roofRunoff(
      Element.Roof roof, Length storm, SourceRef said, Optional<Derived<Length>> intake) {
    return runoff(
        roof.shape().area(), roof.place(), CurveNumbers.of("roof", group(intake)), storm, said);
  }

  static Derived<Volume> runoff(
      Area area, SourceRef place, Cited<Double> number, Length storm, SourceRef said) {
    Derived<Length> held =
        Derived.by("(1000 / CN − 10) × 1 in", RUNOFF)
            .from("CN", number.value())
            .from("source of CN", number.source().cite())
            .gives(CurveNumber.retention(number.value()));
    return Derived.by("plan area × max(P − 0.2 × S, 0 in)² / (P + 0.8 × S)", RUNOFF)
        .from("plan area", area, place)
        .from("P, storm", storm, said)
        .from("S, held back", held)
        .gives(area.deep(CurveNumber.runoff(storm, number.value())));
  }
}
