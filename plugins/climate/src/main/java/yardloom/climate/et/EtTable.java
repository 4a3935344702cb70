package yardloom.climate.et;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.facts.DailyEt;
import yardloom.facts.ReferenceEt;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * What the air takes by month, beside tall alfalfa and a weather record where they are known; left
 * out where the table of water by month says it all.
 */
public final class EtTable implements TableMaker {
  private static final String ID = "reference-et";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.REFERENCE_ET, YardFacts.DAILY_ET);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Reference evapotranspiration by month")
            .column(Column.text("month", "Month"))
            .column(Column.of("short", "Short grass, usual year", Measure.RAIN))
            .column(Column.of("tall", "Tall alfalfa", Measure.RAIN))
            .column(Column.of("record", "Mean day of the record", Measure.DAILY_DEPTH))
            .column(Column.of("record-tall", "The same, tall alfalfa", Measure.DAILY_DEPTH))
            .column(Column.of("most", "Thirstiest day", Measure.DAILY_DEPTH));
    Optional<ReferenceEt> usual =
        facts.find(YardFacts.REFERENCE_ET).filter(et -> !et.tall().isEmpty());
    Optional<DailyEt> record = facts.find(YardFacts.DAILY_ET);
    if (usual.isEmpty() && record.isEmpty()) {
      return table.build();
    }
    Map<Integer, double[]> days = record.map(r -> byMonth(r.days())).orElse(Map.of());
    Map<Integer, double[]> tall = record.map(r -> byMonth(r.tall())).orElse(Map.of());
    for (int m = 0; m < 12; m++) {
      int month = m;
      table.row(
          Cell.text(Months.name(m)),
          usual.map(et -> Cell.of(et.months().get(month))).orElse(Cell.BLANK),
          usual.map(et -> Cell.of(et.tall().get(month))).orElse(Cell.BLANK),
          mean(days.get(m)),
          mean(tall.get(m)),
          days.containsKey(m) ? Cell.of(Length.metres(days.get(m)[2])) : Cell.BLANK);
    }
    usual.ifPresent(
        et ->
            table.note(
                "Usual year by "
                    + et.method()
                    + ". Crop coefficients go with short grass; tall alfalfa is for comparison with"
                    + " stations that print it."));
    record.ifPresent(et -> table.note("Record by " + et.method() + "."));
    return table.build();
  }

  private static Cell mean(double[] sumCountMost) {
    return sumCountMost == null
        ? Cell.BLANK
        : Cell.of(Length.metres(sumCountMost[0] / sumCountMost[1]));
  }

  /** Of each month with days: their sum in metres, their count and the greatest. */
  private static Map<Integer, double[]> byMonth(SortedMap<LocalDate, Length> days) {
    Map<Integer, double[]> months = new TreeMap<>();
    days.forEach(
        (date, et) -> {
          double[] all = months.computeIfAbsent(date.getMonthValue() - 1, m -> new double[3]);
          all[0] += et.metres();
          all[1]++;
          all[2] = Math.max(all[2], et.metres());
        });
    return months;
  }
}
