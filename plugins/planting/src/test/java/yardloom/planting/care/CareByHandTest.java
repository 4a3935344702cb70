package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.mulch.TopUp;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.planting.PlantYard;
import yardloom.planting.placing.PlacingWords;
import yardloom.planting.trained.TrainedWords;

/**
 * Care of yards worked by hand: the last frost of spring falls on 20 April, the first of fall on 15
 * October. Means of 9 °C in April and 15 °C in May pass 10 °C a sixth of a month after the middle
 * of April, on the 20th; bloom comes ten days later, so what is counted from the last frost and
 * follows bloom comes ten days later too. Days and minutes are those of {@code care-acts.csv}.
 */
class CareByHandTest {
  private PlantYard yard = PlantYard.us("2026-03-10");

  private void facts() {
    yard.frost("04-20", "10-15");
    yard.climate(6, -4, -2, 3, 9, 15, 20, 23, 22, 18, 11, 4, -2);
  }

  /** One apple, 50 tomatoes on 200 sq ft, 15 currants on 240 sq ft, planted in spring. */
  private void spring() {
    facts();
    yard.tree("apple", "apple (semi-dwarf)", 10, 40, 1);
    yard.planted(yard.bed("t", 0, 0, 4, 50), "tomato", 2);
    yard.planted(yard.bed("c", 10, 0, 12, 20), "red currant", 4);
    yard.plantedOn("apple (semi-dwarf)", "2026-04-01");
    yard.plantedOn("red currant", "2026-04-01");
    yard.plantedOn("tomato", "2026-05-11");
    for (int year = 1; year <= 3; year++) {
      yard.give(
          YardFacts.TOP_UPS,
          new TopUp(year, Derived.given(Volume.cubicYards(1.1), "chips", SourceRef.NONE)));
    }
  }

  /** The rows of care without how each is done. */
  private List<String> care() {
    return yard.printed("care").stream()
        .map(r -> r.substring(0, r.lastIndexOf(" | ")))
        .map(String::strip)
        .toList();
  }

  private String act(String what) {
    return yard.printed("care").stream()
        .filter(r -> r.startsWith(what + " | "))
        .findFirst()
        .orElse("");
  }

  /**
   * Planted on 1 April, watered for 45 days, until 15 May; on 11 May, until 24 June. Hours:
   * currants 15 × 15 min = 3.75; guard 10 min = 0.17; bearing tree 45 min, young one 15 min;
   * compost 25 min × 200 sq ft / 100 = 50 min; thinning 30 min; stakes 50 × 6 min = 5; nets 15 × 6
   * min = 1.5; weeds from 6 April (14 days before the last frost) to 15 October, 193 days, on 440
   * sq ft: 6 min × 4.4 × 193 / 7 = 728 min = 12.1 h, later 2 min, a third; annuals cleared 50 × 2
   * min = 1.7; chips 60 min × 1.1 cu yd = 66 min. From 20 April: -75 days is 4 February (5 February
   * in the leap year 2028), -30 21 March, -21 30 March, -28 23 March, 42 + 10 days 11 June, 75 + 10
   * 14 July, 32 + 10 1 June, 53 + 10 22 June; tomatoes wait for no bloom, 28 18 May, 70 29 June;
   * picking, for currants 60 to 80 days and those 10, 29 June to 19 July, for tomatoes 80 to 160, 9
   * July to 27 September, for apples 105 to 175 and 10, 13 August to 22 October; from 15 October 21
   * days are 5 November, 50 4 December. Apples bear from their fourth year, currants from their
   * third.
   */
  @Test
  void yardPlantedInSpring_hasItsYearOfCare() {
    spring();
    assertEquals(
        List.of(
            "Once, from the days of planting |  |  |  |  |",
            "Plant | apple (semi-dwarf), red currant | 1 Apr 2026 | 1 Apr 2026 | 1 |",
            "Water new plants | apple (semi-dwarf), red currant | 1 Apr 2026 | 15 May 2026 | 1 |",
            "Plant | tomato | 11 May 2026 | 11 May 2026 | 1 |",
            "Water new plants | tomato | 11 May 2026 | 24 Jun 2026 | 1 |",
            "By the season |  |  |  |  |",
            "Prune currants and gooseberries | red currant | 4 Feb | 21 Mar | from 2 on | 3.8",
            "Guard young bark | apple (semi-dwarf) | 15 Oct | 23 Mar | 1 to 3 | 0.2",
            "Prune bearing trees | apple (semi-dwarf) | 4 Feb | 30 Mar | once grown | 0.8",
            "Prune young trees | apple (semi-dwarf) | 5 Feb | 30 Mar | 2 to 3 | 0.3",
            "Compost on beds of annuals |  | 30 Mar | 27 Apr | from 2 on | 0.8",
            "Set out | tomato | 4 May | 23 May | from 2 on |",
            "Thin apples and pears | apple (semi-dwarf) | 1 Jun | 22 Jun | from 3 on | 0.5",
            "Stake and tie | tomato | 18 May | 29 Jun | each | 5.0",
            "Net berries | red currant | 11 Jun | 14 Jul | from 2 on | 1.5",
            "Pick | red currant | 29 Jun | 19 Jul | from 3 on |",
            "Pick | tomato | 9 Jul | 27 Sep | each |",
            "Weed every other week |  | 6 Apr | 15 Oct | from 2 on | 4.0",
            "Weed weekly |  | 6 Apr | 15 Oct | 1 | 12.1",
            "Pick | apple (semi-dwarf) | 13 Aug | 22 Oct | once grown |",
            "Clear annuals | tomato | 15 Oct | 5 Nov | each | 1.7",
            "Top up chips |  | 5 Nov | 4 Dec | each | 1.1"),
        care());
    String water = act("Water new plants");
    assertTrue(
        water.contains("Daily until 14 Apr, every second day until 30 Apr, then every third"),
        water);
    // What the take-off adds is said season by season.
    List<CareAct> acts = yard.outcome().results().all(CareAct.KEY);
    String chips = "About 1.1 cu yd in season 1, 1.1 cu yd in season 2, 1.1 cu yd in season 3";
    assertEquals(
        List.of(true, true, true, true),
        acts.stream()
            .filter(a -> a.task().act() == Act.MULCH)
            .map(a -> a.task().how().replace('\u00a0', ' ').contains(chips))
            .toList());
  }

  @Test
  void careOnASheet_leavesOutHow_andSaysWhereItStands() {
    spring();
    var outcome = yard.outcome();
    Table made = PlantYard.table(outcome, "care");
    Table sheet = new CareTable().forSheet(yard.draft.freeze(), outcome.results(), made);
    assertEquals(made.columns().size() - 1, sheet.columns().size());
    // The three rows of picking stand in the harvest's own table.
    assertEquals(made.rows().size() - 3, sheet.rows().size());
    assertTrue(made.notes().get(0).contains("The first days of all fall on 1 Apr 2026."));
    assertTrue(made.notes().get(1).startsWith("By: Care of new trees and shrubs"));
    assertTrue(sheet.notes().get(1).startsWith("How each is done, and who says so, stands in"));
  }

  /**
   * February of season 2: currants 3.75 h on 46 days from 4 February, 25 of them in the month,
   * 2.04; the young tree 0.25 h × 25 / 55 = 0.11; the guard of 15 October 2027 to 23 March 2028,
   * 161 days, 29 of them: 0.03; 2.2 in all. June of season 1: stakes 5 h × 29 / 43 = 3.37 and weeds
   * 12.13 h × 30 / 193 = 1.89. September has weeds alone. Years: 0.17 + 5 + 12.13 + 1.67 + 1.1 =
   * 20.1; 3.75 + 0.17 + 0.25 + 0.83 + 5 + 1.5 + 4.04 + 1.67 + 1.1 = 18.3; with thinning 18.8;
   * grown, 0.75 for the bearing tree, without guard and young tree, 19.1.
   */
  @Test
  void hoursOfUpkeep_fallIntoTheirMonths() {
    spring();
    List<String> rows = yard.printed("care-hours");
    assertEquals(13, rows.size());
    assertEquals("January | 0.0 | 0.0 | 0.0 | 0.0", rows.get(0));
    assertEquals("February | 0.0 | 2.2 | 2.2 | 2.4", rows.get(1));
    assertEquals("June | 5.3 | 4.9 | 5.4 | 5.4", rows.get(5));
    assertEquals("September | 1.9 | 0.6 | 0.6 | 0.6", rows.get(8));
    assertEquals("Year | 20.1 | 18.3 | 18.8 | 19.1", rows.get(12));
  }

  /** Counted 45 days after planting; tomatoes can be set out again only from 4 May on. */
  @Test
  void losses_areCountedOnceRooted_andReplantedInSeason() {
    spring();
    assertEquals(
        List.of(
            "apple (semi-dwarf) | 1 | 16 May 2026 |  | 16 May 2026",
            "red currant | 15 | 16 May 2026 |  | 16 May 2026",
            "tomato | 50 | 25 Jun 2026 |  | 4 May 2027"),
        yard.printed("losses"));
  }

  /**
   * What is planted on 2 November has its first season in 2027, that of the garden's second:
   * rhubarb is cut down in its own second year, season 3. Ten days of August 2026 before the last
   * 60 of its season, strawberries have theirs in 2026. The old apple is pruned as a bearing tree
   * at once. The pear alone is trained. 20 strawberries: straw and renewal a minute each, a third
   * of an hour, replanting 3 min; 6 rhubarb: 30 min each to divide.
   */
  @Test
  void yardPlantedInFall_countsEachKindsOwnSeasons() {
    facts();
    yard.tree("apple", "apple (semi-dwarf)", 10, 40, 1);
    yard.tree("old", "apple (semi-dwarf)", 70, 40, 10);
    TrainedWords.trained(yard.tree("flat", "European pear", 10, 90, 1.5), "espalier", null, null);
    yard.planted(yard.bed("s", 0, 0, 4, 5), "garden strawberry", 1);
    yard.planted(yard.bed("r", 10, 0, 9, 6), "rhubarb", 3);
    for (String woody : List.of("apple (semi-dwarf)", "European pear", "rhubarb")) {
      yard.plantedOn(woody, "2026-11-02");
    }
    yard.plantedOn("garden strawberry", "2026-08-10");
    yard.give(
        YardFacts.DRIPLINES,
        new Dripline(
            new ElementId(ElementKind.BED, "s"),
            Derived.given(Length.feet(9), "dripline", SourceRef.NONE),
            List.of(),
            Length.inches(12)));
    String trees = "European pear, apple (semi-dwarf) | ";
    List<String> rows = care();
    Stream.of(
            "Plant | garden strawberry | 10 Aug 2026 | 10 Aug 2026 | 1 |",
            "Plant | European pear, apple (semi-dwarf), rhubarb | 2 Nov 2026 | 2 Nov 2026 | 1 |",
            "Guard young bark | " + trees + "15 Oct | 23 Mar | 1 to 3 | 0.3",
            "Prune bearing trees | " + trees + "4 Feb | 30 Mar | from 2 on | 2.3",
            "Prune young trees | " + trees + "5 Feb | 30 Mar | 3 | 0.5",
            "Cut perennials down | rhubarb | 9 Mar | 6 Apr | from 3 on | 0.1",
            "Divide rhubarb | rhubarb | 6 Mar | 6 Apr | every 6 seasons | 3.0",
            "Feed rhubarb | rhubarb | 21 Mar | 13 Apr | from 3 on | 0.3",
            "Open the lines |  | 13 Apr | 27 Apr | from 2 on | 0.8",
            "Pick | rhubarb | 20 Apr | 19 Jun | from 3 on |",
            "Pick | garden strawberry | 30 May | 29 Jun | from 2 on |",
            "Renew strawberries | garden strawberry | 30 Jun | 19 Jul | from 2 on | 0.3",
            "Summer-prune trained trees | European pear | 14 Jul | 13 Aug | from 3 on | 0.3",
            "Replant strawberries | garden strawberry | 24 Jul | 23 Aug | every 4 seasons | 1.0",
            "Pick | apple (semi-dwarf) | 13 Aug | 22 Oct | each |",
            "Pick | apple (semi-dwarf) | 13 Aug | 22 Oct | once grown |",
            "Drain the lines |  | 5 Oct | 14 Oct | each | 0.8",
            "Weed weekly |  | 10 Aug | 15 Oct | 1 | 0.7",
            "Straw on strawberries | garden strawberry | 19 Nov | 10 Dec | each | 0.3")
        .forEach(row -> assertTrue(rows.contains(row), row + " in " + rows));
  }

  /** Without a frost in winter's mean nothing freezes: no straw, no lines to drain. */
  @Test
  void mildWinters_needNoStraw_andNoDrainedLines() {
    yard.frost("04-20", "10-15");
    yard.climate(6, 0.1, 2, 4, 9, 15, 20, 23, 22, 18, 11, 4, 1);
    yard.planted(yard.bed("s", 0, 0, 4, 5), "garden strawberry", 1);
    yard.plantedOn("garden strawberry", "2026-04-10");
    assertEquals("", act("Straw on strawberries"));
    assertEquals("", act("Drain the lines"));
    assertEquals("", act("Cover tender plants"));
    assertTrue(act("Weed weekly").startsWith("Weed weekly |  | 10 Apr | 15 Oct | 1 | 0.5"));
  }

  /** Lemons bear zone 9 (the catalogue's row is 9, recalled): its colder half harms them still. */
  @ParameterizedTest
  @CsvSource({
    "8, true, true",
    "9, false, true",
    "9, true, false",
    "10, false, false",
    "10, true, false"
  })
  void tenderTrees_areCoveredWhereWintersHarmThem(int zone, boolean warmerHalf, boolean covered) {
    yard.frost("02-20", "12-05");
    yard.give(
        YardFacts.HARDINESS, new Hardiness(zone, warmerHalf, Optional.empty(), Source.plan("map")));
    yard.tree("l", "lemon", 10, 40, 1);
    yard.plantedOn("lemon", "2026-04-01");
    // Seven days before 5 December, until seven after 20 February.
    String row = act("Cover tender plants");
    assertTrue(
        covered
            ? row.startsWith("Cover tender plants | lemon | 28 Nov | 27 Feb | each | 0.3 |")
            : row.isEmpty(),
        row);
  }

  /**
   * 9 by 6 currants a foot apart, each third of a row and each third row stays: 3 × 2. Thinned 60
   * to 21 days before the last frost of season 3. From then on six are pruned, 90 min, and netted,
   * 36 min: not 54, which would be 13.5 and 5.4 h.
   */
  @Test
  void thinnedBed_isCaredForByThoseThatStay() {
    facts();
    BedScope bed = yard.planted(yard.bed("r", 10, 0, 9, 6), "red currant", 1);
    PlacingWords.plantThinned(bed, "red currant", Length.feet(3), 3);
    assertEquals(List.of("r | red currant | 54 | 6 | 36.0 | 3"), yard.printed("thinning"));
    assertEquals(
        "Thin out r | red currant | 20 Feb 2028 | 30 Mar 2028 | 3 |  | 48 of 54 go, 6 stay: lift"
            + " and give away, or cut at the ground.",
        act("Thin out r"));
    List<Double> pruned =
        yard.outcome().results().all(CareAct.KEY).stream()
            .filter(a -> a.task().what().startsWith("Prune currants"))
            .map(a -> a.hours().orElseThrow().value().hours())
            .toList();
    assertEquals(List.of(13.5, 1.5, 1.5), pruned);
  }

  /** No day of planting is said: the first in season after the date of the plan. */
  @Test
  void withoutDaysOfWork_plantingFollowsTheDateOfThePlan() {
    facts();
    yard.planted(yard.bed("t", 0, 0, 4, 6), "tomato", 2);
    assertTrue(act("Plant").startsWith("Plant | tomato | 4 May 2026 | 4 May 2026 | 1 |"));
    yard = PlantYard.us("spring");
    facts();
    yard.planted(yard.bed("t", 0, 0, 4, 6), "tomato", 2);
    assertTrue(yard.outcome().results().all(CareAct.KEY).isEmpty());
    yard = PlantYard.us("2026-03-10");
    yard.planted(yard.bed("t", 0, 0, 4, 6), "tomato", 2);
    assertTrue(yard.outcome().results().all(CareAct.KEY).isEmpty());
  }

  /**
   * Ten of a kind, planted on 1 April 2026: days from 20 April, ten more where they follow bloom,
   * and ten times the minutes of the row. What waits for the harvest comes after it: raspberries
   * are picked to day 90 and ten, 29 July, so canes are cut from 30 July, for 30 days; asparagus to
   * day 56, 15 June, and fed from the day after, for 21.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "red raspberry | Cut fruited canes | 30 Jul | 28 Aug | from 2 on | 0.5",
        "red raspberry | Thin and tie canes | 6 Mar | 6 Apr | from 2 on | 0.5",
        "highbush blueberry | Prune blueberries | 19 Feb | 30 Mar | from 3 on | 2.5",
        "highbush blueberry | Net blueberries | 19 Jun | 24 Jul | from 2 on | 1.0",
        "sage | Trim woody herbs | 7 May | 28 May | from 2 on | 0.5",
        "asparagus | Cut asparagus fern | 19 Feb | 21 Mar | from 2 on | 0.2",
        "asparagus | Feed asparagus | 16 Jun | 6 Jul | from 2 on | 0.2",
        "globe artichoke | Divide artichokes | 6 Mar | 6 Apr | every 4 seasons | 3.3",
        "chives | Divide a quarter of the clumps | 16 Mar | 13 Apr | once grown | 0.3",
        "peppermint | Hold runners back | 30 May | 29 Jun | from 2 on | 0.8",
        "gooseberry | Prune currants and gooseberries | 4 Feb | 21 Mar | from 2 on | 2.5",
        "American elderberry | Prune berry shrubs | 19 Feb | 30 Mar | from 3 on | 2.5"
      })
  void careOfAKind_comesOnItsDays(
      String kind, String what, String from, String until, String seasons, String hours) {
    facts();
    yard.planted(yard.bed("b", 0, 0, 60, 6), kind, 6);
    yard.plantedOn(kind, "2026-04-01");
    assertTrue(
        act(what).startsWith(String.join(" | ", what, kind, from, until, seasons, hours) + " | "),
        act(what));
  }
}
