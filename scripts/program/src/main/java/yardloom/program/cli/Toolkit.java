package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import yardloom.kernel.check.Finding;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.language.compile.CompileCache;
import yardloom.language.limit.Limits;
import yardloom.language.run.PlanRunner;
import yardloom.program.cache.ProcessCache;

/** The loaded plugins and what is built from them. */
final class Toolkit {
  private final Plugins plugins;
  private final CompileCache cache = ProcessCache.of(System.getenv());

  private Toolkit(Plugins plugins) {
    this.plugins = plugins;
  }

  /** The plugins beside the program. */
  static Toolkit load() {
    return new Toolkit(PluginLoader.load(Toolkit.class.getClassLoader()));
  }

  Plugins plugins() {
    return plugins;
  }

  Plan read(Path script, Map<String, String> settings) {
    return new PlanRunner(plugins.lexicon(), Limits.standard(), ShippedWords.read(), cache)
        .run(script, settings);
  }

  /** What the checks find; no table, drawing or sheet is made. */
  List<Finding> check(Plan plan) {
    return new Study(plugins).check(plan);
  }

  Outcome study(Plan plan) {
    return new Study(plugins).of(plan);
  }
}
