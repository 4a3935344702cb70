package yardloom.planting.turn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;
import yardloom.planting.placing.NextWords;
import yardloom.planting.placing.PlantingWords;

/** Crops that follow each other on one bed, from the words to the printed tables. */
class TurnsByHandTest {
  private static Length inch(double inches) {
    return Length.inches(inches);
  }

  private static void plant(BedScope bed, String name, double spacing, double rows) {
    PlantingWords.plant(bed, name, inch(spacing), inch(rows), null, null, null, null);
  }

  private static void next(
      BedScope bed, String name, String after, String on, double spacing, double rows) {
    NextWords.plantNext(bed, name, after, on, null, inch(spacing), inch(rows), null, null);
  }

  /** 3 by 12 ft, last frost 20 April, first 20 October. */
  private static PlantYard beans() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "pea", 3, 12);
    next(bed, "pole bean", "pea", null, 6, 18);
    next(bed, "garlic", "pole bean", null, 8, 8);
    return yard;
  }

  /**
   * Pea: 28 days before 20 April is 23 March, its 100 days end on 1 July. Bean: 1 July and 90 days,
   * 29 September; it may wait until 90 days before 20 October, 22 July, 21 days: so may the pea, to
   * 13 April. Pea is usually picked from 37 + 28 = 65 days on, 27 May; bean 65 days on, 4
   * September. Garlic in the days from 28 before to 21 after 20 October; free on 29 September. It
   * is picked 67 to 97 days after 20 April. Plants: 48 × 3, 24 × 2, 18 × 4.
   */
  @Test
  void threeCrops_followEachOther() {
    assertEquals(
        List.of(
            "A | pea | Fabaceae | 144 | 23 Mar | 13 Apr | 27 May | 30 Jun | 1 Jul",
            "A | then pole bean | Fabaceae | 48 | 1 Jul | 22 Jul | 4 Sep | 28 Sep | 29 Sep",
            "A | then garlic | Amaryllidaceae | 72 | 29 Sep | 10 Nov | 26 Jun | 26 Jul | 27 Jul"),
        beans().printed("succession"));
  }

  /**
   * A script may plant in a loop, on one line. Pea is over on 1 July as above; spinach is sown on
   * 23 March too, and its 20 + 20 + 20 + 5 days end on 27 May.
   */
  @Test
  void sameKindOfOneLine_hasTheDaysOfEachGround() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "pea", 3, 12);
    plant(bed, "spinach", 6, 12);
    next(bed, "pole bean", "pea", null, 6, 18);
    next(bed, "pole bean", "spinach", null, 6, 18);
    String beans = yard.printed("plant-schedule").get(1);
    assertTrue(beans.endsWith("24 after pea, 1 Jul; 24 after spinach, 27 May"), beans);
  }

  /**
   * Peas planted twice on one line of a loop, beans after the first of them: the other peas stand
   * alone, so no days are cut. 28 days before and 14 after 20 April, 98 and 70 before 20 October.
   */
  @Test
  void sameKindOfOneLine_standsAloneWhereNothingFollows() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "pea", 3, 12);
    plant(bed, "pea", 3, 12);
    next(bed, "pole bean", "pea", null, 6, 18);
    assertEquals(
        List.of("pea | sow or set out | 23 Mar | 4 May", "pea | second sowing | 14 Jul | 11 Aug"),
        yard.printed("planting-times").subList(0, 2));
  }

  /** Days of planting of the first are cut so that the last is still in time. */
  @Test
  void windows_leaveTimeForWhatFollows() {
    assertEquals(
        List.of(
            "pea | sow or set out | 23 Mar | 13 Apr",
            "pole bean | after pea | 1 Jul | 22 Jul",
            "garlic | after pole bean | 29 Sep | 10 Nov"),
        beans().printed("planting-times"));
  }

  /**
   * Each brings what it does on a bed of its own. Sums are of all three, the ground of 36 sq ft is
   * counted once.
   */
  @Test
  void harvest_isTheSumOfBoth_onGroundThatIsThereOnce() {
    List<String> all = beans().printed("harvest");
    List<String> alone = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      PlantYard yard = PlantYard.us("2026-03-01");
      yard.frost("04-20", "10-20");
      BedScope bed = yard.bed("A", 0, 0, 3, 12);
      plant(
          bed,
          List.of("pea", "pole bean", "garlic").get(i),
          List.of(3, 6, 8).get(i),
          List.of(12, 18, 8).get(i));
      alone.add(yard.printed("harvest").get(0));
    }
    double low = 0;
    double high = 0;
    for (int i = 0; i < 3; i++) {
      assertEquals(cell(alone.get(i), 2), cell(all.get(i), 2), 1e-9);
      low += cell(all.get(i), 2);
      high += cell(all.get(i), 3);
    }
    assertEquals(low, cell(all.get(3), 2), 1.5);
    assertEquals(high, cell(all.get(3), 3), 1.5);
    // 36 sq ft, not three times that.
    String[] byArea = all.get(3).split(" \\| ")[4].split("–");
    assertEquals(low / 36, Double.parseDouble(byArea[0]), 0.05);
    assertEquals(high / 36, Double.parseDouble(byArea[1]), 0.05);
  }

  private static double cell(String row, int column) {
    return Double.parseDouble(row.split(" \\| ")[column]);
  }

  /** Garlic planted in fall is nothing to pick in the first July; beans are picked in September. */
  @Test
  void harvestByMonth_followsTheTurns() {
    List<String> months = beans().printed("harvest-months");
    assertTrue(months.get(4).startsWith("May | pea"), months.get(4));
    assertTrue(months.get(6).startsWith("Jul | garlic"), months.get(6));
    assertEquals("0", months.get(6).split(" \\| ")[5].trim());
    assertTrue(months.get(8).startsWith("Sep | pole bean"), months.get(8));
    assertTrue(months.get(7).startsWith("Aug | nothing"), months.get(7));
  }

  @Test
  void schedule_saysWhatFollowsWhat() {
    List<String> rows = beans().printed("plant-schedule");
    assertTrue(rows.get(0).contains("garlic | 72 "), rows.get(0));
    assertTrue(rows.get(0).endsWith("72 after pole bean, 29 Sep"), rows.get(0));
    assertTrue(rows.get(2).endsWith("48 after pea, 1 Jul"), rows.get(2));
  }

  /** Of the stands none draws water while another of its ground does: 31 days of July, all bean. */
  @Test
  void water_isOfOneCropADay() {
    List<Stand> stands = beans().outcome().results().all(YardFacts.STANDS);
    assertEquals(0, stands.get(0).thirst().kc().get(6), 1e-9);
    // Bean through its first 20 days, then 11 of 30 rising: Kc 0.5 to 1.05 (FAO-56, Table 12).
    double rise = (1.05 - 0.5) / 30;
    double july = (20 * 0.5 + 11 * 0.5 + rise * (11 * 11) / 2) / 31;
    assertEquals(july, stands.get(1).thirst().kc().get(6), 0.002);
    assertEquals(0, stands.get(1).thirst().kc().get(5), 1e-9);
    Stand.Ground pea = new Stand.Ground(stands.get(0).place(), "pea");
    assertEquals(pea, stands.get(1).planted().ground().get());
    assertEquals(pea, stands.get(2).planted().ground().get());
  }

  /**
   * Days of bloom from 20 April: borage 50 to 140, 9 June to 7 September, but it goes on 15 July,
   * so until 14 July. Buckwheat 40 to 120, usually sown on 20 April: 86 days later, 24 August to 12
   * November, but its crop is over in 90 days, on 13 October. Basil 60, 19 June, is gone on 15
   * June. Calendula on ground of its own 40 to 170, 30 May to 7 October. Kale is picked before it
   * blooms.
   */
  @Test
  void bloom_endsWhenTheNextTakesTheGround() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "borage", 12, 12);
    next(bed, "buckwheat", "borage", "07-15", 6, 18);
    plant(yard.bed("B", 100, 0, 3, 12), "calendula", 9, 9);
    BedScope basil = yard.bed("C", 200, 0, 3, 12);
    plant(basil, "basil", 8, 12);
    next(basil, "kale", "basil", "06-15", 18, 18);
    assertTrue(
        yard.printed("succession").get(1).endsWith("| 13 Oct"),
        yard.printed("succession")::toString);
    assertEquals(
        List.of(
            "calendula | 30 May | 7 Oct",
            "borage | 9 Jun | 14 Jul",
            "buckwheat, after borage | 24 Aug | 12 Oct"),
        yard.printed("bloom"));
  }

  @Test
  void care_clearsFeedsAndPlants() {
    List<String> care = beans().printed("care");
    String bean =
        care.stream()
            .filter(r -> r.startsWith("Clear, feed and plant the next | pole bean"))
            .findFirst()
            .orElseThrow();
    // Pea goes in on 23 March 2026 and stands 100 days; half an inch on 36 sq ft: 1.5 cu ft.
    assertTrue(bean.contains("| 1 Jul | 22 Jul | each"), bean);
    assertTrue(bean.contains("Cut pea at the ground"), bean);
    assertTrue(bean.contains("0.5 in of compost"), bean);
    assertTrue(bean.contains("The household does it"), bean);
    // 1 July and 44 days more; garlic from 29 September, the 45th day is 12 November.
    String wet = String.join("\n", care);
    assertTrue(wet.contains("Water new plants | pole bean | 1 Jul 2026 | 14 Aug 2026"), wet);
    assertTrue(wet.contains("Water new plants | garlic | 29 Sep 2026 | 12 Nov 2026"), wet);
    assertTrue(care.stream().noneMatch(r -> r.startsWith("Clear annuals")), care::toString);
  }

  @Test
  void oneFamily_andARoundLongerThanAYear_areTold() {
    List<String> found =
        beans().found("planting.succession").stream().map(f -> f.toString()).toList();
    assertEquals(2, found.size(), found::toString);
    assertTrue(found.stream().anyMatch(f -> f.contains("one family (Fabaceae)")), found::toString);
    assertTrue(
        found.stream().anyMatch(f -> f.contains("garlic stands until 27 Jul")), found::toString);
  }

  /** Fava bean after pole bean of 20 April: free on 19 July; sown again until 11 August: fits. */
  @Test
  void tooLate_isTold_andNotHarvested() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-20");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "pole bean", 6, 18);
    next(bed, "sweet corn", "pole bean", null, 10, 30);
    // 80 days before 20 October is 1 August: on 19 July it fits; winter squash takes 100.
    assertEquals(0, yard.found("planting.succession").size());
    next(bed, "winter squash", "sweet corn", null, 30, 30);
    assertEquals(1, yard.found("planting.succession").size());
    assertEquals("too late", yard.printed("succession").get(2).split(" \\| ")[4]);
    assertEquals(3, yard.printed("harvest").size());
  }

  /** Rounds and dates of an extension service fit, with frost on 17 April and 29 October. */
  @Test
  void publishedRounds_fit() {
    for (DataRow row :
        DataTable.shipped(TurnsByHandTest.class, "formula/succession-dates.csv").rows()) {
      PlantYard yard = PlantYard.us("2026-03-01");
      yard.frost("04-17", "10-29");
      BedScope bed = yard.bed("A", 0, 0, 4, 16);
      plant(bed, row.text("first"), 12, 12);
      next(bed, row.text("second"), row.text("first"), row.text("second_on"), 6, 18);
      if (!row.text("third").isEmpty()) {
        next(bed, row.text("third"), row.text("second"), row.text("third_on"), 18, 18);
      }
      assertEquals(List.of(), yard.found("planting.succession"), row.text("round"));
      yard.printed("succession").forEach(r -> assertTrue(!r.contains("too late"), r));
    }
  }

  @Test
  void words_refuseWhatCannotFollow() {
    PlantYard yard = PlantYard.us("2026-03-01");
    BedScope bed = yard.bed("A", 0, 0, 3, 12);
    plant(bed, "pea", 3, 12);
    assertThrows(PlanException.class, () -> next(bed, "asparagus", "pea", null, 12, 12));
    assertThrows(PlanException.class, () -> next(bed, "pea", "asparagus", null, 12, 12));
    assertThrows(PlanException.class, () -> next(bed, "kale", "pea", "13-40", 12, 12));
    for (Number bad : List.of(19, 331, 60.5)) {
      assertThrows(
          PlanException.class,
          () -> NextWords.plantNext(bed, "kale", "pea", null, bad, null, null, null, null));
    }
    // Nothing of that name has ground of its own.
    next(bed, "kale", "lettuce", null, 12, 12);
    PlanException e = assertThrows(PlanException.class, yard::outcome);
    assertTrue(e.getMessage().contains("it has 'pea'"), e.getMessage());
  }

  /** Whatever the spacing and the size, a bed with two crops brings what two beds with one do. */
  @Property(tries = 25)
  void harvestOfBoth_isTheSum(
      @ForAll @IntRange(min = 3, max = 6) int wide,
      @ForAll @IntRange(min = 6, max = 30) int deep,
      @ForAll @IntRange(min = 3, max = 9) int spacing) {
    List<Double> sums = new ArrayList<>();
    for (boolean together : List.of(true, false)) {
      PlantYard yard = PlantYard.us("2026-03-01");
      yard.frost("04-20", "10-20");
      BedScope one = yard.bed("A", 0, 0, wide, deep);
      plant(one, "pea", spacing, 18);
      if (together) {
        next(one, "pole bean", "pea", null, spacing + 1, 24);
      } else {
        plant(yard.bed("B", 100, 0, wide, deep), "pole bean", spacing + 1, 24);
      }
      sums.add(yard.outcome().results().get(YardFacts.HARVEST).high().value().kilograms());
    }
    assertEquals(sums.get(1), sums.get(0), 1e-9);
  }
}
