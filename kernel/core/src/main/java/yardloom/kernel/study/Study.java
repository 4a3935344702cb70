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
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
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
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.DeclaredReader;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/**
 * Runs calculators, checks, table makers and painters over a plan, once each, in an order that
 * depends only on what is loaded.
 */
public final class Study {
  private final Plugins plugins;

  public Study(Plugins plugins) {
    this.plugins = plugins;
  }

  /**
   * All results of the plan.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Outcome of(Plan plan) {
    Results results = plugins.graph().run(plan);
    List<Finding> findings = findings(plan, results);
    Map<TableMaker, Table> made = made(plan, results);
    return new Outcome(
        plan,
        results,
        findings,
        tables(made.values(), findings),
        layers(plan, results),
        cautions(plan, results),
        sheets(plan, results, new Offers(painters(), forSheets(plan, results, made))),
        onPaper(made),
        readings());
  }

  private static Map<String, OnPaper> onPaper(Map<TableMaker, Table> made) {
    Map<String, OnPaper> said = new TreeMap<>();
    made.forEach((maker, table) -> said.put(table.id(), maker.onPaper()));
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

  /**
   * What the checks find, without tables, drawings and sheets; the same as those of {@link #of}.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public List<Finding> check(Plan plan) {
    return findings(plan, plugins.graph().run(plan));
  }

  private List<Painter> painters() {
    return plugins.all().stream().flatMap(p -> p.painters().stream()).toList();
  }

  private SortedMap<Layer, DrawnLayer> layers(Plan plan, Results results) {
    SortedMap<Layer, DrawnLayer> layers = new TreeMap<>();
    painters()
        .forEach(
            painter -> {
              Facts facts = declared(painter.layer().id(), painter.reads(), results);
              List<Mark> marks = painter.paint(plan, facts);
              if (!marks.isEmpty()) {
                layers.put(
                    painter.layer(),
                    new DrawnLayer(
                        marks,
                        painter.legend(plan, facts),
                        painter.shownByDefault(),
                        painter.partOfYard()));
              }
            });
    return Collections.unmodifiableSortedMap(layers);
  }

  private List<Finding> findings(Plan plan, Results results) {
    List<Finding> findings = new ArrayList<>();
    checks()
        .sorted(Comparator.comparing(Check::id))
        .forEach(
            check ->
                findings.addAll(check.run(plan, declared(check.id(), check.reads(), results))));
    findings.addAll(skipped(results));
    Set<String> rules = checks().map(Check::id).collect(Collectors.toCollection(TreeSet::new));
    return Accepting.of(plan, findings, rules).stream().sorted().toList();
  }

  /** One note for each missing fact, not for what falls away only because of another. */
  private List<Finding> skipped(Results results) {
    SortedMap<FactKey<?>, SortedSet<String>> missing = new TreeMap<>();
    Set<FactKey<?>> known = new HashSet<>();
    checks().forEach(c -> known.addAll(c.explains()));
    for (Calculator c : skippedCalculators(results)) {
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
    return plugins.all().stream().flatMap(p -> p.checks().stream());
  }

  private List<Calculator> skippedCalculators(Results results) {
    return plugins.all().stream()
        .flatMap(p -> p.calculators().stream())
        .filter(c -> results.skipped().containsKey(c.id()))
        .toList();
  }

  /** Every maker with its table of this plan, which may be empty. */
  private Map<TableMaker, Table> made(Plan plan, Results results) {
    Map<TableMaker, Table> made = new LinkedHashMap<>();
    plugins.all().stream()
        .flatMap(p -> p.tables().stream())
        .forEach(m -> made.put(m, m.make(plan, declared(m.id(), m.reads(), results))));
    return made;
  }

  private static Map<TableMaker, Table> forSheets(
      Plan plan, Results results, Map<TableMaker, Table> made) {
    Map<TableMaker, Table> offered = new LinkedHashMap<>();
    made.forEach(
        (maker, table) -> {
          if (!maker.uses().isEmpty()) {
            Facts facts = declared(maker.id(), maker.reads(), results);
            offered.put(maker, maker.forSheet(plan, facts, table));
          }
        });
    return offered;
  }

  private static List<Table> tables(Collection<Table> made, List<Finding> findings) {
    return Stream.concat(made.stream(), FindingTable.of(findings).stream())
        .filter(table -> !table.isEmpty())
        .sorted(Comparator.comparing(Table::id))
        .toList();
  }

  private List<Caution> cautions(Plan plan, Results results) {
    Set<Caution> cautions = new LinkedHashSet<>();
    for (YardPlugin plugin : plugins.all()) {
      cautions.addAll(plugin.cautions(plan, results));
    }
    return cautions.stream().sorted(Comparator.comparing(Caution::when)).toList();
  }

  private List<SheetPlan> sheets(Plan plan, Results results, Offers offers) {
    return plugins.all().stream()
        .flatMap(p -> p.sheets().stream())
        .sorted(Comparator.comparing(SheetMaker::id))
        .flatMap(m -> m.make(plan, declared(m.id(), m.reads(), results), offers).stream())
        .sorted()
        .toList();
  }

  private static Facts declared(String reader, Set<FactKey<?>> reads, Results results) {
    return DeclaredReader.of(results, reader, reads);
  }
}
