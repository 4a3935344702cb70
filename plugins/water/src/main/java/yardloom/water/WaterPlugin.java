package yardloom.water;

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
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.water.balance.BalanceCheck;
import yardloom.water.balance.MonthTable;
import yardloom.water.catchtest.CatchTable;
import yardloom.water.catchtest.CatchWords;
import yardloom.water.drip.DripCalculator;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.DripWords;
import yardloom.water.drip.EmitterTable;
import yardloom.water.drip.EmitterWords;
import yardloom.water.drip.RouteCalculator;
import yardloom.water.drip.RowCheck;
import yardloom.water.drip.RowTable;
import yardloom.water.head.HeadWords;
import yardloom.water.head.PartWords;
import yardloom.water.head.Supply;
import yardloom.water.lawn.LawnCalculator;
import yardloom.water.lawn.LawnCheck;
import yardloom.water.lawn.LawnTable;
import yardloom.water.lawn.LawnWords;
import yardloom.water.line.DripPainter;
import yardloom.water.line.EndPainter;
import yardloom.water.line.FittingTable;
import yardloom.water.line.HeadTable;
import yardloom.water.line.HydraulicsTable;
import yardloom.water.line.IrrigationChecks;
import yardloom.water.line.LineCalculator;
import yardloom.water.line.LinePainter;
import yardloom.water.line.LineTable;
import yardloom.water.line.OutletTable;
import yardloom.water.line.PartsTable;
import yardloom.water.line.PipeWords;
import yardloom.water.line.SleeveTable;
import yardloom.water.line.ZoneTable;
import yardloom.water.need.AllowanceTable;
import yardloom.water.need.AllowanceWords;
import yardloom.water.need.DemandCalculator;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.need.NeedWords;
import yardloom.water.need.TaperTable;
import yardloom.water.need.WeatherCalculator;
import yardloom.water.overflow.BasinCheck;
import yardloom.water.overflow.BasinTable;
import yardloom.water.overflow.LotRunoffTable;
import yardloom.water.overflow.OverflowBill;
import yardloom.water.overflow.OverflowCheck;
import yardloom.water.overflow.OverflowPipeCheck;
import yardloom.water.overflow.OverflowTable;
import yardloom.water.overflow.OverflowWords;
import yardloom.water.roof.DownspoutCheck;
import yardloom.water.roof.RoofCalculator;
import yardloom.water.roof.RoofDrainageTable;
import yardloom.water.roof.RoofWords;
import yardloom.water.roofwater.RoofWaterPainter;
import yardloom.water.roofwater.RoofWaterSheet;
import yardloom.water.soilwater.SoilWaterTable;
import yardloom.water.tank.StandingTable;
import yardloom.water.tank.TankBill;
import yardloom.water.tank.TankCalculator;
import yardloom.water.tank.TankCheck;
import yardloom.water.tank.TankHeadTable;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankTable;
import yardloom.water.tank.TankWords;
import yardloom.water.tank.TankYearTable;
import yardloom.water.timetable.FirstWeeksCalculator;
import yardloom.water.timetable.FirstWeeksTable;
import yardloom.water.timetable.IrrigationTable;
import yardloom.water.timetable.NightCheck;
import yardloom.water.timetable.RainOffTable;
import yardloom.water.timetable.TankLevelCheck;
import yardloom.water.timetable.TankLevelTable;
import yardloom.water.timetable.TimerPageTable;
import yardloom.water.timetable.TimetableCalculator;
import yardloom.water.timetable.TimetableTable;
import yardloom.water.zone.HandZoneCheck;
import yardloom.water.zone.ValveMixCheck;
import yardloom.water.zone.ZoneCalculator;
import yardloom.water.zone.ZonePainter;
import yardloom.water.zone.ZoneStageTable;
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
                EmitterWords.class,
                HeadWords.class,
                PartWords.class,
                PipeWords.class,
                ZoneWords.class,
                CatchWords.class,
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
        new TankBill(),
        new OverflowBill(),
        new RouteCalculator(),
        new DripCalculator(),
        new ZoneCalculator(),
        new LineCalculator(),
        new TimetableCalculator(),
        new FirstWeeksCalculator(),
        new LawnCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new WaterChecks(),
        new IrrigationChecks(),
        new RowCheck(),
        new ValveMixCheck(),
        new HandZoneCheck(),
        new BalanceCheck(),
        new LawnCheck(),
        new OverflowCheck(),
        new BasinCheck(),
        new OverflowPipeCheck(),
        new TankCheck(),
        new TankLevelCheck(),
        new NightCheck(),
        new DownspoutCheck());
  }

  @Override
  public List<Painter> painters() {
    return List.of(
        new LinePainter(),
        new DripPainter(),
        new ZonePainter(),
        new EndPainter(),
        new RoofWaterPainter());
  }

  @Override
  public Audience audience() {
    return Audience.INSTALLER;
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new MonthTable(),
        new IrrigationTable(),
        new RowTable(),
        new TimetableTable(),
        new TimerPageTable(),
        new RainOffTable(),
        new EmitterTable(),
        new CatchTable(),
        new HydraulicsTable(),
        new OutletTable(),
        new TankHeadTable(),
        new LineTable(),
        new PartsTable(),
        new FittingTable(),
        new SleeveTable(),
        new ZoneTable(),
        new ZoneStageTable(),
        new TankTable(),
        new TankYearTable(),
        new TankLevelTable(),
        new FirstWeeksTable(),
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
    if (!facts.all(DripRun.KEY).isEmpty() && !Supply.isTank(plan)) {
      cautions.add(
          caution(
              "Dripline on the mains needs a backflow preventer that the code accepts; a licensed"
                  + " plumber connects it."));
    }
    if (!plan.attributes().all(TankPlan.KEY).isEmpty()) {
      cautions.add(
          caution(
              "Roof water is not for drinking: water the soil, wash produce, label taps, screen"
                  + " every opening."));
      cautions.add(
          caution(
              (plan.info().units() == UnitSystem.US
                      ? "A full tank weighs 8.3 lb a gallon"
                      : "A full tank weighs 1 kg a litre")
                  + ": footing and overflow by code, an engineer on slopes, decks or fill."));
    }
    return cautions;
  }

  private static Caution caution(String text) {
    return new Caution(text, Source.commonPractice("usual cautions for garden water"))
        .on(SheetPage.IRRIGATION);
  }
}
