package yardloom.soil;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.soil.amendment.AmendmentCalculator;
import yardloom.soil.amendment.AmendmentTable;
import yardloom.soil.compost.CompostWords;
import yardloom.soil.compost.HeapCalculator;
import yardloom.soil.compost.HeapTable;
import yardloom.soil.lab.AcidityCalculator;
import yardloom.soil.lab.SoilTestWords;
import yardloom.soil.lead.LeadCheck;
import yardloom.soil.region.LocalCheckWords;
import yardloom.soil.region.LocalChecks;
import yardloom.soil.region.LocalRuleCalculator;
import yardloom.soil.region.RegionCalculator;
import yardloom.soil.region.RegionCautions;
import yardloom.soil.region.RegionTable;
import yardloom.soil.region.RegionWords;
import yardloom.soil.region.RuleTable;
import yardloom.soil.texture.GivenSoilCalculator;
import yardloom.soil.texture.SlowSoilCheck;
import yardloom.soil.texture.SoilCalculator;
import yardloom.soil.texture.SoilList;
import yardloom.soil.texture.SoilTable;
import yardloom.soil.texture.SoilWords;

/** The soil, its tests, what to add to it, and what holds where the yard lies. */
public final class SoilPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("soil", "Soil", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "soil",
            List.of(
                SoilWords.class,
                SoilTestWords.class,
                CompostWords.class,
                RegionWords.class,
                LocalCheckWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new RegionCalculator(),
        new LocalRuleCalculator(),
        new GivenSoilCalculator(),
        new SoilCalculator(),
        new AcidityCalculator(),
        new AmendmentCalculator(),
        new HeapCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(new LeadCheck(), new SlowSoilCheck(), new LocalChecks());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new SoilTable(), new AmendmentTable(), new HeapTable(), new RuleTable(), new RegionTable());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return RegionCautions.of(facts);
  }

  @Override
  public List<Catalogue> catalogues() {
    return List.of(SoilList.soils());
  }
}
