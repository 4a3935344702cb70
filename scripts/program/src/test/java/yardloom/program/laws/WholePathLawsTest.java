package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.table.Column;

/**
 * What must hold between the tables of two yards, from plan text to table, through every trade. The
 * laws are those of plane geometry and of what a plan means; no figure is taken from a run.
 */
class WholePathLawsTest {
  private static final String PIECES = "bought, laid or driven in whole pieces, rows and loads";
  private static final String OVERLAP =
      "ground in two setbacks is counted to the side that comes first on the paper";
  private static final String LEAST_REACH = "what an arm reaches does not grow with the yard";
  private static final String GRID = "cells of a foot lie otherwise on turned ground";
  private static final String SUN = "the sun has moved";

  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private static Drawn base() {
    return Drawn.of(new LawYard().script());
  }

  private static void assertSame(SameTables law, Drawn one, Drawn other) {
    List<String> found = law.differences(one, other);
    assertTrue(found.isEmpty(), () -> found.size() + "\n" + String.join("\n", found));
  }

  /** Lengths grow once, areas twice, volumes of equal depth and water by area, the rest not. */
  private static double power(double by, Column column) {
    return switch (column.measure()) {
      case LENGTH -> by;
      case AREA, VOLUME, WATER, FLOW -> by * by;
      default -> 1;
    };
  }

  /** Hours and percent of the sun may differ by what a finer grid would also change. */
  private static final String STRIPS = "found by closing gaps with round corners";

  private static SameTables nearSun(SameTables law, double hours) {
    for (String column : MONTHS) {
      law.within("sun-hours." + column, hours, GRID);
    }
    return law.within("sun-hours.season", hours, GRID)
        .within("sun-hours.morning", hours, GRID)
        .within("sun-light.longest", hours, GRID)
        .within("sun-light.direct", hours, GRID)
        .within("sun-light.morning", hours, GRID)
        .within("sun-light.sky", 0.01, GRID)
        .within("sun-light.dli", 1, GRID);
  }

  @Test
  void scale_everyLengthThreeHalves_areasAndVolumesGrowByItsSquare() {
    SameTables law =
        nearSun(new SameTables(), 0.1)
            .without("drip-rows", "a hand beside stems does not grow with the yard")
            .without("sun-light.first", "the fence is as thick as it was")
            .without("sun-light.last", "the fence is as thick as it was")
            .times((table, column) -> column.id().startsWith("pipe-") ? 2.25 : power(1.5, column))
            .withoutRows("setback from .*|Back fence|Open ground|walk with .*|lay drip line|all.*")
            .without("findings", LEAST_REACH)
            .without("lawn-strips", "narrow is an absolute width")
            .without("zones", PIECES)
            .without("irrigation", PIECES)
            .without("irrigation-parts", PIECES)
            .without("fittings", PIECES)
            .without("drip-hydraulics", PIECES)
            .without("head-assembly.takes", "friction grows with the square of the flow")
            .without("lines", "a zone carries what a tube can, so larger beds part into more zones")
            .without("outlets", PIECES)
            .without("materials-order", PIECES)
            .without("materials-loads", PIECES)
            .without("materials-barrows", PIECES)
            .without("materials-bags-or-bulk", PIECES)
            .without("materials-cost", PIECES)
            .without("materials-cost-drivers", PIECES)
            .without("materials-phases", "days are whole")
            .without("materials-orders-by-phase", "days are whole")
            .without("work-visits", "days are whole")
            .without("work-deliveries", PIECES)
            .without("materials-sources", "names the order")
            .without("materials-take-off.cardboard", PIECES)
            .without("materials-labour", "grows by area or by edge, see below")
            .without("roof-drainage.downspout", "a pipe's area grows with the roof's")
            .without("roof-drainage.size", "sold in whole inches")
            .without("roof-drainage.gutter", "sold in whole inches")
            .without("setting-out", "tapes are printed as text");
    Drawn small = Drawn.of(new LawYard().bare().script());
    Drawn large = Drawn.of(new LawYard().bare().scaled(1.5).script());
    assertSame(law, small, large);
    // The rest by hand: 1.5² = 2.25 for ground and volume, 1.5 for the edge.
    Map<String, Double> hours =
        Map.of(
            "stake out",
            2.25,
            "lay cardboard",
            2.25,
            "load and spread mulch",
            2.25,
            "cut edge",
            1.5);
    hours.forEach(
        (task, by) ->
            assertEquals(
                by * small.exact("materials-labour", task, "likely"),
                large.exact("materials-labour", task, "likely"),
                // An edge keeps a millimetre off walls and fences in either yard.
                1e-4 * large.exact("materials-labour", task, "likely"),
                task));
  }

  @Test
  void turn_withNorthTurnedToo_changesNoTable() {
    SameTables law =
        nearSun(new SameTables(), 0.25)
            .without("lot-sides.bearing", "printed as a bearing of the plan")
            .within("lawn-strips.width", 0.001, STRIPS)
            .within("lawn-strips.length", 0.01, STRIPS)
            .without("sun-light.first", GRID)
            .without("sun-light.last", GRID);
    assertSame(law, base(), Drawn.of(new LawYard().turned(35, 35).script()));
  }

  @Test
  void turn_northLeftWhereItWas_changesTheSunAlone() {
    SameTables law =
        new SameTables()
            .without("drip-rows.rows", "names a side of the bed")
            .withoutRows("setback from .*")
            .within("lawn-strips.width", 0.001, STRIPS)
            .within("lawn-strips.length", 0.01, STRIPS)
            .without("lot-sides", "sides are called by where they lie on the paper")
            .without("findings.finding", "names a side")
            .without("sun-hours", SUN)
            .without("sun-light", SUN)
            .without("setting-out", "corners are counted from another one");
    Drawn turned = Drawn.of(new LawYard().turned(-90, 0).script());
    assertSame(law, base(), turned);
    // The greens lay north of the house; turned a quarter they lie west of it, in the sun at noon.
    double north = base().exact("sun-hours", "bed \"greens\"", "dec");
    double west = turned.exact("sun-hours", "bed \"greens\"", "dec");
    assertTrue(west > north + 1, north + " and " + west);
  }

  @Test
  void mirror_eastForWest_changesMorningForAfternoon() {
    SameTables law =
        nearSun(new SameTables(), 0.1)
            .without("drip-rows.rows", "of two free places the one towards the tap is taken")
            .withoutRows("setback from .*")
            .without("lot-sides", "sides are called by where they lie on the paper")
            .without("sun-hours.morning", "is the afternoon of the other")
            .without("sun-light.morning", "is the afternoon of the other")
            .without("sun-light.first", "is the last of the other")
            .without("sun-light.last", "is the first of the other")
            .without("setting-out", "corners are counted from another one");
    Drawn mirrored = Drawn.of(new LawYard().mirrored().script());
    assertSame(law, base(), mirrored);
    for (String place : base().rows("sun-hours")) {
      double all = base().exact("sun-hours", place, "season");
      double morning = base().exact("sun-hours", place, "morning");
      assertEquals(all - morning, mirrored.exact("sun-hours", place, "morning"), 0.06, place);
    }
    assertTrue(base().exact("sun-hours", "bed \"crowns\"", "morning") > 5.5, "no yard to tell by");
  }

  @Test
  void units_metresForFeet_areTheSameYard() {
    String sold = "sold in other steps";
    // 1/2 in polyethylene tube of 15.24 mm bore or 16 mm tube of 13.6 mm: two goods, not a
    // rounding.
    String tube = "a narrower tube takes a little more of the pressure";
    SameTables law =
        new SameTables()
            .without("drip-rows.rows", "lengths in words")
            // A pot of 5 gal is sold as one of 20 L: its name tells the size.
            .withoutRows(
                "setback from .*|dripline, .*|total|.* polyethylene tube|pressure regulator, .*"
                    + "|.*: pot .*")
            .without("findings.finding", "says lengths in its own units")
            .without("harvest.by-area", "printed as text")
            .without("plant-fit.why", "says lengths in its own units")
            .without("plant-fit.do", "says lengths in its own units")
            .without("care.how", "says volumes in its own units")
            .without("setting-out", "tapes are printed as text")
            .without("tank-sizes", sold)
            .without("irrigation-parts.order", sold)
            .without("materials-order.order", sold)
            .without("materials-order.allowance", "names the step")
            .without("materials-loads", sold)
            .without("materials-bags-or-bulk", sold)
            .without("materials-cost", sold)
            .without("materials-cost-drivers", sold)
            .without("materials-sources", sold)
            .without("materials-orders-by-phase.order", sold)
            .without("work-deliveries.volume", sold)
            .without("work-visits.there", sold)
            .without("work-visits.cost", sold)
            .without("timer-page", "minutes of the timetable, as text")
            .without("rain-off", "half an inch is 12 mm where millimetres are read")
            .without("materials-orders-by-phase.item", "dripline is named by its outlets")
            .without("materials-labour.amount", "printed as text")
            .without("lines.size", sold)
            .without("work-elements.bought", sold)
            .without("lines.bore", sold)
            .without("lines.carries", sold)
            .without("lines.speed", sold)
            .within("lines.flow", 0.5, tube)
            .within("lines.end", 0.5, tube)
            .within("zones.flow", 0.5, tube)
            .within("zones.least", 0.5, tube)
            .within("zones.variation", 0.001, tube)
            .within("zones.peak-hours", 0.002, tube)
            .within("head-assembly.takes", 0.002, tube)
            .within("drip-hydraulics.flow", 0.3, tube)
            .within("drip-hydraulics.inlet", 0.5, tube)
            .within("drip-hydraulics.least", 0.5, tube)
            .within("drip-hydraulics.variation", 1e-6, tube)
            .within("outlets.pressure", 0.5, tube)
            // 0.5 kPa of 172 is 0.3 percent of the pressure, 0.15 percent of 2.54 L/h by its root.
            .within("outlets.flow", 0.004, tube)
            .within("irrigation.flow", 0.5, tube)
            .within("irrigation.rate", 5e-5, tube)
            .within("irrigation.variation", 1e-6, tube)
            .within("irrigation.peak-hours", 0.002, tube)
            .within("timetable.need", 0.004, tube)
            .within("first-weeks-timer.need", 0.001, tube)
            .within("timetable.minutes", 1, tube)
            .within("timetable.by-hand", 1, tube)
            .within("timetable.set", 0.1, tube)
            .without("plant-schedule.size", sold)
            .without("plant-schedule.spacing", "printed as text");
    Drawn metric = Drawn.of(new LawYard().metric().script());
    assertSame(law, base(), metric);
    assertEquals(
        List.of(),
        PrintedUnits.differences(
            base(),
            metric,
            // Pots of 4 and 20 l stand in another order than those of 1 and 5 gal.
            table ->
                List.of(
                        "materials-labour",
                        "tank-sizes",
                        "materials-bags-or-bulk",
                        "materials-loads",
                        "work-deliveries",
                        "rain-off")
                    .contains(table),
            column -> List.of("order", "carries", "speed").contains(column)));
  }

  @Test
  void bed_cutInTwoWithoutAGap_keepsItsTotals() {
    Drawn whole = base();
    Drawn cut =
        Drawn.of(
            new LawYard().greens(new double[] {6, 36, 6, 4}, new double[] {12, 36, 6, 4}).script());
    SameTables law =
        new SameTables()
            .without("materials-take-off.cardboard", "sheets are whole in each bed")
            .without("materials-take-off.surface", "");
    assertFalse(law.differences(whole, cut).isEmpty(), "the bed is not cut");
    List<String> sums =
        List.of(
            "areas area",
            "materials-take-off area",
            "materials-take-off compost",
            "materials-take-off chips",
            "materials-top-up add",
            "water-by-month need",
            "water-against-lawn lawn",
            "water-against-lawn garden",
            "irrigation length",
            "irrigation outlets",
            "materials-barrows volume");
    for (String sum : sums) {
      String[] at = sum.split(" ");
      double wanted = whole.sum(at[0], at[1]);
      assertTrue(wanted > 0, sum);
      assertEquals(wanted, cut.sum(at[0], at[1]), 1e-6 * wanted, sum);
    }
    for (String task : List.of("stake out", "cut edge", "lay cardboard", "load and spread mulch")) {
      double wanted = whole.exact("materials-labour", task, "likely");
      // No edge is cut between beds that touch.
      assertEquals(wanted, cut.exact("materials-labour", task, "likely"), 1e-6, task);
    }
    Drawn bare = Drawn.of(new LawYard().bare().script());
    Drawn bareCut =
        Drawn.of(
            new LawYard()
                .bare()
                .greens(new double[] {6, 36, 6, 4}, new double[] {12, 36, 6, 4})
                .script());
    // Sun on the whole is the mean of the sun on its halves.
    for (String month : MONTHS) {
      double mean =
          (bareCut.exact("sun-hours", "bed \"greens\"", month)
                  + bareCut.exact("sun-hours", "bed \"more greens\"", month))
              / 2;
      assertEquals(bare.exact("sun-hours", "bed \"greens\"", month), mean, 0.02, month);
    }
  }

  @Test
  void bed_addedOnceMore_hasTheSameRowsAndTotalsUpByIt() {
    Drawn one = base();
    Drawn two =
        Drawn.of(
            new LawYard()
                .greens(new double[] {6, 36, 12, 4}, new double[] {24, 36, 12, 4})
                .script());
    Map<String, List<String>> rows =
        Map.of(
            "beds", List.of("greens", "more greens"),
            "irrigation", List.of("greens", "more greens"),
            "drip-hydraulics", List.of("greens", "more greens"),
            "materials-take-off", List.of("Greens", "More greens"));
    rows.forEach((table, names) -> assertSameRow(table, names.get(0), one, two, names.get(1)));
    Map<String, String> grown =
        Map.of(
            "materials-take-off area", "Greens",
            "materials-take-off compost", "Greens",
            "materials-take-off chips", "Greens",
            "materials-take-off cardboard", "Greens",
            "irrigation length", "greens",
            "irrigation outlets", "greens",
            "beds edge", "greens");
    grown.forEach(
        (sum, row) -> {
          String[] at = sum.split(" ");
          double more = one.exact(at[0], row, at[1]);
          assertTrue(more > 0, sum);
          assertEquals(one.sum(at[0], at[1]) + more, two.sum(at[0], at[1]), 1e-6, sum);
        });
    // Harvest and plants: two kinds in the bed, each once more.
    assertEquals(
        one.sum("planting", "count")
            + one.exact("planting", "greens", "count")
            + count(one, "tomato"),
        two.sum("planting", "count"));
    assertEquals(2 * count(one, "kale"), count(two, "kale"));
    assertEquals(
        one.exact("areas", "Open ground", "area") - one.exact("areas", "Greens", "area"),
        two.exact("areas", "Open ground", "area"),
        1e-6);
  }

  private static double count(Drawn drawn, String plant) {
    return drawn.exact("plant-list", plant, "count");
  }

  private static void assertSameRow(String table, String row, Drawn one, Drawn two, String twin) {
    for (Column column : one.tables().get(table).columns().subList(1, 3)) {
      String wanted = one.printed(table, row, column.id());
      assertEquals(wanted, two.printed(table, row, column.id()), table + column);
      assertEquals(wanted, two.printed(table, twin, column.id()), table + column);
    }
    List<Column> columns = one.tables().get(table).columns();
    for (Column column : columns.subList(3, columns.size())) {
      String wanted = one.printed(table, row, column.id());
      assertEquals(wanted, two.printed(table, twin, column.id()), table + column);
    }
  }

  /** 4 October 2027 is a Monday, as 5 October 2026 is: 52 weeks of seven days later. */
  @Test
  void year_fiftyTwoWeeksLater_movesTheDaysAndNothingElse() {
    SameTables law =
        new SameTables()
            .without("materials-phases", "see below")
            .without("planting-visits", "a day of the year falls on a weekend or not")
            .without("work-visits", "follows the planting visits")
            .without("care-visits", "follows the planting visits")
            .without("care", "follows the visits")
            .without("losses", "follows the visits")
            .without(
                "first-weeks", "begins with the visits, as the month does that it is reckoned by")
            .without("first-weeks-timer", "begins with the visits")
            .without("work-deliveries.day", "follows the visits")
            .without("work-deliveries.when", "follows the visits")
            .without("work-deliveries.date", "is a date")
            .without("materials-orders-by-phase.by", "is a date");
    Drawn later = Drawn.of(new LawYard().start("2027-10-04").script());
    assertSame(law, base(), later);
    // Planted before winter: the visits are 52 weeks later, and so is the water of the first weeks.
    for (String in : List.of("apple", "berries")) {
      for (String column : List.of("from", "until")) {
        assertEquals(
            LocalDate.parse(base().printed("first-weeks", in, column)).plusWeeks(52),
            LocalDate.parse(later.printed("first-weeks", in, column)),
            in + " " + column);
      }
    }
    boolean beforeWinter = true;
    for (String phase : base().rows("materials-phases")) {
      LocalDate day = LocalDate.parse(base().printed("materials-phases", phase, "from"));
      LocalDate then = LocalDate.parse(later.printed("materials-phases", phase, "from"));
      beforeWinter &= day.getYear() == 2026;
      if (beforeWinter) {
        assertEquals(day.plusWeeks(52), then, phase);
      } else if (phase.equals("Plant")) {
        // Days of the year: kale from 28 March on, a Sunday in 2027. Asparagus ends and tomatoes
        // begin on 9 May: a working day in 2028, when all go in together, a Sunday in 2027.
        assertEquals(LocalDate.of(2027, 3, 29), day, "a Monday");
        assertEquals(LocalDate.of(2028, 5, 9), then, "a Tuesday");
      }
    }
    assertFalse(beforeWinter, "the yard has to wait for the last frost");
  }

  /** Rain is the same by the year in whatever month it falls. */
  @Test
  void months_ofTheNormalsChanged_keepTheirSums() {
    String months =
        "climateNormals('place', rain: [%s], max: [7, 8, 11, 14, 18, 21, 23, 23, 20, 15, 10, 7],"
            + " min: [1, 1, 3, 5, 8, 11, 13, 13, 10, 7, 4, 2], units: 'mm celsius',"
            + " source: 'by hand')";
    Drawn one =
        Drawn.of(
            new LawYard()
                .climate(months.formatted("61, 52, 57, 46, 43, 31, 22, 27, 42, 55, 66, 73"))
                .script());
    Drawn other =
        Drawn.of(
            new LawYard()
                .climate(months.formatted("22, 73, 31, 52, 66, 27, 46, 61, 57, 43, 42, 55"))
                .script());
    // By hand: 61 + 52 + 57 + 46 + 43 + 31 + 22 + 27 + 42 + 55 + 66 + 73 = 575 mm.
    for (Drawn drawn : List.of(one, other)) {
      assertEquals(0.575, drawn.exact("water-by-month", "Year", "rain"), 1e-9);
      assertEquals(0.575, drawn.sum("water-by-month", "rain"), 1e-9);
    }
    assertEquals(
        one.exact("water-by-month", "Year", "roof-yield"),
        other.exact("water-by-month", "Year", "roof-yield"),
        1e-9);
    assertEquals(
        one.exact("water-by-month", "Year", "reference-et"),
        other.exact("water-by-month", "Year", "reference-et"),
        1e-9);
    // And each month has its own: July 22 mm in one, 46 mm in the other.
    assertEquals(0.022, one.exact("water-by-month", "Jul", "rain"), 1e-9);
    assertEquals(0.046, other.exact("water-by-month", "Jul", "rain"), 1e-9);
    assertTrue(
        one.exact("water-by-month", "Jul", "need") > other.exact("water-by-month", "Jul", "need"));
  }

  /** Two orders drawn by lot; what a plan says does not hang on where it says it. */
  @ParameterizedTest
  @ValueSource(longs = {11, 2026})
  void statements_inAnotherOrder_giveTheSameTablesAndDrawings(long seed) {
    String script = new LawYard().shuffled(seed);
    assertFalse(script.equals(new LawYard().script()));
    Drawn shuffled = Drawn.of(script);
    for (String id : base().tables().keySet()) {
      assertEquals(base().csv().get(id), shuffled.csv().get(id), id);
    }
    assertEquals(base().tables().keySet(), shuffled.tables().keySet());
    assertEquals(
        base().outcome().layers().keySet(), shuffled.outcome().layers().keySet(), "layers");
    base()
        .outcome()
        .layers()
        .forEach(
            (layer, drawn) ->
                assertEquals(drawn, shuffled.outcome().layers().get(layer), layer.id()));
  }

  @Test
  void reader_ofTheLaws_seesAYardOfAllTrades() {
    Pattern wanted =
        Pattern.compile(
            "areas|beds|frost|harvest|irrigation|lot-sides|materials-cost|materials-labour"
                + "|materials-phases|materials-soil|plant-list|routes|setting-out|sun-hours"
                + "|tank-sizes|water-by-month|zones");
    assertEquals(
        17, base().tables().keySet().stream().filter(t -> wanted.matcher(t).matches()).count());
  }
}
