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
import yardloom.kernel.unit.Length;
import yardloom.water.timetable.formula.WateringPlan;

/** How much of a bed its outlets wet, by the texture of the soil. */
public final class WettedGround {
  private static final List<DataRow> ROWS =
      DataTable.shipped(WettedGround.class, "wetted-widths.csv").rows();
  private static final SourceTable SOURCES = SourceTable.beside(WettedGround.class);

  private WettedGround() {}

  private static Optional<DataRow> row(String texture) {
    return ROWS.stream().filter(r -> r.text("texture").equals(texture)).findFirst();
  }

  private static Derived<Double> single(DripRun run, Length width, Source source) {
    Area wetted = width.by(width).times(Math.PI / 4 * run.outlets().value());
    return Derived.by("min(1, outlets × π / 4 × wetted width^2 / bed area)", source)
        .from("outlets", run.outlets())
        .from("wetted width", width)
        .from("bed area", run.area())
        .gives(WateringPlan.wettedShare(wetted, run.area()));
  }

  /** The width that one outlet wets; that of medium soils where nothing is known. */
  public static Derived<Length> width(Optional<SoilProfile> soil) {
    String texture = soil.map(SoilProfile::texture).orElse("loam");
    DataRow row = row(texture).or(() -> row("loam")).orElseThrow();
    return Derived.by("typical width wetted in " + texture, SOURCES.cited(row, "source"))
        .gives(Length.feet(row.number("width_ft")));
  }

  /** Outlets that stand closer than their wetted widths share ground; empty for other textures. */
  public static Optional<Derived<Double>> share(DripRun run, SoilProfile soil) {
    return row(soil.texture())
        .map(
            row -> {
              Length width = Length.feet(row.number("width_ft"));
              if (run.choice().isSingle()) {
                return single(run, width, SOURCES.cited(row, "source"));
              }
              Length along = width.min(run.choice().spacing());
              Length across = width.min(run.choice().rowSpacing());
              Area wetted = along.by(across).times(run.outlets().value());
              return Derived.by(
                      "min(1, outlets × min(wetted width, outlet spacing) × min(wetted width, row"
                          + " spacing) / bed area)",
                      SOURCES.cited(row, "source"))
                  .from("outlets", run.outlets())
                  .from("wetted width", width)
                  .from("outlet spacing", run.choice().spacing(), run.place())
                  .from("row spacing", run.choice().rowSpacing(), run.place())
                  .from("bed area", run.area())
                  .gives(WateringPlan.wettedShare(wetted, run.area()));
            });
  }
}
