package yardloom.program.sitefile;

import java.util.List;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.vocab.Vocabulary;

/** Brings the words that need libraries which the kernel does without. */
public final class SiteFilePlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("site-files", "Outlines on the globe", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(new Vocabulary("site-files", List.of(SiteFileWords.class, LogoWords.class)));
  }
}
