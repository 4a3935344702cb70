package yardloom.materials;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.materials.built.BuiltCalculator;
import yardloom.materials.built.BuiltCheck;
import yardloom.materials.goods.CutTable;
import yardloom.materials.goods.GoodsTable;
import yardloom.materials.goods.HardGoodsCalculator;
import yardloom.materials.goods.HardWords;
import yardloom.materials.goods.TrellisPainter;
import yardloom.materials.load.BulkData;
import yardloom.materials.load.BulkWords;
import yardloom.materials.load.DensityCalculator;
import yardloom.materials.load.LoadCalculator;
import yardloom.materials.load.LoadTable;
import yardloom.materials.load.LoadWords;
import yardloom.materials.mulch.BorneDepthCheck;
import yardloom.materials.mulch.ClearanceCheck;
import yardloom.materials.mulch.HeavySoilCheck;
import yardloom.materials.mulch.LayerWords;
import yardloom.materials.mulch.MaterialCautions;
import yardloom.materials.mulch.MulchWords;
import yardloom.materials.mulch.TopUpCalculator;
import yardloom.materials.mulch.TopUpTable;
import yardloom.materials.mulch.TreeMulchCheck;
import yardloom.materials.mulch.WeedCheck;
import yardloom.materials.mulch.WeedWords;
import yardloom.materials.pile.DropZoneCheck;
import yardloom.materials.pile.PileCalculator;
import yardloom.materials.pile.PilePainter;
import yardloom.materials.pile.PileWords;
import yardloom.materials.sourcing.SourcesTable;
import yardloom.materials.sourcing.SupplyCalculator;
import yardloom.materials.surface.DepthPainter;
import yardloom.materials.surface.StackTable;
import yardloom.materials.surface.SurfaceCalculator;
import yardloom.materials.surface.SurfacePainter;
import yardloom.materials.takeoff.BillCalculator;
import yardloom.materials.takeoff.JobCalculator;
import yardloom.materials.takeoff.OrderTable;
import yardloom.materials.takeoff.TakeOffTable;
import yardloom.materials.takeoff.TotalsCalculator;

/** Sheet mulch, hard goods, loads and deliveries. */
public final class MaterialsPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("materials", "Materials", "0.1.0");
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
                LayerWords.class,
                WeedWords.class,
                LoadWords.class,
                BulkWords.class,
                PileWords.class,
                HardWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new SurfaceCalculator(),
        new TotalsCalculator(),
        new BillCalculator(),
        new JobCalculator(),
        new TopUpCalculator(),
        new DensityCalculator(),
        new LoadCalculator(),
        new PileCalculator(),
        new SupplyCalculator(),
        new HardGoodsCalculator(),
        new BuiltCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new ClearanceCheck(),
        new BorneDepthCheck(),
        new WeedCheck(),
        new HeavySoilCheck(),
        new TreeMulchCheck(),
        new DropZoneCheck(),
        new BuiltCheck());
  }

  @Override
  public List<Painter> painters() {
    return List.of(
        new SurfacePainter(), new DepthPainter(), new PilePainter(), new TrellisPainter());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new StackTable(),
        new TakeOffTable(),
        new OrderTable(),
        new SourcesTable(),
        new LoadTable(),
        new TopUpTable(),
        new GoodsTable(),
        new CutTable());
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(new MaterialSheet());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return MaterialCautions.of(plan, facts);
  }

  @Override
  public List<Catalogue> catalogues() {
    return List.of(BulkData.catalogue());
  }
}
