package yardloom.water.catchtest;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.drip.formula.CatchUniformity;
import yardloom.water.timetable.formula.WateringPlan;

/** How even measured zones are, and by how much they run longer. */
public final class CatchTable implements TableMaker {
  private static final Source DAVIS =
      Source.read(
          "Measuring Distribution Uniformity and Calculating Run Time",
          "UC Davis California Center for Urban Horticulture",
          0,
          "");
  private static final Source LAWN =
      Source.memory("Run time multiplier of lawns", "Irrigation Association", 0, "");

  @Override
  public String id() {
    return "catch-test";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "What was caught")
            .column(Column.text("zone", "Zone"))
            .column(Column.of("readings", "Readings", Measure.COUNT))
            .column(Column.of("mean", "Mean", Measure.RATIO))
            .column(Column.of("low-quarter", "Distribution uniformity", Measure.PERCENT))
            .column(Column.of("low-half", "Of the lower half", Measure.PERCENT))
            .column(Column.of("christiansen", "Christiansen's", Measure.PERCENT))
            .column(Column.of("variation", "Variation", Measure.PERCENT))
            .column(Column.of("scheduling", "Mean over least", Measure.RATIO))
            .column(Column.of("multiplier", "Run times", Measure.RATIO))
            .column(Column.of("lawn", "Lawn: run times", Measure.RATIO));
    List<Entry<CatchTest>> tests = plan.attributes().all(CatchTest.KEY);
    tests.forEach(test -> row(table, test));
    if (!tests.isEmpty()) {
      table.note(
          "Distribution uniformity: mean of the lowest quarter over the mean. Run times: multiply the"
              + " times of the timetable by this and divide by what it counts for losses, 1 / 0.81;"
              + " then the driest quarter has enough. Lawn: its roots share water.");
    }
    return table.build();
  }

  private static void row(Table.Builder table, Entry<CatchTest> test) {
    double[] readings = test.value().values();
    CatchUniformity even = CatchUniformity.of(readings);
    double least = Arrays.stream(readings).min().orElseThrow();
    Derived<Double> quarter =
        Derived.by("mean of the least quarter / mean", DAVIS)
            .from("readings", readings.length, test.place())
            .from("mean of the least quarter", even.lowQuarter() * even.mean())
            .from("mean", even.mean())
            .gives(even.lowQuarter());
    table.row(
        Cell.text(test.value().zone()),
        Cell.number(readings.length),
        Cell.number(even.mean()),
        Cell.of(quarter),
        Cell.number(even.lowHalf()),
        Cell.number(even.christiansen()),
        Cell.number(even.variation()),
        least > 0 ? Cell.number(WateringPlan.schedulingCoefficient(even.mean(), least)) : Cell.BLANK,
        even.lowQuarter() > 0
            ? Cell.of(
                Derived.by("1 / distribution uniformity", DAVIS)
                    .from("distribution uniformity", quarter)
                    .gives(WateringPlan.multiplierByLowQuarter(even.lowQuarter())))
            : Cell.BLANK,
        Cell.of(
            Derived.by("1 / (0.4 + 0.6 × distribution uniformity)", LAWN)
                .from("distribution uniformity", quarter)
                .gives(WateringPlan.multiplierByLowHalf(even.lowQuarter()))));
  }
}
