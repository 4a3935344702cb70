package countysoil;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;

/** What this plugin offers. */
public final class CountySoilPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("county-soil", "County soil", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(new Vocabulary("county-soil", List.of(CountySoilWords.class)));
  }

  @Override
  public List<Check> checks() {
    return List.of(new WellCheck());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(new WellTable());
  }
}
