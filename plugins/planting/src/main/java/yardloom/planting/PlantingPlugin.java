package yardloom.planting;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.planting.bay.BayCalculator;
import yardloom.planting.bay.BayWords;
import yardloom.planting.bloom.BloomTable;
import yardloom.planting.canopy.CanopyCalculator;
import yardloom.planting.canopy.GrowthTable;
import yardloom.planting.care.BayMonthsTable;
import yardloom.planting.care.CareCalculator;
import yardloom.planting.care.CareHoursTable;
import yardloom.planting.care.CareTable;
import yardloom.planting.care.HouseholdSheet;
import yardloom.planting.care.HouseholdTables;
import yardloom.planting.care.LossesTable;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.fit.ChillCheck;
import yardloom.planting.fit.ChillWords;
import yardloom.planting.fit.HardinessCheck;
import yardloom.planting.fit.HeatCheck;
import yardloom.planting.fit.LightCheck;
import yardloom.planting.fit.PlantingChecks;
import yardloom.planting.fit.RotationCheck;
import yardloom.planting.fit.StemCheck;
import yardloom.planting.fit.TapCheck;
import yardloom.planting.harvest.HarvestCalculator;
import yardloom.planting.harvest.HarvestTable;
import yardloom.planting.harvest.HarvestYearCalculator;
import yardloom.planting.harvest.HarvestYearTable;
import yardloom.planting.harvest.YieldCheck;
import yardloom.planting.list.PlantCatalogueList;
import yardloom.planting.list.PlantKeyPainter;
import yardloom.planting.list.PlantList;
import yardloom.planting.list.PlantNamePainter;
import yardloom.planting.list.PlantSchedule;
import yardloom.planting.list.PlantTable;
import yardloom.planting.mulch.BorneDepthCalculator;
import yardloom.planting.own.OwnPlantWords;
import yardloom.planting.placing.ByHeightCheck;
import yardloom.planting.placing.GrownPicture;
import yardloom.planting.placing.GuildTable;
import yardloom.planting.placing.GuildWords;
import yardloom.planting.placing.LayoutCalculator;
import yardloom.planting.placing.NextWords;
import yardloom.planting.placing.PlacedCheck;
import yardloom.planting.placing.PlacingWords;
import yardloom.planting.placing.PlantPainter;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.PlantingWords;
import yardloom.planting.placing.TallSideCheck;
import yardloom.planting.placing.ThinningTable;
import yardloom.planting.rotation.RotationCalculator;
import yardloom.planting.rotation.RotationTable;
import yardloom.planting.rotation.RotationWords;
import yardloom.planting.stand.PlantWaterTable;
import yardloom.planting.stand.StandCalculator;
import yardloom.planting.stock.StockForms;
import yardloom.planting.stock.StockWords;
import yardloom.planting.suggest.SuggestCalculator;
import yardloom.planting.suggest.SuggestTable;
import yardloom.planting.suggest.SuggestWords;
import yardloom.planting.suit.SuitCalculator;
import yardloom.planting.suit.SuitCheck;
import yardloom.planting.suit.SuitTable;
import yardloom.planting.suit.SuitWords;
import yardloom.planting.trained.TrainedWords;
import yardloom.planting.turn.TurnCheck;
import yardloom.planting.turn.TurnTable;
import yardloom.planting.window.PlantedLaterCalculator;
import yardloom.planting.window.PlantingTimes;
import yardloom.planting.window.ShortSeasonCheck;
import yardloom.planting.window.StockCalculator;
import yardloom.planting.window.TurnCalculator;
import yardloom.planting.window.WindowCalculator;

/** The planting plugin. */
public final class PlantingPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("planting", "Planting", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "planting",
            List.of(
                PlantingWords.class,
                PlacingWords.class,
                NextWords.class,
                GuildWords.class,
                BayWords.class,
                ChillWords.class,
                RotationWords.class,
                SuitWords.class,
                SuggestWords.class,
                StockWords.class,
                OwnPlantWords.class,
                TrainedWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new CanopyCalculator(),
        new LayoutCalculator(),
        new StockCalculator(),
        new TurnCalculator(),
        new WindowCalculator(),
        new PlantedLaterCalculator(),
        new BorneDepthCalculator(),
        new StandCalculator(),
        new HarvestCalculator(),
        new HarvestYearCalculator(),
        new SuitCalculator(),
        new SuggestCalculator(),
        new RotationCalculator(),
        new BayCalculator(),
        new CareCalculator());
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>(PlantingChecks.all());
    checks.add(new HardinessCheck());
    checks.add(new LightCheck());
    checks.add(new ChillCheck());
    checks.add(new HeatCheck());
    checks.add(new YieldCheck());
    checks.add(new RotationCheck());
    checks.addAll(SuitCheck.all());
    checks.add(new ShortSeasonCheck());
    checks.add(new TurnCheck());
    checks.add(new PlacedCheck());
    checks.add(new StemCheck());
    checks.add(new TapCheck());
    checks.add(new TallSideCheck());
    checks.add(new ByHeightCheck());
    return checks;
  }

  @Override
  public List<Painter> painters() {
    return List.of(
        new PlantPainter(), new PlantNamePainter(), new PlantKeyPainter(), new GrownPicture());
  }

  @Override
  public Audience audience() {
    return Audience.NURSERY;
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new PlantTable(),
        new PlantList(),
        new PlantingTimes(),
        new HarvestTable(),
        new HarvestYearTable(),
        new BloomTable(),
        new PlantWaterTable(),
        new SuitTable(),
        new SuggestTable(),
        new RotationTable(),
        new CareTable(),
        new CareHoursTable(),
        HouseholdTables.establishment(),
        HouseholdTables.weeds(),
        HouseholdTables.bay(),
        new BayMonthsTable(),
        new LossesTable(),
        new ThinningTable(),
        new TurnTable(),
        new GuildTable(),
        new GrowthTable(),
        new PlantSchedule());
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(new PlantingSheet(), new HouseholdSheet());
  }

  @Override
  public List<Catalogue> catalogues() {
    return List.of(PlantCatalogueList.plants(), StockForms.catalogue());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    List<String> harmful =
        facts.get(PlantPlaces.KEY).kinds().values().stream()
            .filter(p -> p.caution().harmful())
            .map(Plant::name)
            .toList();
    if (harmful.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Caution(
                "Parts harm people or animals, see the report: " + String.join(", ", harmful) + ".",
                Source.commonPractice("cautions of the plant catalogue"))
            .on(SheetPage.PLANTING));
  }
}
