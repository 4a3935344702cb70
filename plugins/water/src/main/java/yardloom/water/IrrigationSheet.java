package yardloom.water;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.balance.MonthTable;
import yardloom.water.catchtest.CatchTable;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.EmitterTable;
import yardloom.water.drip.RowTable;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.HeadPart;
import yardloom.water.head.Supply;
import yardloom.water.lawn.LawnTable;
import yardloom.water.line.FittingTable;
import yardloom.water.line.HeadFigure;
import yardloom.water.line.HeadPlace;
import yardloom.water.line.HeadTable;
import yardloom.water.line.HydraulicsTable;
import yardloom.water.line.LineTable;
import yardloom.water.line.PartsTable;
import yardloom.water.line.SleeveTable;
import yardloom.water.line.ZoneLine;
import yardloom.water.line.ZoneTable;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.overflow.OverflowTable;
import yardloom.water.roof.RoofDrainageTable;
import yardloom.water.roofwater.RoofWaterSheet;
import yardloom.water.route.LineWays;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankTable;
import yardloom.water.tank.TankYear;
import yardloom.water.timetable.AsBuiltTable;
import yardloom.water.timetable.FirstWeeksTable;
import yardloom.water.timetable.IrrigationTable;
import yardloom.water.timetable.TankChange;
import yardloom.water.timetable.TimerPageTable;
import yardloom.water.timetable.ZoneTimes;

/** The irrigation plan: rows of dripline, zones and taps, without plants; what to buy and run. */
public final class IrrigationSheet implements SheetMaker {
  private static final int NUMBER = 31;

  private static final List<TableMaker> TABLES =
      List.of(
          new FittingTable(),
          new SleeveTable(),
          new IrrigationTable(),
          new EmitterTable(),
          new CatchTable(),
          new HydraulicsTable(),
          new ZoneTable(),
          new HeadTable(),
          new LineTable(),
          new PartsTable(),
          new EstablishmentTable(),
          new MonthTable(),
          new LawnTable(),
          new OverflowTable());

  /** On the sheet of roof water where there is one. */
  private static final List<TableMaker> OF_ROOFS =
      List.of(new TankTable(), new RoofDrainageTable());

  /** What frost breaks, or what is small enough to be carried in. */
  private static final Set<HeadPart.Kind> STANDS_OUT =
      Set.of(
          HeadPart.Kind.TIMER,
          HeadPart.Kind.BACKFLOW,
          HeadPart.Kind.FILTER,
          HeadPart.Kind.REGULATOR,
          HeadPart.Kind.OTHER);

  private static final TableMaker FIRST_WEEKS = new FirstWeeksTable();

  @Override
  public String id() {
    return "water.irrigation";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new LinkedHashSet<>();
    reads.add(DripRun.KEY);
    reads.add(YardFacts.SURFACES);
    reads.add(YardFacts.FROST);
    reads.add(ZoneLine.KEY);
    reads.add(ZoneTimes.KEY);
    reads.add(LineWays.KEY);
    reads.add(TankYear.KEY);
    TABLES.forEach(maker -> reads.addAll(maker.reads()));
    OF_ROOFS.forEach(maker -> reads.addAll(maker.reads()));
    reads.addAll(FIRST_WEEKS.reads());
    reads.addAll(new RowTable().reads());
    reads.addAll(new TimerPageTable().reads());
    return reads;
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    if (facts.all(DripRun.KEY).isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.IRRIGATION)));
    List<TableMaker> makers = new ArrayList<>(TABLES);
    if (!RoofWaterSheet.isDrawn(plan)) {
      makers.addAll(OF_ROOFS);
    }
    panels.addAll(blocks(makers, plan, facts));
    panels.add(new Panel.TableBlock(new RowTable().make(plan, facts), true));
    panels.add(new Panel.Notes("Laying dripline", laying(plan, facts)));
    panels.add(new Panel.Notes("Winter", winter(plan, facts)));
    // The page beside the timer or the tank's valve; the long form is in the report.
    Table timetable = new TimerPageTable().make(plan, facts);
    if (!timetable.isEmpty()) {
      panels.add(1, new Panel.TableBlock(timetable));
      panels.addAll(times(plan, facts));
      panels.add(new Panel.TableBlock(new AsBuiltTable().make(plan, facts)));
    }
    HeadFigure.of(plan, facts).ifPresent(panels::add);
    panels.add(new Panel.Notes("Head and timer", HeadPlace.notes(plan, facts)));
    return List.of(new SheetPlan(NUMBER, "irrigation", "Irrigation", panels));
  }

  private static List<String> laying(Plan plan, Facts facts) {
    List<String> steps = new ArrayList<>();
    steps.add("Lay the rows on the soil or compost, under the chips, and pin them down.");
    steps.addAll(RowTable.notes(plan, facts));
    RowTable.stems(plan, facts).ifPresent(steps::add);
    steps.add("Flush every zone before you close the ends; then look for dry ends.");
    steps.add(
        "Dig the trenches a spade wide along the edges that are drawn, clear of buried lines;"
            + " lay the pipes of all zones in them and mark each end with its zone.");
    steps.add(
        "Run every line with its ends plugged and fill the trenches once all hold"
            + covers(facts)
            + ".");
    return steps;
  }

  /** What the plan lays on the ground before the dripline, in the words of the trade. */
  private static String covers(Facts facts) {
    List<String> first =
        facts.all(YardFacts.SURFACES).stream()
            .flatMap(s -> s.courses().stream())
            .filter(c -> c.phase().compareTo(WorkPhase.DRIP) < 0)
            .map(LaidLayer::material)
            .filter(m -> m.equals(Material.CARDBOARD) || m.equals(Material.WOOD_CHIPS))
            .distinct()
            .sorted()
            .map(m -> m.equals(Material.WOOD_CHIPS) ? "chips" : m.title())
            .toList();
    if (first.isEmpty()) {
      return ", before the rows are joined on";
    }
    boolean isOne = first.size() == 1 && !first.get(0).endsWith("s");
    return ": "
        + String.join(" and ", first)
        + (isOne ? " comes" : " come")
        + " over them before the rows are joined on";
  }

  /** The tables that have a row. */
  private static List<Panel> blocks(List<TableMaker> makers, Plan plan, Facts facts) {
    List<Panel> blocks = new ArrayList<>();
    for (TableMaker maker : makers) {
      Table table = maker.make(plan, facts);
      if (!table.isEmpty()) {
        blocks.add(new Panel.TableBlock(table));
      }
    }
    return blocks;
  }

  /** What a person at the timer or the tank needs. */
  private static List<Panel> times(Plan plan, Facts facts) {
    List<Panel> panels = blocks(List.of(FIRST_WEEKS), plan, facts);
    panels.add(new Panel.Notes("Into the timer", timer(facts)));
    List<String> change = TankChange.steps(plan, facts);
    if (!change.isEmpty()) {
      panels.add(new Panel.Notes("From tank to tap and back", change));
    }
    return panels;
  }

  /** What a person does with any timer, whatever its buttons are called. */
  private static List<String> timer(Facts facts) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "On the first of each month set for every zone: the days between waterings, the start, the"
            + " minutes. A month without a line is off.");
    boolean isInTurns =
        facts.all(ZoneTimes.KEY).stream()
            .flatMap(z -> z.months().stream())
            .anyMatch(m -> m.program().turns() > 1);
    if (isInTurns) {
      steps.add(
          "Turns: enter as many starts for the day as there are turns, each later by a turn and the"
              + " minutes between; or set them as cycle and soak where the timer can.");
    }
    steps.add(
        "Without a timer: open one zone's valve, set a kitchen clock, close it, go on to the"
            + " next.");
    steps.add(
        TimerPageTable.saysRain(facts)
            ? "After a rain beyond the usual put off what falls due on so many days as the page"
                + " says for the zone; then look: where the soil under the chips is dry a hand"
                + " deep, water."
            : "After a rain of half an inch (13 mm) or more skip the next watering.");
    steps.add(
        "Look at every zone while it runs once a month: no jets, no dry ends, the soil moist a hand"
            + " deep.");
    return steps;
  }

  private static List<String> winter(Plan plan, Facts facts) {
    if (facts.find(YardFacts.FROST).isEmpty()) {
      return List.of(
          "No frost days are known for this place. Where it freezes, drain the head and the lines"
              + " before the first hard frost, and flush them in spring.");
    }
    List<String> steps = new ArrayList<>();
    String taken =
        HeadAssembly.of(plan).parts(Supply.isTank(plan)).stream()
            .filter(p -> STANDS_OUT.contains(p.kind()))
            .map(HeadPart::name)
            .collect(Collectors.joining(", "));
    steps.add(
        "Before the first hard frost: close the shut-off valve, take "
            + taken
            + " indoors or drain them, and leave the valves half open.");
    steps.add(
        "Open the flush caps at all row ends and the lowest end of each line, let them run"
            + " empty, and close them loosely against mice. Tube in the ground may keep a little"
            + " water; it stretches.");
    if (!plan.attributes().all(TankPlan.KEY).isEmpty()) {
      steps.add(
          "Tank: where it freezes hard, empty it, leave its valve open and lead the downspout past"
              + " it to the overflow; where ponds only skin over, a large one may stay full with"
              + " its valve wrapped (common practice).");
    }
    steps.add(
        "In spring, after the last frost: put the head together, flush each zone with its caps"
            + " open until the water is clear, close them, read the pressure.");
    return steps;
  }
}
