package yardloom.work.haul;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
      "By paths: the shortest way along paths, hard surfaces and mulched ground to its edge, then"
          + " straight to its middle; on a path, to halfway along it. Lay paths from the heap outward and roll on"
          + " what is laid.";

  private static final String BY_OPEN_GROUND =
      "By open ground: no path wide enough for a barrow leads there from the heap, so it is the way"
          + " round buildings and beds, through gates, times the detour.";

  private static final String OVER_BEDS =
      "By beds, on boards: every gap is too narrow for a barrow. Lay boards, or wheel before those"
          + " beds are planted.";

  private static final String NO_WAY =
      "No way: buildings, fences or neighbours' ground close it in, so the straight line is"
          + " counted; carry in buckets, or give it a gate.";

  private static final String HEAVY =
      "Level barrows, of soil, sand and rock half as much, at most 3 cu ft (85 L), since nobody"
          + " wheels more; what has no spot of its own is tipped on the first. Ways run from the"
          + " heap to the middle of each place.";

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
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    // By the order of work; within a phase as surfaces are listed.
    List<Haul> hauls =
        facts.all(YardFacts.HAULS).stream().sorted(Comparator.comparing(Haul::phase)).toList();
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
          Cell.text(h.to()),
          Cell.text(h.item()),
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
    table.note(HEAVY);
    Map<Haul.By, String> notes = new EnumMap<>(Haul.By.class);
    hauls.forEach(h -> notes.put(h.by(), note(h.by())));
    notes.values().forEach(table::note);
    return table.build();
  }

  private static String note(Haul.By by) {
    return switch (by) {
      case PATHS -> BY_PATHS;
      case OPEN_GROUND -> BY_OPEN_GROUND;
      case OVER_BEDS -> OVER_BEDS;
      case NO_WAY -> NO_WAY;
    };
  }
}
