package yardloom.work.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;
import yardloom.work.labour.LabourData;

/** By which names and units prices find what they are for. */
class PriceNamesTest {
  private static final Source BY = Source.plan("test");

  private static Price price(String item, String unit, double likely) {
    return new Price(item, unit, Price.spread(likely, likely, likely, BY, SourceRef.NONE), false);
  }

  private static PriceBook book(Price... prices) {
    return PriceBook.of(PlanKit.us().plan(), Optional.empty()).with(List.of(prices));
  }

  private static Optional<Double> of(Optional<Price> price) {
    return price.map(p -> p.perUnit().likely());
  }

  /** Item, then the stem before its comma, then its group; of each the one whose unit measures. */
  @Test
  void price_isThatOfTheNearestName() {
    PriceBook book =
        book(
            price("thyme, plug", "piece", 3),
            price("thyme", "piece", 4),
            price("thyme", "ft", 5),
            price("any plants", "piece", 6));
    assertEquals(Optional.of(3.0), of(book.find("thyme, plug", "plants", 9)));
    assertEquals(Optional.of(4.0), of(book.find("thyme, pot", "plants", 9)));
    assertEquals(Optional.of(5.0), of(book.find("thyme, seed", "plants", Length.feet(9))));
    assertEquals(Optional.of(6.0), of(book.find("sage, pot", "plants", 9)));
    assertEquals(Optional.empty(), of(book.find("sage", "plants", Volume.cubicYards(1))));
    assertEquals(Optional.empty(), of(book.find("sage", "irrigation", 9)));
  }

  private static BillLine line(String item, BillLine.Stock stock) {
    return new BillLine(
        BillGroup.PLANTS,
        WorkPhase.PLANT,
        item,
        Optional.empty(),
        Optional.of("sage"),
        Derived.given(7, "count", SourceRef.NONE),
        Derived.given(8, "count", SourceRef.NONE),
        "spares",
        Optional.of(stock),
        Optional.empty());
  }

  /** As a plant by the form it is bought in: what the plan says with the form goes first. */
  @Test
  void plant_isPricedByItsForm() {
    BillLine.Stock pot = new BillLine.Stock(List.of("pot 1 gal", "pot 4 l"), Optional.empty());
    BillLine.Stock own =
        new BillLine.Stock(
            List.of("tray", "tray"), Optional.of(new Spread(2, 2.5, 3, "price", BY)));
    PriceBook book = book(price("pot 4 l", "piece", 8), price("any plants", "piece", 6));
    assertEquals(Optional.of(8.0), of(book.find(line("sage", pot))));
    assertEquals(Optional.of(2.5), of(book.find(line("sage", own))));
    assertEquals(
        Optional.of(1.0),
        of(book.with(List.of(price("sage", "piece", 1))).find(line("sage, pot", own))));
    BillLine.Stock none = new BillLine.Stock(List.of("crown"), Optional.empty());
    assertEquals(Optional.of(6.0), of(book.find(line("sage", none))));
  }

  private static List<Finding> found(PlanKit kit) {
    Plan plan = kit.plan();
    return PlanKit.findings(plan, PlanKit.run(plan)).stream()
        .filter(f -> f.rule().equals("work.price-names"))
        .toList();
  }

  private static PlanKit yard() {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 30, 10));
    return kit;
  }

  /** Mulch is ordered by volume: a price for the piece or the square foot is not used. */
  @Test
  void priceInAnotherUnit_isWarnedOf() {
    PlanKit kit = yard();
    PriceWords.price(kit.words(), "wood-chip mulch", Money.amount(9), null, null, "piece");
    Finding found = found(kit).get(0);
    assertEquals(Severity.WARNING, found.severity());
    assertTrue(found.text().startsWith("'wood-chip mulch' is ordered by a volume ("), found.text());
    assertTrue(found.text().endsWith(", its price is per piece: not used"), found.text());
    PlanKit sheets = yard();
    PriceWords.price(sheets.words(), "cardboard, sheets", Money.amount(9), null, null, "ft");
    assertTrue(
        found(sheets)
            .get(0)
            .text()
            .contains("is ordered by the piece, its price is per ft: not used"));
    // One of two that measures is enough.
    PriceWords.price(kit.words(), "wood-chip mulch", Money.amount(9), null, null, "m3");
    assertTrue(found(kit).isEmpty(), found(kit)::toString);
  }

  /** A word in common is told, a general name is not, what is in the shipped book is idle only. */
  @Test
  void priceForNothing_isToldWithWhatIsNear() {
    PlanKit kit = yard();
    PriceWords.price(kit.words(), "chips of wood mulch", Money.amount(9), null, null, "yd3");
    PriceWords.price(kit.words(), "any plants", Money.amount(9), null, null, "piece");
    PriceWords.price(kit.words(), "delivery of bulk", Money.amount(9), null, null, "piece");
    PriceWords.price(kit.words(), "zzz", Money.amount(9), null, null, "piece");
    List<Finding> found = found(kit);
    assertEquals(2, found.size(), found::toString);
    assertTrue(
        found.get(0).text().contains("There is '") && found.get(0).text().contains("wood-chip"),
        found.get(0).text());
    assertEquals(Severity.NOTE, found.get(1).severity());
    assertEquals("nothing on this bill is called 'zzz': not used", found.get(1).text());
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | SYNTAX | columns are high, item, likely",
        "x,furlong,1,1,1 | UNKNOWN_WORD | 'furlong' is not a unit",
        "x,piece,1,1,1e10 | OUT_OF_RANGE | from 0 to a thousand million",
        "x,piece,1,1,1;x,piece,2,2,2 | DUPLICATE | x per piece already has a price in line 2"
      })
  void booksThatCannotBe_areRefused(String rows, ProblemCode code, String part) {
    String csv = "item,unit,low,likely,high\n" + (rows == null ? "" : rows.replace(';', '\n'));
    PlanException e = assertThrows(PlanException.class, () -> PriceBook.read("book.csv", csv));
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  /**
   * The longest name that the bill itself makes of a shipped plant: 68 letters of names and 17 of
   * its form, more than the 60 that a plan's own thing may have.
   */
  private static final String ELDER =
      "American elderberry (Sambucus canadensis (S. nigra ssp. canadensis)), bare root 18 in";

  /** Each of the three ways to say a price, with the name as the bill has it; spaces are cut. */
  @Test
  void longestNameOfABill_isTakenByEveryWord() {
    assertEquals(68 + 17, ELDER.length());
    String twoHundred = "x".repeat(200);
    for (String name : List.of(ELDER, "  " + ELDER + " ", twoHundred)) {
      PlanKit own = yard();
      PriceWords.price(own.words(), name, Money.amount(9), null, null, null);
      PlanKit book = yard();
      String csv = "item,unit,low,likely,high\n\"" + name + "\",piece,1,2,3\n";
      PriceWords.priceBook(book.words(), csv, "x".repeat(60));
      PlanKit local = yard();
      PriceWords.localPrice(local.words(), name, 4, null, null, "piece", BY);
      for (PlanKit kit : List.of(own, book, local)) {
        List<Attributes.Entry<Price>> kept = kit.plan().attributes().all(Price.KEY);
        assertEquals(List.of(name.strip()), kept.stream().map(e -> e.value().item()).toList());
        String told = found(kit).get(0).text();
        assertTrue(told.contains("called '" + name.strip() + "'"), told);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "a\nb",
        "a\tb",
        "a\u001b[31mb",
        "a\u0000b",
        "a\u2028b",
        "a\u202eb",
        "a\u2067b"
      })
  void namesThatAreNoLine_areRefusedByEveryWord(String name) {
    assertRefused(name);
  }

  @Test
  void nameOfTwoHundredAndOneLetters_isRefusedByEveryWord() {
    assertRefused("x".repeat(201));
  }

  /** Neither of the words leaves a price behind; the book names the row. */
  private static void assertRefused(String name) {
    PlanKit kit = yard();
    Money nine = Money.amount(9);
    refused(() -> PriceWords.price(kit.words(), name, nine, null, null, "yd3"));
    refused(() -> PriceWords.localPrice(kit.words(), name, 4, null, null, "yd3", BY));
    String csv = "item,unit,low,likely,high\n\"" + name + "\",piece,1,2,3\n";
    PlanException row =
        assertThrows(
            PlanException.class, () -> PriceWords.priceBook(kit.words(), csv, "my prices"));
    assertTrue(row.getMessage().contains("my prices:2"), row.getMessage());
    assertTrue(kit.plan().attributes().all(Price.KEY).isEmpty());
  }

  private static void refused(Executable word) {
    PlanException e = assertThrows(PlanException.class, word);
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("the name of a bill item"), e.getMessage());
    assertTrue(e.getMessage().length() < 200, e.getMessage());
  }

  /** The name of the book stands in messages and sources: 60 letters of one line. */
  @ParameterizedTest
  @ValueSource(strings = {"", " a", "a\nb", "a\u202eb"})
  void bookWhoseNameIsNone_isRefused(String name) {
    String csv = "item,unit,low,likely,high\ncompost,yd3,1,2,3\n";
    for (String bad : List.of(name, "x".repeat(61))) {
      PlanException e =
          assertThrows(
              PlanException.class, () -> PriceWords.priceBook(PlanKit.us().words(), csv, bad));
      assertTrue(e.getMessage().contains("the name of a table"), e.getMessage());
    }
  }

  @Test
  void bookOfTwoThousandRows_isRead_oneMoreIsNot() {
    StringBuilder rows = new StringBuilder("item,unit,low,likely,high\n");
    for (int i = 1; i <= 2_000; i++) {
      rows.append("thing ").append(i).append(",piece,1,2,").append(i + 2).append('\n');
    }
    List<Price> read = PriceBook.read("book.csv", rows.toString());
    assertEquals(2_000, read.size());
    assertEquals(2_002, read.get(1_999).perUnit().high());
    rows.append("one more,piece,1,2,3\n");
    PlanException e =
        assertThrows(PlanException.class, () -> PriceBook.read("book.csv", rows.toString()));
    assertEquals(ProblemCode.LIMIT, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("book.csv:2002"), e.getMessage());
  }

  /** One item may have a price for each unit. */
  @Test
  void bookWithTwoUnits_isRead() {
    List<Price> read =
        PriceBook.read("b", "item,unit,low,likely,high\nx,piece,1,2,3\nx,ft,4,5,6\n");
    assertEquals(List.of("piece", "ft"), read.stream().map(Price::unit).toList());
    assertEquals(4, read.get(1).perUnit().low());
    assertTrue(read.get(0).perUnit().source().cite().contains("price book b"));
  }

  /** Shares of a wage run from nothing to five times it. */
  @Test
  void sharesOfTheWage_runFromNothingToFive() {
    PriceWords.labourRate(PlanKit.us().words(), Money.amount(20), 0, 5);
    assertThrows(
        PlanException.class,
        () -> PriceWords.labourRate(PlanKit.us().words(), Money.amount(20), -0.01, 0));
    assertThrows(
        PlanException.class,
        () -> PriceWords.labourRate(PlanKit.us().words(), Money.amount(20), 0, 5.01));
  }

  @Test
  void catalogues_nameUnitsPricesAndHours() {
    Catalogue.Row compost =
        PriceBook.catalogue().rows().stream()
            .filter(r -> r.name().equals("compost"))
            .findFirst()
            .orElseThrow();
    assertEquals("yd3", compost.traits().get("unit"));
    assertEquals("25, 40, 60", compost.traits().get("invented"));
    Catalogue.Row pots =
        LabourData.catalogue().rows().stream()
            .filter(r -> r.name().equals("plant from pots"))
            .findFirst()
            .orElseThrow();
    assertEquals("piece", pots.traits().get("unit"));
    assertEquals("0.05, 0.08, 0.13", pots.traits().get("hours"));
  }
}
