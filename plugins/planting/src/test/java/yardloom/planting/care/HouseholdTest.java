package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.planting.PlantYard;
import yardloom.planting.bay.BayWords;

/** The household's page, its calendar and its bay. */
class HouseholdTest {
  private final PlantYard yard = PlantYard.us("2026-03-10");

  private void plant() {
    yard.frost("04-20", "10-15");
    yard.planted(yard.bed("r", 10, 0, 9, 6), "rhubarb", 3);
    yard.plantedOn("rhubarb", "2026-04-02");
  }

  private Table bay() {
    return PlantYard.table(yard.outcome(), "compost-bay");
  }

  @Test
  void bays_areNamed_orAPlaceIsAskedFor() {
    plant();
    assertTrue(
        bay().notes().get(0).startsWith("No bay is drawn on the plan: keep a place of 4 by"));
    BayWords.compostBay(yard.words(), "heap", PlanKit.box(40, 40, 3, 3), null);
    assertEquals("On the plan: heap.", bay().notes().get(0));
    assertTrue(bay().notes().get(1).startsWith("By: "));
  }

  /** 3 by 3 ft are the least: 9 sq ft. */
  @Test
  void bayTooSmallToRot_isRefused() {
    Shape small = PlanKit.box(40, 40, 2.9, 3);
    PlanException e =
        assertThrows(
            PlanException.class, () -> BayWords.compostBay(yard.words(), "heap", small, null));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("covers 8.7 sq ft (0.81 m²)"), e.getMessage());
  }

  @Test
  void standingBay_isNotBuiltAgain() {
    assertEquals(
        "heap",
        BayWords.compostBay(yard.words(), "heap", PlanKit.box(40, 40, 4, 4), true).id().name());
    assertTrue(
        yard.draft.freeze().all(yardloom.kernel.plan.Element.Structure.class).get(0).stands());
  }

  /** Nothing to look for where nothing is planted: an old tree alone is only picked. */
  @Test
  void yardWithoutNewPlants_hasNoFirstDays() {
    yard.frost("04-20", "10-15");
    yard.tree("old", "apple (semi-dwarf)", 70, 40, 10);
    Outcome outcome = yard.outcome();
    assertTrue(
        outcome.tables().stream()
            .filter(t -> List.of("first-days", "weeds-through", "compost-bay").contains(t.id()))
            .allMatch(Table::isEmpty));
  }

  @Test
  void page_hasTheYear_firstDaysHoursAndWeeds_withoutTheirSources() {
    plant();
    Outcome outcome = yard.outcome();
    SheetPlan page = new HouseholdSheet().make(yard.draft.freeze(), outcome.results()).get(0);
    List<String> ids =
        page.panels().stream()
            .filter(p -> p instanceof Panel.TableBlock)
            .map(p -> ((Panel.TableBlock) p).table().id())
            .toList();
    assertEquals(List.of("first-days", "care-hours", "weeds-through"), ids);
    assertTrue(page.panels().get(0) instanceof Panel.Figure);
    Table first = ((Panel.TableBlock) page.panels().get(1)).table();
    assertEquals(List.of(), first.notes());
    // Eleven are shipped: this yard has no drip to look at, and its ground is not chips alone.
    assertEquals(9, first.rows().size());
    assertEquals(
        "1 to 14 | Leaves limp in the morning, or a root ball dry a finger deep | Water at once and"
            + " daily; shade what went out soft",
        yard.printed(first).get(0));
    assertTrue(
        new HouseholdSheet()
            .make(yard.draft.freeze(), PlantYard.us("").outcome().results())
            .isEmpty());
  }

  @Test
  void tables_goWhereTheHouseholdLooks() {
    assertEquals(OnPaper.ALWAYS, HouseholdTables.establishment().onPaper());
    assertEquals(OnPaper.IF_ROOM, HouseholdTables.weeds().onPaper());
    assertEquals(OnPaper.REPORT, HouseholdTables.bay().onPaper());
    assertEquals(1, HouseholdTables.weeds().uses().size());
    assertEquals(0, HouseholdTables.bay().uses().size());
  }

  /**
   * Division comes every sixth season from the sixth on: last frost of 2031, 45 to 14 days before.
   * Later seasons are repeats, the first three are not.
   */
  @Test
  void calendar_repeatsWhatComesAgain() {
    plant();
    List<DiaryEntry> entries = yard.outcome().results().all(DiaryEntry.FACT);
    DiaryEntry divide =
        entries.stream().filter(e -> e.title().startsWith("Divide")).findFirst().orElseThrow();
    assertEquals("Divide rhubarb: rhubarb", divide.title());
    assertEquals("divide-rhubarb-grown", divide.key());
    assertEquals("2031-03-06", divide.from().toString());
    assertEquals("2031-04-06", divide.until().toString());
    assertEquals(6, divide.everyYears());
    DiaryEntry weekly =
        entries.stream().filter(e -> e.title().equals("Weed weekly")).findFirst().orElseThrow();
    assertEquals("weed-weekly-2026", weekly.key());
    assertEquals(0, weekly.everyYears());
    assertTrue(weekly.text().startsWith("Walk every bed;"), weekly.text());
    assertTrue(weekly.text().endsWith(")"), weekly.text());
  }
}
