package yardloom.water.drip;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;

/** How many single emitters each tree and shrub has, for the installer who punches them in. */
public final class EmitterTable implements TableMaker {
  @Override
  public String id() {
    return "emitters";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, YardFacts.SOIL);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Single emitters by plant")
            .column(Column.text("in", "Bed or tree"))
            .column(Column.text("plant", "Plant"))
            .column(Column.of("plants", "Plants", Measure.COUNT))
            .column(Column.of("spread", "Mature spread", Measure.LENGTH))
            .column(Column.of("each", "Emitters each", Measure.COUNT))
            .column(Column.of("all", "Emitters in all", Measure.COUNT))
            .column(Column.of("flow", "Flow of one", Measure.SMALL_FLOW));
    boolean any = false;
    for (DripRun run : facts.all(DripRun.KEY)) {
      for (Emitters.OfKind kind : run.laid().emitters()) {
        any = true;
        table.row(
            Cell.text(run.bed().name()),
            Cell.text(kind.plant()),
            Cell.number(kind.plants()),
            Cell.of(kind.spread()),
            Cell.of(kind.each()),
            Cell.number(kind.all()),
            Cell.of(run.choice().emitter()));
      }
    }
    if (any) {
      TableFormat format = TableFormat.of(plan.info());
      List<Derived<Length>> widths =
          facts.all(DripRun.KEY).stream()
              .filter(r -> r.choice().isSingle())
              .map(r -> r.choice().emitter())
              .distinct()
              .map(f -> WettedGround.width(facts.find(YardFacts.SOIL), f))
              .toList();
      table.note(
          "One emitter is taken to wet "
              + widths.stream()
                  .map(w -> format.withUnit(Measure.LENGTH, w.value()))
                  .distinct()
                  .collect(Collectors.joining(" or "))
              + " across by its flow ("
              + widths.get(0).source().cite()
              + "); share of the ground under each plant that is wetted: "
              + EmitterWords.SHARE_SAYS
              + ". "
              + Emitters.TUBES_SAY
              + " Run one for an hour, dig beside it, and set more where it wets less.");
      table.note(
          "By the mature spread and the width that one emitter wets in the soil; two at least for a"
              + " tree. Punch them into the tube where it passes the plants, about half way from"
              + " stem to drip line, the tube's spare length in between. By a young tree set two at"
              + " the edge of its root ball first, and the others as the crown grows.");
    }
    return table.build();
  }
}
