package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.facts.BillLine;
import yardloom.facts.Harvest;
import yardloom.facts.PlanKit;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.HardWords;
import yardloom.materials.mulch.MulchWords;
import yardloom.materials.mulch.formula.Settling;
import yardloom.materials.pile.PileWords;
import yardloom.work.cost.BagOrBulk;
import yardloom.work.cost.BagOrBulk.Offer;
import yardloom.work.cost.BillSums;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.PriceWords;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkWords;
import yardloom.work.phase.PhaseTime;

class WorkAndCostTest {
  private static PlanKit yard(UnitSystem units) {
    PlanKit kit = new PlanKit(units);
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 30, 10));
    kit.bed("b", BedUse.ANNUAL, PlanKit.box(0, 14, 30, 4));
    kit.path("p", PlanKit.box(0, 10, 30, 4));
    PileWords.dropZone(
        kit.words(), "drive", PlanKit.box(40, 0, 20, 20), null, null, null, null, null, null);
    return kit;
  }

  private static void work(PlanKit kit, Number crew, String start, String last, String first) {
    WorkWords.work(kit.words(), crew, 6, null, start, last, first, null);
  }

  @Test
  void labour_mulch_isAnHourAYard() {
    // Trade article 2009: one person moves and spreads a cubic yard in an hour.
    Results r = PlanKit.run(yard(UnitSystem.US).plan());
    TaskLoad spread =
        r.all(TaskLoad.FACT).stream()
            .filter(t -> t.task() == WorkTask.SPREAD && t.phase() == WorkPhase.FINISH)
            .findFirst()
            .orElseThrow();
    double yd3 = (300.0 * 10 + 120 * 2) / 324;
    assertEquals(yd3, spread.likely().value().hours(), 1e-9);
  }

  /** What is sown in drills is worked and paid by length: 0.015 h/ft (recalled from practice). */
  @Test
  void labour_drills_areSownNotPlantedOneByOne() {
    Plan plan = yard(UnitSystem.US).plan();
    Stand carrots =
        new Stand(
            plan.all(Element.Bed.class).get(0).id(),
            SourceRef.NONE,
            new Stand.Kind("carrot", "", Length.inches(3)),
            new Stand.Placed(
                java.util.Collections.nCopies(1200, Point.metres(0, 0)),
                Area.squareFeet(40),
                Optional.of(Length.feet(200))),
            new Stand.Thirst(
                java.util.Collections.nCopies(12, 0.8), Source.plan("test"), Optional.empty()),
            Stand.Planted.THROUGH_CARDBOARD);
    List<TaskLoad> tasks = PlanKit.run(plan, carrots).all(TaskLoad.FACT);
    TaskLoad sow = tasks.stream().filter(t -> t.task() == WorkTask.SOW).findFirst().orElseThrow();
    assertEquals(3, sow.likely().value().hours(), 1e-9);
    assertTrue(tasks.stream().noneMatch(t -> t.task() == WorkTask.PLANT_POT));
  }

  @Test
  void labour_edges_countOuterOutlineOnce() {
    Results r = PlanKit.run(yard(UnitSystem.US).plan());
    TaskLoad edge =
        r.all(TaskLoad.FACT).stream()
            .filter(t -> t.task() == WorkTask.CUT_EDGE)
            .findFirst()
            .orElseThrow();
    // Beds and path touch: one block of 30 by 18 ft, 96 ft around, 0.03 h/ft.
    assertEquals(96 * 0.03, edge.likely().value().hours(), 1e-6);
  }

  @Test
  void cost_ownFixedPrices_isExact() {
    PlanKit kit = new PlanKit(UnitSystem.US);
    var bed = kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 30, 10));
    MulchWords.noCardboard(bed);
    PriceWords.priceBook(
        kit.words(),
        "item,unit,low,likely,high\nwood-chip mulch,yd3,0,0,0\ncompost,yd3,40,40,40\n"
            + "delivery of bulk,piece,0,0,0\nlabour,h,0,0,0\n",
        null);
    CostEstimate cost = PlanKit.run(kit.plan()).get(CostEstimate.FACT);
    assertFalse(cost.demo());
    // 300 sq ft × 1 in = 0.926 cu yd, + 10 % = 1.0185, so 1.5 cu yd at 40: 60, spread by measure
    // (±3 %) and depth (-10 to +15 %) only.
    assertEquals(60, cost.total().p50().value().amount(), 3);
    assertTrue(cost.total().p10().value().amount() >= 60 * 0.97 * 0.9);
    assertTrue(cost.total().p90().value().amount() <= 60 * 1.03 * 1.15);
    assertEquals("depth and settling", cost.drivers().get(0).cause());
    assertEquals(60 * 0.25, cost.drivers().get(0).swing().amount(), 1e-9);
  }

  /** Invented prices never make a total that nobody asked for. */
  @Test
  void cost_withoutPrices_isNotWorkedOut() {
    Plan plan = yard(UnitSystem.US).plan();
    assertTrue(PlanKit.run(plan).find(CostEstimate.FACT).isEmpty());
    assertFalse(client(UnitSystem.US, Optional.empty()).contains("cost"));
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.price(kit.words(), "compost", Money.amount(30), null, null, "yd3");
    CostEstimate own = PlanKit.run(kit.plan()).get(CostEstimate.FACT);
    assertFalse(own.demo());
    assertEquals(
        List.of("cardboard, sheets", "wood-chip mulch"), own.unpriced().stream().sorted().toList());
  }

  @Test
  void cost_demonstrationPrices_areNamedOnTableClientPageAndEverySheet() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.demonstrationPrices(kit.words());
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    for (String id : List.of("cost", "cost-drivers", "bags-or-bulk")) {
      Table table = PlanKit.table("materials-" + id, plan, r);
      assertTrue(table.title().endsWith(", demonstration prices"), table.title());
    }
    assertEquals(1, new WorkPlugin().cautions(plan, r).size());
    assertTrue(new WorkPlugin().cautions(plan, r).get(0).text().startsWith("Demonstration prices"));
  }

  /** 24 an hour, 40 % overhead, 15 % markup on both: 24 × 1.4 × 1.15 = 38.64. */
  @Test
  void labourRate_wageOverheadMarkup_makeTheBilledHour() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.labourRate(kit.words(), Money.amount(24), 0.4, 0.15);
    Results r = PlanKit.run(kit.plan());
    double hours = TaskLoad.sum(r.all(TaskLoad.FACT)).likely().hours();
    CostEstimate cost = r.get(CostEstimate.FACT);
    assertEquals(38.64 * hours, cost.total().likely().value().amount(), 1e-6);
    assertThrows(
        PlanException.class,
        () -> PriceWords.labourRate(kit.words(), Money.amount(24), null, null));
    assertThrows(
        PlanException.class,
        () -> PriceWords.labourRate(yard(UnitSystem.US).words(), Money.amount(24), 40, null));
  }

  @Test
  void price_forNothingOnTheBill_isAFinding() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.price(kit.words(), "gold leaf", Money.amount(9), null, null, null);
    PriceWords.price(kit.words(), "composd", Money.amount(9), null, null, "yd3");
    PriceWords.price(kit.words(), "labour", Money.amount(9), null, null, "h");
    Plan plan = kit.plan();
    List<String> texts =
        PlanKit.findings(plan, PlanKit.run(plan)).stream()
            .filter(f -> f.rule().equals("work.price-names"))
            .map(f -> f.text())
            .toList();
    assertEquals(2, texts.size(), texts::toString);
    assertTrue(texts.get(0).contains("'composd'"), texts::toString);
    assertTrue(texts.get(1).contains("'gold leaf'"), texts::toString);
  }

  /** Chips at 0 to 100, likely 1, can only get dearer: the reason must be printed. */
  @Test
  void cost_likelyOutsideThePercentiles_printsTheReason() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.price(
        kit.words(), "wood-chip mulch", Money.amount(1), Money.amount(1), Money.amount(100), "yd3");
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    assertFalse(r.get(CostEstimate.FACT).total().likelyLiesBetween());
    Table table = PlanKit.table("materials-cost", plan, r);
    assertTrue(
        table.notes().stream().anyMatch(n -> n.contains("lies outside P10 to P90")),
        table.notes()::toString);
  }

  @Test
  void cost_percentiles_riseAndLieInTheSumOfRanges() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.demonstrationPrices(kit.words());
    CostEstimate cost = PlanKit.run(kit.plan()).get(CostEstimate.FACT);
    assertTrue(cost.demo());
    double low = 0;
    double high = 0;
    for (CostEstimate.Row row : cost.rows()) {
      assertTrue(row.p10().value().compareTo(row.p50().value()) <= 0, row.item());
      assertTrue(row.p50().value().compareTo(row.p90().value()) <= 0, row.item());
      low += row.p10().value().amount();
      high += row.p90().value().amount();
    }
    assertTrue(cost.total().p10().value().amount() >= low);
    assertTrue(cost.total().p90().value().amount() <= high);
    assertTrue(cost.rows().stream().anyMatch(r -> r.item().equals("labour")));
  }

  @Test
  void price_ownWord_goesBeforeTheDemo() {
    PlanKit kit = yard(UnitSystem.US);
    PriceWords.demonstrationPrices(kit.words());
    PriceWords.price(kit.words(), "compost", Money.amount(999), null, null, "yd3");
    Table table = PlanKit.table("materials-cost", kit.plan(), PlanKit.run(kit.plan()));
    double compost =
        table.rows().stream()
            .filter(r -> r.get(0).value().orElseThrow().equals("compost"))
            .mapToDouble(r -> ((Money) r.get(2).value().orElseThrow()).amount())
            .sum();
    assertTrue(compost > 999 * 1.5, "own price used: " + compost);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x,parsec,1,2,3 | my.csv:2:3: ",
        "x,yd3,3,2,1 | my.csv:2:9: ",
        "x,yd3,-1,2,3 | my.csv:2:10: ",
        "'\"chips, dyed\",yd3,1,two,3' | my.csv:2:21: ",
        "x,yd3,one,2,3 | my.csv:2:7: "
      })
  void priceBook_broken_isRefusedAtItsPlaceWithLineAndColumn(String row, String where) {
    PlanKit kit = yard(UnitSystem.US);
    String csv = "item,unit,low,likely,high\n" + row;
    PlanException e =
        assertThrows(PlanException.class, () -> PriceWords.priceBook(kit.words(), csv, "my.csv"));
    assertEquals("test.groovy", e.problems().get(0).place().file());
    assertTrue(e.getMessage().contains(where.strip()), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "item,price\nx,3",
        "item,unit,low,likely,high\n",
        "item,unit,low,likely,high\nx,yd3,1,2,3\nx,yd3,2,3,4"
      })
  void priceBook_withoutColumnsOrLinesOrTwice_isRefused(String csv) {
    PlanKit kit = yard(UnitSystem.US);
    assertThrows(PlanException.class, () -> PriceWords.priceBook(kit.words(), csv, null));
  }

  @Test
  void work_badDate_isRefused() {
    PlanKit kit = yard(UnitSystem.US);
    PlanException e =
        assertThrows(PlanException.class, () -> work(kit, 3, "14.9.2026", null, null));
    assertTrue(e.getMessage().contains("2026-09-14"), e.getMessage());
    assertThrows(PlanException.class, () -> work(kit, 0, null, null, null));
    assertThrows(PlanException.class, () -> work(kit, 2.5, null, null, null));
  }

  @Test
  void crewBooklet_hasTheStepsOfEveryPhaseInWorkingOrder() {
    PlanKit kit = yard(UnitSystem.METRIC);
    work(kit, 3, "2026-08-03", "04-20", "10-20");
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<SheetPlan> sheets = PlanKit.sheets(plan, r).stream().toList();
    for (String id : List.of("materials", "work", "crew", "client")) {
      assertEquals(1, sheets.stream().filter(s -> s.id().equals(id)).count(), id);
    }
    SheetPlan crew = sheets.stream().filter(s -> s.id().equals("crew")).findFirst().orElseThrow();
    assertEquals(SheetPlan.Format.BOOKLET, crew.format());
    Table steps =
        crew.panels().stream()
            .filter(Panel.TableBlock.class::isInstance)
            .map(p -> ((Panel.TableBlock) p).table())
            .filter(t -> t.id().equals("crew-steps"))
            .findFirst()
            .orElseThrow();
    List<String> texts =
        steps.rows().stream()
            .map(row -> row.get(0).value().map(Object::toString).orElse(""))
            .toList();
    List<PhaseTime> phases = r.all(PhaseTime.FACT);
    int last = -1;
    for (int i = 0; i < phases.size(); i++) {
      String title = (i + 1) + ". " + phases.get(i).phase().title(plan) + ": ";
      int at =
          IntStream.range(0, texts.size())
              .filter(k -> texts.get(k).startsWith(title))
              .findFirst()
              .orElse(-1);
      assertTrue(at > last, title + texts);
      last = at;
    }
    assertEquals("1. Mark utilities: 3 Aug to 5 Aug 2026, 0.5 h", texts.get(0));
    assertTrue(
        steps.rows().get(1).get(1).value().orElseThrow().toString().startsWith("Bring "),
        "behind the boxes to tick");
  }

  /** The plan of hours and cost is for the desk unless the plan asks for it. */
  @Test
  void workSheet_isDrawnOnRequest() {
    Plan plan = yard(UnitSystem.US).plan();
    assertEquals(
        List.of("work"),
        PlanKit.sheets(plan, PlanKit.run(plan)).stream()
            .filter(s -> !s.usual())
            .map(SheetPlan::id)
            .toList());
  }

  /** 1,604 lb are 728 kg: no harvest is known to more than two digits. */
  @Test
  void clientPage_tellsTheHarvestInRoundFiguresOfEitherSystem() {
    Source source = Source.plan("test");
    Harvest harvest =
        new Harvest(
            Derived.by("given", source).gives(Mass.pounds(1604)),
            Derived.by("given", source).gives(Mass.pounds(2886)),
            List.of("sage"));
    assertTrue(
        client(UnitSystem.US, harvest).contains("may bring 1,600 to 2,900 lb of food a year"));
    assertTrue(
        client(UnitSystem.METRIC, harvest).contains("may bring 730 to 1 300 kg"), "kilograms");
    assertTrue(client(UnitSystem.US, harvest).contains("a year, or more."));
  }

  private static String client(UnitSystem units, Harvest harvest) {
    return client(units, Optional.of(harvest));
  }

  private static String client(UnitSystem units, Optional<Harvest> harvest) {
    Plan plan = yard(units).plan();
    Results r = PlanKit.run(plan, List.of(), harvest);
    return PlanKit.sheets(plan, r).stream()
        .filter(s -> s.id().equals("client"))
        .flatMap(s -> s.panels().stream())
        .filter(Panel.Notes.class::isInstance)
        .flatMap(n -> ((Panel.Notes) n).paragraphs().stream())
        .collect(Collectors.joining("\n"))
        .replace('\u00a0', ' ');
  }

  private static Stream<String> texts(Panel panel) {
    if (panel instanceof Panel.Notes notes) {
      return notes.paragraphs().stream();
    }
    return panel instanceof Panel.TableBlock block
        ? block.table().rows().stream()
            .flatMap(List::stream)
            .flatMap(cell -> cell.value().stream())
            .filter(String.class::isInstance)
            .map(String.class::cast)
        : Stream.empty();
  }

  /** Nobody keeps a drive free that is not there. */
  @Test
  void clientPage_asksForTheSpotOfTheHeaps() {
    assertTrue(
        client(UnitSystem.US, Optional.empty()).contains("Keep free for deliveries: drive."));
    PlanKit kit = new PlanKit(UnitSystem.US);
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 30, 10));
    Plan plan = kit.plan();
    String page =
        PlanKit.sheets(plan, PlanKit.run(plan)).stream()
            .filter(s -> s.id().equals("client"))
            .flatMap(s -> s.panels().stream())
            .flatMap(WorkAndCostTest::texts)
            .collect(Collectors.joining("\n"));
    assertTrue(page.contains("Keep free for deliveries: the way in."), page);
  }

  @Test
  void crewPages_metricPlan_tellNoInches() {
    PlanKit kit = yard(UnitSystem.METRIC);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<String> texts =
        PlanKit.sheets(plan, r).stream()
            .filter(s -> s.format().isPocket())
            .flatMap(s -> s.panels().stream())
            .flatMap(WorkAndCostTest::texts)
            .toList();
    assertTrue(texts.stream().anyMatch(t -> t.contains("edges 10 cm deep")), texts::toString);
    for (String text : texts) {
      assertFalse(text.matches(".*\\d (in|ft|cu yd|sq ft)\\b(?! the).*"), text);
      assertFalse(text.contains("{"), text);
    }
  }

  @Test
  void phases_noDripNoPlants_areLeftOut() {
    Results r = PlanKit.run(yard(UnitSystem.US).plan());
    List<String> ids = r.all(PhaseTime.FACT).stream().map(t -> t.phase().id().id()).toList();
    // Nor does anybody come twelve times to look after chips.
    assertEquals(List.of("mark", "mow", "stake", "edge", "soak", "sheet", "finish"), ids);
  }

  @Test
  void bagsAndBulk_atBreakEven_costTheSame() {
    // Bag 2 cu ft at 4.5, bulk 35 a yard, delivery 60: 60 / (60.75 - 35) = 2.330 cu yd.
    Offer offer = new Offer(Volume.cubicFeet(2), 4.5, 35, 60);
    double yards = BagOrBulk.breakEvenYards(offer).orElseThrow();
    assertEquals(2.330, yards, 0.001);
    Volume at = Volume.cubicYards(yards);
    assertEquals(BagOrBulk.bulk(at, offer, 1), BagOrBulk.bags(at, offer), 4.5);
    assertTrue(BagOrBulk.breakEvenYards(new Offer(Volume.cubicFeet(2), 1, 35, 60)).isEmpty());
  }

  @Test
  void topUp_laterYears_needLess() {
    Volume laid = Volume.cubicYards(10);
    assertEquals(3, Settling.addedInYear(1, laid, 0.3).cubicYards(), 1e-12);
    assertEquals(1.5, Settling.addedInYear(2, laid, 0.3).cubicYards(), 1e-12);
    assertThrows(PlanException.class, () -> Settling.addedInYear(0, laid, 0.3));
  }

  @Test
  void billLines_sameItemInTwoBeds_areBoughtTogether() {
    PlanKit kit = PlanKit.us();
    for (String name : List.of("a", "b")) {
      var bed = kit.bed(name, BedUse.ANNUAL, PlanKit.box(name.equals("a") ? 0 : 20, 0, 8, 4));
      HardWords.edging(bed, "steel strip", Length.feet(10));
    }
    List<BillLine> bill = PlanKit.run(kit.plan()).all(YardFacts.BILL);
    List<BillLine> sums = BillSums.byItem(bill);
    BillLine edging =
        sums.stream().filter(l -> l.item().startsWith("steel strip")).findFirst().orElseThrow();
    // Each outline of 24 ft takes three pieces of 10 ft.
    assertEquals(6, edging.order().value());
    assertTrue(edging.element().isEmpty());
    assertEquals(bill.size() - 1, sums.size());
  }
}
