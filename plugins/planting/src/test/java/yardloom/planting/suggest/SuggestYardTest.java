package yardloom.planting.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.planting.PlantYard;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.traits.Growth;

/** Beds that ask for kinds: what they are told, row by row, and what is never suggested. */
class SuggestYardTest {
  private PlantYard yard = yard();

  private static PlantYard yard() {
    PlantYard yard = PlantYard.us("");
    yard.frost("05-06", "10-14");
    return yard;
  }

  private BedScope bed() {
    return yard.bed("b", 0, 0, 20, 4);
  }

  private Suggestions.Bed suggested() {
    return yard.outcome().results().find(Suggestions.KEY).orElseThrow().beds().get(0);
  }

  private List<String> rows() {
    return yard.printed("suggestions");
  }

  /**
   * Of 80 sq ft each of two kinds has 40. Natives that stay, July: lowbush blueberry 12 by 12 in
   * (40 of them), picked 85 to 120 days after 6 May, from 30 July, so in July of those asked; it
   * covers ground and needs a second variety. New Jersey tea, 42 by 42 in, 40 / 12.25 = 3, fixes
   * nitrogen. Set 2: wild indigo, 33 by 33 in, 40 / 7.56 = 5, and woodland strawberry, 10.5 by 10.5
   * in, 40 / 0.766 = 52, that covers the ground and is picked from 40 to 130 days after.
   */
  @Test
  void nativesForJuly_bringItAndTheirUses() {
    SuggestWords.suggest(bed(), 2, 1, "July", null, true);
    assertEquals(
        List.of(
            "b | 1 | lowbush blueberry | 40 | Jul | fruit, ground cover, insect plant | alone is"
                + " picked in Jul; alone covers the ground; plant two varieties",
            "b | 1 | New Jersey tea | 3 |  | nitrogen fixer, insect plant | alone fixes"
                + " nitrogen",
            "b | 2 | wild indigo | 5 |  | nitrogen fixer, insect plant | alone fixes"
                + " nitrogen and feeds insects",
            "b | 2 | woodland strawberry | 52 | Jul | fruit, ground cover | alone is picked in Jul;"
                + " alone covers the ground"),
        rows());
    for (Suggestions.Set set : suggested().sets()) {
      assertTrue(set.exact());
      for (Suggestions.Line line : set.lines()) {
        Plant plant = PlantCatalogue.shipped().plant(line.plant());
        assertTrue(Growth.of(plant).nativeTo().isPresent(), line.plant());
        assertEquals(Growth.Life.PERENNIAL, Growth.of(plant).life(), line.plant());
      }
    }
  }

  /** Little work: all stay, none runs; the months asked for run from May to October. */
  @Test
  void littleWork_hasNoAnnualsAndNoRunners() {
    SuggestWords.suggest(bed(), null, null, "may to Oct", true, null);
    Suggestions.Bed bed = suggested();
    assertEquals(2, bed.sets().size());
    assertEquals(EnumSet.range(Month.MAY, Month.OCTOBER), EnumSet.copyOf(bed.wish().months()));
    for (Suggestions.Set set : bed.sets()) {
      assertEquals(4, set.lines().size());
      for (Suggestions.Line line : set.lines()) {
        Plant plant = PlantCatalogue.shipped().plant(line.plant());
        assertEquals(Growth.Life.PERENNIAL, Growth.of(plant).life(), line.plant());
        assertFalse(plant.mulch().group().equals("spreading"), line.plant());
      }
    }
    // Rhubarb's months are shared by Welsh onion: it is not picked alone.
    assertTrue(
        rows()
            .contains(
                "b | 1 | rhubarb | 1 | May, Jun, Jul | leaf | adds its layer (herb) and suits the"
                    + " others"),
        rows()::toString);
    // Clover is sown: no count.
    assertTrue(
        rows().stream().anyMatch(r -> r.startsWith("b | 2 | white clover |  |  | nitrogen fixer,")),
        rows()::toString);
  }

  /** Sets of three share no kind; half of three, so two at least, stay. */
  @Test
  void twoSets_shareNoKind_andHalfStays() {
    SuggestWords.suggest(bed(), 3, null, null, null, null);
    List<Suggestions.Set> sets = suggested().sets();
    assertEquals(
        6, sets.stream().flatMap(s -> s.lines().stream()).map(l -> l.plant()).distinct().count());
    for (Suggestions.Set set : sets) {
      long stay =
          set.lines().stream()
              .map(l -> PlantCatalogue.shipped().plant(l.plant()))
              .filter(p -> Growth.of(p).life() == Growth.Life.PERENNIAL)
              .count();
      assertTrue(stay >= 2, set.toString());
    }
  }

  /** Peppermint runs and is watered much: what stands by it is not low, and is not mint again. */
  @Test
  void whatStandsThere_isNotSuggested_andIsAgreedWith() {
    SuggestWords.suggest(bed(), 2, 0, null, null, null);
    int alone = suggested().looked();
    yard = yard();
    BedScope bed = yard.planted(bed(), "peppermint", 4);
    SuggestWords.suggest(bed, 2, 0, null, null, null);
    Suggestions.Bed said = suggested();
    assertTrue(said.looked() < alone, said.looked() + " of " + alone);
    for (Suggestions.Set set : said.sets()) {
      for (Suggestions.Line line : set.lines()) {
        Plant plant = PlantCatalogue.shipped().plant(line.plant());
        assertFalse(plant.genus().equals("Mentha"), line.plant());
        assertFalse(plant.mulch().group().equals("low"), line.plant());
      }
    }
  }

  /**
   * 2 by 2 ft for three kinds are 1.33 sq ft each, and nothing wider than 2.5 ft fits: no shrub of
   * 3 ft. Without frost dates no month is known, but uses are.
   */
  @Test
  void smallBed_hasSmallKinds_andWithoutFrostNoMonths() {
    yard = PlantYard.us("");
    SuggestWords.suggest(yard.bed("b", 0, 0, 2, 2), 3, 0, "July", null, null);
    Suggestions.Bed bed = suggested();
    assertFalse(bed.monthsKnown());
    for (Suggestions.Set set : bed.sets()) {
      for (Suggestions.Line line : set.lines()) {
        Plant plant = PlantCatalogue.shipped().plant(line.plant());
        assertTrue(plant.size().spread().middle().feet() <= 2.5, line.plant());
        assertTrue(
            plant.growth().form() != Plant.Form.TREE && plant.growth().form() != Plant.Form.VINE);
        assertEquals("", line.harvest());
      }
    }
    List<String> notes = PlantYard.table(yard.outcome(), "suggestions").notes();
    assertTrue(notes.get(1).equals("b: months are not known without frost dates."), notes.get(1));
    assertTrue(notes.get(2).startsWith("Every kind fits its bed"), notes.get(2));
  }

  /** Alone in the plan it is told so too: a table without rows would not be printed. */
  @Test
  void onlyBed_withoutRoom_isToldSo() {
    SuggestWords.suggest(yard.bed("b", 0, 0, 0.05, 0.05), 3, 1, null, null, null);
    assertEquals(1, rows().size());
    assertTrue(rows().get(0).contains("no 3 of them together"), rows().get(0));
  }

  /**
   * Zones as the catalogue's source has them: none of the kinds that winter from zone 8 on is named
   * while no zone is known; zone 9 brings some of them back.
   */
  @Test
  void tenderKinds_needAZone() {
    SuggestWords.suggest(bed(), 2, 1, null, null, null);
    int hardy = suggested().looked();
    assertFalse(suggested().tender());
    assertTrue(
        PlantYard.table(yard.outcome(), "suggestions")
            .notes()
            .get(0)
            .startsWith("b: no hardiness zone is known, so kinds that winter only in zone 8 and"),
        () -> PlantYard.table(yard.outcome(), "suggestions").notes().toString());
    yard.give(YardFacts.HARDINESS, new Hardiness(9, false, Optional.empty(), Source.plan("test")));
    assertTrue(suggested().looked() > hardy, suggested().looked() + " of " + hardy);
  }

  /** Two inches of bed hold nothing: no set of two. */
  @Test
  void bedWithoutRoom_isToldSo() {
    SuggestWords.suggest(yard.bed("b", 0, 0, 0.05, 0.05), 2, 1, null, null, null);
    SuggestWords.suggest(yard.bed("c", 0, 10, 20, 4), 2, 1, null, null, null);
    assertEquals(
        "b |  | none |  |  |  | 0 kinds suit it, no 2 of them together; ask for fewer kinds or wish"
            + " for less",
        rows().get(0));
  }

  @ParameterizedTest
  @CsvSource({"Nov to Feb, 11 12 1 2", "July, 7", "sep to sep, 9", "jun to August, 6 7 8"})
  void months_mayRunAcrossNewYear(String text, String expected) {
    BedScope bed = bed();
    SuggestWords.suggest(bed, 2, 0, text, null, null);
    Set<Month> months = EnumSet.noneOf(Month.class);
    for (String m : expected.split(" ")) {
      months.add(Month.of(Integer.parseInt(m)));
    }
    assertEquals(months, suggested().wish().months());
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0.5, , kinds must be 2; 3; 4 or 5",
    "6, 0.5, , kinds must be 2; 3; 4 or 5",
    "2.5, 0.5, , kinds must be 2; 3; 4 or 5",
    "2, -0.1, , perennials must be 0 to 1",
    "2, 1.1, , perennials must be 0 to 1",
    "2, 1, ju, harvest takes a month or two with `to` between",
    "2, 1, may to smarch, harvest takes a month or two with `to` between"
  })
  void wishesOutOfRange_areRefused(double kinds, double share, String harvest, String message) {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> SuggestWords.suggest(bed(), kinds, share, harvest, null, null));
    assertTrue(e.getMessage().contains(message.replace(';', ',')), e.getMessage());
  }

  @Test
  void fiveKinds_allOrNoneStaying_areAllowed_askingTwiceIsNot() {
    SuggestWords.suggest(bed(), 5, 1, null, null, null);
    BedScope other = yard.bed("c", 0, 10, 5, 5);
    SuggestWords.suggest(other, 2, 0, null, null, null);
    PlanException e =
        assertThrows(
            PlanException.class, () -> SuggestWords.suggest(other, 2, 0, null, null, null));
    assertEquals(ProblemCode.DUPLICATE, e.problems().get(0).code());
  }
}
