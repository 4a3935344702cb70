package yardloom.water;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.water.overflow.BasinCheck;
import yardloom.water.overflow.BasinTable;
import yardloom.water.overflow.LotRunoffTable;
import yardloom.water.overflow.OverflowPipeCheck;
import yardloom.water.roof.DownspoutCheck;
import yardloom.water.roofwater.RoofWaterPainter;
import yardloom.water.roofwater.RoofWaterSheet;
import yardloom.water.tank.HeadTable;
import yardloom.water.tank.StandingTable;
import yardloom.water.tank.TankCheck;
import yardloom.water.balance.BalanceCheck;
import yardloom.water.balance.MonthTable;
import yardloom.water.drip.DripCalculator;
import yardloom.water.drip.DripPainter;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.DripWords;
import yardloom.water.drip.HydraulicsTable;
import yardloom.water.drip.PartsTable;
import yardloom.water.lawn.LawnCalculator;
import yardloom.water.lawn.LawnCheck;
import yardloom.water.lawn.LawnTable;
import yardloom.water.lawn.LawnWords;
import yardloom.water.need.AllowanceTable;
import yardloom.water.need.AllowanceWords;
import yardloom.water.need.DemandCalculator;
import yardloom.water.need.TaperTable;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.need.NeedWords;
import yardloom.water.need.WeatherCalculator;
import yardloom.water.overflow.OverflowCheck;
import yardloom.water.overflow.OverflowTable;
import yardloom.water.overflow.OverflowWords;
import yardloom.water.roof.RoofCalculator;
import yardloom.water.roof.RoofDrainageTable;
import yardloom.water.roof.RoofWords;
import yardloom.water.soilwater.SoilWaterTable;
import yardloom.water.tank.TankCalculator;
import yardloom.water.tank.TankTable;
import yardloom.water.tank.TankWords;
import yardloom.water.timetable.IrrigationTable;
import yardloom.water.zone.IrrigationChecks;
import yardloom.water.zone.ZoneCalculator;
import yardloom.water.zone.ZonePainter;
import yardloom.water.zone.ZoneTable;
import yardloom.water.zone.ZoneWords;

/** The water plugin. */
public final class WaterPlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("water", "Water", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "water",
            List.of(
                NeedWords.class,
                AllowanceWords.class,
                LawnWords.class,
                DripWords.class,
                ZoneWords.class,
                RoofWords.class,
                TankWords.class,
                OverflowWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new WeatherCalculator(),
        new DemandCalculator(),
        new RoofCalculator(),
        new TankCalculator(),
        new DripCalculator(),
        new ZoneCalculator(),
        new LawnCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new WaterChecks(),
        new IrrigationChecks(),
        new BalanceCheck(),
        new LawnCheck(),
        new OverflowCheck(),
        new BasinCheck(),
        new OverflowPipeCheck(),
        new TankCheck(),
        new DownspoutCheck());
  }

  @Override
  public List<Painter> painters() {
    return List.of(new DripPainter(), new ZonePainter(), new RoofWaterPainter());
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new MonthTable(),
        new IrrigationTable(),
        new HydraulicsTable(),
        new PartsTable(),
        new ZoneTable(),
        new TankTable(),
        new StandingTable(),
        new HeadTable(),
        new RoofDrainageTable(),
        new OverflowTable(),
        new BasinTable(),
        new LotRunoffTable(),
        new EstablishmentTable(),
        new TaperTable(),
        new AllowanceTable(),
        new SoilWaterTable(),
        new LawnTable());
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(new IrrigationSheet(), new RoofWaterSheet());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    List<Caution> cautions = new ArrayList<>();
    if (!facts.all(DripRun.KEY).isEmpty()) {
      cautions.add(
          caution(
              "Dripline fed from the mains needs a backflow preventer that the local code accepts,"
                  + " so that garden water cannot enter drinking water. Have a licensed plumber"
                  + " make the connection."));
    }
    if (!plan.all(Element.Roof.class).isEmpty()) {
      cautions.add(
          caution(
              "Stored roof water is not drinking water. Water the soil, not leaves that are eaten;"
                  + " wash produce; label the taps; screen every opening against mosquitoes and"
                  + " children."));
      cautions.add(
          caution(
              "A full tank weighs 8.3 lb for each gallon (1 kg for each litre). Its footing, its"
                  + " distance from foundations and its overflow follow the local code; ask a"
                  + " licensed engineer where it stands on a slope, a deck or fill."));
    }
    return cautions;
  }

  private static Caution caution(String text) {
    return new Caution(text, Source.commonPractice("usual cautions for garden water"));
  }
}
