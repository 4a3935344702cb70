package yardloom.work;

import java.util.List;
import java.util.Map;
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
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.work.client.ClientSheet;
import yardloom.work.client.CoverSheet;
import yardloom.work.client.WorkSheet;
import yardloom.work.cost.BagCalculator;
import yardloom.work.cost.BagTable;
import yardloom.work.cost.CostCalculator;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.CostTable;
import yardloom.work.cost.DriverTable;
import yardloom.work.cost.MissingPriceCheck;
import yardloom.work.cost.PriceBook;
import yardloom.work.cost.PriceCheck;
import yardloom.work.cost.PriceWords;
import yardloom.work.crew.CrewBooklet;
import yardloom.work.delivery.DeliveryCalculator;
import yardloom.work.delivery.DeliveryTable;
import yardloom.work.haul.HaulCalculator;
import yardloom.work.haul.HaulTable;
import yardloom.work.labour.FrostSaidCalculator;
import yardloom.work.labour.LabourCalculator;
import yardloom.work.labour.LabourData;
import yardloom.work.labour.LabourTable;
import yardloom.work.labour.WorkWords;
import yardloom.work.own.ElementTable;
import yardloom.work.own.OwnBillCalculator;
import yardloom.work.own.OwnCountedCalculator;
import yardloom.work.own.OwnItemTable;
import yardloom.work.own.OwnWords;
import yardloom.work.own.UncountedCheck;
import yardloom.work.phase.CareVisitTable;
import yardloom.work.phase.OrdersTable;
import yardloom.work.phase.PhaseTable;
import yardloom.work.phase.PlantingDayCheck;
import yardloom.work.phase.RestingTimeCheck;
import yardloom.work.phase.ScheduleCalculator;
import yardloom.work.phase.VisitCalculator;
import yardloom.work.phase.VisitTable;
import yardloom.work.stage.StageCostTable;
import yardloom.work.stage.StagePainter;
import yardloom.work.stage.StageSheet;
import yardloom.work.stage.StageTable;
import yardloom.work.stage.StageWords;
import yardloom.work.stage.Stages;
import yardloom.work.stage.StartSaidCalculator;
import yardloom.work.visit.ComesAgainCheck;
import yardloom.work.visit.SiteVisitCalculator;
import yardloom.work.visit.SiteVisitTable;

/** Hours, hauls, phases and cost, and the pages of crew and client. */
public final class WorkPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("work", "Work", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "work", List.of(WorkWords.class, PriceWords.class, OwnWords.class, StageWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new HaulCalculator(),
        new OwnCountedCalculator(),
        new OwnBillCalculator(),
        new LabourCalculator(),
        new FrostSaidCalculator(),
        new StartSaidCalculator(),
        new ScheduleCalculator(),
        new VisitCalculator(),
        new CostCalculator(),
        new BagCalculator(),
        new SiteVisitCalculator(),
        new DeliveryCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new UncountedCheck(),
        new RestingTimeCheck(),
        new PlantingDayCheck(),
        new ComesAgainCheck(),
        new PriceCheck(),
        new MissingPriceCheck());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new HaulTable(),
        new LabourTable(),
        new OwnItemTable(),
        new ElementTable(),
        new PhaseTable(),
        new VisitTable(),
        new CareVisitTable(),
        new SiteVisitTable(),
        new DeliveryTable(),
        new OrdersTable(),
        new StageTable(),
        new StageCostTable(),
        new CostTable(),
        new DriverTable(),
        new BagTable());
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(
        new CoverSheet(), new StageSheet(), new WorkSheet(), new ClientSheet(), new CrewBooklet());
  }

  @Override
  public List<Painter> painters() {
    return List.of(new StagePainter());
  }

  @Override
  public List<Catalogue> catalogues() {
    return List.of(PriceBook.catalogue(), LabourData.catalogue());
  }

  @Override
  public Map<String, Plan> parts(Plan plan) {
    return Stages.of(plan);
  }

  /** Every sheet of a plan with invented prices says so. */
  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return CostEstimate.atDemonstrationPrices(facts)
        ? List.of(
            new Caution(
                "Demonstration prices: every sum of money in this set is invented.",
                Source.plan("`demonstrationPrices` of the plan")))
        : List.of();
  }
}
