package yardloom.materials.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.mulch.OwnBulk;

/** The words for bulk materials that the shipped tables lack. */
public final class BulkWords {
  private static final List<String> MASS = List.of("lb", "kg");
  private static final List<String> VOLUME = List.of("yd3", "m3");

  /** Dry straw has about 60 lb/yd³, iron ore about 4,500. */
  private static final double LIGHTEST_LB_YD3 = 20;

  private static final double HEAVIEST_LB_YD3 = 5000;
  private static final double SMALLEST_LOAD_YD3 = 0.1;
  private static final double LARGEST_LOAD_YD3 = 120;

  private static final String WEIGHT = "a cubic yard weighs 20 to 5,000 lb (12 to 2,970 kg/m³)";
  private static final String LOAD = "a truck brings 0.1 to 120 cu yd (0.08 to 92 m³)";

  private BulkWords() {}

  @Verb(
      help =
          "Gives a material that comes loose by the load, for `layer` of beds and for `item` with"
              + " an amount; its order is counted in truckloads and weight.",
      example =
          "bulkMaterial('biochar', weighs: 400.lb, wet: 700.lb, each: 1.yd3, load: 2.yd3, source:"
              + " publication('Leaflet', by: 'a kiln', seen: 'memory'))")
  public static void bulkMaterial(
      PlanScope plan,
      @Arg(name = "name", help = "as tables and bill call it") String name,
      @Opt(name = "weighs", help = "of the volume `each:`, as delivered", required = true)
          Mass weighs,
      @Opt(name = "each", help = "the volume that weighs so much", required = true) Volume each,
      @Opt(name = "load", help = "what one truck brings", required = true) Volume load,
      @Opt(name = "wet", help = "weight of the volume `each:` when wet", fallback = "as `weighs:`")
          Mass wet,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    Said said = new Said(name, weighs, Optional.ofNullable(wet).orElse(weighs), each, load);
    OwnTable.ofOne(plan, "bulk material", source, from -> add(plan, plan.place(), said, from));
  }

  @Verb(
      help =
          "Takes bulk materials from a table: columns material, weighs_lb or weighs_kg, each_yd3 or"
              + " each_m3, load_yd3 or load_m3, and where wanted wet_lb or wet_kg, and those of a"
              + " source.",
      example = "bulkMaterials('material,weighs_kg,each_m3,load_m3\\nleaf mould,450,1,4')")
  public static void bulkMaterials(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('bulk.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "bulk materials")
          String name) {
    List<String> may = new ArrayList<>();
    may.addAll(OwnColumns.columns("weighs", MASS));
    may.addAll(OwnColumns.columns("wet", MASS));
    may.addAll(OwnColumns.columns("each", VOLUME));
    may.addAll(OwnColumns.columns("load", VOLUME));
    OwnTable table = OwnTable.of(plan, csv, name, "bulk materials");
    table.each(List.of("material"), may, row -> read(plan, row, row.sourceOr(table.source())));
  }

  private static void read(PlanScope plan, DataRow row, Source source) {
    Mass weighs = Mass.kilograms(needed(row, "weighs", MASS));
    add(
        plan,
        row.placeOf("material"),
        new Said(
            row.text("material"),
            weighs,
            OwnColumns.measured(row, "wet", MASS).map(Mass::kilograms).orElse(weighs),
            Volume.cubicMetres(needed(row, "each", VOLUME)),
            Volume.cubicMetres(needed(row, "load", VOLUME))),
        source);
  }

  private static double needed(DataRow row, String what, List<String> units) {
    return OwnColumns.measured(row, what, units)
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.MISSING_OPTION,
                    "a bulk material needs `"
                        + String.join("` or `", OwnColumns.columns(what, units))
                        + "`"));
  }

  /** A material as word or row says it. */
  private record Said(String name, Mass weighs, Mass wet, Volume each, Volume load) {}

  private static void add(PlanScope plan, SourceRef at, Said said, Source source) {
    String name = Making.name("bulk material", said.name);
    if (BulkData.isShipped(name)) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          "'" + name + "' is a shipped material; `localLoad` and `localDensity` change its rates");
    }
    if (!(said.each.si() > 0)) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "`each:` is more than nothing");
    }
    double yards = said.each.cubicYards();
    Spread density =
        Spread.given(
            said.weighs.pounds() / yards,
            (said.weighs.pounds() + said.wet.pounds()) / 2 / yards,
            said.wet.pounds() / yards,
            0,
            "moisture and packing",
            source);
    within(density.low(), LIGHTEST_LB_YD3, HEAVIEST_LB_YD3, WEIGHT);
    within(density.high(), LIGHTEST_LB_YD3, HEAVIEST_LB_YD3, WEIGHT);
    double load = said.load.cubicYards();
    within(load, SMALLEST_LOAD_YD3, LARGEST_LOAD_YD3, LOAD);
    OwnBulk own = new OwnBulk(name);
    Making.once(
        plan,
        at,
        OwnBulk.KEY,
        b -> b.name().equalsIgnoreCase(name),
        "the bulk material '" + name + "'");
    plan.draft().attributes().add(OwnBulk.KEY, own, plan.place());
    rate(plan, LocalRate.Kind.DENSITY, name, "lb/yd3", density);
    rate(
        plan, LocalRate.Kind.LOAD, name, "yd3", Spread.given(load, load, load, 0, "truck", source));
  }

  private static void within(double got, double least, double most, String allowed) {
    if (!(got >= least && got <= most)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          allowed
              + ", got "
              + Math.round(got * 100) / 100.0
              + (allowed.equals(WEIGHT) ? " lb" : " cu yd")
              + "; look at the units");
    }
  }

  private static void rate(
      PlanScope plan, LocalRate.Kind kind, String name, String unit, Spread value) {
    plan.draft()
        .attributes()
        .add(BulkRates.KEY, new LocalRate(kind, name, unit, value, plan.place()), plan.place());
  }
}
