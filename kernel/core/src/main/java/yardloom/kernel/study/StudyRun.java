package yardloom.kernel.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Again;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.DeclaredReader;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.PartTables;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** One run of a study over one plan. */
final class StudyRun {
  private final Plugins plugins;
  private final Plan plan;
  private final Results results;
  private final Again again;
  private final Hands hands;

  StudyRun(Plugins plugins, Plan plan, Results results, Again again, Hands hands) {
    this.plugins = plugins;
    this.plan = plan;
    this.results = results;
    this.again = again;
    this.hands = hands;
  }

  /** All results. */
  Outcome outcome() {
    List<Finding> findings = findings();
    Map<TableMaker, Made> made = made();
    Map<String, String> makers = new TreeMap<>();
    List<SheetPlan> sheets = new ArrayList<>();
    SortedMap<Layer, DrawnLayer> layers = new TreeMap<>();
    Offers offers = offers(made);
    hands
        .<Runnable>all(Stream.concat(sheets(offers, makers, sheets), layers(layers)).toList())
        .forEach(Runnable::run);
    return new Outcome(
        plan,
        results,
        findings,
        tables(made.values(), findings),
        Collections.unmodifiableSortedMap(layers),
        cautions(),
        sheets.stream().sorted().toList(),
        onPaper(made),
        readings(),
        makers);
  }

  private static Map<String, OnPaper> onPaper(Map<TableMaker, Made> made) {
    Map<String, OnPaper> said = new TreeMap<>();
    made.forEach((maker, m) -> said.put(m.table().id(), maker.onPaper()));
    return said;
  }

  private Map<String, Reading> readings() {
    Map<String, Reading> said = new TreeMap<>();
    for (YardPlugin plugin : plugins.all()) {
      for (TableMaker maker : plugin.tables()) {
        said.put(
            maker.id(), new Reading(maker.audience().orElse(plugin.audience()), maker.charts()));
      }
    }
    return said;
  }

  List<Painter> painters() {
    return plugins.each(YardPlugin::painters).toList();
  }

  /** Work that draws a layer and gives what fills {@code layers} with it. */
  private Stream<Supplier<Runnable>> layers(SortedMap<Layer, DrawnLayer> layers) {
    return painters().stream()
        .map(
            painter ->
                () -> {
                  Optional<DrawnLayer> layer = layer(painter);
                  return () -> layer.ifPresent(drawn -> layers.put(painter.layer(), drawn));
                });
  }

  /** The layer of one painter; empty if it draws nothing. */
  Optional<DrawnLayer> layer(Painter painter) {
    return again.of("layer " + painter.layer().id(), () -> drawn(painter));
  }

  private Optional<DrawnLayer> drawn(Painter painter) {
    Facts facts = declared(painter.layer().id(), painter.reads());
    List<Mark> marks = painter.paint(plan, facts);
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DrawnLayer(
                marks,
                painter.legend(plan, facts),
                painter.shownByDefault(),
                painter.partOfYard()));
  }

  /** What the checks find, sorted; accepted ones marked. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    hands
        .<List<Finding>>all(
            checks().sorted(Comparator.comparing(Check::id)).map(this::found).toList())
        .forEach(findings::addAll);
    findings.addAll(skipped());
    Set<String> rules = checks().map(Check::id).collect(Collectors.toCollection(TreeSet::new));
    return Accepting.of(plan, findings, rules).stream().sorted().toList();
  }

  private Supplier<List<Finding>> found(Check check) {
    return () ->
        again.of("check " + check.id(), () -> check.run(plan, declared(check.id(), check.reads())));
  }

  /** One note for each missing fact, not for what falls away only because of another. */
  private List<Finding> skipped() {
    SortedMap<FactKey<?>, SortedSet<String>> missing = new TreeMap<>();
    Set<FactKey<?>> known = new HashSet<>();
    checks().forEach(c -> known.addAll(c.explains()));
    for (Calculator c : skippedCalculators()) {
      known.addAll(c.gives());
      List<String> given = c.gives().stream().map(FactKey::words).toList();
      for (FactKey<?> key : c.needs()) {
        if (key.arity() == FactKey.Arity.ONE && results.find(key).isEmpty()) {
          missing.computeIfAbsent(key, k -> new TreeSet<>()).addAll(given);
        }
      }
    }
    missing.keySet().removeAll(known);
    return missing.entrySet().stream()
        .map(
            fact ->
                Finding.of(
                    "kernel.skipped",
                    Severity.NOTE,
                    "nothing gives the "
                        + fact.getKey().words()
                        + ", so this was not worked out: "
                        + String.join(", ", fact.getValue()),
                    "give it in the plan, or load the plugin that does; `yardloom plugins"
                        + " --verbose` lists what each plugin needs",
                    Source.plan("plan and loaded plugins")))
        .toList();
  }

  private Stream<Check> checks() {
    return plugins.each(YardPlugin::checks);
  }

  private List<Calculator> skippedCalculators() {
    return plugins
        .each(YardPlugin::calculators)
        .filter(c -> results.skipped().containsKey(c.id()))
        .toList();
  }

  /** A table, which may be empty, and the form it has on sheets, if it is offered for any. */
  private record Made(Table table, Optional<Table> forSheet) {}

  /** Every maker with its table of this plan. */
  private Map<TableMaker, Made> made() {
    List<TableMaker> makers = plugins.each(YardPlugin::tables).toList();
    List<Made> tables =
        hands.all(makers.stream().<Supplier<Made>>map(m -> () -> madeNowOrBefore(m)).toList());
    Map<TableMaker, Made> made = new LinkedHashMap<>();
    for (int i = 0; i < makers.size(); i++) {
      made.put(makers.get(i), tables.get(i));
    }
    return made;
  }

  private Made madeNowOrBefore(TableMaker maker) {
    return again.of("table " + maker.id(), () -> made(maker));
  }

  /** The form that the table of one maker has on sheets, if it is offered for any. */
  Optional<Table> forSheet(TableMaker maker) {
    return madeNowOrBefore(maker).forSheet();
  }

  private Made made(TableMaker maker) {
    Facts facts = declared(maker.id(), maker.reads());
    Table table = PartTables.of(maker, plan, facts);
    return new Made(
        table,
        maker.uses().isEmpty()
            ? Optional.empty()
            : Optional.of(PartTables.forSheet(maker, plan, facts, table)));
  }

  private Offers offers(Map<TableMaker, Made> made) {
    Map<TableMaker, Table> offered = new LinkedHashMap<>();
    made.forEach((maker, m) -> m.forSheet().ifPresent(table -> offered.put(maker, table)));
    Offers offers = new Offers(painters(), offered);
    again.offers(use -> offers.tables((SheetUse) use));
    return offers;
  }

  private static List<Table> tables(Collection<Made> made, List<Finding> findings) {
    return Stream.concat(made.stream().map(Made::table), FindingTable.of(findings).stream())
        .filter(table -> !table.isEmpty())
        .sorted(Comparator.comparing(Table::id))
        .toList();
  }

  private List<Caution> cautions() {
    Set<Caution> cautions = new LinkedHashSet<>();
    for (YardPlugin plugin : plugins.all()) {
      cautions.addAll(
          again.of("cautions " + plugin.info().id(), () -> plugin.cautions(plan, results)));
    }
    return cautions.stream().sorted(Comparator.comparing(Caution::when)).toList();
  }

  /**
   * Work of each sheet maker, and what fills the last two with its sheets.
   *
   * @param makers filled with who made each
   */
  private Stream<Supplier<Runnable>> sheets(
      Offers offers, Map<String, String> makers, List<SheetPlan> sheets) {
    return plugins
        .each(YardPlugin::sheets)
        .sorted(Comparator.comparing(SheetMaker::id))
        .map(
            m ->
                () -> {
                  List<SheetPlan> made = sheets(m, offers);
                  return () -> {
                    made.forEach(s -> makers.put(s.id(), m.id()));
                    sheets.addAll(made);
                  };
                });
  }

  /** The sheets of one maker. */
  List<SheetPlan> sheets(SheetMaker maker, Offers offers) {
    return again.of("sheets " + maker.id(), () -> made(maker, offers));
  }

  private List<SheetPlan> made(SheetMaker maker, Offers offers) {
    return maker.make(plan, declared(maker.id(), maker.reads()), offers);
  }

  private Facts declared(String reader, Set<FactKey<?>> reads) {
    return DeclaredReader.of(results, reader, reads);
  }
}
