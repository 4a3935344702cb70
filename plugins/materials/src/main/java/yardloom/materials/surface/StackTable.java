package yardloom.materials.surface;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.facts.ground.OpenGround;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;

/** The layers of every different stack from the ground up, and when each is laid. */
public final class StackTable implements TableMaker {
  @Override
  public String id() {
    return "materials-stacks";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    Table.Builder table =
        Table.titled(id(), "Layers, from the ground up")
            .column(Column.text("stack", "Stack"))
            .column(Column.text("of", "Surfaces"))
            .column(Column.of("nr", "Layer", Measure.COUNT))
            .column(Column.text("layer", "What"))
            .column(Column.of("depth", "Deep", Measure.DEPTH))
            .column(Column.text("phase", "Laid in"));
    int stack = 0;
    for (List<MulchSurface> same : Stacks.of(surfaces, units).values()) {
      stack++;
      String of = same.stream().map(s -> s.of().name()).collect(Collectors.joining(", "));
      int nr = 0;
      for (LaidLayer course : same.get(0).courses()) {
        nr++;
        table.row(
            Cell.text(stack + " " + same.get(0).kind().title()),
            Cell.text(nr == 1 ? of : ""),
            Cell.number(nr),
            Cell.text(course.material().title()),
            course.depth().map(Cell::of).orElse(Cell.BLANK),
            Cell.text(course.phase().title(plan)));
      }
    }
    return table
        .note("Phases, orders, hauls, hours and crew pages follow these layers.")
        .note(LayingNotes.order(OpenGround.hasCardboard(plan), LayingNotes.hasDrip(surfaces)))
        .build();
  }
}
