package yardloom.kernel.spi;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.TreeMap;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Vocabulary;

/**
 * Finds plugins and refuses sets that cannot work together, before any script is read.
 *
 * <p>Always loads through a class loader that is passed in: the thread's own finds nothing in some
 * hosts.
 */
public final class PluginLoader {
  private PluginLoader() {}

  /**
   * The plugins that {@code loader} can see.
   *
   * @throws PlanException (PLUGIN_CONFLICT) if there are none, one cannot be made, or they clash
   */
  public static Plugins load(ClassLoader loader) {
    return of(find(loader));
  }

  /**
   * The plugins that {@code loader} can see, not yet held against each other.
   *
   * @throws PlanException (PLUGIN_CONFLICT) if there are none or one cannot be made
   */
  public static List<YardPlugin> find(ClassLoader loader) {
    List<YardPlugin> found = new ArrayList<>();
    try {
      ServiceLoader.load(YardPlugin.class, loader).forEach(found::add);
    } catch (ServiceConfigurationError e) {
      throw new PlanException(
          ProblemCode.PLUGIN_CONFLICT, "a plugin cannot be loaded: " + e.getMessage());
    }
    if (found.isEmpty()) {
      throw new PlanException(
          ProblemCode.PLUGIN_CONFLICT,
          "no plugin was found; put the plugin jars beside the kernel's. If the jars were merged into"
              + " one, their META-INF/services files must be merged too");
    }
    return found;
  }

  /**
   * A set of given plugins, checked.
   *
   * @throws PlanException (PLUGIN_CONFLICT, CYCLE) with everything that clashes
   */
  public static Plugins of(List<YardPlugin> plugins) {
    List<YardPlugin> sorted =
        plugins.stream().sorted(Comparator.comparing(p -> p.info().id())).toList();
    List<Problem> problems = new ArrayList<>();
    Map<String, YardPlugin> byId = new TreeMap<>();
    for (YardPlugin plugin : sorted) {
      String id = plugin.info().id();
      if (byId.put(id, plugin) != null) {
        problems.add(conflict("two plugins are called " + id + "; remove one of them"));
      }
      if (plugin.spiLevel() > Spi.LEVEL || plugin.spiLevel() < Spi.OLDEST) {
        problems.add(
            conflict(
                "plugin "
                    + id
                    + " was built for level "
                    + plugin.spiLevel()
                    + ", this kernel runs levels "
                    + Spi.OLDEST
                    + " to "
                    + Spi.LEVEL
                    + "; get a matching version of one of them"));
      }
    }
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    List<Vocabulary> vocabularies = new ArrayList<>();
    sorted.forEach(p -> vocabularies.addAll(p.vocabularies()));
    Lexicon lexicon = Lexicon.of(vocabularies);
    FactGraph graph = FactGraph.of(sorted.stream().flatMap(p -> p.calculators().stream()).toList());
    return new Plugins(sorted, lexicon, graph);
  }

  private static Problem conflict(String message) {
    return new Problem(ProblemCode.PLUGIN_CONFLICT, SourceRef.NONE, message);
  }
}
