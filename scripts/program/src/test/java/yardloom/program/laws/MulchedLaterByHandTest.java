package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.PlantingDay;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Results;

/** Chips lie over what is planted, so they come after it: by hand, and as a law over all yards. */
class MulchedLaterByHandTest {
  /** Two beds of perennials and one of annuals; {@code START} is the first day of the work. */
  private static final String YARD =
      """
      plan 'Later', units: 'us'
      site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 60.ft), point(0.ft, 60.ft)])
      work crew: 2, hoursPerDay: 7, start: 'START'
      sheetMulch { chips perennial: 3.inch, annual: 2.inch ; compost annual: 4.inch, perennial: 1.inch }
      bed('warm', rect(5.ft, 10.ft, 18.ft, 5.ft), use: 'annual') { plant 'KIND' }
      bed('herbs', rect(5.ft, 20.ft, 9.ft, 4.ft), use: 'perennial') { plant 'chives' }
      bed('crowns', rect(30.ft, 20.ft, 15.ft, 4.ft), use: 'perennial') { plant 'OTHER' }
      """;

  private static Drawn drawn(String start, String kind, String other) {
    return Drawn.of(YARD.replace("START", start).replace("KIND", kind).replace("OTHER", other));
  }

  private static String phaseOfChips(Drawn yard, String bed) {
    return yard.outcome().results().all(YardFacts.SURFACES).stream()
        .filter(s -> s.of().title().equalsIgnoreCase(bed))
        .flatMap(s -> s.lifts(Material.WOOD_CHIPS).stream())
        .map(c -> c.phase().id())
        .reduce("", (a, b) -> a + b);
  }

  /**
   * In September chives and rhubarb are in season, tomatoes from two weeks after 25 April on,
   * Sunday 9 May 2027: Monday the 10th. Their 18 × 5 = 90 sq ft get 2 in of chips then, 15 cu ft or
   * 0.556 cu yd, 0.61 with a tenth more, ordered as 1; the 36 + 60 sq ft of the others get 3 in in
   * September, 24 cu ft or 0.889, 0.98 with a tenth more, ordered as 1 too. Thirty days before 10
   * May is Saturday 10 April.
   */
  @Test
  void bedOfAnotherSeason_isMulchedWhenItIsPlanted() {
    Drawn yard = drawn("2026-09-07", "tomato", "rhubarb");
    assertEquals("later", phaseOfChips(yard, "warm"));
    assertEquals("finish", phaseOfChips(yard, "herbs"));
    assertEquals("finish", phaseOfChips(yard, "crowns"));
    String later = "Mulch what is planted later";
    assertEquals("2027-05-10", yard.printed("materials-phases", later, "from"));
    assertEquals(
        "2026-09", yard.printed("materials-phases", "Finish mulch", "from").substring(0, 7));
    List<String> ordered =
        yard.tables().get("materials-orders-by-phase").rows().stream()
            .map(r -> r.stream().map(c -> c.value().map(Object::toString).orElse("")).toList())
            .filter(r -> r.get(1).equals("wood-chip mulch"))
            .map(r -> r.get(0) + " " + r.get(r.size() - 1))
            .toList();
    assertTrue(ordered.contains(later + " 2027-04-09"), ordered::toString);
    assertEquals(15 / 27.0, exact(yard, WorkPhase.LATER), 1e-9);
    assertEquals(24 / 27.0, exact(yard, WorkPhase.FINISH), 1e-9);
    // The compost of all beds lies in September: nothing is opened again.
    assertEquals(90 * 4 / 324.0 + 96 / 324.0, compost(yard, WorkPhase.SHEET), 1e-9);
  }

  private static double exact(Drawn yard, WorkPhase phase) {
    return volume(yard, Material.WOOD_CHIPS, phase);
  }

  private static double compost(Drawn yard, WorkPhase phase) {
    return volume(yard, Material.COMPOST, phase);
  }

  private static double volume(Drawn yard, Material material, WorkPhase phase) {
    return yard.outcome().results().all(YardFacts.SURFACES).stream()
        .flatMap(s -> s.lifts(material).stream())
        .filter(c -> c.phase() == phase)
        .mapToDouble(c -> c.volume().orElseThrow().value().cubicYards())
        .sum();
  }

  /**
   * From April on tomatoes and chives are planted on one day, and all beds are finished with it.
   */
  @Test
  void workInSpring_hasOneFinish() {
    Drawn yard = drawn("2027-04-12", "tomato", "rhubarb");
    assertEquals("finish", phaseOfChips(yard, "warm"));
    assertTrue(!yard.rows("materials-phases").contains("Mulch what is planted later"));
  }

  /**
   * Tomatoes of Monday 10 May would stand till garlic comes in the middle of September in open
   * compost: they get their chips in May, and garlic is set through them.
   */
  @Test
  void summer_isNotPassedInOpenCompost() {
    Drawn yard =
        Drawn.of(
            YARD.replace("START", "2027-04-12")
                .replace("plant 'KIND'", "plant 'tomato' ; plant 'garlic'")
                .replace("OTHER", "rhubarb"));
    assertEquals("later", phaseOfChips(yard, "warm"));
    assertEquals(
        "2027-05-10", yard.printed("materials-phases", "Mulch what is planted later", "from"));
    String steps =
        yard.outcome().sheets().stream()
            .filter(s -> s.id().equals("crew"))
            .flatMap(s -> s.panels().stream())
            .map(Object::toString)
            .reduce("", String::concat)
            .replace('\u00a0', ' ');
    assertTrue(steps.contains("garlic. Part the chips"), steps);
  }

  private static final List<String> ANNUALS = List.of("tomato", "kale", "lettuce", "zucchini");
  private static final List<String> OTHERS =
      List.of("rhubarb", "red raspberry", "garden strawberry", "asparagus");

  /** In every yard, whenever it begins: chips over plants come no earlier than each of them. */
  @Property(tries = 8, seed = "20261128")
  void chips_comeAfterAllPlantsUnderThem(
      @ForAll @IntRange(min = 0, max = 364) int day,
      @ForAll @IntRange(min = 0, max = 3) int annual,
      @ForAll @IntRange(min = 0, max = 3) int other) {
    String start = LocalDate.of(2026, 1, 1).plusDays(day).toString();
    Results r = drawn(start, ANNUALS.get(annual), OTHERS.get(other)).outcome().results();
    int held = 0;
    for (MulchSurface s : r.all(YardFacts.SURFACES)) {
      LaidLayer top = s.courses().get(s.courses().size() - 1);
      LocalDate laid = start(r, top.phase());
      for (Stand stand : r.all(YardFacts.STANDS)) {
        if (stand.in().equals(s.of())) {
          assertTrue(!planted(r, stand).isAfter(laid), start + " " + stand.plant() + " " + laid);
          held++;
        }
      }
      assertTrue(!start(r, s.courses().get(0).phase()).isAfter(laid));
    }
    assertEquals(3, held);
  }

  private static LocalDate start(Results r, WorkPhase phase) {
    return r.all(YardFacts.PHASE_DAYS).stream()
        .filter(p -> p.phase() == phase)
        .map(PhaseDays::from)
        .findFirst()
        .orElseThrow();
  }

  private static LocalDate planted(Results r, Stand stand) {
    return r.all(YardFacts.PLANTING_DAYS).stream()
        .filter(p -> p.plant().equals(stand.plant()))
        .map(PlantingDay::date)
        .max(LocalDate::compareTo)
        .orElseThrow();
  }
}
