package yardloom.sun;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.sun.sheet.SunTable;
import yardloom.sun.work.LightCheck;
import yardloom.sun.work.SiteCheck;
import yardloom.sun.work.SiteObstacles;
import yardloom.sun.work.SunHoursCalculator;

/** The sun plugin. */
public final class SunPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("sun", "Sun and shade", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(new Vocabulary("sun", List.of(SunWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(new SiteObstacles(), new SunHoursCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(new SiteCheck(), new LightCheck());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(new SunTable());
  }
}
