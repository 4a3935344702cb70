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
import yardloom.materials.sheet.CostTables;
import yardloom.materials.sheet.DepthPainter;
import yardloom.materials.sheet.GoodsTables;
import yardloom.materials.sheet.HaulTable;
import yardloom.materials.sheet.LoadTable;
import yardloom.materials.sheet.MaterialCautions;
import yardloom.materials.sheet.MaterialSheets;
import yardloom.materials.sheet.OrderTable;
import yardloom.materials.sheet.PilePainter;
import yardloom.materials.sheet.RegionTable;
import yardloom.materials.sheet.SoilTables;
import yardloom.materials.sheet.SurfacePainter;
import yardloom.materials.sheet.TakeOffTable;
import yardloom.materials.sheet.TrellisPainter;
import yardloom.materials.sheet.WorkTables;
import yardloom.materials.work.AmendmentCalculator;
import yardloom.materials.work.BillCalculator;
import yardloom.materials.work.CostCalculator;
import yardloom.materials.work.HardGoodsCalculator;
import yardloom.materials.work.HaulCalculator;
import yardloom.materials.work.HeapCalculator;
import yardloom.materials.work.LabourCalculator;
import yardloom.materials.work.LocalChecks;
import yardloom.materials.work.LocalRuleCalculator;
import yardloom.materials.work.MaterialChecks;
import yardloom.materials.work.PriceCheck;
import yardloom.materials.work.ScheduleCalculator;
import yardloom.materials.work.SoilCalculator;
import yardloom.materials.work.SoilChecks;
import yardloom.materials.work.SurfaceCalculator;

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
                WorkWords.class,
                SoilWords.class,
                RegionWords.class,
                LocalCheckWords.class,
                HardWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new SurfaceCalculator(),
        new BillCalculator(),
        new HaulCalculator(),
        new LabourCalculator(),
        new ScheduleCalculator(),
        new CostCalculator(),
        new SoilCalculator(),
        new AmendmentCalculator(),
        new LocalRuleCalculator(),
        new HardGoodsCalculator(),
        new HeapCalculator());
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>(MaterialChecks.all());
    checks.addAll(SoilChecks.all());
    checks.add(new LocalChecks());
    checks.add(new PriceCheck());
    return List.copyOf(checks);
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
    tables.addAll(WorkTables.all());
    tables.add(WorkTables.sources());
    tables.addAll(CostTables.all());
    tables.addAll(SoilTables.all());
    tables.add(new RegionTable());
    tables.addAll(GoodsTables.all());
    return List.copyOf(tables);
  }

  @Override
  public List<SheetMaker> sheets() {
    return MaterialSheets.all();
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return MaterialCautions.of(plan, facts);
  }
}
