package yardloom.sun;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.sun.bed.LightTable;
import yardloom.sun.bed.SiteCheck;
import yardloom.sun.bed.SunHoursCalculator;
import yardloom.sun.bed.SunTable;
import yardloom.sun.figure.SunPainter;
import yardloom.sun.figure.SunPathWords;
import yardloom.sun.figure.SunSheet;
import yardloom.sun.light.LightWords;
import yardloom.sun.neighbour.LostSunCalculator;
import yardloom.sun.neighbour.NeighbourCheck;
import yardloom.sun.neighbour.ProposedCheck;
import yardloom.sun.neighbour.ProposedWords;
import yardloom.sun.obstacle.CrownWords;
import yardloom.sun.obstacle.SiteObstacles;
import yardloom.sun.position.SunriseCalculator;
import yardloom.sun.spot.SpotCalculator;
import yardloom.sun.spot.SpotCheck;
import yardloom.sun.spot.SpotTable;
import yardloom.sun.spot.SpotWords;
import yardloom.sun.yard.SceneCalculator;
import yardloom.sun.yard.SoilTopCalculator;
import yardloom.sun.yard.YardWords;

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
    return List.of(
        new Vocabulary(
            "sun",
            List.of(
                YardWords.class,
                LightWords.class,
                CrownWords.class,
                SpotWords.class,
                ProposedWords.class,
                SunPathWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new SunriseCalculator(),
        new SiteObstacles(),
        new SceneCalculator(),
        new SunHoursCalculator(),
        new SpotCalculator(),
        new SoilTopCalculator(),
        new LostSunCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(new SiteCheck(), new SpotCheck(), new NeighbourCheck(), new ProposedCheck());
  }

  @Override
  public List<Painter> painters() {
    return List.of(new SunPainter());
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
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
