package yardloom.planting.own;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.LightNeed;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.PlantYard;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.harvest.Bearing;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.harvest.PlantYields;
import yardloom.planting.harvest.Yield;
import yardloom.planting.traits.Bloom;
import yardloom.planting.traits.ChillNeeds;
import yardloom.planting.traits.ColdLimits;
import yardloom.planting.traits.Growth;
import yardloom.planting.traits.Hazard;
import yardloom.planting.traits.HeatLimits;
import yardloom.planting.traits.LeastLight;
import yardloom.planting.traits.Pollination;
import yardloom.planting.traits.SoilNeed;
import yardloom.planting.traits.WaterClass;

/** What a row of a user's own says, and what it takes from the plant that it is like. */
class OwnPlantTest {
  private static final String TABLE_SOURCE = ",title,publisher,year,locator,standing";
  private static final String SOURCE = ",Trial of pears,our garden,2021,p. 7,READ";
  private final PlantYard yard = PlantYard.us("2026-03-10");

  /** A row of that plant, columns and cells in pairs. */
  private Plant own(String like, String... pairs) {
    StringBuilder head = new StringBuilder("plant,like");
    StringBuilder row = new StringBuilder("mine," + like);
    for (int i = 0; i < pairs.length; i += 2) {
      head.append(',').append(pairs[i]);
      row.append(",\"").append(pairs[i + 1]).append('"');
    }
    PlantYard fresh = PlantYard.us("2026-03-10");
    OwnPlantWords.plantBook(
        fresh.words(), head + TABLE_SOURCE + "\n" + row + SOURCE, "my plants.csv");
    return PlantCatalogue.of(fresh.draft.attributes()).plant("mine");
  }

  private static void assertOwn(Source source) {
    assertEquals("Trial of pears", source.title());
    assertEquals(Standing.READ, source.standing());
  }

  private static void assertBorrowed(String like, Source source) {
    assertTrue(source.title().startsWith("as " + like + ", which stands in: "), source.title());
    assertEquals(Standing.MEMORY, source.standing());
  }

  @Test
  void everyCellOfARow_isWhatThePlantHas() {
    Plant p =
        own(
            "quince",
            "botanical",
            "Pyrus nivalis",
            "family",
            "Rosaceae of old",
            "spacing_in",
            "150",
            "rows_in",
            "160",
            "spread_in",
            "170",
            "height_in",
            "190",
            "light",
            "sun or part shade",
            "least_light_h",
            "4.5",
            "ph_low",
            "5.9",
            "ph_high",
            "7.4",
            "drainage",
            "moist",
            "water",
            "low",
            "zone",
            "6",
            "chill_h",
            "750",
            "heat_f",
            "99",
            "bloom_from",
            "-3",
            "bloom_until",
            "8",
            "pick_from",
            "140",
            "pick_until",
            "171",
            "yield_low_lb",
            "21",
            "yield_high_lb",
            "33",
            "yield_per",
            "row foot",
            "first_year",
            "3",
            "full_year",
            "11",
            "pollination",
            "partner",
            "partner_group",
            "pear",
            "within_ft",
            "85",
            "roles",
            "fruit; mulch maker",
            "native",
            "Balkans",
            "harms",
            "pets, children",
            "caution",
            "pips bitter",
            "window",
            "tender woody",
            "mulch",
            "low",
            "layer",
            "shrub",
            "life",
            "annual",
            "crop",
            "berries (bushes)");
    assertEquals("Pyrus nivalis", p.botanical());
    assertEquals(Growth.Life.ANNUAL, Growth.of(p).life());
    assertEquals("berries (bushes)", p.draw().crop().name());
    assertFalse(p.draw().standsIn());
    assertOwn(p.draw().source());
    assertEquals("Rosaceae of old", p.family().name());
    assertOwn(p.family().source());
    assertEquals(150, p.size().inRow().middle().inches(), 1e-9);
    assertEquals(160, p.size().rows().middle().inches(), 1e-9);
    assertEquals(170, p.size().spread().low().inches(), 1e-9);
    assertEquals(190, p.size().height().high().inches(), 1e-9);
    assertOwn(p.size().height().source());
    assertEquals(LightNeed.Amount.SUN_OR_PART_SHADE, p.light().amount());
    assertOwn(p.light().source());
    assertEquals(4.5, LeastLight.of(p).hours());
    SoilNeed soil = SoilNeed.of(p).orElseThrow();
    assertEquals(
        List.of(5.9, 7.4, SoilNeed.Drainage.MOIST),
        List.of(soil.lowPh(), soil.highPh(), soil.drainage()));
    assertOwn(soil.phSource());
    assertOwn(soil.drainageSource());
    assertEquals(WaterClass.LOW, WaterClass.of(p).orElseThrow().of());
    assertEquals(6, ColdLimits.of(p).orElseThrow().coldest());
    ChillNeeds.Need chill = ChillNeeds.of(p).orElseThrow();
    assertEquals(750, chill.low());
    assertTrue(chill.high().isEmpty());
    assertEquals(99, HeatLimits.of(p).orElseThrow().day().fahrenheit(), 1e-9);
    Bloom bloom = Bloom.of(p).orElseThrow();
    assertEquals(List.of(-3, 8), List.of(bloom.from(), bloom.until()));
    assertOwn(bloom.source());
    HarvestSeason picked = HarvestSeason.of(p).orElseThrow();
    assertEquals(List.of(140, 171), List.of(picked.from(), picked.until()));
    assertOwn(picked.source());
    Yield yield = PlantYields.of(p).orElseThrow();
    assertEquals(21, yield.low().pounds(), 1e-9);
    assertEquals(33, yield.high().pounds(), 1e-9);
    assertEquals(Yield.Per.ROW_FOOT, yield.per());
    assertOwn(yield.sources().get(0));
    Bearing bearing = Bearing.of(p).orElseThrow();
    assertEquals(List.of(3, 11), List.of(bearing.first(), bearing.full()));
    assertEquals("year 3", PlantYields.first(p).orElseThrow().when());
    Pollination partner = Pollination.of(p);
    assertEquals(Pollination.Need.PARTNER, partner.need());
    assertEquals("pear", partner.group());
    assertEquals(85, partner.within().orElseThrow().feet(), 1e-9);
    assertOwn(partner.source());
    assertEquals(List.of("fruit", "mulch maker"), Growth.roles(p));
    assertEquals("Balkans", Growth.of(p).nativeTo().orElseThrow());
    assertEquals(Growth.Layer.SHRUB, Growth.of(p).layer());
    assertOwn(Growth.of(p).source());
    assertEquals(
        List.of(Hazard.Whom.PETS, Hazard.Whom.CHILDREN),
        Hazard.of(p).stream().map(Hazard::to).toList());
    assertEquals("pips bitter", Hazard.of(p).get(1).part());
    assertEquals("pips bitter", p.caution().text());
    assertTrue(p.caution().harmful());
    assertEquals("tender woody", p.growth().window());
    // The catalogue's groups: low plants bear 3 in of mulch, woody ones 12.
    assertEquals("low", p.mulch().group());
    assertEquals(3, p.mulch().most().inches(), 1e-9);
  }

  /** 381 cm are 150 in; 15 kg 33.07 lb; 38 °C 100.4 °F; 26 m 85.3 ft. */
  @Test
  void cells_mayBeMetric() {
    Plant p =
        own(
            "quince",
            "spacing_cm",
            "381",
            "rows_cm",
            "406",
            "spread_cm",
            "432",
            "height_cm",
            "483",
            "heat_c",
            "38",
            "yield_low_kg",
            "9",
            "yield_high_kg",
            "15",
            "within_m",
            "26");
    assertEquals(3.81, p.size().inRow().middle().metres(), 1e-9);
    assertEquals(4.06, p.size().rows().middle().metres(), 1e-9);
    assertEquals(4.32, p.size().spread().middle().metres(), 1e-9);
    assertEquals(4.83, p.size().height().middle().metres(), 1e-9);
    assertEquals(38, HeatLimits.of(p).orElseThrow().day().celsius(), 1e-9);
    assertEquals(9, PlantYields.of(p).orElseThrow().low().kilograms(), 1e-9);
    assertEquals(15, PlantYields.of(p).orElseThrow().high().kilograms(), 1e-9);
    assertEquals(Yield.Per.PLANT, PlantYields.of(p).orElseThrow().per());
    assertEquals(26, Pollination.of(p).within().orElseThrow().metres(), 1e-9);
  }

  /** The catalogue's European pear, and as borrowed as it is. */
  @Test
  void whatARowLeavesOut_isOfThePlantItIsLike_andMarked() {
    Plant p = own("European pear");
    Plant pear = PlantCatalogue.shipped().plant("European pear");
    assertEquals("Pyrus communis", p.botanical());
    assertEquals(pear.size().spread().middle(), p.size().spread().middle());
    assertEquals(pear.light().amount(), p.light().amount());
    assertEquals(pear.growth().window(), p.growth().window());
    assertEquals(pear.mulch().most(), p.mulch().most());
    assertEquals(pear.mulch().group(), p.mulch().group());
    assertEquals(pear.caution().text(), p.caution().text());
    assertTrue(p.caution().harmful());
    assertEquals(5, LeastLight.of(p).hours());
    assertEquals(
        List.of(5.5, 6.5, SoilNeed.Drainage.ANY),
        List.of(
            SoilNeed.of(p).orElseThrow().lowPh(),
            SoilNeed.of(p).orElseThrow().highPh(),
            SoilNeed.of(p).orElseThrow().drainage()));
    assertEquals(WaterClass.MEDIUM, WaterClass.of(p).orElseThrow().of());
    assertEquals(4, ColdLimits.of(p).orElseThrow().coldest());
    assertEquals(400, ChillNeeds.of(p).orElseThrow().low());
    assertEquals(900, ChillNeeds.of(p).orElseThrow().high().orElseThrow());
    assertTrue(HeatLimits.of(p).isEmpty());
    assertEquals(-9, Bloom.of(p).orElseThrow().from());
    assertEquals(4, Bloom.of(p).orElseThrow().until());
    assertEquals(105, HarvestSeason.of(p).orElseThrow().from());
    assertEquals(165, HarvestSeason.of(p).orElseThrow().until());
    assertEquals(44.1, PlantYields.of(p).orElseThrow().low().pounds(), 1e-9);
    assertEquals(99.2, PlantYields.of(p).orElseThrow().high().pounds(), 1e-9);
    assertEquals(5, Bearing.of(p).orElseThrow().first());
    assertEquals(8, Bearing.of(p).orElseThrow().full());
    assertEquals("year 3–6", PlantYields.first(p).orElseThrow().when());
    assertEquals(Pollination.Need.PARTNER, Pollination.of(p).need());
    assertEquals(100, Pollination.of(p).within().orElseThrow().feet(), 1e-9);
    assertEquals(List.of("fruit", "insect plant"), Growth.roles(p));
    assertEquals(Growth.Layer.CANOPY, Growth.of(p).layer());
    assertEquals(
        Hazard.of(pear).stream().map(Hazard::part).toList(),
        Hazard.of(p).stream().map(Hazard::part).toList());
    for (Source borrowed :
        List.of(
            p.family().source(),
            p.size().spread().source(),
            p.light().source(),
            p.caution().source(),
            LeastLight.of(p).source(),
            SoilNeed.of(p).orElseThrow().phSource(),
            SoilNeed.of(p).orElseThrow().drainageSource(),
            WaterClass.of(p).orElseThrow().source(),
            ColdLimits.of(p).orElseThrow().source(),
            ChillNeeds.of(p).orElseThrow().source(),
            Bloom.of(p).orElseThrow().source(),
            HarvestSeason.of(p).orElseThrow().source(),
            PlantYields.of(p).orElseThrow().sources().get(0),
            Bearing.of(p).orElseThrow().source(),
            PlantYields.first(p).orElseThrow().source(),
            Pollination.of(p).source(),
            Growth.of(p).source())) {
      assertBorrowed("European pear", borrowed);
    }
    Plant quince = own("quince");
    assertEquals("seeds", Hazard.of(quince).get(0).part());
    assertBorrowed("quince", Hazard.of(quince).get(0).source());
  }

  /** Raspberries have a heat limit, 95 °F, and sweet potatoes no hazards. */
  @Test
  void heatLimit_isBorrowedToo() {
    Plant p = own("red raspberry");
    assertEquals(95, HeatLimits.of(p).orElseThrow().day().fahrenheit(), 1e-9);
    assertBorrowed("red raspberry", HeatLimits.of(p).orElseThrow().source());
  }

  /** Chives harm dogs and cats; a row that says harms has its own part. */
  @Test
  void harmsWithoutACaution_sayWhereToLook() {
    Plant p = own("chives", "harms", "children");
    assertEquals(1, Hazard.of(p).size());
    assertEquals("see its caution", Hazard.of(p).get(0).part());
    assertOwn(Hazard.of(p).get(0).source());
  }

  /** One of the two may be said and the other borrowed; one pH is a range too. */
  @Test
  void soilNeed_isSaidInPart() {
    SoilNeed pear = SoilNeed.of(own("European pear", "drainage", "good")).orElseThrow();
    assertEquals(5.5, pear.lowPh());
    assertBorrowed("European pear", pear.phSource());
    assertOwn(pear.drainageSource());
    SoilNeed sour = SoilNeed.of(own("European pear", "ph_low", "5", "ph_high", "5")).orElseThrow();
    assertEquals(5, sour.highPh());
    assertOwn(sour.phSource());
    assertBorrowed("European pear", sour.drainageSource());
  }

  @Test
  void yieldWithoutALeast_beginsAtNothing_andOneYearIsTheFullOne() {
    Plant p = own("quince", "yield_high_lb", "30", "first_year", "5");
    assertEquals(0, PlantYields.of(p).orElseThrow().low().kilograms());
    assertEquals(5, Bearing.of(p).orElseThrow().full());
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "ph_low=5 | give both, the lower first",
        "ph_high=5 | give both, the lower first",
        "ph_low=7,ph_high=6 | give both, the lower first",
        "ph_low=2.9,ph_high=6 | `ph_low` is from 3.0 to 10.0, got 2.9",
        "ph_low=4,ph_high=10.1 | `ph_high` is from 3.0 to 10.0, got 10.1",
        "least_light_h=16.1 | `least_light_h` is from 0.0 to 16.0, got 16.1",
        "zone=0 | `zone` is from 1.0 to 13.0, got 0.0",
        "chill_h=2501 | `chill_h` is from 0.0 to 2500.0, got 2501.0",
        "heat_f=59 | `heat_f` is from 60.0 to 130.0, got 59.0",
        "heat_c=56 | `heat_c` is from 15.0 to 55.0, got 56.0",
        "bloom_from=3 | days go from `bloom_from` to `bloom_until`",
        "bloom_until=3 | days go from `bloom_from` to `bloom_until`",
        "bloom_from=4,bloom_until=3 | days go from `bloom_from` to `bloom_until`",
        "pick_from=0,pick_until=365 | days go from `pick_from` to `pick_until`",
        "pick_from=-201,pick_until=0 | `pick_from` is from -200.0 to 500.0, got -201.0",
        "yield_low_lb=5 | give also the highest yield",
        "yield_low_lb=5,yield_high_lb=4 | a yield goes from low to high",
        "first_year=5,full_year=4 | the year of full harvest is not before the first",
        "full_year=4 | give also the year of the first harvest",
        "first_year=41 | `first_year` is from 1.0 to 40.0, got 41.0",
        "first_year=9,full_year=61 | `full_year` is from 1.0 to 60.0, got 61.0",
        "within_ft=0.5 | `within_ft` is from 1.0 to 1000.0, got 0.5",
        "within_m=301 | `within_m` is from 0.3 to 300.0, got 301.0",
        "spacing_in=0.9 | spacing is from 1 in (2.5 cm) to 150 ft (46 m)",
        "height_in=1801 | height is from 1 in (2.5 cm) to 150 ft (46 m)",
        "light=moon | moon",
        "drainage=god | good",
        "mulch=straw | 'straw' is not in the table mulch-depth.csv",
        "window=never | no kinds are planted as 'never'"
      })
  void whatCannotBe_isSaid(String cells, String message) {
    String[] pairs = cells.split("[=,]");
    PlanException e = assertThrows(PlanException.class, () -> own("European pear", pairs));
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.getMessage().startsWith("yard.groovy:1:1: my plants.csv:2:"), e.getMessage());
  }

  /** The ends of ranges may be: 1 in and 150 ft, 364 days, a yield of one figure. */
  @Test
  void endsOfRanges_areAllowed() {
    Plant p =
        own(
            "European pear",
            "spacing_in",
            "1",
            "height_in",
            "1800",
            "pick_from",
            "0",
            "pick_until",
            "364",
            "yield_low_lb",
            "5",
            "yield_high_lb",
            "5",
            "first_year",
            "7",
            "full_year",
            "7",
            "zone",
            "13",
            "ph_low",
            "3",
            "ph_high",
            "3");
    assertEquals(150, p.size().height().middle().feet(), 1e-9);
    assertEquals(364, HarvestSeason.of(p).orElseThrow().until());
  }

  @Test
  void nameless_orLikeNothing_orGivenTwice_isRefused() {
    String head = "plant,like\n";
    PlanException nameless =
        assertThrows(
            PlanException.class,
            () -> OwnPlantWords.plantBook(yard.words(), head + ",quince", null));
    assertTrue(nameless.getMessage().contains("a plant needs a name"), nameless.getMessage());
    PlanException unlike =
        assertThrows(
            PlanException.class,
            () -> OwnPlantWords.plantBook(yard.words(), head + "a,quinze", null));
    assertTrue(unlike.getMessage().contains("Did you mean `quince`?"), unlike.getMessage());
    assertTrue(unlike.getMessage().contains("plant book:2:3"), unlike.getMessage());
    PlanException twice =
        assertThrows(
            PlanException.class,
            () -> OwnPlantWords.plantBook(yard.words(), head + "a,quince\nA,quince", null));
    assertEquals(ProblemCode.DUPLICATE, twice.problems().get(0).code());
    PlanException column =
        assertThrows(
            PlanException.class,
            () -> OwnPlantWords.plantBook(yard.words(), "plant,like,zon\na,quince,4", null));
    assertTrue(column.getMessage().contains("Did you mean `zone`?"), column.getMessage());
    PlanException strange =
        assertThrows(
            PlanException.class,
            () -> OwnPlantWords.plantBook(yard.words(), "plant,like,qqqqqqq\na,quince,4", null));
    assertTrue(strange.getMessage().contains("Columns are bloom_from, "), strange.getMessage());
    PlanException empty =
        assertThrows(
            PlanException.class, () -> OwnPlantWords.plantBook(yard.words(), head, "my.csv"));
    assertTrue(empty.getMessage().contains("the table has a header and a line for each"));
  }

  /** A table without a source of its own has the file as one. */
  @Test
  void rowWithoutASource_citesItsFile() {
    OwnPlantWords.plantBook(yard.words(), "plant,like,zone\nmine,quince,7", "my.csv");
    Plant p = PlantCatalogue.of(yard.draft.attributes()).plant("mine");
    assertTrue(ColdLimits.of(p).orElseThrow().source().cite().contains("my.csv"));
  }

  @ParameterizedTest
  @CsvSource({"crop, kale, no crop is called 'kale'; crops are", "life, monthly, monthly"})
  void unknownCropOrLife_isRefusedAtItsCell(String column, String cell, String says) {
    PlanException e = assertThrows(PlanException.class, () -> own("quince", column, cell));
    assertTrue(e.getMessage().contains(says), e.getMessage());
    assertTrue(e.getMessage().contains("my plants.csv:2"), e.getMessage());
  }

  /** The word for one plant says the same as a row: every option is another figure. */
  @Test
  void word_putsEachOptionInItsColumn() {
    Source source = Source.plan("our trial");
    OwnPlantWords.ownPlant(
        yard.words(),
        " mine ",
        "quince",
        source,
        "Pyrus nivalis",
        "Rosaceae of old",
        row -> {
          OwnPlantWords.grown(
              row,
              Length.inches(150),
              Length.inches(160),
              Length.inches(170),
              Length.inches(190),
              "shrub");
          OwnPlantWords.needs(
              row,
              "sun or part shade",
              4.5,
              5.9,
              7.4,
              "moist",
              "low",
              6,
              750,
              Temperature.fahrenheit(99));
          OwnPlantWords.seasons(row, "tender woody", -3, 8, 140, 171);
          OwnPlantWords.yields(row, Mass.pounds(21), Mass.pounds(33), "row foot", 3, 11);
          OwnPlantWords.pollinated(row, "partner", "pear", Length.feet(85));
          OwnPlantWords.traits(
              row,
              "fruit; mulch maker",
              "Balkans",
              "pets, children",
              "pips bitter",
              "low",
              "annual",
              "berries (bushes)");
        });
    Plant word = PlantCatalogue.of(yard.draft.attributes()).plant("mine");
    assertEquals("mine", word.name());
    assertEquals("Pyrus nivalis", word.botanical());
    assertEquals("Rosaceae of old", word.family().name());
    assertEquals(150, word.size().inRow().middle().inches(), 1e-6);
    assertEquals(160, word.size().rows().middle().inches(), 1e-6);
    assertEquals(170, word.size().spread().middle().inches(), 1e-6);
    assertEquals(190, word.size().height().middle().inches(), 1e-6);
    assertEquals(LightNeed.Amount.SUN_OR_PART_SHADE, word.light().amount());
    assertEquals(4.5, LeastLight.of(word).hours());
    SoilNeed soil = SoilNeed.of(word).orElseThrow();
    assertEquals(
        List.of(5.9, 7.4, SoilNeed.Drainage.MOIST),
        List.of(soil.lowPh(), soil.highPh(), soil.drainage()));
    assertEquals(WaterClass.LOW, WaterClass.of(word).orElseThrow().of());
    assertEquals(6, ColdLimits.of(word).orElseThrow().coldest());
    assertEquals(750, ChillNeeds.of(word).orElseThrow().low());
    assertEquals(99, HeatLimits.of(word).orElseThrow().day().fahrenheit(), 1e-6);
    assertEquals(-3, Bloom.of(word).orElseThrow().from());
    assertEquals(8, Bloom.of(word).orElseThrow().until());
    assertEquals(140, HarvestSeason.of(word).orElseThrow().from());
    assertEquals(171, HarvestSeason.of(word).orElseThrow().until());
    assertEquals(21, PlantYields.of(word).orElseThrow().low().pounds(), 1e-6);
    assertEquals(33, PlantYields.of(word).orElseThrow().high().pounds(), 1e-6);
    assertEquals(Yield.Per.ROW_FOOT, PlantYields.of(word).orElseThrow().per());
    assertEquals(3, Bearing.of(word).orElseThrow().first());
    assertEquals(11, Bearing.of(word).orElseThrow().full());
    assertEquals(Pollination.Need.PARTNER, Pollination.of(word).need());
    assertEquals("pear", Pollination.of(word).group());
    assertEquals(85, Pollination.of(word).within().orElseThrow().feet(), 1e-6);
    assertEquals(List.of("fruit", "mulch maker"), Growth.roles(word));
    assertEquals("Balkans", Growth.of(word).nativeTo().orElseThrow());
    assertEquals(
        Set.of(Hazard.Whom.PETS, Hazard.Whom.CHILDREN),
        Hazard.of(word).stream().map(Hazard::to).collect(Collectors.toSet()));
    assertEquals("pips bitter", word.caution().text());
    assertEquals("tender woody", word.growth().window());
    assertEquals("low", word.mulch().group());
    assertEquals(Growth.Layer.SHRUB, Growth.of(word).layer());
    assertEquals(Growth.Life.ANNUAL, Growth.of(word).life());
    assertEquals("berries (bushes)", word.draw().crop().name());
    assertEquals(source.cite(), word.family().source().cite());
    assertFalse(word.juglone().makes());
  }
}
