package yardloom.water.line;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.HeadPart;
import yardloom.water.head.Supply;

/** The parts between tap and lines in order, what each is for, and what pressure it leaves. */
public final class HeadTable implements TableMaker {
  @Override
  public String id() {
    return "head-assembly";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ZoneLine.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Head assembly, in the order in which water passes it")
            .column(Column.of("order", "Order", Measure.COUNT))
            .column(Column.text("part", "Part"))
            .column(Column.text("purpose", "What it is for"))
            .column(Column.of("takes", "Takes", Measure.PRESSURE))
            .column(Column.of("behind", "Pressure behind it", Measure.PRESSURE));
    Optional<Flow> flow =
        facts.all(ZoneLine.KEY).stream().map(z -> z.flow().value()).max(Comparator.naturalOrder());
    if (flow.isEmpty()) {
      return table.build();
    }
    HeadAssembly head = HeadAssembly.of(plan);
    Optional<Pressure> tap = Supply.pressure(plan, flow.get());
    boolean fromMemory = false;
    Optional<Pressure> before = tap;
    int order = 0;
    for (HeadAssembly.Stage stage : head.stages(tap, flow.get(), Supply.isTank(plan))) {
      order++;
      HeadPart part = stage.part();
      fromMemory |= part.source().standing() == Source.Standing.MEMORY;
      table.row(
          Cell.number(order),
          Cell.text(part.name()),
          Cell.text(purpose(part, Supply.isTank(plan))),
          Cell.of(
              Derived.by("loss × (flow / flow of that loss)^2", part.source())
                  .from("loss", part.loss())
                  .from("flow of that loss", part.at())
                  .from("flow", flow.get())
                  .gives(stage.takes())),
          behind(head, stage, before).map(Cell::of).orElse(Cell.BLANK));
      before = stage.behind();
    }
    table.note(
        "At the flow of the thirstiest zone. Valve and regulator stand once in each zone. Which"
            + " backflow preventer is needed, and where it stands, the local code says; losses are"
            + " those of clean parts"
            + (fromMemory ? ", from memory: take them from the maker's sheet." : ".")
            + (tap.isEmpty()
                ? " No pressure of the tap is given, so the regulator is taken to hold:"
                    + " read it at the tap with a gauge."
                : ""));
    return table.build();
  }

  private static Optional<Derived<Pressure>> behind(
      HeadAssembly head, HeadAssembly.Stage stage, Optional<Pressure> before) {
    boolean isSet = stage.part().kind() == HeadPart.Kind.REGULATOR;
    String left = "pressure before it − what it takes";
    Derived.Builder why =
        Derived.by(
            !isSet
                ? left
                : before.isEmpty() ? "pressure that it is set to" : "min(" + left + ", set to)",
            stage.part().source());
    before.ifPresent(p -> why.from("pressure before it", p).from("what it takes", stage.takes()));
    if (isSet) {
      why.from(before.isEmpty() ? "pressure that it is set to" : "set to", head.regulator());
    }
    return stage.behind().map(why::gives);
  }

  /** Valves that the pressure of the mains opens stay shut under a tank: it gives 1 to 4 psi. */
  private static String purpose(HeadPart part, boolean isTank) {
    boolean isOpened =
        part.kind() == HeadPart.Kind.ZONE_VALVE || part.kind() == HeadPart.Kind.TIMER;
    return isTank && isOpened && !part.isOwn()
        ? part.purpose() + "; by a ball valve, as the tank's pressure opens no other"
        : part.purpose();
  }
}
