package yardloom.scripts.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yardloom.kernel.paint.KernelCautions;
import yardloom.kernel.paint.KernelPainters;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.rules.KernelRules;
import yardloom.kernel.rules.KernelTables;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.study.Toolbox;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.kernel.words.KernelWords;
import yardloom.scripts.dsl.Limits;
import yardloom.scripts.dsl.PlanRunner;
import yardloom.scripts.site.SiteFileWords;

/** The loaded plugins and what is built from them. */
final class Toolkit {
  private final Plugins plugins;

  private Toolkit(Plugins plugins) {
    this.plugins = plugins;
  }

  /** The plugins beside the program. */
  static Toolkit load() {
    List<Class<?>> words = new ArrayList<>(KernelWords.VOCABULARY.wordClasses());
    words.add(SiteFileWords.class);
    // Always there, like the kernel's own: so they go by its name.
    Vocabulary base = new Vocabulary(KernelWords.VOCABULARY.plugin(), words);
    return new Toolkit(PluginLoader.load(Toolkit.class.getClassLoader(), base));
  }

  Plugins plugins() {
    return plugins;
  }

  Plan read(Path script, Map<String, String> settings) {
    return new PlanRunner(plugins.lexicon(), Limits.standard(), ShippedWords.read())
        .run(script, settings);
  }

  Outcome study(Plan plan) {
    Toolbox kernel =
        new Toolbox(
            KernelRules.checks(),
            KernelPainters.all(),
            KernelTables.tables(),
            List.of(),
            KernelCautions::of);
    return new Study(plugins, kernel).of(plan);
  }
}
