package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.ClimateNormals;
import yardloom.facts.Harvest;
import yardloom.facts.LawnWater;
import yardloom.facts.PlanKit;
import yardloom.facts.PlantingWindow;
import yardloom.facts.ReferenceEt;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Spread;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.Volume;
import yardloom.site.lot.LotWords;
import yardloom.work.cost.PriceWords;
import yardloom.work.labour.WorkWords;

/**
 * One person of 5 h a day from Monday 1 March 2027 on in a bed of 300 sq ft: kale (25 pots, 0.08 h
 * each, 2 h) in season from 1 March to 30 April, tomatoes (250, 20 h) from 10 May to 15 June. Marks
 * take three days; on Thursday 4 March mowing, staking, edges and soaking take 0.3, 0.6, 2.4 and
 * 0.3 h, 3.6 of 5, and the cardboard's 5.2 h last till Friday at 3.8 h: the crew plants from then
 * on, till Monday at 0.8 h, and has spread the chips 2.2 h later.
 */
class VisitsYardTest {
  private final PlanKit kit = yard();
  private String kaleUntil = "04-30";
  private int kale = 25;
  private int tomatoes = 250;
  private PlantingWindow other = window("tomato", "05-10", "06-15", "pot");
  private final List<PlantingWindow> more = new ArrayList<>();
  private final List<Stand> stands = new ArrayList<>();
  private final List<BillLine> bill = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private double julyAndAugustIn = -1;

  private static PlanKit yard() {
    PlanKit kit = PlanKit.us();
    LotWords.lot(kit.words(), List.of(ft(-5, -5), ft(75, -5), ft(75, 70), ft(-5, 70)), null);
    kit.bed("a", Element.BedUse.ANNUAL, PlanKit.box(0, 0, 30, 10));
    return kit;
  }

  private static Point ft(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  private void work(String start) {
    WorkWords.work(kit.words(), 1, 5, null, start, null, null, 3);
  }

  private static PlantingWindow window(String plant, String from, String until, String how) {
    return new PlantingWindow(
        plant,
        WorkPhase.PLANT,
        List.of(new PlantingWindow.Period(how, given(day(from)), given(day(until)))));
  }

  private static MonthDay day(String day) {
    return MonthDay.parse("--" + day);
  }

  private static <T> Derived<T> given(T value) {
    return Derived.given(value, "test", SourceRef.NONE);
  }

  private static Job pots(String plant, int count) {
    return new Job(
        WorkTask.PLANT_POT,
        WorkPhase.PLANT,
        given(count),
        Optional.empty(),
        Optional.empty(),
        Optional.of(plant));
  }

  private static List<Derived<Volume>> months(double gallons) {
    return Collections.nCopies(12, given(Volume.gallons(gallons)));
  }

  private Outcome outcome() {
    Giver giver =
        new Giver(
            Set.of(
                YardFacts.JOBS,
                YardFacts.STANDS,
                YardFacts.BILL,
                YardFacts.PLANTING_WINDOWS,
                YardFacts.HARVEST,
                YardFacts.LAWN_WATER,
                YardFacts.CLIMATE,
                YardFacts.REFERENCE_ET),
            (p, out) -> give(out));
    List<YardPlugin> all = new ArrayList<>(PlanKit.plugins());
    all.add(giver);
    return new Study(PluginLoader.of(all)).of(kit.plan());
  }

  /** Rain of 3 in a month but in two, and a reference evapotranspiration of 2.5 in. */
  private void climate(Sink out) {
    Source source = Source.plan("test");
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (int m = 1; m <= 12; m++) {
      months.add(
          new ClimateNormals.Month(
              Length.inches(m == 7 || m == 8 ? julyAndAugustIn : 3),
              Temperature.celsius(12),
              Optional.empty(),
              Optional.empty()));
    }
    out.give(YardFacts.CLIMATE, new ClimateNormals("here", months, source, source));
    out.give(
        YardFacts.REFERENCE_ET,
        new ReferenceEt(Collections.nCopies(12, given(Length.inches(2.5))), List.of(), "by hand"));
  }

  private void give(Sink out) {
    if (julyAndAugustIn >= 0) {
      climate(out);
    }
    out.give(YardFacts.JOBS, pots("kale", kale));
    out.give(YardFacts.JOBS, pots("tomato", tomatoes));
    jobs.forEach(j -> out.give(YardFacts.JOBS, j));
    stands.forEach(st -> out.give(YardFacts.STANDS, st));
    bill.forEach(b -> out.give(YardFacts.BILL, b));
    out.give(YardFacts.PLANTING_WINDOWS, window("kale", "03-01", kaleUntil, "plug"));
    out.give(YardFacts.PLANTING_WINDOWS, other);
    more.forEach(w -> out.give(YardFacts.PLANTING_WINDOWS, w));
    out.give(
        YardFacts.HARVEST,
        new Harvest(given(Mass.pounds(103.4)), given(Mass.pounds(217)), List.of("sage")));
    out.give(
        YardFacts.LAWN_WATER,
        new LawnWater(given(Area.squareFeet(400)), months(900), months(300), months(57)));
  }

  private List<String> printed(String id) {
    Outcome outcome = outcome();
    return PlanKit.printed(id, outcome.plan(), outcome.results()).stream()
        .map(r -> r.replace('\u00a0', ' ').strip())
        .toList();
  }

  private List<String> found(String rule) {
    return outcome().findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(Finding::text)
        .toList();
  }

  private static SheetPlan sheet(Outcome outcome, String id) {
    return outcome.sheets().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<Table> tables(SheetPlan sheet) {
    return sheet.panels().stream()
        .filter(p -> p instanceof Panel.TableBlock)
        .map(p -> ((Panel.TableBlock) p).table())
        .toList();
  }

  private static List<List<String>> rows(SheetPlan sheet, String table) {
    return tables(sheet).stream()
        .filter(t -> t.id().equals(table))
        .flatMap(t -> t.rows().stream())
        .map(
            r ->
                r.stream()
                    .map(c -> c.value().map(Object::toString).orElse("").replace('\u00a0', ' '))
                    .toList())
        .toList();
  }

  @Test
  void kindsOutOfSeasonTogether_areTwoVisits_withTheirHours() {
    work("2027-03-01");
    assertEquals(
        List.of(
            "1 | 5 Mar 2027 | 2.0 | 1 | kale (plug)", "2 | 10 May 2027 | 20.0 | 4 | tomato (pot)"),
        printed("planting-visits"));
    List<String> phases = printed("materials-phases");
    assertTrue(
        phases.contains(
            "Plant | 5 | 2 | 2.0 | 5 Mar 2027 | 8 Mar 2027 | Cardboard and its cover | 3.6"),
        phases::toString);
    assertTrue(
        phases.stream()
            .anyMatch(p -> p.startsWith("Establish | 10 | 47 | 3.0 | 12 Mar 2027 | 17 May 2027")),
        phases::toString);
    // Three visits for two plantings: the first weeks of both, then the second of the first.
    assertEquals(
        List.of(
            "1 | 12 Mar 2027 | a week after planting",
            "2 | 19 Mar 2027 | 2 weeks after planting",
            "3 | 17 May 2027 | a week after planting"),
        printed("care-visits"));
    Outcome outcome = outcome();
    List<String> notes =
        PlanKit.table("materials-phases", outcome.plan(), outcome.results()).notes();
    assertTrue(
        notes.stream().anyMatch(n -> n.startsWith("Later visits to plant take 20.0 h beside, of")),
        notes::toString);
    assertEquals(
        List.of(
            "The rest is done on 8 Mar 2027, when not all kinds are in season: the crew comes"
                + " again on 10 May 2027 to plant tomato."),
        found("work.comes-again"));
  }

  /**
   * Ten visits: one, two, four and six weeks after Friday 5 March and Monday 10 May are eight. A
   * coefficient of 0.8 on 2.5 in are 2.0 in of need, more than the 1.9 in of July and August, whose
   * Mondays are 5, 12, 19, 26 July and 2, 9, 16, 23, 30 August: two of nine, the third and the
   * seventh. At 2.1 in no month is dry, and the two follow in the next weeks.
   */
  @Test
  void visitsAndClient_followTheDryMonths() {
    WorkWords.work(kit.words(), 1, 5, null, "2027-03-01", null, null, 10);
    stands.add(stand("kale"));
    julyAndAugustIn = 1.9;
    List<String> first =
        List.of(
            "1 | 12 Mar 2027 | a week after planting",
            "2 | 19 Mar 2027 | 2 weeks after planting",
            "3 | 2 Apr 2027 | 4 weeks after planting",
            "4 | 16 Apr 2027 | 6 weeks after planting",
            "5 | 17 May 2027 | a week after planting",
            "6 | 24 May 2027 | 2 weeks after planting",
            "7 | 7 Jun 2027 | 4 weeks after planting",
            "8 | 21 Jun 2027 | 6 weeks after planting");
    List<String> dry = printed("care-visits");
    assertEquals(first, dry.subList(0, 8));
    assertEquals(
        List.of(
            "9 | 19 Jul 2027 | a dry month: plants need more than it rains",
            "10 | 16 Aug 2027 | a dry month: plants need more than it rains"),
        dry.subList(8, dry.size()));
    assertTrue(
        inShort().stream()
            .anyMatch(l -> l.contains("later from July to August, when they need more than it")),
        () -> inShort().toString());
    julyAndAugustIn = 2.1;
    List<String> wet = printed("care-visits");
    assertEquals(first, wet.subList(0, 8));
    assertEquals(
        List.of("9 | 28 Jun 2027 | plants grow", "10 | 5 Jul 2027 | plants grow"),
        wet.subList(8, wet.size()));
    assertTrue(
        inShort().stream().anyMatch(l -> l.endsWith("later in dry spells only. Pull weeds.")),
        () -> inShort().toString());
  }

  /**
   * 100 pots of kale take 8 h, from Friday the 5th at 3.6 h to Tuesday the 9th; its days end then.
   */
  @ParameterizedTest
  @CsvSource({"03-08, true", "03-09, false"})
  void plantingThatOutlastsItsSeason_isTold(String until, boolean late) {
    work("2027-03-01");
    kale = 100;
    kaleUntil = until;
    assertEquals(
        late,
        found("work.planting-day")
            .contains("Planting ends on 9 Mar 2027, when kale is out of season."));
  }

  /**
   * 103.4 and 217 lb in two digits; (900 - 300 - 57) × 12 = 6516 gal in two digits; the lot 80 by
   * 75 ft.
   */
  @Test
  void cover_hasTheFiguresOfTheYard() {
    work("2027-03-01");
    List<List<String>> figures = rows(sheet(outcome(), "cover"), "key-figures");
    for (List<String> row :
        List.of(
            List.of("Lot", "6,000 sq ft"),
            List.of("1 bed", "300 sq ft"),
            List.of("Harvest a year, grown", "100 to 220 lb"),
            List.of("Tap water saved a year", "about 6,500 gal"),
            List.of("Work begins", "1 Mar 2027"),
            List.of("Work ends", "8 Mar 2027"))) {
      assertTrue(figures.contains(row), row + " in " + figures);
    }
  }

  @Test
  void newTrees_areCountedOnTheCover_oldOnesNot() {
    kit.tree("old", 60, 60, 9);
    kit.tree("young", 50, 50, 1);
    kit.tree("sapling", 40, 50, 1);
    assertTrue(rows(sheet(outcome(), "cover"), "key-figures").contains(List.of("New trees", "2")));
  }

  private List<String> inShort() {
    return sheet(outcome(), "client").panels().stream()
        .filter(p -> p instanceof Panel.Notes n && n.title().equals("In short"))
        .flatMap(p -> ((Panel.Notes) p).paragraphs().stream())
        .map(p -> p.replace('\u00a0', ' '))
        .toList();
  }

  /** 300 sq ft at 2 in of chips and 3 in of compost: 600 / 324 and 900 / 324 cu yd. */
  @Test
  void client_isToldWhatWhenAndWhatItBrings() {
    work("2027-03-01");
    List<String> lines = inShort();
    assertEquals(
        "Cardboard, compost and wood chips over 300 sq ft of ground: 1.9 cu yd of chips and 2.8 cu"
            + " yd of compost in place.",
        lines.get(0));
    assertEquals("Work from 1 Mar 2027 to 8 Mar 2027.", lines.get(1));
    assertEquals("Then again, to plant what was not in season: 10 May 2027.", lines.get(2));
    assertTrue(lines.get(3).startsWith("Chips settle: add "), lines::toString);
    assertEquals(
        "Once grown it takes about 6,500 gal less from the tap in an average year than the watered"
            + " lawn did.",
        lines.get(4));
    assertEquals("Grown, it may bring 100 to 220 lb of food a year, or more.", lines.get(5));
    List<List<String>> days = rows(sheet(outcome(), "client"), "client-phases");
    assertEquals(List.of("Plant", "2027-03-05", "2027-03-08", "2"), days.get(6));
  }

  /** Without a first day the work counts: 6 working days to the end of the mulch. */
  @Test
  void clientWithoutADate_isToldWorkingDays() {
    work(null);
    tomatoes = 1;
    List<String> lines = inShort();
    assertEquals("Work takes 6 working days; no date is set.", lines.get(1));
    List<List<String>> days = rows(sheet(outcome(), "client"), "client-phases");
    assertEquals(List.of("Mow low", "4", "1"), days.get(1));
  }

  /**
   * Compost alone has a price; what has none is named. Invented prices are not said to a client.
   */
  @Test
  void clientIsToldCost_ofRealPricesOnly() {
    work("2027-03-01");
    PriceWords.price(kit.words(), "compost", Money.amount(40), null, null, "yd3");
    String cost =
        inShort().stream().filter(l -> l.startsWith("It may cost")).findFirst().orElseThrow();
    // Ordered as 3.5 cu yd at 40: 140, and by depth and settling from 10 % less to 15 % more, by
    // measure 3 % more or less.
    Matcher said =
        Pattern.compile("cost USD(\\d+) to USD(\\d+), in the middle USD(\\d+),").matcher(cost);
    assertTrue(said.find(), cost);
    assertTrue(Integer.parseInt(said.group(1)) >= 122 && Integer.parseInt(said.group(1)) < 140);
    assertEquals(140, Integer.parseInt(said.group(3)), 5);
    assertTrue(Integer.parseInt(said.group(2)) > 145 && Integer.parseInt(said.group(2)) <= 166);
    assertTrue(
        cost.contains(", and more for cardboard, sheets, wood-chip mulch, which have no price"),
        cost);
    assertTrue(cost.endsWith(", without taxes, permits, disposal and hired machines."), cost);
    PlanKit invented = yard();
    PriceWords.demonstrationPrices(invented.words());
    List<YardPlugin> all = PlanKit.plugins();
    Outcome outcome = new Study(PluginLoader.of(all)).of(invented.plan());
    assertFalse(
        sheet(outcome, "client").panels().toString().contains("It may cost"), "invented prices");
    // All likely and the eight that swing the total most.
    assertEquals(
        9,
        PlanKit.table("materials-cost-drivers", outcome.plan(), outcome.results()).rows().size());
  }

  /** 140 less 10 % or more 15 % by depth and settling, 3 % either way by measure (recalled). */
  @Test
  void costOfBulk_swingsWithDepthAndMeasure() {
    PriceWords.price(kit.words(), "compost", Money.amount(40), null, null, "yd3");
    List<String> drivers = printed("materials-cost-drivers");
    assertTrue(
        drivers.contains("all mulched ground | depth and settling | 126 | 161 | 35"),
        drivers::toString);
    assertTrue(
        drivers.stream().anyMatch(d -> d.endsWith("tape error | 136 | 144 | 8")),
        drivers::toString);
  }

  @Test
  void crew_isToldItsVisitsAndWhenToOrder() {
    work("2027-03-01");
    SheetPlan crew = sheet(outcome(), "crew");
    List<List<String>> steps = rows(crew, "crew-steps");
    assertTrue(steps.contains(List.of("[  ]", "Now: kale.")), steps::toString);
    assertTrue(
        steps.contains(List.of("[  ]", "Come again on 10 May 2027, 20 h: tomato.")),
        steps::toString);
    assertTrue(
        steps.contains(List.of("[  ]", "Come on 12, 19 Mar, 17 May 2027.")), steps::toString);
    assertTrue(
        steps.get(0).get(0).equals("1. Mark utilities: 1 Mar to 3 Mar 2027, 0.5 h"),
        steps::toString);
    assertEquals(
        List.of(
            List.of("Cardboard and its cover", "", "", ""),
            List.of("a", "36", "3 in compost", "2.78 cu yd"),
            List.of("Finish mulch", "", "", ""),
            List.of("a", "", "2 in chips", "1.85 cu yd")),
        rows(crew, "crew-layers"));
    // Two weeks before the fourth of March; thirty days before the eighth is a Saturday, so the
    // Friday before it.
    List<List<String>> needs = rows(crew, "crew-needs");
    assertTrue(
        needs.contains(List.of("[  ] compost", "3.50 cu yd", "2027-02-18")), needs::toString);
    assertTrue(
        needs.contains(List.of("[  ] wood-chip mulch", "2.50 cu yd", "2027-02-05")),
        needs::toString);
  }

  private List<String> steps(String heading) {
    List<String> own = new ArrayList<>();
    boolean in = false;
    for (List<String> row : rows(sheet(outcome(), "crew"), "crew-steps")) {
      boolean head = row.get(0).matches("\\d+\\. .*");
      in = head ? row.get(0).contains(". " + heading + ": ") : in;
      if (in && !head) {
        own.add(row.get(1));
      }
    }
    return own;
  }

  /** What is planted in a phase stands with it alone, not with the planting that follows. */
  @Test
  void kindsOfTrees_standWithTheirOwnPhase() {
    work("2027-03-01");
    other =
        new PlantingWindow(
            "pear",
            WorkPhase.TREES,
            List.of(
                new PlantingWindow.Period("bare root", given(day("02-10")), given(day("04-10")))));
    jobs.add(
        new Job(
            WorkTask.PLANT_TREE,
            WorkPhase.TREES,
            given(2),
            Optional.empty(),
            Optional.empty(),
            Optional.of("pear")));
    assertTrue(
        steps("Plant trees and shrubs").contains("Now: pear."), () -> steps("Plant").toString());
    assertFalse(steps("Plant").toString().contains("pear"));
    assertTrue(steps("Plant").contains("Now: kale."));
  }

  /** Two kinds in season, one that is not: the one name is said. */
  @Test
  void firstDay_namesTheFewerKinds() {
    work("2027-03-01");
    assertTrue(steps("Plant").contains("Now: kale."), () -> steps("Plant").toString());
    more.add(window("sage", "03-05", "04-25", "pot"));
    assertTrue(steps("Plant").contains("Now all but tomato."), () -> steps("Plant").toString());
  }

  /** A mower needs free ground: it comes before stakes, strings and paint. */
  @Test
  void grassIsMown_beforeAnythingIsStaked() {
    work("2027-03-01");
    List<String> days = printed("materials-phases");
    assertTrue(days.get(1).startsWith("Mow low | 4 | 1 | "), days::toString);
    assertTrue(days.get(2).startsWith("Stake out | 4 | 1 | "), days::toString);
    assertTrue(days.get(2).endsWith("Mark utilities, Mow low | 0.1"), days::toString);
  }

  /**
   * Six posts at 0.75 h, 12 bags at 0.15 h and 40 ft of boards at 0.19 h: 4.5 + 1.8 + 7.6 = 13.9 h,
   * from 0.7 h three days of five hours begun and two in which the concrete sets; in earth alone
   * 12.1 h, three days.
   */
  @ParameterizedTest
  @CsvSource({"true, 5, 13.9", "false, 3, 12.1"})
  void concreteRoundPosts_setsTwoDaysBeforeBoardsAreHung(boolean concrete, int days, String hours) {
    work("2027-03-01");
    jobs.add(new Job(WorkTask.SET_POSTS, WorkPhase.BUILD, given(6)));
    jobs.add(new Job(WorkTask.HANG_FENCE, WorkPhase.BUILD, given(Length.feet(40))));
    if (concrete) {
      jobs.add(new Job(WorkTask.MIX_CONCRETE, WorkPhase.BUILD, given(12)));
    }
    List<String> phases = printed("materials-phases");
    assertTrue(
        phases.stream().anyMatch(p -> p.startsWith("Build | 4 | " + days + " | " + hours + " | ")),
        phases::toString);
    String told = steps("Build").toString();
    assertEquals(concrete, told.contains("hang nothing on them for two days"), told);
    assertEquals(concrete, told.contains("tub or mixer"), told);
  }

  /** Without dripline nobody spreads chips over one. */
  @Test
  void stepsNameOnlyWhatIsThere() {
    work("2027-03-01");
    assertFalse(steps("Finish mulch").toString().contains("dripline"));
    jobs.add(new Job(WorkTask.LAY_DRIPLINE, WorkPhase.DRIP, given(Length.feet(30))));
    assertTrue(steps("Finish mulch").toString().contains("over the dripline"));
    assertTrue(steps("Establish").toString().contains("See that the cover lies closed"));
    jobs.add(new Job(WorkTask.WATER_IN, WorkPhase.PLANT, given(30)));
    assertTrue(steps("Establish").toString().contains("the table of the first weeks"));
  }

  /** Whole sentences: the dry months begin one of their own. */
  @Test
  void whatTheVisitsAreFor_isASentence() {
    work("2027-03-01");
    stands.add(stand("kale"));
    julyAndAugustIn = 1.9;
    List<String> told = steps("Establish");
    assertEquals(
        "Bring rain gauge, weeding knife, a note of dates. For the first weeks after planting, then"
            + " dry months.",
        told.get(0));
    assertTrue(
        printed("materials-phases").stream()
            .anyMatch(p -> p.endsWith(" | first weeks after planting, then dry months | 0.0")),
        () -> printed("materials-phases").toString());
  }

  @Test
  void crewWithoutADate_countsWorkingDays() {
    work(null);
    SheetPlan crew = sheet(outcome(), "crew");
    assertTrue(
        rows(crew, "crew-steps")
            .get(0)
            .get(0)
            .equals("1. Mark utilities: working days 1 to 3, 0.5 h"));
    assertTrue(
        rows(crew, "crew-needs")
            .contains(List.of("[  ] wood-chip mulch", "2.50 cu yd", "30 days ahead")));
  }

  private void refused(ProblemCode code, Object crew, Object hours, Object slope, Object visits) {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                WorkWords.work(
                    PlanKit.us().words(),
                    (Number) crew,
                    (Number) hours,
                    (Number) slope,
                    null,
                    null,
                    null,
                    (Number) visits));
    assertEquals(code, e.problems().get(0).code());
  }

  @Test
  void workWords_haveTheirRanges() {
    refused(ProblemCode.OUT_OF_RANGE, 0, 6, 0, 0);
    refused(ProblemCode.OUT_OF_RANGE, 51, 6, 0, 0);
    refused(ProblemCode.OUT_OF_RANGE, 1.5, 6, 0, 0);
    refused(ProblemCode.OUT_OF_RANGE, 2, 0, 0, 0);
    refused(ProblemCode.OUT_OF_RANGE, 2, 14.1, 0, 0);
    refused(ProblemCode.OUT_OF_RANGE, 2, 6, 0.51, 0);
    refused(ProblemCode.OUT_OF_RANGE, 2, 6, -0.51, 0);
    refused(ProblemCode.OUT_OF_RANGE, 2, 6, 0, -1);
    refused(ProblemCode.OUT_OF_RANGE, 2, 6, 0, 367);
    refused(ProblemCode.OUT_OF_RANGE, 2, 6, 0, 1.5);
    WorkWords.work(PlanKit.us().words(), 50, 14, 0.5, null, null, null, 366);
    WorkWords.work(PlanKit.us().words(), 1, 0.1, -0.5, null, null, null, 0);
    work("2027-03-01");
    assertEquals(
        ProblemCode.DUPLICATE,
        assertThrows(PlanException.class, () -> work("2027-03-01")).problems().get(0).code());
    assertEquals(
        ProblemCode.WRONG_TYPE,
        assertThrows(
                PlanException.class,
                () -> WorkWords.work(PlanKit.us().words(), 1, 5, null, "1 March", null, null, null))
            .problems()
            .get(0)
            .code());
  }

  /** Friday the 5th and the 9th of each March are off: planting moves to Monday the 8th. */
  @Test
  void daysOff_moveTheWork() {
    work("2027-03-01");
    WorkWords.daysOff(kit.words(), List.of("2027-03-05", "03-09"));
    assertTrue(printed("planting-visits").get(0).startsWith("1 | 8 Mar 2027 |"));
    Outcome outcome = outcome();
    assertTrue(
        PlanKit.table("materials-phases", outcome.plan(), outcome.results())
            .notes()
            .contains("Nobody works on the 2 days off that are named."));
    for (List<?> bad : List.of(List.of("13-01"), List.of("2027-02-30"), List.of(""), List.of())) {
      assertThrows(PlanException.class, () -> WorkWords.daysOff(kit.words(), bad));
    }
    List<String> sixty = new ArrayList<>();
    for (int d = 1; d <= 58; d++) {
      sixty.add(String.format("20%02d-07-04", d + 10));
    }
    WorkWords.daysOff(kit.words(), sixty);
    assertThrows(PlanException.class, () -> WorkWords.daysOff(kit.words(), List.of("12-25")));
  }

  private static Stand stand(String plant) {
    return new Stand(
        new ElementId(ElementKind.BED, "a"),
        SourceRef.NONE,
        new Stand.Kind(plant, "", Length.inches(12)),
        new Stand.Placed(List.of(Point.metres(1, 1)), Area.squareFeet(40), Optional.empty()),
        new Stand.Thirst(Collections.nCopies(12, 0.8), Source.plan("test"), Optional.empty()),
        Stand.Planted.THROUGH_CARDBOARD);
  }

  /**
   * Cardboard of 4 March lies six months on 4 September, a Saturday (Oregon State University
   * Extension, 2009): what is planted in the annual bed a day before is told. Kale, planted in
   * March, stands elsewhere.
   */
  @ParameterizedTest
  @CsvSource({"09-03, true", "09-04, false"})
  void cardboardThatLayLessThanSixMonths_isTold(String from, boolean told) {
    work("2027-03-01");
    stands.add(stand("tomato"));
    other = window("tomato", from, "10-15", "pot");
    List<String> found = found("work.resting-time");
    assertEquals(
        told
            ? List.of(
                "Annual beds are planted on 3 Sep 2027, less than six months after the cardboard is"
                    + " laid (4 Mar 2027).")
            : List.of(),
        found);
  }

  /** What stands already is no planting: without a kind in the bed the phase counts, 5 March. */
  @Test
  void cardboardRests_byThePhaseWhereNoKindIsKnown() {
    work("2027-03-01");
    assertEquals(
        List.of(
            "Annual beds are planted on 5 Mar 2027, less than six months after the cardboard is"
                + " laid (4 Mar 2027)."),
        found("work.resting-time"));
  }

  /** Plants are ordered a week before their own visit, 10 May, other things before their phase. */
  @Test
  void plants_areOrderedForTheirVisit() {
    work("2027-03-01");
    bill.add(
        new BillLine(
            BillGroup.PLANTS,
            WorkPhase.PLANT,
            "tomato, pot 4 in",
            Optional.empty(),
            Optional.of("tomato"),
            given(250),
            given(260),
            "spares"));
    bill.add(
        new BillLine(
            BillGroup.PLANTS,
            WorkPhase.PLANT,
            "labels",
            Optional.empty(),
            Optional.empty(),
            given(20),
            given(20),
            ""));
    List<String> orders = printed("materials-orders-by-phase");
    assertTrue(
        orders.contains("Plant | tomato, pot 4 in | 260 | 7 | 3 May 2027"), orders::toString);
    assertTrue(orders.contains("Plant | labels | 20 | 7 | 26 Feb 2027"), orders::toString);
  }

  /** A part of a task with its own pace: two posts at 0.5, 1.5 or 2 h each. */
  @Test
  void jobWithItsOwnPace_takesIt() {
    jobs.add(
        new Job(
            WorkTask.PLANT_TREE,
            WorkPhase.TREES,
            given(2),
            Optional.empty(),
            Optional.of(
                new Job.Pace(
                    "pot 15 gal", new Spread(0.5, 1.5, 2, "pace of work", Source.plan("test"))))));
    List<String> labour = printed("materials-labour");
    assertTrue(
        labour.stream()
            .anyMatch(r -> r.contains("pot 15 gal") && r.endsWith(" | 2 | 1.0 | 3.0 | 4.0")),
        labour::toString);
  }

  /** Steps of a trade are printed where its work is on the plan: edges are, trenches are not. */
  @Test
  void steps_areThoseOfTheWorkOfThePlan() {
    work("2027-03-01");
    String steps = rows(sheet(outcome(), "crew"), "crew-steps").toString();
    assertTrue(steps.contains("Spade the edges 4 in deep"), steps);
    assertFalse(steps.contains("Dig trenches"), steps);
    assertTrue(steps.contains("Bring flat spade"), steps);
  }

  /** Beds of one stack and size share a row of the crew's layers; one of another size does not. */
  @Test
  void bedsAlike_shareARow() {
    kit.bed("b", Element.BedUse.ANNUAL, PlanKit.box(0, 20, 30, 10));
    kit.bed("c", Element.BedUse.ANNUAL, PlanKit.box(0, 40, 30, 5));
    List<List<String>> layers = rows(sheet(outcome(), "crew"), "crew-layers");
    assertTrue(
        layers.contains(List.of("a, b, each", "36", "3 in compost", "2.78 cu yd")),
        layers::toString);
    assertTrue(
        layers.stream().anyMatch(r -> r.get(0).equals("c") && r.get(3).equals("1.39 cu yd")),
        layers::toString);
  }
}
