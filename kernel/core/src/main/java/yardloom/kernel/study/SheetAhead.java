package yardloom.kernel.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Again;
import yardloom.kernel.fact.FactPull;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/**
 * One sheet of an edited plan, for which only those work whom it shows, and those whom they wait
 * for. All else is as it was in the outcome before: the findings, the cautions, the other sheets.
 */
final class SheetAhead {
  private final Plugins plugins;
  private final Plan plan;
  private final Again again;
  private final Outcome before;
  private final FactPull facts;
  private final StudyRun run;
  private final Map<TableMaker, Optional<Table>> tables = new HashMap<>();

  SheetAhead(Plugins plugins, Plan plan, Again again, Outcome before) {
    this.plugins = plugins;
    this.plan = plan;
    this.again = again;
    this.before = before;
    facts = plugins.graph().pull(plan, again);
    run = new StudyRun(plugins, plan, facts.results(), again, Hands.ONE);
  }

  /** The outcome with that sheet as it is now; empty if no maker gave a sheet of that id. */
  Optional<Outcome> outcome(String sheet) {
    Optional<SheetMaker> maker =
        plugins
            .each(YardPlugin::sheets)
            .filter(m -> m.id().equals(before.sheetMakers().get(sheet)))
            .findFirst();
    if (maker.isEmpty()) {
      return Optional.empty();
    }
    Offers offers = new Offers(run.painters(), makers(), this::table);
    again.offers(use -> offers.tables((SheetUse) use));
    facts.pull(maker.get().reads());
    List<SheetPlan> made = run.sheets(maker.get(), offers);
    List<SheetPlan> sheets =
        Stream.concat(
                before.sheets().stream()
                    .filter(s -> !maker.get().id().equals(before.sheetMakers().get(s.id()))),
                made.stream())
            .sorted()
            .toList();
    return made.stream()
        .filter(s -> s.id().equals(sheet))
        .findFirst()
        .map(s -> before.with(plan, facts.results(), sheets, layers(s)));
  }

  private Collection<TableMaker> makers() {
    return plugins.each(YardPlugin::tables).toList();
  }

  /** The form for sheets, made when a sheet first asks for it. */
  private Optional<Table> table(TableMaker maker) {
    Optional<Table> known = tables.get(maker);
    if (known == null) {
      facts.pull(maker.reads());
      known = run.forSheet(maker);
      tables.put(maker, known);
    }
    return known;
  }

  /** Those that the sheet shows as they are now, the others as they were. */
  private SortedMap<Layer, DrawnLayer> layers(SheetPlan sheet) {
    SortedMap<Layer, DrawnLayer> layers = new TreeMap<>(before.layers());
    List<Painter> shown = new ArrayList<>();
    for (Painter painter : run.painters()) {
      if (sheet.panels().stream().anyMatch(p -> shows(p, painter))) {
        shown.add(painter);
      }
    }
    shown.forEach(p -> layers.remove(p.layer()));
    for (Painter painter : shown) {
      facts.pull(painter.reads());
      run.layer(painter).ifPresent(drawn -> layers.put(painter.layer(), drawn));
    }
    return Collections.unmodifiableSortedMap(layers);
  }

  private static boolean shows(Panel panel, Painter painter) {
    return ShownLayers.isOn(
        panel, painter.layer().id(), painter.shownByDefault(), painter.partOfYard());
  }
}
