package yardloom.program.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.language.form.Step;
import yardloom.language.limit.Meanwhile;
import yardloom.language.limit.RunLimits;
import yardloom.language.run.PlanRunner;
import yardloom.language.run.ReadPlan;
import yardloom.program.cache.ProcessCache;
import yardloom.program.hands.ManyHands;
import yardloom.program.output.PlanWriter;
import yardloom.program.plugin.PluginJars;

/** The loaded plugins and what is built from them. */
final class Toolkit {
  private final Plugins plugins;
  private final PluginJars jars;
  private PlanRunner runner;

  private Toolkit(Plugins plugins, PluginJars jars) {
    this.plugins = plugins;
    this.jars = jars;
  }

  /** The program's own plugins. */
  static Toolkit load() {
    return load(List.of(), Set.of());
  }

  /** The same, loaded while the command line is read, and ready to read a plan. */
  static Meanwhile<Toolkit> begin() {
    return Meanwhile.begin(
        "loading plugins",
        () -> {
          ProcessCache.ofThisProcess();
          Toolkit own = load();
          own.runner();
          return own;
        });
  }

  /**
   * Begins to load what most plans need after the script, while the script is read: one processor
   * would be idle then. Nothing is worked out and nobody waits for it.
   */
  void loadAhead() {
    Meanwhile.begin(
        "loading what plans need",
        () -> {
          for (YardPlugin plugin : plugins.all()) {
            plugin.checks();
            plugin.tables();
            plugin.painters();
            plugin.sheets();
          }
          PlanWriter.loadAhead();
          return null;
        });
  }

  /**
   * The program's plugins and those of the jars in some folders, without those of some ids.
   *
   * @throws PlanException (UNKNOWN_WORD) if there is none of an id that is to be left out
   */
  static Toolkit load(List<Path> folders, Set<String> without) {
    ClassLoader program = Toolkit.class.getClassLoader();
    PluginJars jars = PluginJars.in(folders, program);
    List<YardPlugin> all = new ArrayList<>(PluginLoader.find(program));
    Set<String> shipped = ids(all);
    for (YardPlugin guest : jars.plugins()) {
      String id = guest.info().id();
      if (shipped.contains(id) && !without.contains(id)) {
        throw new PlanException(
            ProblemCode.PLUGIN_CONFLICT,
            new SourceRef(jars.jarOf(id).orElseThrow().toString(), 0, 0),
            "the plugin " + id + " has the id of one of the program's own; it needs another");
      }
      all.add(guest);
    }
    Set<String> known = ids(all);
    for (String id : without) {
      if (!known.contains(id)) {
        throw new PlanException(
            ProblemCode.UNKNOWN_WORD,
            "--without: no plugin is called `"
                + id
                + "`."
                + Nearest.hint(id, known)
                + " Loaded are "
                + String.join(", ", known));
      }
    }
    all.removeIf(p -> without.contains(p.info().id()));
    return new Toolkit(PluginLoader.of(all), jars);
  }

  private static Set<String> ids(List<YardPlugin> plugins) {
    return plugins.stream().map(p -> p.info().id()).collect(Collectors.toCollection(TreeSet::new));
  }

  Plugins plugins() {
    return plugins;
  }

  /** The jar of a plugin that is not the program's own. */
  Optional<Path> jarOf(YardPlugin plugin) {
    return jars.jarOf(plugin.info().id());
  }

  Plan read(Path script, Map<String, String> settings) {
    return blaming(() -> runner().run(script, settings));
  }

  /** The same with the files it was read from. */
  ReadPlan readFrom(Path script, Map<String, String> settings) {
    return blaming(() -> runner().read(script, settings));
  }

  /** What is wrong with a script as an editor has it; nothing of it runs. */
  List<Problem> problems(Path script, String text) {
    return runner().check(script, text);
  }

  /** The words that a plan speaks, in its JSON form. */
  List<Step> record(Path script, Map<String, String> settings) {
    return blaming(() -> runner().record(script, settings));
  }

  private <T> T blaming(Supplier<T> work) {
    try {
      return work.get();
    } catch (PlanException e) {
      boolean ours = e.problems().stream().noneMatch(p -> p.code() == ProblemCode.INTERNAL);
      throw ours || e.getCause() == null ? e : jars.blamed(e.getCause()).orElse(e);
    }
  }

  /** Made when the first plan is read, and once for all plans; many commands read none. */
  private synchronized PlanRunner runner() {
    if (runner == null) {
      runner =
          new PlanRunner(
              plugins.lexicon(),
              RunLimits.standard(),
              ShippedWords.read(),
              ProcessCache.ofThisProcess().scripts());
    }
    return runner;
  }

  /** What the checks find; no table, drawing or sheet is made. */
  List<Finding> check(Plan plan) {
    return new Study(plugins, hands()).check(plan);
  }

  Outcome study(Plan plan) {
    return study(plan, hands());
  }

  /** The same by those hands, for who works on several plans at once. */
  Outcome study(Plan plan, Hands hands) {
    return new Study(plugins, hands).of(plan);
  }

  /** Of plugins from outside nobody knows whether they bear to be asked by several at once. */
  Hands hands() {
    return jars.plugins().isEmpty() ? new ManyHands() : Hands.ONE;
  }

  /** The outcome with one sheet as it is now and all else as it was; empty if there is none. */
  Optional<Outcome> ahead(Plan plan, Recall recall, Outcome before, String sheet) {
    return new Study(plugins).ahead(plan, recall, before, sheet);
  }

  /** The same, where only those work whose answers are not those that {@code recall} has. */
  Outcome study(Plan plan, Recall recall) {
    return new Study(plugins).of(plan, recall);
  }
}
