package yardloom.kernel.draw;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
  private final Map<TableMaker, Table> tables;

  /**
   * @param painters all that are loaded
   * @param tables what each loaded maker made of the plan
   */
  public Offers(Collection<Painter> painters, Map<TableMaker, Table> tables) {
    this.painters = List.copyOf(painters);
    this.tables = Map.copyOf(tables);
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
    return tables.entrySet().stream()
        .filter(e -> e.getKey().uses().contains(use) && !e.getValue().isEmpty())
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparing(Table::id))
        .toList();
  }
}
