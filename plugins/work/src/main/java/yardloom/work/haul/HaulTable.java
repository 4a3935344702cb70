package yardloom.work.haul;

import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Haul;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;

/** Barrow trips and ways from the heap to every surface. */
public final class HaulTable implements TableMaker {
  private static final String BY_PATHS =
      "By paths: the shortest way along paths and hard surfaces to its edge, then straight to its"
          + " middle; on a path, to halfway along it. Lay paths from the heap outward and roll on"
          + " what is laid.";

  private static final String BY_OPEN_GROUND =
      "By open ground: no path wide enough for a barrow leads there from the heap, so it is the way"
          + " round buildings, times the detour.";

  @Override
  public String id() {
    return "materials-barrows";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.HAULS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<Haul> hauls = facts.all(YardFacts.HAULS);
    Table.Builder table =
        Table.titled(id(), "Barrow trips")
            .column(Column.text("to", "To"))
            .column(Column.text("material", "Material"))
            .column(Column.text("phase", "For"))
            .column(Column.of("volume", "Volume", Measure.VOLUME))
            .column(Column.of("trips", "Trips", Measure.COUNT))
            .column(Column.text("by", "By"))
            .column(Column.of("way", "One way", Measure.LENGTH))
            .column(Column.of("walk", "Walk in all", Measure.LENGTH));
    int trips = 0;
    Length walk = Length.ZERO;
    for (Haul h : hauls) {
      trips += h.trips().value();
      walk = walk.plus(h.walk().value());
      table.row(
          Cell.text(h.to().title()),
          Cell.text(h.material().title()),
          Cell.text(h.phase().title(plan)),
          Cell.of(h.volume()),
          Cell.of(h.trips()),
          Cell.text(h.by().title()),
          Cell.of(h.oneWay()),
          Cell.of(h.walk()));
    }
    if (hauls.isEmpty()) {
      return table.build();
    }
    table.total(
        Cell.text("all"),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.number(trips),
        Cell.BLANK,
        Cell.BLANK,
        Cell.of(walk));
    table.note("Level barrows; ways run from the heap to the middle of each surface.");
    if (hauls.stream().anyMatch(h -> h.by() == Haul.By.PATHS)) {
      table.note(BY_PATHS);
    }
    if (hauls.stream().anyMatch(h -> h.by() == Haul.By.OPEN_GROUND)) {
      table.note(BY_OPEN_GROUND);
    }
    return table.build();
  }
}
