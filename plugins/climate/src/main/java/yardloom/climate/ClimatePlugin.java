package yardloom.climate;

import java.util.List;
import yardloom.climate.et.DailyEtCalculator;
import yardloom.climate.et.EtCalculator;
import yardloom.climate.et.EtTable;
import yardloom.climate.frost.ColdCalculator;
import yardloom.climate.frost.FrostTable;
import yardloom.climate.frost.FrostWords;
import yardloom.climate.frost.RecordCheck;
import yardloom.climate.frost.WarmthTable;
import yardloom.climate.normals.ClimateCalculator;
import yardloom.climate.normals.ClimateList;
import yardloom.climate.normals.NormalsWords;
import yardloom.climate.radiation.RadiationCalculator;
import yardloom.climate.radiation.RadiationWords;
import yardloom.climate.warm.WarmSeasonCalculator;
import yardloom.climate.weather.DailyRainCalculator;
import yardloom.climate.weather.RainWords;
import yardloom.climate.weather.WeatherWords;
import yardloom.kernel.check.Check;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;

/** The climate plugin. */
public final class ClimatePlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("climate", "Climate", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "climate",
            List.of(
                NormalsWords.class,
                RainWords.class,
                WeatherWords.class,
                FrostWords.class,
                RadiationWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new ClimateCalculator(),
        new DailyRainCalculator(),
        new ColdCalculator(),
        new WarmSeasonCalculator(),
        new RadiationCalculator(),
        new EtCalculator(),
        new DailyEtCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(new RecordCheck());
  }

  @Override
  public Audience audience() {
    return Audience.HOUSEHOLD;
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(new FrostTable(), new WarmthTable(), new EtTable());
  }

  @Override
  public List<Catalogue> catalogues() {
    return List.of(ClimateList.climates());
  }
}
