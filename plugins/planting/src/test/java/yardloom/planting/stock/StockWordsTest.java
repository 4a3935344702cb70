package yardloom.planting.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantYard;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.PlantingWords;

/** Forms of stock of the plan's own, and the names of the shipped ones. */
class StockWordsTest {
  private static final String TRAY = "tray of 50";
  private final PlantYard yard = PlantYard.us("2026-03-10");

  private StockForms forms() {
    return StockForms.of(yard.draft.freeze(), Optional.empty());
  }

  private StockForm own(String name) {
    return forms().named(name, PlantCatalogue.shipped().plant("tomato"));
  }

  private static Money money(double amount) {
    return Money.amount(amount);
  }

  @Test
  void formOfThePlan_hasItsFigures_andTheRestOfItsModel() {
    StockWords.stockForm(
        yard.words(), TRAY, "plug", 0.9, 0.4, 2.5, 50, money(32), money(28), money(41), null);
    StockForm tray = own("Tray  of 50");
    assertEquals(
        List.of(0.4, 0.9, 2.5),
        List.of(
            tray.minutes().orElseThrow().low(),
            tray.minutes().orElseThrow().likely(),
            tray.minutes().orElseThrow().high()));
    assertEquals(50, tray.holds());
    assertEquals(28, tray.price().orElseThrow().low());
    assertEquals(32, tray.price().orElseThrow().likely());
    assertEquals(41, tray.price().orElseThrow().high());
    assertEquals(StockForm.Season.ANY, tray.season());
    assertEquals(own("plug").task(), tray.task());
    assertEquals(TRAY, tray.name(UnitSystem.METRIC));
  }

  /** A plug takes 0.3 to 3 minutes, likely 1.2 (the shipped row); a price alone is all three. */
  @Test
  void whatIsNotSaid_isOfTheModel_orOneFigure() {
    StockWords.stockForm(
        yard.words(), TRAY, "plug", null, null, null, null, money(7), null, null, null);
    StockForm tray = own(TRAY);
    assertEquals(1.2, tray.minutes().orElseThrow().likely());
    assertEquals(0.3, tray.minutes().orElseThrow().low());
    assertEquals(1, tray.holds());
    assertEquals(7, tray.price().orElseThrow().low());
    assertEquals(7, tray.price().orElseThrow().high());
  }

  @Test
  void tableOfForms_isRead() {
    StockWords.stockForms(
        yard.words(),
        "form,like,holds,minutes,fastest,slowest,price,low,high\n"
            + "tray of 72,plug,72,0.8,0.5,1.5,38,35,44\nbig pot,pot 1 gal,,,,,,,",
        "list.csv");
    StockForm tray = own("tray of 72");
    assertEquals(72, tray.holds());
    assertEquals(0.5, tray.minutes().orElseThrow().low());
    assertEquals(0.8, tray.minutes().orElseThrow().likely());
    assertEquals(1.5, tray.minutes().orElseThrow().high());
    assertEquals(35, tray.price().orElseThrow().low());
    assertEquals(44, tray.price().orElseThrow().high());
    assertTrue(tray.price().orElseThrow().source().cite().contains("list.csv"));
    StockForm pot = own("big pot");
    assertEquals(1, pot.holds());
    assertEquals(5, pot.minutes().orElseThrow().likely());
    assertTrue(pot.price().isEmpty());
    assertEquals(StockForm.Season.ROOTED, pot.season());
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "t,plugg,1,1 | Did you mean `plug`?",
        "t,zzzzzzzz,1,1 | There is seed, sets, plug",
        "t,seed,1,1 | what goes into drills is sold by length",
        "t,sets,1,1 | what goes into drills is sold by length",
        ",plug,1,1 | a stock form needs a name",
        "t,plug,0,1 | holds is a whole number from 1 to 1000, got 0.0",
        "t,plug,1001,1 | holds is a whole number from 1 to 1000, got 1001.0",
        "t,plug,2.5,1 | holds is a whole number from 1 to 1000, got 2.5",
        "t,plug,1,961 | minutes to set one plant are at most 960 (16 h), got 961"
      })
  void formsThatCannotBe_areRefused(String row, String message) {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> StockWords.stockForms(yard.words(), "form,like,holds,minutes\n" + row, null));
    assertTrue(e.getMessage().contains(message.strip()), e.getMessage());
    assertTrue(e.getMessage().contains("stock forms:2"), e.getMessage());
  }

  @Test
  void sixteenHours_andAThousand_areAllowed_twiceIsNot() {
    StockWords.stockForm(
        yard.words(), TRAY, "plug", 960, null, null, 1000, null, null, null, Source.plan("x"));
    assertEquals(960, own(TRAY).minutes().orElseThrow().high());
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                StockWords.stockForm(
                    yard.words(), "TRAY of 50", "plug", 1, null, null, 1, null, null, null, null));
    assertEquals(ProblemCode.DUPLICATE, e.problems().get(0).code());
    assertEquals("yard.groovy", e.problems().get(0).place().file());
  }

  @Test
  void spreadWithoutItsLikelyFigure_isRefused() {
    for (int i = 0; i < 4; i++) {
      Double fastest = i == 0 ? 1.0 : null;
      Double slowest = i == 1 ? 1.0 : null;
      Money low = i == 2 ? money(1) : null;
      Money high = i == 3 ? money(1) : null;
      PlanException e =
          assertThrows(
              PlanException.class,
              () ->
                  StockWords.stockForm(
                      yard.words(),
                      TRAY,
                      "plug",
                      null,
                      fastest,
                      slowest,
                      1,
                      null,
                      low,
                      high,
                      null));
      assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
      assertTrue(e.getMessage().contains(i < 2 ? "`minutes:`" : "`price:`"), e.getMessage());
    }
  }

  /** Nothing is sold as a nonsense; a tree is not sold as a plug. */
  @Test
  void unknownOrUnsuitedStock_isToldWhatThereIs() {
    PlantingWords.plant(
        yard.bed("b", 0, 0, 4, 4), "tomato", Length.feet(2), null, null, null, null, "qqqqqqqq");
    PlanException unknown = assertThrows(PlanException.class, yard::outcome);
    assertTrue(
        unknown
            .getMessage()
            .contains("nothing is sold as 'qqqqqqqq'. tomato comes as plug, pot 4 in, pot 1 gal."),
        unknown.getMessage());
    PlanException unsuited =
        assertThrows(
            PlanException.class,
            () -> forms().named("plug", PlantCatalogue.shipped().plant("peach")));
    assertEquals(ProblemCode.CONTRADICTION, unsuited.problems().get(0).code());
    assertTrue(
        unsuited.getMessage().contains("peach is not sold as 'plug'; it comes as pot 1 gal"));
    // Strawberries come as runners, which other herbs do not.
    PlanException runner =
        assertThrows(
            PlanException.class,
            () -> forms().named("cane", PlantCatalogue.shipped().plant("garden strawberry")));
    assertTrue(runner.getMessage().contains("runner"), runner.getMessage());
    assertTrue(!runner.getMessage().contains("crown"), runner.getMessage());
  }

  /** By form and season: trees and shrubs with bare roots when these are in season, else potted. */
  @ParameterizedTest
  @CsvSource({
    "peach, true, bare root 4 ft",
    "peach, false, pot 5 gal",
    "red currant, true, bare root 18 in",
    "red currant, false, pot 1 gal",
    "tomato, true, plug",
    "chives, false, pot 4 in",
    "rhubarb, false, crown",
    "carrot, false, seed",
    "black raspberry, true, cane"
  })
  void usualStock_isOfTheFormOfThePlant(String plant, boolean bare, String expected) {
    assertEquals(
        expected,
        forms().usual(PlantCatalogue.shipped().plant(plant), bare, true).name(UnitSystem.US));
  }

  /**
   * Crowns, runners and canes are dug while they rest; sold in growth they stand in pots. A tuber
   * is not one of them.
   */
  @ParameterizedTest
  @CsvSource({
    "rhubarb, pot 4 in",
    "garden strawberry, pot 4 in",
    "red raspberry, pot 1 gal",
    "Jerusalem artichoke, tuber"
  })
  void crownsOutOfTheirSeason_comeInPots(String plant, String expected) {
    assertEquals(
        expected,
        forms().usual(PlantCatalogue.shipped().plant(plant), false, false).name(UnitSystem.US));
  }

  @Test
  void catalogue_saysNamesMinutesAndForWhom() {
    Catalogue.Row pot =
        StockForms.catalogue().rows().stream()
            .filter(r -> r.name().equals("pot 1 gal"))
            .findFirst()
            .orElseThrow();
    assertEquals("pot 4 l", pot.traits().get("metric"));
    assertEquals("2.4, 5, 8", pot.traits().get("minutes"));
    assertEquals("annual herb shrub tree vine", pot.traits().get("for"));
    // Recalled, between 2.4, 5, 8 min for a gallon and 8, 15, 24 min for five.
    assertEquals("4, 8, 12", minutes("pot 2 gal"));
    assertEquals("8, 15, 24", minutes("pot 5 gal"));
    assertEquals("20, 30, 60", minutes("pot 10 gal"));
    assertEquals("15, 25, 45", minutes("bare root 4 ft"));
    Catalogue.Row seed = StockForms.catalogue().rows().get(0);
    assertEquals("by length", seed.traits().get("minutes"));
  }

  private static String minutes(String form) {
    return StockForms.catalogue().rows().stream()
        .filter(r -> r.name().equals(form))
        .findFirst()
        .orElseThrow()
        .traits()
        .get("minutes");
  }
}
