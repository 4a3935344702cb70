package yardloom.work.own;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Standing;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.work.labour.WorkWords;

/**
 * Items and tasks of a plan's own from word to bill, hours, phases and cost, worked by hand: three
 * benches at 150, 180 or 220 and half an hour each; 40 ft of edging at 2.50 and 0.05 h a foot; the
 * shed carried out twice, 6 h each; four lamps at 35 and a quarter of an hour; 2.5 cu yd of sand at
 * 44.
 */
class OwnByHandTest {
  private final PlanKit kit = PlanKit.us();

  private Plan yard() {
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 30, 10));
    kit.path("p", PlanKit.box(0, 10, 30, 4));
    kit.tree("oak", 50, 50, 9);
    kit.tree("young", 70, 50, 1);
    WorkWords.work(kit.words(), 3, 7, null, "2026-09-14", null, null, 12);
    OwnWords.item(
        kit.words(),
        "bench",
        "finish",
        3,
        null,
        null,
        money(180),
        money(150),
        money(220),
        0.5,
        "a",
        null);
    OwnWords.item(
        kit.words(),
        "edging",
        "earth",
        null,
        Length.feet(40),
        "ft",
        money(2.5),
        null,
        null,
        0.05,
        null,
        Source.plan("quote"));
    OwnWords.task(kit.words(), "carry the shed out", "earth", 6, 2, null, null, "p", null);
    OwnWords.itemBook(
        kit.words(),
        "item,count,unit,price,hours,phase\nlamp,4,piece,35,0.25,head\nsand,2.5,yd3,44,,finish",
        null);
    OwnWords.item(
        kit.words(), "sign", "finish", 1, null, null, null, null, null, null, "nowhere", null);
    return kit.plan();
  }

  private static Money money(double amount) {
    return Money.amount(amount);
  }

  private static List<String> printed(String id, Plan plan, Results r) {
    return PlanKit.printed(id, plan, r).stream()
        .map(s -> s.replace('\u00a0', ' ').strip())
        .toList();
  }

  private static void assertHas(List<String> rows, String... expected) {
    for (String row : expected) {
      assertTrue(rows.contains(row), row + " in " + rows);
    }
  }

  @Test
  void ownItems_areListedWithWhatHoursAreFor() {
    Plan plan = yard();
    assertEquals(
        List.of(
            "bench | Finish mulch | 3 | piece | 0.5 | item of the plan (given in the plan)",
            "edging | Earthwork | 40.0 ft | ft | 0.1 | quote (given in the plan)",
            "carry the shed out | Earthwork | 2 | piece | 6.0 | task of the plan (given in the plan)",
            "lamp | Head assembly | 4 | piece | 0.3 | item book (given in the plan)",
            "sand | Finish mulch | 2.50 cu yd | cu yd |  | item book (given in the plan)",
            "sign | Finish mulch | 1 | piece |  | item of the plan (given in the plan)"),
        printed("work-own-items", plan, PlanKit.run(plan)));
  }

  /**
   * 2 × 6 h, 40 × 0.05 h, 4 × 0.25 h and 3 × 0.5 h; sand and sign take none. Beside them 420 sq ft
   * are mown at 0.0002, 0.0004 or 0.001 h a square foot and 88 ft of edge cut at 0.015, 0.03 or
   * 0.06 (both recalled).
   */
  @Test
  void hours_followThem() {
    Plan plan = yard();
    List<String> labour = printed("materials-labour", plan, PlanKit.run(plan));
    assertHas(
        labour,
        "carry the shed out | Earthwork | 2 | 12.0 | 12.0 | 12.0",
        "install edging | Earthwork | 40.0 ft | 2.0 | 2.0 | 2.0",
        "mow low | Mow low | 420 sq ft | 0.1 | 0.2 | 0.4",
        "cut edge | Edges and trench | 88.0 ft | 1.3 | 2.6 | 5.3",
        "install lamp | Head assembly | 4 | 1.0 | 1.0 | 1.0",
        "install bench | Finish mulch | 3 | 1.5 | 1.5 | 1.5");
    assertTrue(labour.stream().noneMatch(r -> r.contains("sand") || r.contains("sign")));
  }

  /**
   * Monday 14 September: three days of waiting for the marks; on Thursday the 17th 0.2 + 0.8 h of
   * three people, then 14 h of earthwork, 4.7 of its 7, its edging ordered a week before, the
   * edges' 2.6 h, and at 5.9 the head. Nothing is planted: visits follow Monday the 21st, when the
   * work is done, by one, two, four and six weeks, then weekly for eight from 9 November to 28
   * December, working days 11 to 76.
   */
  @Test
  void phasesAndOrders_followThem() {
    Plan plan = yard();
    Results r = PlanKit.run(plan);
    assertHas(
        printed("materials-phases", plan, r),
        "Earthwork | 4 | 1 | 14.0 | 17 Sep 2026 | 17 Sep 2026 | Stake out, Mow low | 0.3",
        "Head assembly | 4 | 1 | 1.0 | 17 Sep 2026 | 17 Sep 2026 | Edges and trench | 5.9",
        "Establish | 11 | 66 | 12.0 | 28 Sep 2026 | 28 Dec 2026 | Finish mulch | 0.0");
    assertHas(
        printed("materials-orders-by-phase", plan, r),
        "Earthwork | edging | 40.0 ft | 7 | 10 Sep 2026",
        "Head assembly | lamp | 4 | 7 | 10 Sep 2026",
        "Finish mulch | bench, Bed a | 3 | 7 | 11 Sep 2026",
        "Finish mulch | sand | 2.50 cu yd | 7 | 11 Sep 2026");
    assertTrue(
        PlanKit.table("materials-phases", plan, r)
            .notes()
            .contains("No frost days are given: planting waits for none."));
  }

  /** 540 + 100 + 140 + 110 = 890; with benches at 150, 90 less, at 220, 120 more. */
  @Test
  void cost_followsThem() {
    Plan plan = yard();
    Results r = PlanKit.run(plan);
    List<String> likely =
        printed("materials-cost", plan, r).stream()
            .map(row -> String.join(" ", List.of(row.split(" \\| ")).subList(0, 2)))
            .toList();
    assertEquals(List.of("bench 540", "edging 100", "lamp 140", "sand 110", "total 890"), likely);
    assertEquals(
        List.of("everything likely |  | 890 | 890 | 0", "bench | price | 800 | 1,010 | 210"),
        printed("materials-cost-drivers", plan, r));
    String missing = found(plan, r, "work.price-missing").get(0).text();
    assertTrue(missing.contains("compost, sign, wood-chip mulch"), missing);
    List<BillLine> bill = r.all(YardFacts.BILL);
    assertEquals(
        Optional.of("a"),
        bill.stream()
            .filter(b -> b.item().equals("bench"))
            .findFirst()
            .flatMap(BillLine::element)
            .map(ElementId::name));
  }

  private static List<Finding> found(Plan plan, Results r, String rule) {
    return PlanKit.findings(plan, r).stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** A shed is put up; a pit without height is earthwork, and no finding asks for it. */
  @Test
  void whatIsDrawn_saysWhereItIsCounted() {
    for (String name : List.of("shed", "pit")) {
      Length height = name.equals("pit") ? Length.ZERO : Length.feet(8);
      kit.draft
          .add(
              new ElementId(ElementKind.STRUCTURE, name),
              kit.next(),
              c -> new Element.Structure(c, PlanKit.box(90, 0, 5, 5), height))
          .attributes()
          .add(Standing.KEY, false, SourceRef.NONE);
    }
    Plan plan = yard();
    Results r = PlanKit.run(plan);
    assertHas(
        printed("work-elements", plan, r),
        "Shed | structure | shed | put up what is built | Build |",
        "Pit | structure |  |  |  | not counted: give it as an item of its own",
        "Oak | tree |  |  |  | is there already",
        "Young | tree |  |  |  | not counted: give it as an item of its own",
        "Path p | path | cardboard, wood-chip mulch | carry the shed out, lay cardboard, load and"
            + " spread mulch | Earthwork, Cardboard and its cover |",
        "Bed a | bed | bench, cardboard, compost, wood-chip mulch | install bench, lay cardboard,"
            + " load and spread mulch | Cardboard and its cover, Finish mulch |");
    List<Finding> uncounted = found(plan, r, "work.uncounted");
    assertEquals(
        List.of("young", ""),
        uncounted.stream().map(f -> f.element().map(ElementId::name).orElse("")).toList());
    Finding tree =
        uncounted.stream().filter(f -> f.toString().contains("young")).findFirst().orElseThrow();
    assertTrue(tree.advice().startsWith("name its `species`"), tree.advice());
    Finding nowhere =
        uncounted.stream().filter(f -> f.element().isEmpty()).findFirst().orElseThrow();
    assertTrue(
        nowhere.text().startsWith("'sign' is for 'nowhere', and nothing on the plan is called so."),
        nowhere.text());
  }

  private static void refused(ProblemCode code, String part, Executable word) {
    PlanException e = assertThrows(PlanException.class, word);
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  private void count(Number count, String per) {
    OwnWords.item(
        kit.words(), "x" + count, "finish", count, null, per, null, null, null, null, null, null);
  }

  private void amount(Length amount, String per) {
    OwnWords.item(
        kit.words(), "y" + amount, "finish", null, amount, per, null, null, null, null, null, null);
  }

  @Test
  void wordsRefuse_whatCannotBeCounted() {
    String whole = "a count is a whole number from 1 to 1000000";
    refused(ProblemCode.OUT_OF_RANGE, whole, () -> count(0, null));
    refused(ProblemCode.OUT_OF_RANGE, whole, () -> count(1.5, null));
    refused(ProblemCode.OUT_OF_RANGE, whole, () -> count(1_000_001, null));
    count(1_000_000, "piece");
    refused(ProblemCode.WRONG_TYPE, "give `amount:` with `per: 'ft'`", () -> count(2, "ft"));
    refused(
        ProblemCode.MISSING_OPTION, "`per:` names the unit", () -> amount(Length.feet(2), null));
    refused(ProblemCode.MISSING_OPTION, "; got 'yd3'", () -> amount(Length.feet(2), "yd3"));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "an amount is more than nothing",
        () -> amount(Length.ZERO, "ft"));
    refused(
        ProblemCode.DUPLICATE,
        "has a count or an amount, not both",
        () ->
            OwnWords.item(
                kit.words(),
                "z",
                "finish",
                1,
                Length.feet(1),
                "ft",
                null,
                null,
                null,
                null,
                null,
                null));
    refused(
        ProblemCode.MISSING_OPTION,
        "goes a likely `price:`",
        () ->
            OwnWords.item(
                kit.words(),
                "low",
                "finish",
                1,
                null,
                null,
                null,
                money(1),
                null,
                null,
                null,
                null));
    refused(
        ProblemCode.MISSING_OPTION,
        "goes a likely `price:`",
        () ->
            OwnWords.item(
                kit.words(),
                "high",
                "finish",
                1,
                null,
                null,
                null,
                null,
                money(1),
                null,
                null,
                null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "an item needs a name",
        () ->
            OwnWords.item(
                kit.words(), " ", "finish", 1, null, null, null, null, null, null, null, null));
  }

  @ParameterizedTest
  @CsvSource({
    "-0.1, hours for one unit are 0 to 10000",
    "10001, hours for one unit are 0 to 10000",
    "0, a task takes more than 0 hours"
  })
  void tasksRefuse_hoursOutOfRange(double hours, String part) {
    refused(
        ProblemCode.OUT_OF_RANGE,
        part,
        () -> OwnWords.task(kit.words(), "t", "finish", hours, null, null, null, null, null));
    OwnWords.task(kit.words(), "t", "finish", 10_000, null, null, null, null, null);
  }

  @Test
  void oneName_isGivenOnce() {
    OwnWords.task(kit.words(), "t", "finish", 1, null, null, null, null, null);
    refused(
        ProblemCode.DUPLICATE,
        "\"t\" is already given at test.groovy:1:1",
        () -> OwnWords.task(kit.words(), "t", "earth", 2, null, null, null, null, null));
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "lamp,1.5,piece,1,1,head | OUT_OF_RANGE | a count is a whole number",
        "lamp,0,yd3,1,1,head | OUT_OF_RANGE | an amount is more than nothing",
        "lamp,1,furlong,1,1,head | UNKNOWN_WORD | 'furlong' is not a unit; write piece or one of",
        "lamp,1,piece,1,-1,head | OUT_OF_RANGE | hours for one unit are 0 to 10000",
        "lamp,1,piece,1,1,heads | UNKNOWN_WORD | head",
        ",1,piece,1,1,head | OUT_OF_RANGE | an item needs a name"
      })
  void booksRefuse_atTheirCell(String row, ProblemCode code, String part) {
    refused(
        code,
        part,
        () ->
            OwnWords.itemBook(
                kit.words(), "item,count,unit,price,hours,phase\n" + row, "items.csv"));
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                OwnWords.itemBook(
                    kit.words(), "item,count,unit,price,hours,phase\n" + row, "items.csv"));
    assertTrue(e.getMessage().contains("items.csv:2:"), e.getMessage());
  }

  /** A unit that a row leaves empty is the piece. */
  @Test
  void unitLeftEmpty_isThePiece() {
    OwnWords.itemBook(
        kit.words(), "item,count,unit,price,hours,phase\nlamp,4,,,,head", "items.csv");
    Plan plan = kit.plan();
    assertEquals(
        List.of("lamp | Head assembly | 4 | piece |  | items.csv (given in the plan)"),
        printed("work-own-items", plan, PlanKit.run(plan)));
  }

  private static Element element(ElementKind kind, boolean stands) {
    PlanKit kit = PlanKit.us();
    Line line = Line.between(Point.metres(0, 0), Point.metres(1, 0));
    var draft =
        kit.draft.add(
            new ElementId(kind, "e"),
            SourceRef.NONE,
            c ->
                kind == ElementKind.MULCHED_GROUND
                    ? new Element.MulchedGround(c, PlanKit.box(0, 0, 1, 1))
                    : kind == ElementKind.FENCE
                        ? new Element.Fence(c, line, PlanKit.box(0, 0, 1, 1), Length.feet(4), 0.5)
                        : new Element.Structure(c, PlanKit.box(0, 0, 1, 1), Length.feet(4)));
    draft.attributes().add(Standing.KEY, stands, SourceRef.NONE);
    return kit.plan().elements().get(0);
  }

  @Test
  void whyNothingIsCounted_dependsOnWhatItIs() {
    assertEquals(
        "all of it lies under something else",
        ElementTable.why(element(ElementKind.MULCHED_GROUND, false)));
    assertEquals("is there already", ElementTable.why(element(ElementKind.MULCHED_GROUND, true)));
    assertEquals("is there already", ElementTable.why(element(ElementKind.FENCE, true)));
    assertEquals(
        "not counted: give it as an item of its own",
        ElementTable.why(element(ElementKind.FENCE, false)));
  }
}
