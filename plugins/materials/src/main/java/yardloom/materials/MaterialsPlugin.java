package yardloom.materials;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.materials.sheet.AmendmentTable;
import yardloom.materials.sheet.ClientSheet;
import yardloom.materials.sheet.CostTables;
import yardloom.materials.sheet.CrewSheets;
import yardloom.materials.sheet.CutTable;
import yardloom.materials.sheet.DeliverySheet;
import yardloom.materials.sheet.DepthPainter;
import yardloom.materials.sheet.GoodsTable;
import yardloom.materials.sheet.HaulTable;
import yardloom.materials.sheet.HeapTable;
import yardloom.materials.sheet.LabourTable;
import yardloom.materials.sheet.LoadTable;
import yardloom.materials.sheet.MaterialCautions;
import yardloom.materials.sheet.MaterialSheet;
import yardloom.materials.sheet.OrderTable;
import yardloom.materials.sheet.OrdersTable;
import yardloom.materials.sheet.PhaseTable;
import yardloom.materials.sheet.PilePainter;
import yardloom.materials.sheet.RegionTable;
import yardloom.materials.sheet.RuleTable;
import yardloom.materials.sheet.SoilTable;
import yardloom.materials.sheet.SourcesTable;
import yardloom.materials.sheet.SurfacePainter;
import yardloom.materials.sheet.TakeOffTable;
import yardloom.materials.sheet.TopUpTable;
import yardloom.materials.sheet.TrellisPainter;
import yardloom.materials.sheet.WorkSheet;
import yardloom.materials.work.AmendmentCalculator;
import yardloom.materials.work.BillCalculator;
import yardloom.materials.work.ClearanceCheck;
import yardloom.materials.work.CostCalculator;
import yardloom.materials.work.DensityCalculator;
import yardloom.materials.work.GivenSoilCalculator;
import yardloom.materials.work.HardGoodsCalculator;
import yardloom.materials.work.HaulCalculator;
import yardloom.materials.work.HeapCalculator;
import yardloom.materials.work.HeavySoilCheck;
import yardloom.materials.work.LabourCalculator;
import yardloom.materials.work.LeadCheck;
import yardloom.materials.work.LoadCalculator;
import yardloom.materials.work.LocalChecks;
import yardloom.materials.work.LocalRuleCalculator;
import yardloom.materials.work.PileCalculator;
import yardloom.materials.work.PlantingDayCheck;
import yardloom.materials.work.PriceCheck;
import yardloom.materials.work.RegionCalculator;
import yardloom.materials.work.RestingTimeCheck;
import yardloom.materials.work.ScheduleCalculator;
import yardloom.materials.work.SlowSoilCheck;
import yardloom.materials.work.SoilCalculator;
import yardloom.materials.work.SupplyCalculator;
import yardloom.materials.work.SurfaceCalculator;
import yardloom.materials.work.TipPileCheck;
import yardloom.materials.work.TopUpCalculator;
import yardloom.materials.work.TotalsCalculator;
import yardloom.materials.work.WeedCheck;

/** Mulch, compost, cardboard, soil, hard goods, and the work of laying them. */
public final class MaterialsPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("materials", "Materials, soil and work", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "materials",
            List.of(
                MulchWords.class,
                WeedWords.class,
                LoadWords.class,
                PileWords.class,
                WorkWords.class,
                PriceWords.class,
                SoilWords.class,
                SoilTestWords.class,
                CompostWords.class,
                RegionWords.class,
                LocalCheckWords.class,
                HardWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new SurfaceCalculator(),
        new TotalsCalculator(),
        new BillCalculator(),
        new DensityCalculator(),
        new LoadCalculator(),
        new PileCalculator(),
        new SupplyCalculator(),
        new TopUpCalculator(),
        new HaulCalculator(),
        new LabourCalculator(),
        new ScheduleCalculator(),
        new CostCalculator(),
        new RegionCalculator(),
        new GivenSoilCalculator(),
        new SoilCalculator(),
        new AmendmentCalculator(),
        new LocalRuleCalculator(),
        new HardGoodsCalculator(),
        new HeapCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new ClearanceCheck(),
        new TipPileCheck(),
        new WeedCheck(),
        new HeavySoilCheck(),
        new RestingTimeCheck(),
        new PlantingDayCheck(),
        new PriceCheck(),
        new LeadCheck(),
        new SlowSoilCheck(),
        new LocalChecks());
  }

  @Override
  public List<Painter> painters() {
    return List.of(
        new SurfacePainter(), new DepthPainter(), new PilePainter(), new TrellisPainter());
  }

  @Override
  public List<TableMaker> tables() {
    List<TableMaker> tables = new ArrayList<>();
    tables.addAll(List.of(new TakeOffTable(), new OrderTable(), new LoadTable(), new HaulTable()));
    tables.addAll(List.of(new LabourTable(), new PhaseTable(), new OrdersTable()));
    tables.add(new SourcesTable());
    tables.add(new TopUpTable());
    tables.addAll(CostTables.all());
    tables.addAll(List.of(new SoilTable(), new AmendmentTable(), new RuleTable()));
    tables.add(new RegionTable());
    tables.addAll(List.of(new GoodsTable(), new CutTable(), new HeapTable()));
    return List.copyOf(tables);
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(
        new MaterialSheet(),
        new DeliverySheet(),
        new WorkSheet(),
        new ClientSheet(),
        new CrewSheets());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return MaterialCautions.of(plan, facts);
  }
}
