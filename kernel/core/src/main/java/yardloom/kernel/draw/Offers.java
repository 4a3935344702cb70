package yardloom.kernel.draw;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.kernel.plan.Reads;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The layers and tables that offer themselves for sheets, whoever makes them. */
public final class Offers {
  /** Nothing is offered. */
  public static final Offers NONE = new Offers(List.of(), Map.of());

  private final List<Painter> painters;
  private final List<TableMaker> makers;
  private final Function<TableMaker, Optional<Table>> tables;

  /**
   * @param painters all that are loaded
   * @param tables what each loaded maker made of the plan
   */
  public Offers(Collection<Painter> painters, Map<TableMaker, Table> tables) {
    this(painters, tables.keySet(), maker -> Optional.ofNullable(tables.get(maker)));
  }

  /**
   * The same where tables are made when a sheet asks for them.
   *
   * @param makers all that are loaded
   * @param tables what a maker makes of the plan
   */
  public Offers(
      Collection<Painter> painters,
      Collection<TableMaker> makers,
      Function<TableMaker, Optional<Table>> tables) {
    this.painters = List.copyOf(painters);
    this.makers = List.copyOf(makers);
    this.tables = tables;
  }

  /** Ids of the layers that are offered for any of {@code uses}; empty if none is. */
  public Set<String> layers(SheetUse... uses) {
    return painters.stream()
        .filter(p -> Stream.of(uses).anyMatch(p.uses()::contains))
        .map(p -> p.layer().id())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The tables of this plan that are offered for {@code use}, by id, without empty ones. */
  public List<Table> tables(SheetUse use) {
    Reads.note(Reads.Topic.OFFER, use);
    return makers.stream()
        .filter(m -> m.uses().contains(use))
        .flatMap(m -> tables.apply(m).stream())
        .filter(t -> !t.isEmpty())
        .sorted(Comparator.comparing(Table::id))
        .toList();
  }
}
