package yardloom.sun;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.sun.sheet.LightTable;
import yardloom.sun.sheet.SpotTable;
import yardloom.sun.sheet.SunPainter;
import yardloom.sun.sheet.SunSheet;
import yardloom.sun.sheet.SunTable;
import yardloom.sun.work.LightCheck;
import yardloom.sun.work.NeighbourCheck;
import yardloom.sun.work.ProposedCheck;
import yardloom.sun.work.RadiationCalculator;
import yardloom.sun.work.SiteCheck;
import yardloom.sun.work.SiteObstacles;
import yardloom.sun.work.SpotCalculator;
import yardloom.sun.work.SpotCheck;
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
    return List.of(new Vocabulary("sun", List.of(SunWords.class, RadiationWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new SiteObstacles(),
        new SunHoursCalculator(),
        new RadiationCalculator(),
        new SpotCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new SiteCheck(),
        new LightCheck(),
        new SpotCheck(),
        new NeighbourCheck(),
        new ProposedCheck());
  }

  @Override
  public List<Painter> painters() {
    return List.of(new SunPainter());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(new SunTable(), new LightTable(), new SpotTable());
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(new SunSheet());
  }
}
