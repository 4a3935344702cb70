package yardloom.planting.placing;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The rings of guilds, from the stem outward: who stands there, what for, how far off. */
public final class GuildTable implements TableMaker {
  @Override
  public String id() {
    return "guilds";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Rings round trees")
            .column(Column.text("tree", "Round"))
            .column(Column.text("role", "As"))
            .column(Column.text("plant", "Plant"))
            .column(Column.of("radius", "From the stem", Measure.LENGTH))
            .column(Column.of("asked", "On the ring", Measure.COUNT))
            .column(Column.of("plants", "With room", Measure.COUNT));
    boolean any = false;
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      Optional<Placement.Ring> ring = ring(p);
      if (ring.isPresent()) {
        any = true;
        table.row(
            Cell.text(ring.get().tree()),
            Cell.text(ring.get().role().orElseThrow().text()),
            Cell.text(p.plant().name()),
            Cell.of(ring.get().radius()),
            Cell.number(ring.get().count()),
            Cell.of(p.count()));
      }
    }
    if (any) {
      table.note(
          "Pull a tape from the stem, walk round, and set plants evenly; those without room in the"
              + " bed are left out. Rings touch once grown. Cut mulch makers before they set seed and"
              + " lay them down where they grew, a hand off the stem.");
    }
    return table.build();
  }

  /** The ring of a guild that is planted now; what stands already is not set out. */
  private static Optional<Placement.Ring> ring(Planting p) {
    return p.placed()
        .filter(where -> !p.choice().stands())
        .filter(Placement.Ring.class::isInstance)
        .map(Placement.Ring.class::cast)
        .filter(r -> r.role().isPresent());
  }
}
