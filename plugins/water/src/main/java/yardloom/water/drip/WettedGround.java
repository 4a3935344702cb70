package yardloom.water.drip;

import java.util.List;
import java.util.Optional;
import yardloom.facts.SoilProfile;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.water.timetable.formula.WateringPlan;

/** How much of a bed its outlets wet, by the texture of the soil and their flow. */
public final class WettedGround {
  private static final List<DataRow> ROWS =
      DataTable.shipped(WettedGround.class, "wetted-widths.csv").rows();
  private static final SourceTable SOURCES = SourceTable.beside(WettedGround.class);

  private static final double LEAST_GPH = 0.5;
  private static final double MIDDLE_GPH = 1;
  private static final double MOST_GPH = 2;

  private WettedGround() {}

  private static Optional<DataRow> row(String texture) {
    return ROWS.stream().filter(r -> r.text("texture").equals(texture)).findFirst();
  }

  private static Derived<Double> single(DripRun run, Derived<Length> width, Source source) {
    Area wetted =
        width.value().by(width.value()).times(Math.PI / 4 * run.totals().outlets().value());
    return Derived.by("min(1, outlets × π / 4 × wetted width^2 / bed area)", source)
        .from("outlets", run.totals().outlets())
        .from("wetted width", width)
        .from("bed area", run.on().area())
        .gives(WateringPlan.wettedShare(wetted, run.on().area()));
  }

  /**
   * The width that one outlet of that flow wets; that of medium soils where nothing is known. More
   * flow spreads further before it sinks in: the table's columns are for 0.5, 1 and 2 gph, straight
   * between them, and the first and last hold beyond.
   */
  public static Derived<Length> width(Optional<SoilProfile> soil, Flow emitter) {
    String texture = soil.map(SoilProfile::texture).orElse("loam");
    DataRow row = row(texture).or(() -> row("loam")).orElseThrow();
    return width(row, emitter);
  }

  private static Derived<Length> width(DataRow row, Flow emitter) {
    double gph = emitter.gallonsPerHour();
    boolean isSmall = gph <= MIDDLE_GPH;
    double low = row.number(isSmall ? "half_gph_ft" : "one_gph_ft");
    double high = row.number(isSmall ? "one_gph_ft" : "two_gph_ft");
    double from = isSmall ? LEAST_GPH : MIDDLE_GPH;
    double to = isSmall ? MIDDLE_GPH : MOST_GPH;
    double share = Math.max(0, Math.min(1, (gph - from) / (to - from)));
    return Derived.by(
            "low + (high − low) × max(0, min(1, (flow − low flow) / (high flow − low flow)))",
            SOURCES.cited(row, "source"))
        .from("low", Length.feet(low))
        .from("high", Length.feet(high))
        .from("flow", emitter)
        .from("low flow", Flow.gallonsPerHour(from))
        .from("high flow", Flow.gallonsPerHour(to))
        .gives(Length.feet(low + (high - low) * share));
  }

  /** Outlets that stand closer than their wetted widths share ground; empty for other textures. */
  public static Optional<Derived<Double>> share(DripRun run, SoilProfile soil) {
    return row(soil.texture())
        .map(
            row -> {
              Derived<Length> of = width(row, run.choice().emitter());
              Length width = of.value();
              if (run.choice().isSingle()) {
                return single(run, of, SOURCES.cited(row, "source"));
              }
              Length along = width.min(run.choice().spacing());
              Length across = width.min(run.choice().rowSpacing());
              Area wetted = along.by(across).times(run.totals().outlets().value());
              return Derived.by(
                      "min(1, outlets × min(wetted width, outlet spacing) × min(wetted width, row"
                          + " spacing) / bed area)",
                      SOURCES.cited(row, "source"))
                  .from("outlets", run.totals().outlets())
                  .from("wetted width", of)
                  .from("outlet spacing", run.choice().spacing(), run.place())
                  .from("row spacing", run.choice().rowSpacing(), run.place())
                  .from("bed area", run.on().area())
                  .gives(WateringPlan.wettedShare(wetted, run.on().area()));
            });
  }
}
